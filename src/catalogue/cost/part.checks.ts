import { checks } from '../../core/checks';
import { costPart } from './part';

export default checks(costPart, [
  {
    given: {
      moldCost: 900,
      quantity: 300,
      cycle: '100 s',
      hourRate: 40,
      cavities: 2,
      shotMass: '15 g',
      priceByMass: '3.2 /kg',
      scrap: 0.03,
    },
    expect: 3.59747995418,
    within: 1e-11,
    from: 'by hand: 900/300 + (100 × 40/3600 + 0.015 × 3.2)/2/0.97',
  },
  {
    given: {
      moldCost: 1200,
      quantity: 400,
      cycle: '80 s',
      hourRate: 50,
      cavities: 1,
      shotMass: '0.5 oz',
      priceByMass: '1.8 /lb',
    },
    expect: 4.16736111111,
    within: 1e-11,
    from: 'by hand: 3 + 80 × 50/3600 + 0.5/16 × 1.8',
  },
  {
    given: {
      moldCost: 1200,
      quantity: 400,
      cycle: '0 s',
      hourRate: 50,
      cavities: 1,
      shotMass: '0 g',
      priceByMass: '1.8 /kg',
    },
    expect: 3,
    within: 1e-12,
    from: 'without press time and resin the mold alone is shared',
    limit: true,
  },
]);
