import { spare, calls, worked, type Section } from './section';

export const plate: Section = {
  id: 'plate',
  title: 'Plate and pillars',
  decide: 'how thick the plate behind the cavity must be, and what the pillars under it take.',
  danger:
    'Plates are heavy and overloaded ones spring: lift them by eyebolts that are screwed home, fingers out of the gap.',
  inputs: {
    cavityPressure: { first: '20 MPa', note: 'Pressure of the melt in the cavity, as the press makes it.' },
    plateMetal: { first: 'P20', label: 'Metal of the plates' },
    span: { first: '120 mm', label: 'Span between the rails' },
    plateWidth: { first: '130 mm', label: 'Width of the plate' },
    thickness: { first: '46 mm', label: 'Thickness under the cavity' },
    loadLength: { first: '30 mm', label: 'Loaded length along the span' },
    loadWidth: { first: '20 mm', label: 'Loaded width' },
    allowSag: { first: '0.01 mm', label: 'Sag allowed' },
    pillars: { first: 2, label: 'Number of pillars' },
    pillarDia: { first: '25 mm', label: 'Pillar diameter' },
    pillarLength: { first: '60 mm' },
    pillarMetal: { first: '4140', label: 'Metal of the pillars' },
  },
  parts: [
    calls('PLATE.SAG', 'plateSag', 'Sag without pillars', 'Opens the parting line by as much.', {
      width: 'plateWidth',
      pressure: 'cavityPressure',
      metal: 'plateMetal',
    }),
    calls('PLATE.THICKNESS', 'thicknessNeeded', 'Thickness for the sag allowed', 'Without pillars.', {
      width: 'plateWidth',
      pressure: 'cavityPressure',
      metal: 'plateMetal',
    }),
    spare(
      'Plate',
      'thickness/thickness_needed',
      'If it does not hold: a thicker plate, or pillars under the cavity.',
    ),
    worked(
      'plateForce',
      'Force of the melt on the plate',
      'Pressure on the cavity.',
      'MOLD.SEAT.PUSH(cavity_pressure,load_length*load_width,,units)',
      'force',
    ),
    calls(
      'PLATE.PILLAR',
      'pillarGive',
      'Shortening of the pillars',
      'Where they take it all; grind them longer by about this.',
      {
        force: 'plateForce',
        length: 'pillarLength',
        metal: 'pillarMetal',
      },
    ),
    spare('Pillars', 'allow_sag/pillar_give', 'If it does not hold: more or thicker pillars.'),
  ],
};
