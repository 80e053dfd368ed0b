/**
 * Where a rising function has a value, between two bounds: Newton's steps, halved wherever they would leave the
 * bracket. Ends when the bracket or the step is as small as a double can tell.
 */
export function inverse(
  rising: (x: number) => number,
  slope: (x: number) => number,
  value: number,
  low: number,
  high: number,
): number {
  let [from, to] = [low, high];
  let x = (from + to) / 2;
  for (let i = 0; i < 1100; i++) {
    const over = rising(x) - value;
    if (over === 0) return x;
    if (over > 0) to = x;
    else from = x;
    const newton = x - over / slope(x);
    const next = newton > from && newton < to ? newton : (from + to) / 2;
    if (next === x || Math.abs(next - x) <= 1e-16 * Math.abs(next) || next === from || next === to)
      return next;
    x = next;
  }
  return x;
}

/** The same from 0 upward, where no upper bound is known. */
export function inverseAbove0(
  rising: (x: number) => number,
  slope: (x: number) => number,
  value: number,
  guess: number,
): number {
  let high = Math.max(guess, 1);
  while (rising(high) < value && high < 1e300) high *= 2;
  let low = high / 2;
  while (low > 1e-300 && rising(low) > value) low /= 2;
  return inverse(rising, slope, value, low <= 1e-300 ? 0 : low, high);
}

/** The smallest whole number at which a rising function reaches a value. */
export function smallestWhole(rising: (k: number) => number, value: number, most: number): number {
  let high = 1;
  while (high < most && rising(high) < value) high *= 2;
  let low = 0;
  high = Math.min(high, most);
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (rising(middle) >= value) high = middle;
    else low = middle + 1;
  }
  return low;
}
