import { boundsOf } from '../core/amount';
import type { Limits } from '../core/define';
import { fromSI, KINDS, systemUnit, type Kind } from '../core/quantity';
import { unitSign } from './units';

/**
 * A formula that is true for an entry within the limits of its input, whatever unit stands beside it, where one is chosen. What the unit
 * decides is asked unit by unit, as rules of cells know nothing of conversions.
 */
export function acceptsFormula(limits: Limits, kind: Kind, entry: string, unit: string | undefined): string {
  const { low, lowIncluded, high, highIncluded } = boundsOf(limits, kind);
  const units = unit === undefined ? [systemUnit(kind, 'in')] : KINDS[kind].units;
  const conditions = units.map((one) => ({
    sign: unitSign(one),
    text: [
      ...(low > -Infinity ? [`${entry}>${lowIncluded ? '=' : ''}${plain(fromSI(low, one))}`] : []),
      ...(high < Infinity ? [`${entry}<${highIncluded ? '=' : ''}${plain(fromSI(high, one))}`] : []),
    ].join(','),
  }));
  const texts = new Set(conditions.map(({ text }) => text));
  const isNumber = `ISNUMBER(${entry})`;
  const [first] = conditions;
  if (texts.size === 1) return first?.text ? `AND(${isNumber},${first.text})` : isNumber;
  const cases = conditions.map(({ sign, text }) => `AND(${unit ?? ''}="${sign}",${text})`);
  return `AND(${isNumber},OR(${cases.join(',')}))`;
}

/** Limits are round numbers in one unit; in another the last digits must not refuse the limit itself. */
const plain = (value: number): string => String(Number(value.toPrecision(12)));
