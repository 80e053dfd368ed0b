import { type CellValue } from '../cells/value';
import { nativeNumber } from '../core/expr/native';
import { convert, KINDS, type Kind } from '../core/quantity';
import { readQuantity, unitsBetween } from '../core/readQuantity';
import type { Unit } from '../core/units';
import type { DataTables } from '../derive/native';
import { constantText } from '../workbook/references';
import { Unconvertible } from './unconvertible';

interface CellText {
  readonly text: string;
  readonly value: CellValue;
  readonly varies: boolean;
}

/** UNIT.CONVERT in a worksheet's own functions: by two numbers, or by a table of the kind's units. */
export function nativeConversion(value: CellText, from: CellText, to: CellText, tables: DataTables): string {
  const [fromUnit, toUnit] = [unitText(from), unitText(to)];
  const between = unitsBetween(fromUnit, toUnit);
  if (!between) throw new Unconvertible(`"${fromUnit}" does not convert to "${toUnit}"`);
  const { kind, source, target, inverse } = between;
  const number = numberText(value);
  if (inverse) {
    if (from.varies || to.varies) throw new Unconvertible('its units are in cells');
    const factor = nativeNumber(source.factor * target.factor);
    return guarded(value, number, `1/(${number}*${factor})`);
  }
  if (!value.varies && !from.varies && !to.varies)
    return nativeNumber(convert(numberOf(value), source, target));
  const table = tables.columns(
    { title: `Units of ${KINDS[kind].says}`, heads: ['unit', 'factor to SI', 'zero in SI'] },
    unitRows(kind, [source, target]),
  );
  const find = (unit: CellText, at: 1 | 2): string => `INDEX(${table(at)},MATCH(${unit.text},${table(0)},0))`;
  const factor = (unit: CellText, known: Unit): string =>
    unit.varies ? find(unit, 1) : nativeNumber(known.factor);
  const offset = (unit: CellText, known: Unit): string =>
    unit.varies ? find(unit, 2) : nativeNumber(known.offset);
  const hasZero = KINDS[kind].units.some((unit) => unit.offset !== 0);
  const scaled = `${number}*${factor(from, source)}`;
  const shifted = hasZero ? `(${scaled}+${offset(from, source)}-${offset(to, target)})` : scaled;
  return guarded(value, number, `${shifted}/${factor(to, target)}`);
}

function numberOf({ value }: CellText): number {
  if (typeof value === 'number') return value;
  const read = typeof value === 'string' ? readQuantity(value, 'count') : undefined;
  if (!read?.ok) throw new Unconvertible('it is refused as it stands: the value is no number');
  return read.plain;
}

/** A cell that was read as text, such as 3/8, stays what it is in the copy; numbers may replace it. */
function numberText(cell: CellText): string {
  const { text, value, varies } = cell;
  const now = nativeNumber(numberOf(cell));
  if (typeof value === 'number') return varies ? text : now;
  return varies
    ? `IF(ISNUMBER(${text}),${text},IF(${text}=${constantText(String(value))},${now},${NO_NUMBER}))`
    : now;
}

const NO_NUMBER = 'VALUE("value: a number")';

const guarded = ({ text, value, varies }: CellText, number: string, result: string): string =>
  varies && number === text && typeof value === 'number'
    ? `IF(OR(NOT(ISNUMBER(${text})),ISLOGICAL(${text})),${NO_NUMBER},${result})`
    : result;

function unitText({ value }: CellText): string {
  if (typeof value !== 'string' || value.trim() === '') throw new Unconvertible('a unit is missing');
  return value.trim();
}

/** Spreadsheet programs look names up without regard to capitals: the units in use come first. */
function unitRows(kind: Kind, first: readonly Unit[]): (readonly [string, number, number])[] {
  const seen = new Map<string, number>();
  const rows: (readonly [string, number, number])[] = [];
  for (const unit of KINDS[kind].units) {
    for (const spelling of [unit.symbol, ...unit.aliases]) {
      const key = spelling.toLowerCase();
      const known = seen.get(key);
      if (spelling === '' || known === unit.factor) continue;
      if (known !== undefined) {
        if (first.includes(unit))
          throw new Unconvertible(`${spelling} differs from another unit only by capitals`);
        continue;
      }
      seen.set(key, unit.factor);
      rows.push([spelling, unit.factor, unit.offset]);
    }
  }
  return rows;
}
