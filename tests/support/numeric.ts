/** Plain numerical methods for answers that owe nothing to the equations under test. */

/** Simpson's rule on equal intervals. */
export function integrate(f: (x: number) => number, low: number, high: number, intervals = 2000): number {
  const h = (high - low) / intervals;
  let sum = f(low) + f(high);
  for (let i = 1; i < intervals; i++) sum += (i % 2 === 0 ? 2 : 4) * f(low + i * h);
  return (sum * h) / 3;
}

/** Where a condition turns true between two bounds, by halving. */
export function turnsTrue(condition: (x: number) => boolean, low: number, high: number): number {
  let a = low;
  let b = high;
  for (let i = 0; i < 100; i++) {
    const middle = (a + b) / 2;
    if (condition(middle)) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}
