import { choice, derived, input, procedure } from '../../core/define';
import { STORED_ENERGY } from './inputs';

export const springDiscStack = procedure({
  name: 'SPRING.DISCSTACK',
  summary: 'Force or deflection of a stack of equal disc springs.',
  inputs: [
    input('discForce', 'F', 'force', {
      min: '0 N',
      usual: ['1 N', '100 kN'],
      says: 'Force of one disc, from SPRING.DISCFORCE',
    }),
    input('discDeflection', 's', 'length', {
      min: '0 mm',
      usual: ['0 mm', '10 mm'],
      says: 'Deflection of one disc at that force',
    }),
    input('parallel', 'n', 'count', {
      min: 1,
      usual: [1, 4],
      says: 'Discs nested the same way round in one packet',
    }),
    input('series', 'i', 'count', {
      min: 1,
      usual: [1, 30],
      says: 'Packets placed tip to tip',
    }),
    choice('what', ['force', 'deflection'], { says: 'Result wanted' }),
  ],
  gives: { by: 'what', kinds: { force: 'force', deflection: 'length' } },
  method: 'Nested discs add their forces, packets tip to tip add their deflections; friction is left out.',
  steps: {
    F_n: { gives: 'force', says: 'Nested discs add their forces', equation: 'F_n = n*F' },
    s_i: { gives: 'length', says: 'Packets add their deflections', equation: 's_i = i*s' },
  },
  run: ({ discForce, discDeflection, parallel, series, what }, show) => {
    const force = parallel * discForce;
    const deflection = series * discDeflection;
    show('F_n', force);
    show('s_i', deflection);
    return what === 'force' ? force : deflection;
  },
  native: ({ discForce, discDeflection, parallel, series, what }) =>
    what.fixed() === 'force' ? `${parallel.text}*${discForce.text}` : `${series.text}*${discDeflection.text}`,
  valid: [
    {
      holds: ({ parallel }) => parallel <= 3,
      says: 'More than three discs are nested: friction between them makes loading and unloading differ much.',
    },
  ],
  sources: [derived('Equal deflection within a packet, equal force from packet to packet')],
  notes: [
    'Friction adds 2 to 3 % to the force for each nested pair on loading, and takes as much on the way back.',
    'Guide a stack on a hardened rod or in a bore; a tall one of single discs shifts sideways.',
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.DISCFORCE', 'SPRING.DISCSTRESS'],
});
