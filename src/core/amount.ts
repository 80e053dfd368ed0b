import type { Amount, Limits } from './define';
import { KINDS, toSI, type Kind } from './quantity';
import { readQuantity } from './readQuantity';

/** The SI value of a limit, default or check value written in a definition. */
export function amountSI(amount: Amount, kind: Kind): number {
  if (typeof amount === 'number') {
    const { units, system } = KINDS[kind];
    // A plain number in a definition stands for a quantity only where both systems read it alike.
    if (system.in !== system.mm) throw new Error(`${amount} needs a unit, as it is a ${KINDS[kind].says}`);
    const unit = units.find(({ symbol }) => symbol === system.in);
    return unit ? toSI(amount, unit) : amount;
  }
  const reading = readQuantity(amount, kind);
  if (!reading.ok) throw new Error(`"${amount}" is not a ${KINDS[kind].says}`);
  return reading.unit ? reading.si : amountSI(reading.plain, kind);
}

export interface Bounds {
  readonly low: number;
  readonly lowIncluded: boolean;
  readonly high: number;
  readonly highIncluded: boolean;
}

export function boundsOf({ min, above, max, below }: Limits, kind: Kind): Bounds {
  const si = (amount: Amount | undefined, none: number): number =>
    amount === undefined ? none : amountSI(amount, kind);
  return {
    low: si(min ?? above, -Infinity),
    lowIncluded: above === undefined,
    high: si(max ?? below, Infinity),
    highIncluded: below === undefined,
  };
}

export const inBounds = (x: number, { low, lowIncluded, high, highIncluded }: Bounds): boolean =>
  (lowIncluded ? x >= low : x > low) && (highIncluded ? x <= high : x < high);
