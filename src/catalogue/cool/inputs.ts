import { choice, input, type NativeInput, type NativeWriter, fromMemory } from '../../core/define';
import { coolingTerms, fourierAt, SHORTEST, type CoolingPlace, type CoolingShape } from '../../core/cooling';
import { refuse } from '../../core/refusal';
import { resinWith, type ResinNumber } from '../resins';

export const resin = resinWith(
  'resin',
  'a',
  'diffusivity',
  { above: '0 mm²/s' },
  'Resin, or its effective thermal diffusivity',
);

const hot = { above: '-273.15 °C' } as const;
export const meltTemp = input('meltTemp', 'T_m', 'temperature', {
  ...hot,
  usual: ['100 °C', '420 °C'],
  says: 'Melt temperature',
});
export const moldTemp = input('moldTemp', 'T_w', 'temperature', {
  ...hot,
  usual: ['5 °C', '200 °C'],
  says: 'Temperature of the cavity wall',
});
export const ejectTemp = input('ejectTemp', 'T_e', 'temperature', {
  ...hot,
  usual: ['20 °C', '250 °C'],
  says: 'Temperature at which the part can be pushed off',
});
export const at = choice('at', ['center', 'average'], {
  default: 'center',
  says: 'Where the ejection temperature is reached: at the center, or on average',
});

interface Temperatures {
  readonly meltTemp: number;
  readonly moldTemp: number;
  readonly ejectTemp: number;
}

/** What is left at ejection of the difference between melt and wall; refuses temperatures in the wrong order. */
function ratioLeft({ meltTemp: melt, moldTemp: wall, ejectTemp: eject }: Temperatures): number {
  if (melt <= wall) refuse('meltTemp', 'must be above {moldTemp}');
  if (eject <= wall) refuse('ejectTemp', 'must be above {moldTemp}: the part never gets that cold');
  if (eject >= melt) refuse('ejectTemp', 'must be below {meltTemp}');
  return (eject - wall) / (melt - wall);
}

interface Cooling extends Temperatures {
  readonly resin: ResinNumber;
  readonly at: CoolingPlace;
}

/** Time for a plate of this thickness, or a bar of this diameter, with its shown steps. */
export function coolingTime(
  shape: CoolingShape,
  size: number,
  x: Cooling,
  show: (step: keyof typeof coolingSteps, value: number) => void,
): number {
  const left = ratioLeft(x);
  const fourier = fourierAt(shape, x.at, left);
  show('Y', left);
  show('Fo', fourier);
  return (fourier * size ** 2) / x.resin.value;
}

interface NativeCooling extends Readonly<Record<keyof Temperatures | 'resin', NativeInput>> {
  readonly at: NativeInput<CoolingPlace>;
}

/** Steps that leave less than 1e-12 at every ratio of practice; where they do not, the text refuses. */
const STEPS = 8;

/**
 * The cooling time as worksheet text: Newton's steps on the logarithm of the same series, cut where its terms fall below
 * double precision. From a first guess on the convex side they approach the answer without passing it.
 */
export function nativeCoolingTime(
  shape: CoolingShape,
  { meltTemp: melt, moldTemp: wall, ejectTemp: eject, resin: diffusivity, at: where }: NativeCooling,
  size: string,
  write: NativeWriter,
): string {
  const place = where.fixed();
  write.refuse(`${melt.text}<=${wall.text}`, 'meltTemp must be above moldTemp');
  write.refuse(`${eject.text}<=${wall.text}`, 'ejectTemp must be above moldTemp');
  write.refuse(`${eject.text}>=${melt.text}`, 'ejectTemp must be below meltTemp');
  const left = write.step('Y', `(${eject.text}-${wall.text})/(${melt.text}-${wall.text})`);
  const terms = coolingTerms(shape, place);
  const column = write.columns(`Cooling series, ${shape}, ${place}`, ['rate', 'share'], terms);
  const [slowest, share] = terms[0] ?? [1, 1];
  const once = `LN(${share}/${left})/${slowest}`;
  // On average one term, and the half-space of the first moment, both come too early; at the center one term comes late.
  const soon = `PI()*((1-${left})/4)^2${shape === 'round' ? '/4' : ''}`;
  let fourier = write.step('Fo', place === 'average' ? `MAX(${once},${soon})` : once);
  let before = fourier;
  for (let n = 0; n < STEPS; n++) {
    const fall = `EXP(-${column(0)}*${fourier})`;
    const sum = write.step('S', `SUMPRODUCT(${column(1)}*${fall})`);
    before = fourier;
    fourier = write.step(
      'Fo',
      `${fourier}+LN(${sum}/${left})*${sum}/SUMPRODUCT(${column(0)}*${column(1)}*${fall})`,
    );
  }
  write.refuse(
    `ABS(${fourier}-${before})>1E-10*${fourier}`,
    'ejectTemp so near to meltTemp needs the add-in',
  );
  const isHalfSpace = shape === 'plate' && place === 'average';
  if (isHalfSpace) fourier = `IF(${soon}<${SHORTEST},${soon},${fourier})`;
  else write.refuse(`${fourier}<${SHORTEST}`, 'ejectTemp so near to meltTemp needs the add-in');
  return `${fourier}*${size}^2/${diffusivity.bound('a')}`;
}

export const coolingSteps = {
  Y: {
    gives: 'ratio',
    says: 'Part of the temperature difference that is left at ejection',
    equation: '(T_e - T_w)/(T_m - T_w)',
  },
  Fo: { gives: 'ratio', says: 'Fourier number at which the series gives it', equation: 'a*t/s^2' },
} as const;

export const CARSLAW = fromMemory(
  'H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids: the full Fourier series of a slab and of a cylinder',
);

export const COOLING_NOTES = [
  'The wall is taken to stay at its temperature. An uncooled mold does not: see COOL.MOLDTEMP and COOL.CYCLE, which decide the cycle more often than the wall does.',
  'Give the effective diffusivity: the quotient of conductivity, density and specific heat is off by half to one and a half times.',
] as const;

export const HOT_PART =
  'The center is still soft and hot at ejection: gloves, and let thick parts cool where they cannot burn anyone.';
