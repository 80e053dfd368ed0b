import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { calculated } from '../samples/calculated';
import { result, type Design, type Row } from '../samples/description';
import { designs } from '../samples/designs';
import { CellError, type CellValue } from '../src/cells/value';
import { worksheetFunctions } from '../src/call/functions';
import { KINDS, toSI, type Kind } from '../src/core/quantity';
import { findUnit } from '../src/core/readQuantity';
import { tokenize } from '../src/cells/formulaTokens';
import { cellAddress, parseArea } from '../src/cells/address';
import { cellFinder, type Sheet, type Workbook } from '../src/package/model';
import { readWorkbook } from '../src/package';

const folder = new URL('../samples/', import.meta.url);
const ids = worksheetFunctions.map(({ id }) => id);
const read = (bytes: Uint8Array): Workbook => readWorkbook(bytes, ids);

it('keeps one workbook in the folder for every description', () => {
  const files = readdirSync(folder).filter((name) => name.endsWith('.xlsx'));
  expect(files.sort()).toEqual(designs.map(({ file }) => `${file}.xlsx`).sort());
});

describe.each(designs.map((design) => [design.file, design] as const))('%s', (file, design) => {
  const stored = read(readFileSync(new URL(`${file}.xlsx`, folder)));
  let asGiven: Workbook;
  let inches: Workbook;
  let millimetres: Workbook;

  beforeAll(async () => {
    const telling = withMargins(design);
    asGiven = read((await calculated(design)).bytes);
    inches = read((await calculated(telling)).bytes);
    millimetres = read((await calculated(telling, 'mm')).bytes);
  });

  it('is what its description gives: otherwise run `npm run samples`', () => {
    expect(stored.sheets.map(plain)).toEqual(asGiven.sheets.map(plain));
  });

  it('has no cell in error, in either system of units', () => {
    for (const workbook of [stored, inches, millimetres]) {
      for (const { name, cells } of workbook.sheets) {
        const wrong = cells.filter(({ value }) => value instanceof CellError);
        expect(wrong.map(({ row, column }) => `${name}!${cellAddress(row, column)}`)).toEqual([]);
      }
    }
  });

  it('says the same of the same part in inches and in millimetres', () => {
    let compared = 0;
    for (const [value, unit, other, otherUnit] of values(inches, millimetres)) {
      if (typeof value === 'number' && typeof other === 'number') {
        const readings = kindsOf(unit, otherUnit).map(({ from, to }) => [toSI(value, from), toSI(other, to)]);
        expect(
          readings.some(
            ([a = 0, b = 0]) => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-9),
          ),
          `${value} ${unit} and ${other} ${otherUnit}`,
        ).toBe(true);
        if (unit !== otherUnit) compared++;
      } else expect(other).toEqual(value);
    }
    expect(compared).toBeGreaterThan(10);
  });

  it('holds, but for the weak point that it teaches', () => {
    const failing = asGiven.sheets.flatMap((sheet) =>
      sheet.cells
        .filter(({ column, value }) => column === VALUE && typeof value === 'string' && value.startsWith('✗'))
        .map(({ row }) => String(cellFinder(sheet)(row, 0)?.value)),
    );
    expect(failing.filter((label) => !label.startsWith('Weak point'))).toEqual([]);
  });

  it('lets at most five of our functions wait for one another', () => {
    expect(depth(stored)).toBeLessThanOrEqual(5);
    expect(depth(stored)).toBeGreaterThan(1);
  });

  it('gives every row a name, a value, a unit, a formula and a note', () => {
    const rows = namedRows(stored);
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      expect(
        row.filter((text) => text === ''),
        row.join(' | '),
      ).toEqual([]);
    }
  });

  it('ends with its cautions and prints on pages as wide as the sheet', () => {
    const [sheet] = stored.sheets;
    const first = sheet?.cells.filter(({ column, value }) => column === 0 && value !== null) ?? [];
    const heading = first.findIndex(({ value }) => value === 'Cautions');
    const cautions = first.slice(heading + 1);
    expect(heading).toBeGreaterThan(0);
    expect(cautions.length).toBeGreaterThanOrEqual(4);
    expect(cautions.map(({ value }) => String(value)).join(' ')).toMatch(/manual/);
    const xml = new TextDecoder().decode(stored.parts.get('xl/worksheets/sheet1.xml'));
    expect(xml).toMatch(/<fitToPage|fitToPage="1"/);
    expect(xml).toMatch(/orientation="landscape"/);
  });
});

/** What a person sees and what the file calculates, numbers to twelve digits. */
function plain({ name, cells, rows, columns, merges, validations, conditionalFormats, frozen }: Sheet) {
  return {
    name,
    rows,
    columns,
    merges,
    validations,
    conditionalFormats,
    frozen,
    cells: cells.map(({ value, ...cell }) => ({
      ...cell,
      value: typeof value === 'number' ? Number(value.toPrecision(12)) : value,
    })),
  };
}

/** With a row for the margin of every verdict: one in mixed units is another in the other system. */
function withMargins(design: Design): Design {
  const margin = (row: Row): Row[] => {
    if (row.type !== 'verdict') return [];
    const { judged, label } = row;
    const [, have = '', need = '0'] = 'when' in judged ? (/^(.+) [<>]= (.+)$/.exec(judged.when) ?? []) : [];
    const ratio = 'margin' in judged ? judged.margin : need === '0' ? undefined : `(${have})/(${need})`;
    return ratio === undefined ? [] : [result(`margin of ${label}`, label, ratio, label, { kind: 'ratio' })];
  };
  const sections = design.sections.map(({ rows, ...section }) => ({
    ...section,
    rows: rows.flatMap((row) => [row, ...margin(row)]),
  }));
  return { ...design, sections };
}

const HEADS = 4;
const VALUE = 3;
const UNIT = 4;

type Pair = readonly [value: CellValue, unit: string, other: CellValue, otherUnit: string];

/** The values of the first sheet with their units, from both workbooks. */
function values(a: Workbook, b: Workbook): Pair[] {
  const [left, right] = [a.sheets[0], b.sheets[0]];
  if (!left || !right) throw new Error('A workbook without sheets');
  const [inLeft, inRight] = [cellFinder(left), cellFinder(right)];
  const pair = (row: number, column: number, unitRow: number, unitColumn: number): Pair => [
    inLeft(row, column)?.value ?? null,
    String(inLeft(unitRow, unitColumn)?.value ?? ''),
    inRight(row, column)?.value ?? null,
    String(inRight(unitRow, unitColumn)?.value ?? ''),
  ];
  const list = left.cells.find(
    ({ row, column, value }) => row > HEADS && column === 0 && value === 'Unit',
  )?.row;
  const isListed = (row: number) =>
    list !== undefined && row >= list - 1 && row <= list + listLength(left, list);
  const rows = left.cells.filter(({ column, row }) => column === VALUE && row > HEADS && !isListed(row));
  const listed = left.cells.filter(({ row }) => row !== list && row !== (list ?? 0) - 1 && isListed(row));
  return [
    ...rows.map(({ row }) => pair(row, VALUE, row, UNIT)),
    ...listed
      .map(({ row, column }) => pair(row, column, list ?? 0, column))
      .filter(([, unit]) => unit !== 'own unit'),
  ];
}

function listLength(sheet: Sheet, unitRow: number): number {
  const at = cellFinder(sheet);
  let length = 0;
  while ((at(unitRow + length + 1, 0)?.value ?? null) !== null) length++;
  return length;
}

function kindsOf(unit: string, other: string) {
  const symbol = (text: string) => (text === '–' ? '' : text);
  return (Object.keys(KINDS) as Kind[]).flatMap((kind) => {
    const [from, to] = [findUnit(kind, symbol(unit)), findUnit(kind, symbol(other))];
    return from && to ? [{ from, to }] : [];
  });
}

function namedRows({ sheets: [sheet] }: Workbook): string[][] {
  if (!sheet) return [];
  const at = cellFinder(sheet);
  const text = (row: number, column: number) => String(at(row, column)?.value ?? '');
  const last = sheet.cells.find(({ column, value }) => column === 0 && value === 'Cautions')?.row ?? 0;
  const heads = sheet.cells.filter(({ row }) => row === HEADS);
  const [note = 0, formula = 0] = ['Note', 'Formula'].map(
    (head) => heads.find(({ value }) => value === head)?.column,
  );
  const list = sheet.cells.find(
    ({ row, column, value }) => row > HEADS && column === 0 && value === 'Unit',
  )?.row;
  const inList = (row: number) =>
    list !== undefined && row >= list - 1 && row <= list + listLength(sheet, list);
  const words = new Set(sheet.merges.filter(({ left }) => left === VALUE).map(({ top }) => top));
  return Array.from({ length: last }, (_, row) => row)
    .filter((row) => row > HEADS && text(row, formula) !== '' && !inList(row))
    .map((row) => [0, VALUE, ...(words.has(row) ? [] : [UNIT]), note, formula].map((one) => text(row, one)));
}

/** The longest chain of cells with our functions, each waiting for the one before. */
function depth(workbook: Workbook): number {
  const found = new Map<string, { readonly formula: string; readonly sheet: string }>();
  const anchor = new Map<string, string>();
  for (const { name, cells } of workbook.sheets) {
    for (const { row, column, formula, spill } of cells) {
      if (formula === undefined) continue;
      const key = `${name}!${cellAddress(row, column)}`;
      found.set(key, { formula, sheet: name });
      for (const cell of spill ? cellsOf(spill) : [cellAddress(row, column)])
        anchor.set(`${name}!${cell}`, key);
    }
  }
  const known = new Map<string, number>();
  const levels = (key: string): number => {
    const cell = found.get(key);
    if (!cell) return 0;
    const done = known.get(key);
    if (done !== undefined) return done;
    // FORMULATEXT shows a formula and waits for no value.
    const own = cell.formula.startsWith('FORMULATEXT') ? [] : references(cell.formula, cell.sheet);
    const before = own.map((reference) => levels(anchor.get(reference) ?? ''));
    const nested = Math.max(0, nesting(cell.formula));
    const level = Math.max(0, ...before) + nested;
    known.set(key, level);
    return level;
  };
  return Math.max(...[...found.keys()].map(levels));
}

/** How deep our functions stand inside one another in a formula. */
function nesting(formula: string): number {
  const open: boolean[] = [];
  let deepest = 0;
  const tokens = tokenize(formula);
  tokens.forEach(({ kind, text }, i) => {
    if (text === '(') {
      open.push(tokens[i - 1]?.text.startsWith('MOLD.') === true);
      deepest = Math.max(deepest, open.filter(Boolean).length);
    } else if (kind === 'close' && text === ')') open.pop();
  });
  return deepest;
}

function references(formula: string, home: string): string[] {
  const tokens = tokenize(formula);
  return tokens.flatMap(({ kind, text }, i) => {
    if (kind !== 'name') return [];
    if (tokens[i - 1]?.text === ':') return [];
    const named = tokens[i - 1]?.text === '!' ? tokens[i - 2]?.text.replace(/^'|'$/g, '') : undefined;
    const to = tokens[i + 1]?.text === ':' ? tokens[i + 2]?.text : undefined;
    const area = parseArea((to === undefined ? text : `${text}:${to}`).replaceAll('$', ''));
    return area ? cellsOf(area).map((cell) => `${named ?? home}!${cell}`) : [];
  });
}

function cellsOf({ top, bottom, left, right }: NonNullable<ReturnType<typeof parseArea>>): string[] {
  const cells: string[] = [];
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) cells.push(cellAddress(row, column));
  }
  return cells;
}
