/** Powers up to the fourth are products, wherever the exponent comes from: the same to the bit in every reading. */
export const raise = (x: number, n: number): number =>
  n === 2 ? x * x : n === 3 ? x * x * x : n === 4 ? x * x * x * x : Math.pow(x, n);
