import { type CellValue } from '../cells/value';
import { nativeNumber } from '../core/expr/native';
import { convert, KINDS, type Kind } from '../core/quantity';
import { readQuantity, unitsBetween } from '../core/readQuantity';
import type { Unit } from '../core/units';
import {
  partMark,
  type DataTables,
  type Guard,
  type NativeCall,
  type NativePart,
  type PartWords,
} from '../derive/native';
import { constantText } from '../workbook/references';
import { Unconvertible } from './unconvertible';

interface CellText {
  readonly text: string;
  readonly value: CellValue;
  readonly varies: boolean;
}

/** UNIT.CONVERT in a worksheet's own functions: by two numbers, or by a table of the kind's units. */
export function nativeConversion(
  value: CellText,
  from: CellText,
  to: CellText,
  tables: DataTables,
): NativeCall {
  const [fromUnit, toUnit] = [unitText(from), unitText(to)];
  const between = unitsBetween(fromUnit, toUnit);
  if (!between) throw new Unconvertible(`"${fromUnit}" does not convert to "${toUnit}"`);
  const { kind, source, target, inverse } = between;
  const parts: NativePart[] = [];
  const part = (text: string, words: Omit<PartWords, 'role'>): string => {
    const name = `v${parts.length + 1}`;
    parts.push({ name, symbol: '', text, words: { role: 'input', ...words } });
    return partMark(name);
  };
  const call = (text: string): NativeCall => {
    const unit = to.varies ? '""' : constantText(toUnit);
    const says = to.varies ? 'in the unit asked for' : 'converted';
    const form = { guards: guardsOf(value), gates: [], results: [{ text, says, unit }] };
    return {
      parts,
      variants: [{ when: [], form }],
      looksUp: from.varies || to.varies,
      settles: false,
      notes: [],
    };
  };
  const numberPart = part(numberText(value), { says: 'Value', equation: value.text, unit: '' });
  if (inverse) {
    if (from.varies || to.varies) throw new Unconvertible('its units are in cells');
    return call(`1/(${numberPart}*${nativeNumber(source.factor * target.factor)})`);
  }
  if (!value.varies && !from.varies && !to.varies)
    return call(nativeNumber(convert(numberOf(value), source, target)));
  const table = tables.columns(
    { title: `Units of ${KINDS[kind].says}`, heads: ['unit', 'factor to SI', 'zero in SI'] },
    unitRows(kind, [source, target]),
  );
  const hasZero = KINDS[kind].units.some((unit) => unit.offset !== 0);
  /** One unit as worksheet texts: its factor and its zero. */
  const unitOf = (unit: CellText, known: Unit, says: string): { factor: string; zero: string } => {
    if (!unit.varies) return { factor: nativeNumber(known.factor), zero: nativeNumber(known.offset) };
    const words = { equation: unit.text, unit: 'SI' };
    const line = `MATCH(${unit.text},${table(0)},0)`;
    if (!hasZero)
      return { factor: part(`INDEX(${table(1)},${line})`, { ...words, says: `One ${says}` }), zero: '0' };
    const row = part(line, { ...words, says: `Line of the table: ${says}`, unit: '' });
    return {
      factor: part(`INDEX(${table(1)},${row})`, { ...words, says: `One ${says}` }),
      zero: part(`INDEX(${table(2)},${row})`, { ...words, says: `Zero of the ${says}` }),
    };
  };
  const [own, wanted] = [unitOf(from, source, 'unit of the value'), unitOf(to, target, 'unit asked for')];
  const scaled = `${numberPart}*${own.factor}`;
  const shifted = hasZero ? `(${scaled}+${own.zero}-${wanted.zero})` : scaled;
  return call(`${shifted}/${wanted.factor}`);
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

const guardsOf = ({ text, value, varies }: CellText): Guard[] =>
  varies && typeof value === 'number'
    ? [`NOT(ISNUMBER(${text}))`, `ISLOGICAL(${text})`].map((when) => ({
        when,
        code: '#VALUE!',
        says: 'value: a number',
      }))
    : [];

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
