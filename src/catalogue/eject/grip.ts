import { derived, formula, input, secondHand } from '../../core/define';
import { wall } from './inputs';

export const ejectGrip = formula({
  name: 'EJECT.GRIP',
  summary: 'Pressure of a part that has shrunk onto a round core.',
  inputs: [
    input('modulus', 'E', 'pressure', {
      above: '0 MPa',
      usual: ['20 MPa', '10 GPa'],
      says: 'Modulus of the resin at ejection temperature, not the one at room temperature',
    }),
    input('strain', 'epsilon', 'ratio', {
      min: 0,
      max: 0.2,
      usual: [0.0005, 0.04],
      says: 'Strain that the core holds back, as from EJECT.STRAIN',
    }),
    wall,
    input('radius', 'r', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '250 mm'],
      says: 'Radius of the core',
    }),
    input('poisson', 'nu', 'ratio', {
      usual: [0, 0.45],
      min: 0,
      max: 0.5,
      default: 0,
      says: 'Poisson’s ratio of the resin for a part with a closed end; 0 for an open tube',
    }),
  ],
  steps: {
    sigma: {
      gives: 'pressure',
      expr: 'E*epsilon/(1 - nu/2)',
      says: 'Hoop stress in the wall; a closed end pulls along the core and so adds to it',
    },
    p: { gives: 'pressure', expr: 'sigma*t/r', says: 'Pressure on the core: balance of the thin ring' },
  },
  result: 'p',
  valid: [
    {
      holds: 't <= 0.2*r',
      says: 'The wall is thicker than a fifth of the core’s radius: it is no thin ring, and the grip comes out too high.',
    },
  ],
  sources: [
    derived('Thin cylinder held at its inner radius: ε E = p r/t, with a closed end p r (1 − ν/2)/t'),
    secondHand(
      'Rosato’s injection molding handbook, ejection force, as quoted at eng-tips.com thread 203149: the same closed-end form',
    ),
  ],
  notes: [
    'The modulus is the one at ejection temperature. The room-temperature value of a data sheet makes the grip several times too high; a part ejected hot grips little and bends easily. RESIN.VALUE gives it as "eject modulus".',
    'Packing lowers the strain, waiting on the core raises it: eject as soon as the part is stiff enough.',
  ],
  related: ['EJECT.STRAIN', 'EJECT.FORCE', 'RESIN.VALUE'],
});
