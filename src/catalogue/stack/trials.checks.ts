import { checks } from '../../core/checks';
import { stackTrials } from './trials';

export default checks(stackTrials, [
  {
    given: { tolerances: ['0.1 mm'], shape: 'uniform', trials: 40_000, seed: 7 },
    expect: ['0 mm', '0.0577350269 mm', '-0.09973 mm', '0 mm', '0.09973 mm'],
    within: 0.01,
    from: 'one even spread ± t: sigma t/√3, percentiles t (2 p − 1)',
  },
  {
    given: {
      tolerances: ['0.002 in', '0.002 in'],
      sensitivities: [1, -1],
      shape: 'uniform',
      trials: 40_000,
      seed: 3,
    },
    expect: ['0 in', '0.00163299316 in', '-0.0037921539 in', '0 in', '0.0037921539 in'],
    within: 0.02,
    from: 'two even spreads make a triangle ± 2 t: sigma 2 t/√6, percentiles 2 t (√(2 p) − 1)',
  },
  {
    given: { tolerances: ['0.03 mm', '0.04 mm'], trials: 40_000 },
    expect: ['0 mm', '0.0166666667 mm', '-0.05 mm', '0 mm', '0.05 mm'],
    within: 0.05,
    from: 'normal contributors: root-sum-square 0.05 is three sigma of the stack',
  },
  {
    given: { tolerances: ['0 mm', '0 mm'] },
    expect: ['0 mm', '0 mm', '0 mm', '0 mm', '0 mm'],
    from: 'without tolerances every trial is nominal',
    limit: true,
  },
]);
