import { holds, spare, calls, type Section } from './section';

export const press: Section = {
  id: 'press',
  title: 'Press fit-up',
  decide: 'whether this press fills, holds shut and opens far enough for the part.',
  danger:
    'Compressed air, hot melt and a closing clamp can crush and burn: guards in place, follow the manual of the machine, bleed the air before reaching in.',
  inputs: {
    resin: { first: 'PP' },
    airPressure: { first: '0.65 MPa', label: 'Air pressure at the press' },
    airBore: { first: '125 mm', label: 'Air cylinder bore' },
    rodDia: { first: '25 mm', label: 'Rod of the air cylinder' },
    plungerDia: { first: '16 mm', label: 'Plunger diameter' },
    efficiency: { first: 0.85, label: 'Efficiency of the press' },
    stroke: { first: '120 mm', label: 'Plunger stroke' },
    solidVolume: { first: '8 cm³', label: 'Part and runner' },
    projectedArea: { first: '600 mm²', label: 'Projected area' },
    clampForce: { first: '30 kN', label: 'Clamp force of the press' },
    opening: { first: '240 mm', label: 'Largest opening of the press' },
    stackHeight: { first: '150 mm', label: 'Height of the closed mold' },
    partDepth: { first: '20 mm', label: 'Depth of the part' },
    lift: { first: '5 mm', label: 'Lift of pins or insert', note: 'It takes room beside the part.' },
    hand: { first: '25 mm', label: 'Room for hand or tool' },
  },
  parts: [
    calls(
      'PRESS.INJECTION',
      'meltPressure',
      'Melt pressure the press can make',
      'Air pressure times the ratio of the areas, less drag.',
      { efficiency: 'efficiency' },
    ),
    calls(
      'CLAMP.PRESSURE',
      'cavityPressure',
      'Cavity pressure to design for',
      'The lower of what the resin usually gets and what the press makes.',
      {
        availablePressure: 'meltPressure',
      },
    ),
    calls(
      'CLAMP.SPARE',
      'clampSpare',
      'Clamp force over opening force',
      'The opening force is pressure on the projected area.',
    ),
    spare('Clamp', 'clamp_spare', 'If it does not hold: the mold opens under pressure and flashes.'),
    calls('PRESS.MELTVOLUME', 'meltVolume', 'Melt of the shot', 'Melt takes more room than the part.'),
    calls('PRESS.SHOT', 'shotVolume', 'Melt that the press gives', 'Usable part of the stroke.'),
    spare(
      'Shot',
      'shot_volume/melt_volume',
      'If it does not hold: a larger plunger, which makes less pressure.',
    ),
    calls('PRESS.DAYLIGHT', 'daylight', 'Room left to take the part out', 'Negative: it does not come out.', {
      lift: 'lift',
      hand: 'hand',
    }),
    holds('Daylight', 'daylight >= 0', 'If it does not hold: a lower mold or a press that opens farther.'),
    calls('PRESS.AIRUSE', 'airUse', 'Air for one cycle', 'Free air for one double stroke.'),
  ],
};
