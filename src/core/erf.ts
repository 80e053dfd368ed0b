import * as mathjs from 'mathjs/number';
import { solveBracketed } from './solve';

type OfNumber = (x: number) => number;
type Make = (given: { readonly typed: unknown }) => OfNumber;

// Of numbers alone, so that no part of mathjs comes along that tells types apart.
const typed = Object.assign((_: string, forms: { readonly number: OfNumber }): OfNumber => forms.number, {
  referToSelf: () => undefined,
});

/** The error function: W. J. Cody's rational approximations, good to the last digits of a double. */
export const erf = (mathjs as unknown as { readonly createErf: Make }).createErf({ typed });

/** Beyond this the error function is 1 in double precision. */
const LARGEST = 6;

/** The number whose error function is `y`, between −1 and 1. */
export function erfInverse(y: number): number {
  const x = solveBracketed((t) => erf(t) - Math.abs(y), 0, LARGEST);
  // The bracket is as narrow as its ends’ size allows; one step of Newton’s gives a small root its own last digits.
  const step = ((erf(x) - Math.abs(y)) * Math.sqrt(Math.PI) * Math.exp(x * x)) / 2;
  return Math.sign(y) * (x - step);
}
