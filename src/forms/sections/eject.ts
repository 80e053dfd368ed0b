import { holds, spare, calls, worked, type Section } from './section';

export const eject: Section = {
  id: 'eject',
  title: 'Ejection with pins',
  decide: 'how many pins of which size take the part off without marking it.',
  danger:
    'Pins and plates close fast: keep hands out while anything can move, and lock the press out before reaching in.',
  inputs: {
    resin: { first: 'PP' },
    partModulus: { first: '0.8 GPa', label: 'Modulus of the resin when pushed' },
    expansion: { first: '0.00012 1/K', label: 'Expansion of the resin' },
    solidifyTemp: { first: '120 °C', label: 'Temperature at which it set' },
    ejectTemp: { first: '60 °C', label: 'Temperature when pushed' },
    wall: { first: '1.5 mm', label: 'Wall of the part' },
    coreRadius: { first: '10 mm', label: 'Radius of the core' },
    contactArea: { first: '900 mm²', label: 'Part on the core' },
    coreDraft: { first: '1 deg', label: 'Draft of the core per side' },
    ejectFriction: { first: 0.4, label: 'Friction of part on core' },
    coreArea: { first: '314 mm²', label: 'Closed end of the core' },
    ejectMargin: { first: 1.5, label: 'Margin on the force', like: ['EJECT.TOTAL', 'margin'] },
    pinDia: { first: '4 mm', label: 'Pin diameter' },
    pins: {
      first: 6,
      label: 'Pins',
      note: 'As many as there is room for.',
      like: ['EJECT.PINPRESSURE', 'pins'],
    },
    unguidedLength: { first: '60 mm', label: 'Unguided length' },
    bucklingReserve: {
      first: 3,
      label: 'Margin against buckling',
      note: 'Pins are never evenly loaded.',
      like: ['EJECT.TOTAL', 'margin'],
    },
    allowPressure: { first: '20 MPa', label: 'Pressure the warm part bears' },
    allowShear: { first: '12 MPa', label: 'Shear the warm wall bears' },
    radialGap: { first: '0.008 mm', label: 'Gap around a pin' },
  },
  parts: [
    calls(
      'EJECT.STRAIN',
      'shrinkStrain',
      'Strain of the part on the core',
      'How much it would shrink if the core were not there.',
    ),
    calls('EJECT.GRIP', 'grip', 'Grip of the part', 'Pressure of the shrunk part on the core.', {
      modulus: 'partModulus',
      strain: 'shrinkStrain',
      radius: 'coreRadius',
    }),
    calls('EJECT.FORCE', 'stripForce', 'Force that strips the part', 'Of the part alone.', {
      draft: 'coreDraft',
      friction: 'ejectFriction',
    }),
    calls(
      'EJECT.VACUUM',
      'vacuumForce',
      'Force of the vacuum',
      'A closed core draws one; a vent in it takes this away.',
    ),
    worked(
      'ejectForce',
      'Force to plan for',
      'Both together with the margin.',
      'eject_margin*(strip_force + vacuum_force)',
      'force',
    ),
    calls('EJECT.PINCOUNT', 'pinCount', 'Pins needed', 'For pressure under them and shear beside them.', {
      force: 'ejectForce',
    }),
    spare('Pins', 'pins/pin_count', 'If it does not hold: more or larger pins, or they push through.'),
    calls('PIN.BUCKLE', 'pinLoad', 'Load at which a pin buckles', 'The lower of Euler and Johnson.'),
    worked('perPin', 'Load on a pin', 'The force to plan for, shared.', 'eject_force/pins', 'force'),
    spare(
      'Pins in buckling',
      'pin_load/(buckling_reserve*per_pin)',
      'If it does not hold: guide them longer, or step them.',
    ),
    calls('PIN.FLASH', 'pinFlash', 'Gap to spare before the melt flashes', 'Negative: it will.'),
    holds('Pins without flash', 'pin_flash >= 0', 'If it does not hold: a closer fit around the pin.'),
  ],
};
