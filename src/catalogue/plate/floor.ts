import { derived, fromMemory, input, procedure, type NativeWriter } from '../../core/define';
import { plateMetal, pressure, PRESSED_PLATE } from './inputs';

/**
 * Sag in the middle of a rectangle that rests on all four sides, in units of p a⁴/D, by Lévy's single series in the
 * shorter side a. Its terms fall with the fifth power of m, so a few dozen give all digits.
 */
function levy(ratio: number): number {
  let sum = 0;
  for (let m = 1, sign = 1; m < 2000; m += 2, sign = -sign) {
    const alpha = (m * Math.PI * ratio) / 2;
    const term = (1 - (alpha * Math.tanh(alpha) + 2) / (2 * Math.cosh(alpha))) / m ** 5;
    sum += sign * term;
    if (term < Number.EPSILON * Math.abs(sum)) break;
  }
  return (4 * sum) / Math.PI ** 5;
}

/**
 * Bending moment in the middle across the shorter side a, in units of p a², from the curvatures of the same series. Its
 * terms fall with the third power of m.
 */
function levyMoment(ratio: number, poisson: number): number {
  let sum = 0;
  for (let m = 1, sign = 1; m < 20_000; m += 2, sign = -sign) {
    const alpha = (m * Math.PI * ratio) / 2;
    // Beyond, both parts that know the ratio are nothing beside 1, and their quotient could not be formed.
    const fall = alpha < 300 ? alpha * Math.tanh(alpha) : 0;
    const cosh = alpha < 300 ? Math.cosh(alpha) : Infinity;
    sum += (sign * (1 - (fall * (1 - poisson) + 2) / (2 * cosh))) / m ** 3;
  }
  return (4 * sum) / Math.PI ** 3;
}

/**
 * The same as worksheet text. The part of Lévy's terms that does not know the ratio sums to 5π⁵/1536; of the rest, by
 * falling exponentials, eight terms leave less than 1e-14.
 */
function nativeLevy(ratio: string, write: NativeWriter): string {
  const alpha = write.step('alpha', `PI()*${ratio}/2`);
  // Held above the smallest number that a worksheet knows: some refuse what falls below it.
  const fall = (m: number): string => `EXP(-MIN(${m}*${alpha},600))`;
  const terms = Array.from({ length: 8 }, (_, n) => {
    const m = 2 * n + 1;
    const twice = fall(2 * m);
    const sign = n % 2 === 0 ? '+' : '-';
    return `${sign}(${m}*${alpha}*(1-${twice})/(1+${twice})+2)*${fall(m)}/(1+${twice})/${m ** 5}`;
  });
  return `(5/384-4/PI()^5*(0${terms.join('')}))`;
}

export const plateFloor = procedure({
  name: 'PLATE.FLOOR',
  summary: 'Sag in the middle of a rectangular plate or insert floor that rests on all four sides.',
  inputs: [
    input('length', 'b', 'length', {
      above: '0 mm',
      usual: ['2 mm', '1 m'],
      says: 'One side of the rectangle between its supports',
    }),
    input('width', 'a', 'length', {
      above: '0 mm',
      usual: ['2 mm', '1 m'],
      says: 'The other side',
    }),
    input('thickness', 't', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '150 mm'],
      says: 'Thickness of the plate or floor',
    }),
    pressure,
    plateMetal,
  ],
  gives: 'length',
  method:
    'Lévy’s series for a thin plate under even pressure that rests on four sides, summed until its terms no longer count.',
  steps: {
    D: {
      gives: 'torque',
      says: 'Stiffness of the plate in bending, a moment for each unit of width and curvature',
      equation: 'D = E*t^3/(12*(1 - nu^2))',
    },
    k: { gives: 'ratio', says: 'Coefficient of the sides, by the series', equation: 'k = k(longer/shorter)' },
    z: { gives: 'length', says: 'Sag in the middle, a being the shorter side', equation: 'z = k*p*a^4/D' },
    k_M: {
      gives: 'ratio',
      says: 'Coefficient of the bending moment across the shorter side, by the same series',
      equation: 'k_M = M/(p a²)',
    },
    sigma: {
      gives: 'pressure',
      says: 'Highest bending stress, in the middle',
      equation: 'sigma = 6*k_M*p*a^2/t^2',
    },
  },
  run: ({ length, width, thickness, pressure: p, metal }, show) => {
    const shorter = Math.min(length, width);
    const D = (metal.modulus * thickness ** 3) / (12 * (1 - metal.poisson ** 2));
    const k = levy(Math.max(length, width) / shorter);
    const z = (k * p * shorter ** 4) / D;
    show('D', D);
    show('k', k);
    show('z', z);
    const moment = levyMoment(Math.max(length, width) / shorter, metal.poisson);
    show('k_M', moment);
    show('sigma', (6 * moment * p * shorter ** 2) / thickness ** 2);
    return z;
  },
  strength: [{ stress: 'sigma', of: 'metal' }],
  native: ({ length, width, thickness, pressure: p, metal }, write) => {
    const shorter = write.step('a', `MIN(${length.text},${width.text})`);
    const ratio = write.step('r', `MAX(${length.text},${width.text})/${shorter}`);
    const D = write.step('D', `${metal.bound('E')}*${thickness.text}^3/(12*(1-${metal.bound('nu')}^2))`);
    return `${nativeLevy(ratio, write)}*${p.text}*${shorter}^4/${D}`;
  },
  valid: [
    {
      holds: ({ length, width, thickness }) => Math.min(length, width) >= 8 * thickness,
      says: 'The plate is thicker than an eighth of its shorter side: shear, which is left out, adds to the sag.',
    },
    {
      holds: ({ thickness }, z) => (z as number) <= thickness / 4,
      says: 'The sag is large against the thickness: the equation is for small sags.',
    },
  ],
  sources: [
    derived('Kirchhoff plate, Lévy’s solution for four supported sides'),
    fromMemory('Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, table of the coefficients'),
  ],
  notes: [
    'A floor in one with stiff walls all round is held better and sags about a third as much; take this one for a careful answer.',
    'On two rails only, see PLATE.SAG.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.ROUND', 'PLATE.SAG', 'PLATE.THICKNESS'],
});
