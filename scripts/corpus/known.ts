/** Differences that were looked into, and why they stay. */
import type { Scored } from './score';

interface Known {
  readonly reason: string;
  readonly holds: (one: Scored) => boolean;
}

const calls =
  (...names: readonly string[]) =>
  ({ functions }: Scored): boolean =>
    names.some((name) => functions.includes(name));

/** The stored value is a number and ours is close to it, if not as close as is asked. */
const isNear = ({ stored, now }: Scored): boolean =>
  Math.abs(Number(stored) - Number(now)) <= 1e-6 * Math.abs(Number(stored));

export const KNOWN: readonly Known[] = [
  {
    reason: 'Excel ends its search for a rate at 1e-7; ours goes on to the last digits',
    holds: (one) => calls('XIRR', 'IRR', 'RATE')(one) && isNear(one),
  },
  {
    reason:
      'the approximations of Bessel functions in spreadsheets are good to eight digits; ours to fifteen',
    holds: (one) => calls('BESSELI', 'BESSELJ', 'BESSELK', 'BESSELY')(one) && isNear(one),
  },
  {
    reason: 'errors on both sides: which of several comes first',
    holds: ({ verdict, stored, now }) =>
      verdict === 'differs' && stored.startsWith('#') && now.startsWith('#'),
  },
  {
    reason: 'rounding in the last digits of a difference of nearly equal numbers',
    holds: ({ verdict, stored, now }) =>
      verdict === 'differs' &&
      Math.abs(Number(stored) - Number(now)) < 1e-7 &&
      Math.abs(Number(stored)) < 1e-2,
  },
  {
    reason: 'the last digits of complex numbers, which are texts',
    holds: (one) => one.verdict === 'differs' && calls('IMCOT', 'IMCSC', 'IMLOG2', 'IMTAN')(one),
  },
  {
    reason: 'number formats that nobody writes: commas and literals between the digits, texts of times',
    holds: calls('TEXT'),
  },
  {
    reason: 'the file stores the code of an error as a text',
    holds: ({ verdict, stored }) => verdict === 'value → error' && stored.startsWith('"#'),
  },
  {
    reason: 'days around 1900-02-29, which there was not',
    holds: calls('YEARFRAC'),
  },
  {
    reason: 'Roman numerals against their rules',
    holds: calls('ARABIC'),
  },
  {
    reason: 'dates in text, read by the language of the computer that saved the file',
    holds: (one) => /"\d+\/\d+"/.test(one.formula) || calls('VALUE')(one),
  },
  {
    reason: 'more than fifteen digits',
    holds: calls('FIXED'),
  },
];
