import { checks } from '../../core/checks';
import { costBreakEven } from './breakEven';

export default checks(costBreakEven, [
  {
    given: { moldCostA: 500, partCostA: 3.2, moldCostB: 1800, partCostB: 1.4 },
    expect: 722.222222222,
    within: 1e-11,
    from: 'by hand: (1800 − 500)/(3.2 − 1.4)',
  },
  {
    given: { moldCostA: 500, partCostA: 1.4, moldCostB: 1800, partCostB: 3.2 },
    expect: 'never',
    from: 'cheaper mold and cheaper part: A wins at every quantity',
  },
  {
    given: { moldCostA: 500, partCostA: 3.2, moldCostB: 500, partCostB: 1.4 },
    expect: 0,
    from: 'molds of equal cost: the cheaper part wins from the first',
    limit: true,
  },
]);
