import { constantSI } from '../../core/constants';
import { constant, derived, fromMemory, input, procedure } from '../../core/define';
import { refuse } from '../../core/refusal';
import { solveBracketed } from '../../core/solve';

/** Second moment of area of a round section. */
const momentOf = (diameter: number): number => (Math.PI * diameter ** 4) / 64;

const E_h = constant('pressure', '207 GPa', 'Young’s modulus of a hardened pin');
const sigma_e = constant(
  'pressure',
  '700 MPa',
  'Stress at buckling up to which a hardened pin is elastic: half of a yield of 1400 MPa',
);
const ELASTIC = constantSI(sigma_e) / constantSI(E_h);

export const pinStepBuckle = procedure({
  name: 'PIN.STEPBUCKLE',
  summary: 'Load at which a stepped ejector pin buckles, both ends pivoting.',
  inputs: [
    input('shankDia', 'd_1', 'length', {
      above: '0 mm',
      usual: ['0.8 mm', '32 mm'],
      says: 'Diameter of the shank',
    }),
    input('shankLength', 'L_1', 'length', {
      above: '0 mm',
      usual: ['1 mm', '500 mm'],
      says: 'Length of the shank that stands without a guide',
    }),
    input('tipDia', 'd_2', 'length', {
      above: '0 mm',
      usual: ['0.3 mm', '25 mm'],
      says: 'Diameter of the tip',
    }),
    input('tipLength', 'L_2', 'length', {
      above: '0 mm',
      usual: ['1 mm', '300 mm'],
      says: 'Length of the tip that stands without a guide',
    }),
    input('modulus', 'E', 'pressure', {
      above: '0 MPa',
      default: E_h.is,
      usual: ['60 GPa', '650 GPa'],
      says: 'Young’s modulus of the pin',
    }),
  ],
  gives: 'force',
  method:
    'The least load at which both parts, bent as sine waves from their ends, meet in one tangent at the step; found between 0 and the load that would buckle the weaker part held at the step, by the ITP method.',
  constants: { E_h, sigma_e },
  steps: {
    P_1: {
      gives: 'force',
      says: 'Load that would buckle the shank alone',
      equation: 'P_1 = pi^3*E*d_1^4/(64*L_1^2)',
    },
    P_2: {
      gives: 'force',
      says: 'Load that would buckle the tip alone',
      equation: 'P_2 = pi^3*E*d_2^4/(64*L_2^2)',
    },
    P: {
      gives: 'force',
      says: 'Load at which the whole pin buckles, k being √(P/(E I)) of each part',
      equation: 'tan(k_1 L_1)/k_1 + tan(k_2 L_2)/k_2 = 0',
    },
    sigma: {
      gives: 'pressure',
      says: 'Stress in the thinner part at that load',
      equation: 'sigma = 4*P/(pi*min(d_1, d_2)^2)',
    },
  },
  run: ({ shankDia, shankLength, tipDia, tipLength, modulus }, show) => {
    const parts = [
      { rigidity: modulus * momentOf(shankDia), length: shankLength },
      { rigidity: modulus * momentOf(tipDia), length: tipLength },
    ] as const;
    const alone = parts.map(({ rigidity, length }) => (Math.PI ** 2 * rigidity) / length ** 2);
    const whole = shankLength + tipLength;
    // In the first mode no part has a node between its ends, so below the weaker part’s own load there is one root and
    // the form without tangents has no pole. As the product with both sines it has a zero too many at the end itself.
    const least = Math.min(...parts.map(({ rigidity }) => (Math.PI ** 2 * rigidity) / whole ** 2));
    const most = Math.min(...alone) * (1 - 1e-12);
    if (!(least > 0 && Number.isFinite(Math.max(...alone))))
      refuse('shankDia', 'leaves no finite load with these sizes');
    const P = solveBracketed((load) => meeting(parts, load), least / 2, most);
    const stress = (4 * P) / (Math.PI * Math.min(shankDia, tipDia) ** 2);
    show('P_1', alone[0] as number);
    show('P_2', alone[1] as number);
    show('P', P);
    show('sigma', stress);
    return P;
  },
  valid: [
    {
      holds: ({ shankDia, tipDia, modulus }, P) =>
        (4 * (P as number)) / (Math.PI * Math.min(shankDia, tipDia) ** 2) <= ELASTIC * modulus,
      says: 'The pin is stout: at this load the thinner part is stressed above half the yield of a hardened pin, and gives way before. Take PIN.BUCKLE of the thinner part as its bound.',
    },
  ],
  sources: [
    derived('Euler’s column of two parts, both ends pivoting: deflection and slope are one at the step'),
    fromMemory('Timoshenko and Gere, Theory of Elastic Stability: bars of two cross-sections'),
  ],
  notes: [
    'Equal diameters give Euler’s load of the whole length. To take a stepped pin as its thin tip alone is unsafe by a sixth to a third: the shank leans with it.',
    'The ends pivot. A held head bears more, but no pin is straight and none is pushed square: keep the force to a half or a third of it (common practice). For a margin divide this load by yours.',
  ],
  cautions: [
    {
      says: 'Elastic only: the load that crushes the thinner part, yield times its section, bounds it. See PIN.BUCKLE.',
    },
    {
      says: 'A pin that buckles jams or snaps: stay well below, keep the guard shut, and never push a stuck ejector harder.',
    },
  ],
  related: ['PIN.BUCKLE', 'PIN.SIDE', 'EJECT.PINCOUNT'],
});

interface Part {
  readonly rigidity: number;
  readonly length: number;
}

/** Of both tangents at the step, times both sines: zero where they are one. */
function meeting([shank, tip]: readonly [Part, Part], load: number): number {
  const [k1, k2] = [Math.sqrt(load / shank.rigidity), Math.sqrt(load / tip.rigidity)];
  const [a, b] = [k1 * shank.length, k2 * tip.length];
  return (Math.sin(a) * Math.cos(b)) / k1 + (Math.cos(a) * Math.sin(b)) / k2;
}
