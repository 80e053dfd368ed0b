/**
 * Bessel functions of the first kind and whole order, by their integral (NIST Handbook, 10.9.2):
 * J_n(x) = 1/π ∫ cos(n τ − x sin τ) dτ from 0 to π. The integrand is periodic, so the trapezoidal rule converges faster
 * than any power: its error is of the order of J_{2N}(x) and falls below a double's precision soon after 2N passes x.
 */
export function besselJ(order: number, x: number): number {
  const intervals = Math.ceil(Math.abs(x) / 2 + 6 * Math.cbrt(Math.abs(x))) + order + 20;
  let sum = (1 + Math.cos(order * Math.PI)) / 2;
  for (let k = 1; k < intervals; k++) {
    const t = (k * Math.PI) / intervals;
    sum += Math.cos(order * t - x * Math.sin(t));
  }
  return sum / intervals;
}

/** The nth zero of J0, by Newton’s steps from McMahon’s asymptotic value. */
export function zeroOfJ0(n: number): number {
  const b = (n - 0.25) * Math.PI;
  let x = b + 1 / (8 * b);
  for (let i = 0; i < 4; i++) x += besselJ(0, x) / besselJ(1, x);
  return x;
}
