import { plain } from './spec';

export const ROUND = plain('ROUND', 'nn', (value, digits) => roundTo(value, Math.trunc(digits)));

/** Half away from zero, on the decimal digits that a person sees: 1.005 to two places is 1.01. */
export function roundTo(value: number, digits: number): number {
  if (digits > 15 || !Number.isFinite(value)) return value;
  const shifted = shift(Math.abs(value), digits);
  return Math.sign(value) * shift(Math.round(Number(shifted.toPrecision(15))), -digits);
}

/** Moves the decimal point by the text of the number: to multiply by a power of ten would add its own error. */
const shift = (value: number, places: number): number => {
  const [mantissa = '', power = '0'] = String(value).split('e');
  return Number(`${mantissa}e${Number(power) + places}`);
};
