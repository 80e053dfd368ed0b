import { numberText } from '../core/format';
import { fromSI, systemUnit, type Kind, type System } from '../core/quantity';

/** Numbers and units as TeX. */

const BACKSLASHED: Readonly<Record<string, string>> = {
  '%': '\\%',
  '°': '{}^{\\circ}',
  µ: '\\mu ',
  '²': '^{2}',
  '³': '^{3}',
  '·': '\\cdot ',
};

/** `N/mm²` → upright letters, real exponents. */
export const unitTex = (symbol: string): string =>
  symbol
    .replace(/[a-zA-Z]+/g, (word) => `\\mathrm{${word}}`)
    .replace(/[%°µ²³·]/g, (sign) => BACKSLASHED[sign] ?? sign);

export const numberTex = (value: number): string => {
  const [mantissa = '', exponent] = numberText(value).split('e');
  return exponent === undefined ? mantissa : `${mantissa}\\times 10^{${exponent}}`;
};

/** A number with its unit; `1/°C` needs no 1 behind a number. */
export function measureTex(value: number, unit: string): string {
  const number = numberTex(value);
  if (unit === '') return number;
  // In braces: a power of ten has its exponent already.
  if (unit === 'deg') return number.includes('^') ? `{${number}}^{\\circ}` : `${number}^{\\circ}`;
  if (unit.startsWith('1/')) return `${number}/${unitTex(unit.slice(2))}`;
  return unit.startsWith('/') ? `${number}${unitTex(unit)}` : `${number}\\,${unitTex(unit)}`;
}

/** An SI value in the unit of a system. */
export function quantityTex(si: number, kind: Kind, system: System): string {
  const unit = systemUnit(kind, system);
  return measureTex(fromSI(si, unit), unit.symbol);
}
