import { derived, list, procedure } from '../../core/define';

export const springSeries = procedure({
  name: 'SPRING.SERIES',
  summary: 'Rate of springs end on end.',
  inputs: [list('rates', 'k', 'stiffness', { above: '0 N/mm', says: 'Rates of the springs, a range' })],
  gives: 'stiffness',
  method: 'All carry the same force and their deflections add: the reciprocals of the rates are summed.',
  steps: { k: { gives: 'stiffness', says: 'Combined rate', equation: 'k = 1/Σ(1/k_i)' } },
  run: ({ rates }, show) => {
    const k = 1 / rates.reduce((sum, rate) => sum + 1 / rate, 0);
    show('k', k);
    return k;
  },
  // Blank cells count as 0, and are no springs.
  native: ({ rates: { text } }) => `1/SUMPRODUCT((${text}<>0)/(${text}+(${text}=0)))`,
  sources: [derived('Equal force, summed deflection')],
  notes: ['Also for one spring on a soft seat: the seat is a spring in series. The softest decides.'],
  cautions: [
    {
      says: 'The softest spring may be solid before the stroke is done; from there on the rate is that of the others.',
    },
  ],
  related: ['SPRING.PARALLEL', 'SPRING.RATE'],
});
