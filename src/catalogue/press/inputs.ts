import { commonPractice, derived, input } from '../../core/define';

export const airPressure = input('airPressure', 'p_a', 'pressure', {
  min: '0 MPa',
  usual: ['0.1 MPa', '1.6 MPa'],
  says: 'Air pressure at the cylinder, as the gauge shows it',
});
export const airBore = input('airBore', 'D', 'length', {
  above: '0 mm',
  usual: ['15 mm', '400 mm'],
  says: 'Bore of the air cylinder',
});
export const plungerDia = input('plungerDia', 'd', 'length', {
  above: '0 mm',
  usual: ['5 mm', '80 mm'],
  says: 'Diameter of the injection plunger',
});
export const rodDia = input('rodDia', 'd_r', 'length', {
  min: '0 mm',
  usual: ['3 mm', '100 mm'],
  says: 'Diameter of the piston rod',
});
export const efficiency = input('efficiency', 'eta', 'ratio', {
  usual: [0.5, 1],
  above: 0,
  max: 1,
  default: 0.85,
  says: 'What the seals leave of the force',
});

export const rodFits = { when: 'd_r >= D', argument: 'rodDia', says: 'must be less than {airBore}' } as const;

export const AIR_FORCE = derived('Gauge pressure on the piston’s area');
export const SEAL_LOSS = commonPractice(
  'Seals leave 0.8 to 0.9 of an air cylinder’s force; a cold plunger less',
);

export const AIR_CAUTION =
  'Compressed air stores energy: shut it off, vent the cylinder and lock it out before reaching in. Stay within the ratings in the press maker’s manual.';
export const MELT_CAUTION =
  'Hot melt under pressure burns and can spurt from nozzle and parting line: guard, face shield and gloves, and nobody in line with the parting.';
export const CLAMP_CAUTION =
  'A clamp can crush, and one that yields under pressure lets hot melt out: stay within the press maker’s manual and keep guards shut.';
