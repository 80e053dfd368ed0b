import { spare, calls, type Section } from './section';

export const screw: Section = {
  id: 'screw',
  title: 'Screwed insert with counterbore',
  decide: 'the screw, how tight it is pulled, and the holes for it.',
  danger:
    'A screw that breaks or strips under load lets go at once: pull it tight with a torque wrench, never by feel.',
  inputs: {
    thread: { first: 'M6', label: 'Thread of the screw' },
    strengthClass: { first: '12.9' },
    preloadFraction: { first: 0.6, label: 'Part of the proof load' },
    k: { first: 0.2, label: 'Torque factor of the screw' },
    engagement: { first: '10 mm', label: 'Thread engaged' },
    screwStrength: { first: '1220 MPa', label: 'Tensile strength of the screw' },
    nutStrength: { first: '1000 MPa', label: 'Tensile strength of the tapped metal' },
  },
  parts: [
    calls('SCREW.CLASSLOAD', 'screwPreload', 'Preload', 'What one screw clamps with.', {
      fraction: 'preloadFraction',
    }),
    calls(
      'SCREW.TORQUE',
      'screwTorque',
      'Tightening torque',
      'Scatters by 30 % and more with the friction of the thread.',
      {
        preload: 'screwPreload',
        k: 'k',
      },
    ),
    calls(
      'SCREW.MAXTORQUE',
      'maxTorque',
      'Torque that screw and thread bear',
      'The lower of screw and tapped hole.',
      { k: 'k' },
    ),
    spare('Torque', 'max_torque/screw_torque', 'If it does not hold: more engagement, or less preload.'),
    calls(
      'THREAD.ENGAGE',
      'engageNeeded',
      'Engagement at which the screw breaks first',
      'Less, and the thread in the block goes first.',
    ),
    spare(
      'Engagement',
      'engagement/engage_needed',
      'If it does not hold: a longer screw, or a wire thread insert.',
    ),
    calls('TAP.DRILL', 'tapDrill', 'Tap drill diameter', 'For a cut thread.'),
    calls('SCREW.CLEARANCE', 'clearanceHole', 'Clearance hole', 'Normal fit.'),
    calls('SCREW.BORE', 'boreDia', 'Counterbore, diameter', 'For a socket head.', { what: '"dia"' }),
    calls('SCREW.BORE', 'boreDepth', 'Counterbore, depth', 'The head ends below the face.', {
      what: '"depth"',
    }),
  ],
};
