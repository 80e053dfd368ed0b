/** How a recalculated workbook compares with the values that are stored in its file. */
import { areaContains, cellAddress, parseArea, parseCell, type Area } from '../../src/cells/address';
import { CellError, type CellValue } from '../../src/cells/value';
import type { Cell, Sheet, Workbook } from '../../src/package/model';

export const VERDICTS = ['agree', 'differs', 'value → error', 'error → value', 'kept'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** The value of a cell by one calculation, and why it was left as stored where it was. */
export interface Now {
  readonly value: CellValue;
  readonly kept?: string;
}
export type Recalculated = (sheet: number, row: number, column: number) => Now;

export interface Scored {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly functions: readonly string[];
  readonly verdict: Verdict;
  readonly stored: string;
  readonly now: string;
  readonly kept?: string;
  /** No cell that the formula names is itself bad: the place to look. */
  isRoot: boolean;
  /** The second opinion is an error too. */
  readonly isErrorElsewhere: boolean;
}

const VOLATILE = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(/i;
const STRINGS = /"(?:[^"]|"")*"/g;

function judge(stored: CellValue, now: CellValue): Verdict {
  if (now instanceof CellError) {
    if (!(stored instanceof CellError)) return 'value → error';
    return stored.code === now.code ? 'agree' : 'differs';
  }
  if (stored instanceof CellError) return 'error → value';
  if (typeof stored === 'number' && typeof now === 'number') return near(stored, now) ? 'agree' : 'differs';
  return stored === now ? 'agree' : 'differs';
}

export function near(a: number, b: number): boolean {
  const distance = Math.abs(a - b);
  return distance <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) || distance < 1e-12;
}

/** Each function that a text calls; strings, sheet names and columns of tables set aside. */
function functionsIn(formula: string): string[] {
  const bare = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^[\]]*\]/g, ' ');
  const names = new Set(
    [...bare.matchAll(/([\p{L}_][\p{L}\d_.]*)\(/gu)].map(([, name = '']) => name.toUpperCase()),
  );
  return names.size > 0 ? [...names] : ['(none)'];
}

const REFERENCE =
  /(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\d_.]*)!)?\$?([A-Z]{1,3})\$?(\d{1,7})(?::\$?([A-Z]{1,3})\$?(\d{1,7}))?(?![\p{L}\d_(.!])/giu;

interface Place extends Area {
  readonly sheet: string;
}

function placesIn(formula: string, sheet: string): Place[] {
  const places: Place[] = [];
  for (const [, named, c1 = '', r1 = '', c2 = c1, r2 = r1] of formula
    .replace(STRINGS, ' ')
    .matchAll(REFERENCE)) {
    const area = parseArea(`${c1}${r1}:${c2}${r2}`);
    if (area === undefined) continue;
    places.push({ ...area, sheet: named?.replace(/^'|'$/g, '').replaceAll("''", "'") ?? sheet });
  }
  return places;
}

/** A formula with what its names and tables stand for written behind it. */
function speltOut(formula: string, words: ReadonlyMap<string, string>, depth = 2): string {
  if (words.size === 0 || depth === 0) return formula;
  const used = new Set(
    formula
      .replace(STRINGS, ' ')
      .toUpperCase()
      .match(/[\p{L}_\\][\p{L}\d_.\\]*/gu) ?? [],
  );
  const meant = [...used].flatMap((word) => words.get(word) ?? []);
  return [formula, ...meant.map((text) => speltOut(text, words, depth - 1))].join(' ; ');
}

function wordsOf({ names, sheets }: Workbook): Map<string, string> {
  const words = new Map(names.map(({ name, formula }) => [name.toUpperCase(), formula]));
  for (const { name: sheet, tables } of sheets)
    for (const { name, area } of tables)
      words.set(
        name.toUpperCase(),
        `'${sheet.replaceAll("'", "''")}'!${cellAddress(area.top, area.left)}:${cellAddress(area.bottom, area.right)}`,
      );
  return words;
}

interface Asked {
  readonly sheet: Sheet;
  readonly index: number;
  readonly cell: Cell;
  readonly places: readonly Place[];
  isOut: boolean;
}

/** Cells marked as bad or volatile, by sheet. */
class Marks {
  private readonly sheets = new Map<string, Set<string>>();
  mark({ sheet, cell }: Asked): void {
    const marked = this.sheets.get(sheet.name) ?? new Set();
    this.sheets.set(sheet.name, marked.add(cellAddress(cell.row, cell.column)));
  }
  touchedBy({ sheet, cell, places }: Asked): boolean {
    const own = cellAddress(cell.row, cell.column);
    return places.some((place) => {
      const marked = this.sheets.get(place.sheet);
      if (marked === undefined) return false;
      const isOther = (address: string) => place.sheet !== sheet.name || address !== own;
      if ((place.bottom - place.top + 1) * (place.right - place.left + 1) > 64) {
        for (const address of marked) {
          const at = parseCell(address);
          if (at !== undefined && areaContains(place, at.row, at.column) && isOther(address)) return true;
        }
        return false;
      }
      for (let row = place.top; row <= place.bottom; row++)
        for (let column = place.left; column <= place.right; column++) {
          const address = cellAddress(row, column);
          if (marked.has(address) && isOther(address)) return true;
        }
      return false;
    });
  }
}

/** Formulas of now and of chance, and all that they feed, are left out; so are formulas without a stored value. */
export function score(book: Workbook, now: Recalculated, second: Recalculated | undefined): Scored[] {
  const words = wordsOf(book);
  const all = book.sheets.flatMap((sheet, index): Asked[] =>
    sheet.cells.flatMap((cell) => {
      if (cell.formula === undefined) return [];
      const full = speltOut(cell.formula, words);
      return [{ sheet, index, cell, places: placesIn(full, sheet.name), isOut: VOLATILE.test(full) }];
    }),
  );
  const volatile = new Marks();
  for (const one of all) if (one.isOut) volatile.mark(one);
  for (let hasGrown = all.some(({ isOut }) => isOut), turn = 0; hasGrown && turn < 100; turn++) {
    hasGrown = false;
    for (const one of all) {
      if (one.isOut || !volatile.touchedBy(one)) continue;
      one.isOut = hasGrown = true;
      volatile.mark(one);
    }
  }
  const bad = new Marks();
  const scored: [Asked, Scored][] = [];
  for (const one of all) {
    const { sheet, index, cell, isOut } = one;
    if (isOut || cell.value === null || cell.formula === undefined) continue;
    const { value, kept } = now(index, cell.row, cell.column);
    let verdict: Verdict = judge(cell.value, value);
    const other = verdict === 'agree' ? undefined : second?.(index, cell.row, cell.column).value;
    if (other !== undefined && kept === undefined && judge(other, value) === 'agree') verdict = 'agree';
    if (kept !== undefined && verdict === 'agree') verdict = 'kept';
    if (verdict !== 'agree' && verdict !== 'kept') bad.mark(one);
    const entry: Scored = {
      sheet: sheet.name,
      cell: cellAddress(cell.row, cell.column),
      formula: cell.formula,
      functions: functionsIn(cell.formula),
      verdict,
      stored: shown(cell.value),
      now: shown(value),
      isRoot: false,
      isErrorElsewhere: other instanceof CellError,
      ...(kept === undefined ? {} : { kept }),
    };
    scored.push([one, entry]);
  }
  for (const [asked, entry] of scored)
    entry.isRoot = entry.verdict !== 'agree' && entry.verdict !== 'kept' && !bad.touchedBy(asked);
  return scored.map(([, entry]) => entry);
}

function shown(value: CellValue): string {
  const text = value instanceof CellError ? value.code : value === null ? '(none)' : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
