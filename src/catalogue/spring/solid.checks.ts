import { checks } from '../../core/checks';
import { springSolid } from './solid';

export default checks(springSolid, [
  {
    given: { wire: '2 mm', totalCoils: 10 },
    expect: '20 mm',
    within: 1e-12,
    from: 'by hand: ten wires of 2 mm',
  },
  {
    given: { wire: '0.08 in', totalCoils: 9, ends: 'open' },
    expect: '0.8 in',
    within: 1e-12,
    from: 'by hand: 0.08 × (9 + 1)',
  },
  {
    given: { wire: '1.5 mm', totalCoils: 8, ends: 'closed' },
    expect: '13.5 mm',
    within: 1e-12,
    from: 'by hand: 1.5 × (8 + 1)',
  },
  {
    given: { wire: '2.5 mm', totalCoils: 14, ends: 'open ground' },
    expect: '35 mm',
    within: 1e-12,
    from: 'Shigley, solution of problem 10-3 read at a public page: plain and ground, 14 coils of 2.5 mm wire, by d N_t',
    kind: 'secondhand',
  },
  {
    given: { wire: '3 mm', totalCoils: 1, ends: 'closed ground' },
    expect: '3 mm',
    within: 1e-12,
    from: 'one ground coil is as high as its wire',
    limit: true,
  },
]);
