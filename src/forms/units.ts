import { fromSI, KINDS, systemUnit, type Kind, type System } from '../core/quantity';
import { amountSI } from '../core/amount';
import type { Amount } from '../core/define';
import { withUnit } from '../core/format';
import { findUnit, kindsWithUnit, readQuantity } from '../core/readQuantity';
import type { Unit } from '../core/units';

/**
 * A spelling of a unit that stands by itself, as `UNIT.CONVERT` reads it: a difference of temperature is `Δ°F`, since
 * °F alone is a point on the scale.
 */
export function unitSign(unit: Unit): string {
  const known = signs.get(unit);
  if (known !== undefined) return known;
  const sign = findSign(unit);
  signs.set(unit, sign);
  return sign;
}

const signs = new WeakMap<Unit, string>();

function findSign(unit: Unit): string {
  const isClear = (text: string): boolean => {
    const [first] = kindsWithUnit(text);
    const found = first && findUnit(first, text);
    return found !== undefined && found.factor === unit.factor && found.offset === unit.offset;
  };
  return [unit.symbol, ...unit.aliases].find(isClear) ?? unit.symbol;
}

export const systemSign = (kind: Kind, system: System): string => unitSign(systemUnit(kind, system));

/** The units to choose from: those that a shop reads off its prints, gauges and data sheets. */
export const unitChoices = (kind: Kind): string[] => (hasUnits(kind) ? KINDS[kind].units.map(unitSign) : []);

/** A number and its unit, as two cells hold them. */
export interface Entered {
  readonly value: number;
  readonly unit: string;
}

const DIGITS_OF_EXAMPLE = 3;

/** An amount as it was written. */
export function entered(amount: Amount, kind: Kind, system: System): Entered {
  if (systemSign(kind, system) === '') return { value: amountSI(amount, kind), unit: '' };
  const read = typeof amount === 'string' ? readQuantity(amount, kind) : undefined;
  if (read?.ok && read.unit) return { value: read.plain, unit: unitSign(read.unit) };
  return { value: read?.ok ? read.plain : Number(amount), unit: systemSign(kind, system) };
}

/** The amount in the unit of the system, so far rounded that a person would type it. */
export function roundedIn(amount: Amount, kind: Kind, system: System): Amount {
  const unit = systemUnit(kind, system);
  const own = typeof amount === 'string' ? readQuantity(amount, kind) : undefined;
  if (!own?.ok || own.unit === undefined || own.unit === unit || unit.symbol === '') return amount;
  return withUnit(String(Number(fromSI(own.si, unit).toPrecision(DIGITS_OF_EXAMPLE))), unit.symbol);
}

/** Whether a unit stands beside its values. */
export const hasUnits = (kind: Kind): boolean =>
  systemSign(kind, 'in') !== '' || systemSign(kind, 'mm') !== '';
