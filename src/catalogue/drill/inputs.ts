import { input, type Step } from '../../core/define';

/** What the functions of drills and drilled holes share. */

export const pointAngle = input('pointAngle', 'theta', 'angle', {
  above: '0 deg',
  max: '180 deg',
  default: '118 deg',
  usual: ['60 deg', '180 deg'],
  says: 'Included angle of the drill’s point: 118 or 135, 180 for a flat one',
});

/** The cone of a drill of diameter `d_p`. */
export const drillPoint = {
  h: { gives: 'length', expr: 'd_p/(2*tan(theta/2))', says: 'Length of the drill’s point' },
} as const satisfies Record<string, Step>;
