import { derived, fromMemory, input, type Step } from '../../core/define';

export const rate = input('rate', 'k', 'stiffness', {
  above: '0 N/mm',
  usual: ['0.05 N/mm', '2000 N/mm'],
  says: 'Spring rate',
});
export const freeLength = input('freeLength', 'L_0', 'length', {
  above: '0 mm',
  usual: ['3 mm', '400 mm'],
  says: 'Free length of the spring',
});
export const pocketLength = input('pocketLength', 'L_p', 'length', {
  above: '0 mm',
  usual: ['2 mm', '400 mm'],
  says: 'Length of the pocket that the closed spring stands in',
});

export const wire = input('wire', 'd', 'length', {
  above: '0 mm',
  usual: ['0.1 mm', '16 mm'],
  says: 'Diameter of the wire',
});
export const meanDia = input('meanDia', 'D', 'length', {
  above: '0 mm',
  usual: ['1 mm', '160 mm'],
  says: 'Mean diameter of the coils: outside diameter less one wire',
});

export const force = input('force', 'F', 'force', {
  min: '0 N',
  usual: ['0.5 N', '20 kN'],
  says: 'Force on the spring',
});

/** Outer and inner diameter and strip of a disc or a wave spring. */
export const ring = [
  input('outsideDia', 'D_e', 'length', {
    above: '0 mm',
    usual: ['4 mm', '300 mm'],
    says: 'Outside diameter',
  }),
  input('insideDia', 'D_i', 'length', {
    above: '0 mm',
    usual: ['2 mm', '200 mm'],
    says: 'Inside diameter',
  }),
  input('thickness', 't', 'length', {
    above: '0 mm',
    usual: ['0.1 mm', '16 mm'],
    says: 'Thickness of the strip or disc',
  }),
] as const;

export const ringHasBreadth = {
  when: 'D_i >= D_e',
  argument: 'insideDia',
  says: 'must be less than {outsideDia}',
} as const;

export const springModulus = input('modulus', 'E', 'pressure', {
  above: '0 MPa',
  default: '206000 MPa',
  usual: ['60 GPa', '250 GPa'],
  says: 'Young’s modulus of the spring steel',
});

export const seating = input('seating', 'nu', 'ratio', {
  above: 0,
  default: 0.5,
  usual: [0.5, 2],
  says: 'How the ends are held: 0.5 both on flat parallel seats, 0.707 one of them pivoted, 1 both pivoted, 2 one end free',
});

export const seatingIsKnown = {
  holds: 'nu >= 0.5 and nu <= 2',
  says: 'Seating is between 0.5 (both ends flat on parallel seats) and 2 (one end free).',
} as const;

export const HOOKE = derived('Hooke’s law F = k x');
export const EN_BUCKLING = fromMemory(
  'EN 13906-1, buckling of compression springs; the same as Shigley’s Mechanical Engineering Design, equation 10-10',
);

/** The words for the rise of the stress at the inside of a coil. */
export const CURVATURE_FACTORS = ['bergstrasser', 'wahl', 'direct'] as const;
export const FACTOR_SAYS = 'Curvature factor: bergstrasser, wahl, or direct for direct shear alone';

export const springIndex = {
  C: { gives: 'ratio', expr: 'D/d', says: 'Spring index' },
} as const satisfies Record<string, Step>;

export const coilsClearWire = {
  when: 'D <= d',
  argument: 'meanDia',
  says: 'must be larger than {wire}',
} as const;

export const STORED_ENERGY =
  'A compressed spring stores energy: let it down under control, and keep it captive when the mold is taken apart.';
