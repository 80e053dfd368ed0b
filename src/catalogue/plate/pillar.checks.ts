import { checks } from '../../core/checks';
import { platePillar } from './pillar';

export default checks(platePillar, [
  {
    given: { force: '30 kN', pillars: 2, pillarDia: '25 mm', length: '60 mm', metal: '205 GPa' },
    expect: '0.00894373144 mm',
    within: 1e-8,
    from: 'by hand: 30000 × 60/(2 × 205000 × 490.873852)',
  },
  {
    given: { force: '5000 lbf', pillars: 2, pillarDia: '0.75 in', length: '2.25 in', metal: '1018' },
    expect: '0.00042822818 in',
    within: 1e-7,
    from: 'by hand: 5000 × 2.25/(2 × 29.732736e6 × 0.441786467)',
  },
  {
    given: { force: '0 N', pillars: 2, pillarDia: '25 mm', length: '60 mm', metal: 'P20' },
    expect: '0 mm',
    from: 'no force, no shortening',
    limit: true,
  },
]);
