import type { Kind } from '../src/core/quantity';
import { columnLetters } from '../src/cells/address';
import type { GivenColumn, List, TypedColumn } from './description';
import { placed } from './layout';
import type { Pen } from './pen';
import { convertedStyle, formatOf, GOOD, numberStyle, typedStyle, WARN } from '../src/forms/looks';

/** Rows above the first thing: names of the columns, and their units. */
const HEADS = 2;

interface Placed {
  readonly typed: readonly TypedColumn[];
  readonly given: readonly GivenColumn[];
  readonly lengths: readonly TypedColumn[];
  readonly count: number;
  readonly letter: (key: string) => string;
  /** Letter of the column that holds a typed length in the units of the sheet. */
  readonly converted: (key: string) => string;
}

function arranged({ columns }: List): Placed {
  const typed = columns.filter((one): one is TypedColumn => one.type === 'typed');
  const given = columns.filter((one): one is GivenColumn => one.type === 'given');
  const lengths = typed.filter(({ length }) => length);
  const order = [...typed, ...given].map(({ key }) => key);
  return {
    typed,
    given,
    lengths,
    count: typed[0]?.values.length ?? 0,
    letter: (key) => columnLetters(order.indexOf(key)),
    converted: (key) => columnLetters(order.length + lengths.findIndex((one) => one.key === key)),
  };
}

/** Notes where each column of a list will stand that begins at a row; gives the row after the list. */
export function placeList(list: List, at: number, ranges: Map<string, string>): number {
  const { typed, given, lengths, count, letter, converted } = arranged(list);
  const first = at + HEADS;
  for (const one of [...typed, ...given]) {
    const column = lengths.includes(one as TypedColumn) ? converted(one.key) : letter(one.key);
    ranges.set(one.key, `${column}${first}:${column}${first + count - 1}`);
  }
  return first + count + 1 + typed.length + given.length + (lengths.length > 0 ? 1 : 0);
}

/** The list itself, and under it what each column means; gives the row after it. */
export function putList(list: List, at: number, sheet: Pen): number {
  const { typed, given, lengths, count, letter, converted } = arranged(list);
  const first = at + HEADS;
  const last = first + count - 1;
  const run = (column: string, to = column) => `${column}${first}:${to}${last}`;
  const head = (column: string, text: string, unit: Kind | 'text' | 'own') => {
    sheet.put(`${column}${at}`, { value: text, style: column === 'A' ? 'listFirst' : 'listHead' });
    const symbol =
      unit === 'text' ? { value: '–' } : unit === 'own' ? { value: 'own unit' } : sheet.unitOf(unit);
    sheet.put(`${column}${at + 1}`, { ...symbol, style: 'listUnit' });
  };
  const each = (column: string, style: string) => {
    for (let row = first; row <= last; row++) sheet.put(`${column}${row}`, { style });
  };
  sheet.grow(at, 2, 12.5);
  for (let row = at + 1; row <= last; row++) sheet.grow(row, 1, 13);

  for (const { key, head: text, values, choices, length } of typed) {
    const column = letter(key);
    head(column, text, length ? 'own' : 'text');
    if (column === 'A') sheet.put(`A${at + 1}`, { value: 'Unit', style: 'listUnit' });
    values.forEach((value, i) => {
      const style =
        typeof value === 'number' ? sheet.style(typedStyle) : column === 'A' ? 'typedName' : 'typedWords';
      sheet.put(`${column}${first + i}`, { value, style });
    });
    if (choices) sheet.choose(run(column), choices, text);
  }

  for (const { key, head: text, formula, kind, format } of given) {
    const column = letter(key);
    head(column, text, kind);
    each(column, kind === 'text' ? 'words' : sheet.style({ ...numberStyle(format ?? formatOf(kind)) }));
    const anchor = `${column}${first}`;
    sheet.put(anchor, {
      formula: placed(formula, (name) => sheet.place(name)),
      fills: run(column),
      style: kind === 'text' ? 'words' : sheet.style({ ...numberStyle(format ?? formatOf(kind)) }),
    });
    if (kind === 'text') {
      sheet.conditions.push(
        { cells: run(column), when: `LEFT(${anchor},1)="✓"`, style: GOOD },
        { cells: run(column), when: `LEFT(${anchor},1)="✗"`, style: WARN },
      );
    }
  }

  const [start, end] = [lengths[0], lengths.at(-1)];
  if (start && end) {
    for (const { key, head: text } of lengths) {
      head(converted(key), text, 'length');
      each(converted(key), sheet.style(convertedStyle('0.0000')));
    }
    const anchor = `${converted(start.key)}${first}`;
    sheet.put(anchor, {
      formula: `MOLD.UNIT.CONVERT(${run(letter(start.key), letter(end.key))}, ${run(letter('unit'))}, ${String(sheet.place('units'))})`,
      fills: run(converted(start.key), converted(end.key)),
      style: sheet.style(convertedStyle('0.0000')),
    });
  }

  let row = last + 2;
  const explain = (column: string, label: string, note: string, formula?: string) => {
    sheet.named({ label, note }, row);
    sheet.blanks(row);
    sheet.put(`D${row}`, { value: `col. ${column}`, style: 'words' });
    sheet.put(`E${row}`, { formula: `${column.split('–')[0] ?? ''}${at + 1}`, style: 'unit' });
    sheet.formulaText(row, formula, `${column.split('–')[0] ?? ''}${first}`);
    row += 1;
  };
  for (const { key, head: text, note } of typed) explain(letter(key), text, note, 'typed');
  for (const { key, head: text, note } of given) explain(letter(key), text, note);
  if (start && end) {
    explain(
      `${converted(start.key)}–${converted(end.key)}`,
      'Lengths in the units of the sheet',
      'One formula for all of them: what is typed keeps the unit of its row.',
    );
  }
  return row;
}
