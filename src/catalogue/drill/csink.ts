import { derived, formula, input } from '../../core/define';

export const drillCsink = formula({
  name: 'DRILL.CSINK',
  summary: 'Depth of a countersink from its diameter at the face.',
  inputs: [
    input('sinkDia', 'D', 'length', {
      above: '0 mm',
      usual: ['1 mm', '60 mm'],
      says: 'Diameter of the countersink at the face',
    }),
    input('holeDia', 'd', 'length', {
      min: '0 mm',
      usual: ['0.5 mm', '50 mm'],
      says: 'Diameter of the hole; 0 for the depth to the tip of the cone',
    }),
    input('angle', 'theta', 'angle', {
      above: '0 deg',
      below: '180 deg',
      default: '82 deg',
      usual: ['60 deg', '120 deg'],
      says: 'Included angle: 82 for inch flat heads, 90 for metric ones',
    }),
  ],
  steps: {
    z: {
      gives: 'length',
      expr: '(D - d)/(2*tan(theta/2))',
      says: 'Depth from the face to where the cone meets the hole',
    },
  },
  result: 'z',
  refuse: [{ when: 'D < d', argument: 'sinkDia', says: 'must be at least {holeDia}' }],
  sources: [
    derived(
      'Frustum of the cone between its diameter at the face and the hole: half the difference over tan of half the angle',
    ),
  ],
  notes: [
    'For a flat head take the head’s largest diameter, SCREW.HEAD with "countersunk", and a little more, so that it lies below the face.',
    'A tool that is set to touch the edge of the hole goes down by this depth.',
  ],
  related: ['SCREW.HEAD', 'DRILL.POINT', 'SCREW.CLEARANCE'],
});
