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
    'Place equal springs evenly about the centre of the insert: unequal ones tilt it and it binds in its seat.',
  ],
  cautions: [
    { says: 'Several springs together can throw an insert hard: hold or block it before reaching in.' },
  ],
  related: ['SPRING.SERIES', 'SEAT.PUSHOUT'],
  checks: [
    { given: { rates: ['4.5 N/mm', '4.5 N/mm'] }, expect: '9 N/mm', within: 1e-12, from: 'by hand: 2 × 4.5' },
    {
      given: { rates: ['12 lbf/in', '18 lbf/in'] },
      expect: '30 lbf/in',
      within: 1e-12,
      from: 'by hand: 12 + 18',
    },
    {
      given: { rates: ['8 N/mm'] },
      expect: '8 N/mm',
      within: 1e-12,
      from: 'one spring keeps its rate',
      limit: true,
    },
  ],
});
