import { input } from '../../core/define';

/** What the functions of ejection share. */

export const wall = input('wall', 't', 'length', {
  above: '0 mm',
  usual: ['0.2 mm', '12 mm'],
  says: 'Wall thickness of the part',
});
export const ejectionForce = input('force', 'F', 'force', {
  min: '0 N',
  usual: ['1 N', '50 kN'],
  says: 'Ejection force that the pins pass on',
});
export const pins = input('pins', 'n', 'count', {
  min: 1,
  usual: [1, 60],
  says: 'Number of pins that share it',
});
export const pinDia = input('pinDia', 'd', 'length', {
  above: '0 mm',
  usual: ['0.5 mm', '32 mm'],
  says: 'Diameter of a pin where it meets the part',
});

export const ALLOWED =
  'Allow about 0.3 to 0.5 of the yield stress of the resin at ejection temperature, which is far below the value at room temperature (common practice).';
