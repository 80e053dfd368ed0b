import { checks } from '../../core/checks';
import { threadStrip } from './strip';

export default checks(threadStrip, [
  {
    given: { thread: 'M6', engagement: '6 mm', shearStrength: '1 MPa' },
    expect: '73.145 N',
    within: 1e-5,
    from: 'table of thread areas at one diameter engaged, 6H/6g (Bickford, Introduction to the Design and Behavior of Bolted Joints; engineersedge.com): 73.145 mm²',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M12', engagement: '12 mm', shearStrength: '1 MPa', which: 'external' },
    expect: '227.72 N',
    within: 1e-4,
    from: 'the same table: 227.72 mm² for the screw’s thread of M12',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', engagement: '1 in', shearStrength: '10 ksi' },
    expect: '5389.765 lbf',
    within: 1e-5,
    from: 'FED-STD-H28/2B formula 2a with the ASME B1.1 limits 0.2408 and 0.2224, by hand: π × 0.2408 × 20 × (0.025 + 0.0184/√3)',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', engagement: '1 in', shearStrength: '10 ksi', which: 'external' },
    expect: '3679.569 lbf',
    within: 1e-5,
    from: 'FED-STD-H28/2B formula 4a with the ASME B1.1 limits 0.207 and 0.2127, by hand: π × 0.207 × 20 × (0.025 + 0.0057/√3)',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M8', engagement: '1e-9 mm', shearStrength: '200 MPa' },
    expect: '0 N',
    within: 1e-4,
    from: 'nothing engaged holds nothing',
    limit: true,
  },
]);
