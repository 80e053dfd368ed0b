import type { FamilyWords } from '../../core/familyWords';

export const screwWords: FamilyWords = {
  title: 'Screws',
  question: 'How tight, how strong, and what hole, head and counterbore?',
  also: 'bolt fastener cap screw socket head allen SHCS hex key machine screw',
  functions: {
    'SCREW.TORQUE':
      'tightening torque; torque spec; how tight; torque wrench setting; nut factor; inch pounds; lubricated',
    'SCREW.PRELOAD': 'clamp load of a bolt; bolt tension; clamping force from torque; stretch; tension',
    'SCREW.MAXTORQUE': 'maximum torque; over torque; before stripping; strip in aluminum; torque limit',
    'SCREW.CLASSLOAD': 'proof load; grade 8; class 12.9; 8.8; safe bolt load; bolt grade; preload of proof',
    'SCREW.BREAK':
      'breaking load; ultimate; tensile strength of a bolt; bolt snaps; how much can a bolt hold; hang weight; lifting',
    'SCREW.HEAD': 'head size; head diameter; head height; allen key size; hex key; wrench size; across flats',
    'SCREW.CLEARANCE':
      'clearance hole; through hole; free fit; close fit; body drill; bolt hole size; drill to pass a screw; loose fit',
    'SCREW.BORE':
      'counterbore; c-bore; cbore; spot face; recess for the head; sink the head; head below the surface',
  },
};
