import { derived, formula, input } from '../../core/define';
import { cutterDia } from './inputs';

export const cutReach = formula({
  name: 'CUT.REACH',
  summary: 'Height above the tip from which a wider neck or shank clears a drafted wall, or "clears".',
  inputs: [
    input('neckDia', 'd_n', 'length', {
      above: '0 mm',
      usual: ['0.15 mm', '50 mm'],
      says: 'Diameter of the neck, shank or holder behind the cutter',
    }),
    cutterDia,
    input('draft', 'alpha', 'angle', {
      min: '0 deg',
      below: '90 deg',
      usual: ['0 deg', '30 deg'],
      says: 'Draft of the wall per side, from the vertical',
    }),
  ],
  refuse: [
    {
      when: 'd_n > D and alpha <= 0',
      argument: 'draft',
      says: 'must be more than that: beside a straight wall a part wider than the cutter never clears',
    },
  ],
  inWords: { when: 'd_n <= D', says: 'clears' },
  steps: {
    z: {
      gives: 'length',
      expr: '(d_n - D)/(2*tan(alpha))',
      says: 'Height at which the wall has leaned back by as much as the neck is wider',
    },
  },
  result: 'z',
  sources: [derived('Profile of the cutter against a straight wall that its lower corner touches')],
  notes: [
    'The neck must begin at least this far above the tip to reach the bottom of the wall: the flutes and a relieved neck below it must be this long.',
    'For a sharp corner. A ball or a corner radius touches the wall higher up: add the radius, which is always enough.',
    'It is the bare touch: leave room for deflection and runout.',
  ],
  related: ['CUT.BEND', 'CUT.WALLSTEP'],
});
