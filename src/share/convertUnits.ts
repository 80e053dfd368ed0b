import { CellError, type CellValue } from '../cells/value';
import { nativeNumber } from '../core/expr/native';
import { convert, KINDS, type Kind } from '../core/quantity';
import { findUnit, kindsWithUnit } from '../core/readQuantity';
import type { Unit } from '../core/units';
import type { DataTables } from '../derive/native';
import { Unconvertible } from './unconvertible';

interface CellText {
  readonly text: string;
  readonly value: CellValue;
  readonly varies: boolean;
}

/** UNIT.CONVERT in a worksheet's own functions: by two numbers, or by a table of the kind's units. */
export function nativeConversion(value: CellText, from: CellText, to: CellText, tables: DataTables): string {
  const [fromUnit, toUnit] = [unitText(from), unitText(to)];
  const kind = kindsWithUnit(fromUnit).find((one) => findUnit(one, toUnit));
  const [source, target] = kind ? [findUnit(kind, fromUnit), findUnit(kind, toUnit)] : [];
  if (!kind || !source || !target) throw new Unconvertible(`"${fromUnit}" does not convert to "${toUnit}"`);
  if (value.value instanceof CellError || typeof value.value === 'string')
    throw new Unconvertible('it is refused as it stands: the value is no number');
  if (!value.varies && !from.varies && !to.varies)
    return nativeNumber(convert(Number(value.value ?? 0), source, target));
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
  const scaled = `${value.text}*${factor(from, source)}`;
  const shifted = hasZero ? `(${scaled}+${offset(from, source)}-${offset(to, target)})` : scaled;
  const result = `${shifted}/${factor(to, target)}`;
  return value.varies ? `IF(ISTEXT(${value.text}),VALUE("value: a number"),${result})` : result;
}

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
