import { derived, list, procedure } from '../../core/define';

export const springParallel = procedure({
  name: 'SPRING.PARALLEL',
  summary: 'Rate of springs side by side.',
  inputs: [list('rates', 'k', 'stiffness', { above: '0 N/mm', says: 'Rates of the springs, a range' })],
  gives: 'stiffness',
  method: 'All deflect alike and their forces add: the rates are summed.',
  steps: { k: { gives: 'stiffness', says: 'Combined rate', equation: 'k = Σ k_i' } },
  run: ({ rates }, show) => {
    const k = rates.reduce((sum, rate) => sum + rate, 0);
    show('k', k);
    return k;
  },
  native: ({ rates }) => `SUMPRODUCT(${rates.text})`,
  sources: [derived('Equal deflection, summed force')],
  notes: [
    'Place equal springs evenly about the center of the insert: unequal ones tilt it and it binds in its seat.',
  ],
  cautions: [
    { says: 'Several springs together can throw an insert hard: hold or block it before reaching in.' },
  ],
  related: ['SPRING.SERIES', 'SEAT.PUSHOUT'],
});
