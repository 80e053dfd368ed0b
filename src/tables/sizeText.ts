import { plainSigns } from '../core/names';
import { Refusal } from '../core/refusal';

/**
 * A size as written, with one sign for each meaning: `"` for inches however it was typed, single blanks, no sign of
 * diameter, capitals where `x` is left for "by".
 */
export const sizeText = (given: string): string =>
  withoutDiameterSign(plainMarks(given)).toUpperCase().replace(/X/g, 'x');

/** The same where capitals and small letters mean different things. */
export const plainMarks = (given: string): string =>
  plainSigns(given.replace(/″/g, '"').replace(/([¼-¾⅐-⅞])(?=\d)/g, '$1 '))
    .replace(/''|′′|[“”„″]/g, '"')
    .replace(/\s+/g, ' ')
    .trim();

export const withoutDiameterSign = (text: string): string => text.replace(/^[Øø⌀∅Φφ]\s*/u, '');

/** Two numbers multiplied or side by side are no single size, and the sign is no letter X. */
export const SIGN_OF_BY = /[×✕∗*]/;

/** A comma in a number is 1.5 to one reader and 15 to another. */
export function refuseComma(given: string): void {
  if (!/\d\s*,\s*\d|^\s*,\d/.test(given)) return;
  throw new Refusal(`is "${given}", which has a comma: write decimals with a point`);
}

/** The sign for inches after a size, in words or not. */
export const INCH = String.raw`\s*(?:"|\bIN(?:CH(?:ES)?)?\b\.?)`;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** `3/8`: as a shop writes it, in lowest terms; `8/32` is no way to write 1/4. */
export const inLowestTerms = (over: number, under: number): boolean =>
  over > 0 && under > 0 && gcd(over, under) === 1;
