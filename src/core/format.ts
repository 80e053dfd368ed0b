import { fromSI, systemUnit, type Kind, type System } from './quantity';

const DIGITS = 6;

/** A number for a person to read: six significant digits, no trailing zeros, no exponent at everyday sizes. */
export function numberText(value: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e9 || size < 1e-5) {
    const [mantissa = '', exponent = ''] = value.toExponential(DIGITS - 1).split('e');
    return `${String(Number(mantissa))}e${String(Number(exponent))}`;
  }
  return String(Number(value.toPrecision(DIGITS)));
}

/** An SI value in a system's unit: `0.25 in`, `12.7 mm`, `5 deg`. */
export function quantityText(si: number, kind: Kind, system: System): string {
  // A whole number keeps all its digits.
  if (kind === 'count') return String(si);
  const unit = systemUnit(kind, system);
  return withUnit(numberText(fromSI(si, unit)), unit.symbol);
}

export const withUnit = (text: string, unit: string): string =>
  unit === '' ? text : unit === '%' || unit.startsWith('/') ? `${text}${unit}` : `${text} ${unit}`;
