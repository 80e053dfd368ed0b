import { besselJ, zeroOfJ0 } from './bessel';
import { solveBracketed } from './solve';

/**
 * Cooling of a plate or a round bar from one temperature by a wall that stays at another: what is left of the
 * temperature difference, as a function of the Fourier number. The full series of Fourier, so valid at every ratio;
 * Carslaw and Jaeger, Conduction of Heat in Solids (2nd ed.), 3.4 (slab) and 7.6 (cylinder).
 */
export type CoolingShape = 'plate' | 'round';
export type CoolingPlace = 'center' | 'average';

/** Terms beyond this exponent are below double precision. */
const LAST_EXPONENT = 40;
/** Below this Fourier number the average follows the short-time form to better than 1e-9, and the series is slow. */
export const SHORTEST = 1e-4;

/** Of the plate: (2n+1)π, with its share at the center and on average. Fourier number a·t/s², s the whole thickness. */
function* plateTerms(place: CoolingPlace): Generator<readonly [rate: number, share: number]> {
  for (let n = 0; ; n++) {
    const odd = 2 * n + 1;
    const share = place === 'center' ? (n % 2 === 0 ? 4 : -4) / Math.PI / odd : 8 / (Math.PI * odd) ** 2;
    yield [(odd * Math.PI) ** 2, share];
  }
}

/** Zeros of J0 with J1 there, worked out once. */
const zeros: { readonly beta: number; readonly j1: number }[] = [];
function zero(n: number): { readonly beta: number; readonly j1: number } {
  const known = zeros[n - 1];
  if (known) return known;
  const beta = zeroOfJ0(n);
  return (zeros[n - 1] = { beta, j1: besselJ(1, beta) });
}

/** Of the round bar: zeros β of J0. Fourier number a·t/D², so the rate is (2β)². */
function* roundTerms(place: CoolingPlace): Generator<readonly [rate: number, share: number]> {
  for (let n = 1; ; n++) {
    const { beta, j1 } = zero(n);
    yield [(2 * beta) ** 2, place === 'center' ? 2 / (beta * j1) : 4 / beta ** 2];
  }
}

/** Short times, where the wall’s cooling has not met itself: the half-space, with the curvature’s first terms for the bar. */
function shortAverage(shape: CoolingShape, fourier: number): number {
  if (shape === 'plate') return 1 - 4 * Math.sqrt(fourier / Math.PI);
  const fo = 4 * fourier;
  return 1 - 4 * Math.sqrt(fo / Math.PI) + fo + fo ** 1.5 / (3 * Math.sqrt(Math.PI));
}

/** What is left of the first temperature difference: 1 at once, 0 in the end. */
export function differenceLeft(shape: CoolingShape, place: CoolingPlace, fourier: number): number {
  if (fourier <= 0) return 1;
  if (fourier < SHORTEST) return place === 'center' ? 1 : shortAverage(shape, fourier);
  let sum = 0;
  for (const [rate, share] of shape === 'plate' ? plateTerms(place) : roundTerms(place)) {
    if (rate * fourier > LAST_EXPONENT) break;
    sum += share * Math.exp(-rate * fourier);
  }
  return sum;
}

/** The Fourier number at which `left` of the difference is left, between 0 and 1. */
export function fourierAt(shape: CoolingShape, place: CoolingPlace, left: number): number {
  const [slowest, share] = firstTerm(shape, place);
  // One term overestimates what is left from some time on; this bound lies beyond the answer at every ratio.
  const late = (Math.log(Math.max(1, Math.abs(share)) / left) + 1) / slowest;
  return solveBracketed((fourier) => differenceLeft(shape, place, fourier) - left, 0, late);
}

/** The series' first terms as rows of rate and share: enough from a Fourier number of `SHORTEST` on. */
export function coolingTerms(
  shape: CoolingShape,
  place: CoolingPlace,
): readonly (readonly [rate: number, share: number])[] {
  const rows: (readonly [number, number])[] = [];
  for (const [rate, share] of shape === 'plate' ? plateTerms(place) : roundTerms(place)) {
    if (rate * SHORTEST > LAST_EXPONENT) break;
    rows.push([rate, share]);
  }
  return rows;
}

function firstTerm(shape: CoolingShape, place: CoolingPlace): readonly [rate: number, share: number] {
  const first = (shape === 'plate' ? plateTerms(place) : roundTerms(place)).next();
  if (first.done) throw new Error('the series has no first term');
  return first.value;
}
