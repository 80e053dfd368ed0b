import { derived, formula, input } from '../../core/define';

const seconds = { min: '0 s', usual: ['0 s', '15 min'] } as const;

export const costCycle = formula({
  name: 'COST.CYCLE',
  summary: 'Time of one cycle: fill, hold and handling, and the longer of cooling and waiting for the mold.',
  inputs: [
    input('fill', 't_f', 'time', { ...seconds, says: 'Time to fill the cavity' }),
    input('hold', 't_h', 'time', { ...seconds, says: 'Time that pressure is held' }),
    input('cool', 't_c', 'time', { ...seconds, says: 'Cooling of the part after that' }),
    input('handling', 't_m', 'time', {
      ...seconds,
      says: 'Opening, taking the part out, cleaning, closing, clamping',
    }),
    input('moldWait', 't_w', 'time', {
      ...seconds,
      default: '0 s',
      says: 'Wait until the mold has given off the shot’s heat, or the barrel has melted the next shot',
    }),
  ],
  steps: {
    t: {
      gives: 'time',
      expr: 't_f + t_h + t_m + max(t_c, t_w)',
      says: 'Part and mold cool side by side, so the longer of the two counts',
    },
  },
  result: 't',
  sources: [derived('Sum of what follows in turn, the longest of what runs side by side')],
  notes: [
    'A mold without cooling circuits often has to wait longer than the part: COOL.CYCLE gives the shortest cycle that holds its temperature; ' +
      'what that leaves over after fill, hold and handling is the wait.',
  ],
  cautions: [
    { when: 't_w > t_c', says: 'The mold’s heat sets this cycle, not the part’s wall.' },
    {
      says: 'Do not save handling time on guards: hands stay out until the mold is open and the plunger is at rest.',
    },
  ],
  related: ['COOL.TIME', 'COOL.CYCLE', 'COST.PART'],
});
