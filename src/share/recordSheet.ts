/**
 * The originals of a shared copy on a hidden sheet of it, which any program keeps. Each cell is held by a reference that
 * follows it when rows come and go or a sheet is renamed, and so is each area that a formula reads; every line has a
 * checksum of its texts.
 *
 *     A            B                      C          D       E      F         G      H     I
 *     [mark]       basis 2, 2.0.0         [lines]                                          [checksum of all]
 *     cell         =ROWS(Press!$D$12)     Press!D12  is      was    D12:D14   fill   note  [checksum]
 *     outside      =ROWS(Press!$B$3)                 is      was    format    Press  B3    [checksum]
 *     area         =ROWS(Press!$B$3:$B$9) Press!B3:B9                                      [checksum]
 *     added        =ROWS(MoldTables!$A$1) MoldTables                                       [checksum]
 */
import {
  areaAddress,
  cellAddress,
  cellArea,
  columnLetters,
  parseCell,
  quotedSheet,
  type Area,
} from '../cells/address';
import { cellFinder, type Sheet, type Workbook } from '../package/model';
import type { CellDescription, SheetDescription } from '../package/description';
import { rewriteFormula } from '../package/structure/formula';
import type { Placed } from '../package/structure/mapping';
import { checksum } from './checksum';
import { EVERY_CELL, Moves } from './moves';
import type { Original, OriginalCell, OriginalOutside } from './original';

export const RECORD_NAME = 'MoldOriginals';

/** The sheet is known by it: another program may show it, and a person may rename it. */
const MARK = 'moldsheet originals 2';
const HEAD_ROW = 2;
const FIRST_ROW = 4;
const PLACE = 2;
/** Texts of a line, from column C on; the checksum stands behind them. */
const TEXTS = 6;

type Kind = 'cell' | 'outside' | 'area' | 'added';

interface Line {
  readonly kind: Kind;
  readonly holds: Placed;
  readonly texts: readonly string[];
}

/** The sheet for a copy whose cells are as the original tells. */
export function recordSheet(name: string, original: Original): SheetDescription {
  const added = new Set(original.added.map((one) => one.toLowerCase()));
  const lines: Line[] = [
    ...original.cells.map(({ sheet, row, column, is, was = '', spill = '', fill = '', note = '' }): Line => ({
      kind: 'cell',
      holds: { sheet, ...cellArea(row, column) },
      texts: [`${quotedSheet(sheet)}!${cellAddress(row, column)}`, is, was, spill, fill, note],
    })),
    ...original.outside.map(({ what, name, sheet, row, column, is, was }): Line => ({
      kind: 'outside',
      holds: { sheet: sheet === '' ? (original.cells[0]?.sheet ?? name) : sheet, ...cellArea(row, column) },
      texts: [name, is, was, what, sheet, cellAddress(row, column)],
    })),
    ...areasRead(original)
      .filter(({ sheet }) => !added.has(sheet.toLowerCase()))
      .map((holds): Line => ({ kind: 'area', holds, texts: [placedText(holds)] })),
    ...original.added.map((sheet): Line => ({
      kind: 'added',
      holds: { sheet, top: 0, bottom: 0, left: 0, right: 0 },
      texts: [sheet],
    })),
  ];
  const cells: Record<string, CellDescription | string | number> = {
    A1: 'The formulas of the workbook that this copy was made of. Moldsheet needs this sheet to bring them back: leave it as it is.',
  };
  const sums = lines.map((line, i) => {
    const row = FIRST_ROW + i + 1;
    const sum = checksum([line.kind, ...line.texts].join('\n'));
    cells[`A${row}`] = line.kind;
    cells[`B${row}`] = { formula: holding(line.holds), value: line.holds.bottom - line.holds.top + 1 };
    line.texts.forEach((text, at) => {
      if (text !== '') cells[`${columnLetters(PLACE + at)}${row}`] = text;
    });
    cells[`${columnLetters(PLACE + TEXTS)}${row}`] = sum;
    return sum;
  });
  const head = HEAD_ROW + 1;
  cells[`A${head}`] = MARK;
  cells[`B${head}`] = original.basis;
  cells[`C${head}`] = lines.length;
  cells[`${columnLetters(PLACE + TEXTS)}${head}`] = checksum([original.basis, ...sums].join('\n'));
  return { name, state: 'hidden', columns: { A: 12, B: 28, C: 20, 'D:E': 50 }, cells };
}

const fixed = (area: Area): string =>
  [
    [area.top, area.left],
    [area.bottom, area.right],
  ]
    .map(([row = 0, column = 0]) => `$${columnLetters(column)}$${row + 1}`)
    .filter((corner, i, all) => i === 0 || corner !== all[0])
    .join(':');

const placedText = ({ sheet, ...area }: Placed): string => `${quotedSheet(sheet)}!${areaAddress(area)}`;

const holding = ({ sheet, ...area }: Placed): string => `ROWS(${quotedSheet(sheet)}!${fixed(area)})`;

/** Every area that a formula of the original or of the copy reads, once each. */
function areasRead({ cells, outside }: Original): Placed[] {
  const found = new Map<string, Placed>();
  const texts = [...cells, ...outside.map(({ is, ...one }) => ({ ...one, is: `=${is}` }))];
  for (const { sheet, is, was } of texts) {
    for (const formula of [was ?? '', is.startsWith('=') ? is.slice(1) : '']) {
      for (const area of areasIn(formula, sheet)) found.set(placedText(area).toLowerCase(), area);
    }
  }
  return [...found.values()];
}

function areasIn(formula: string, sheet: string): Placed[] {
  const areas: Placed[] = [];
  rewriteFormula(formula, {
    from: sheet,
    to: sheet,
    area: (where, area) => {
      // A whole sheet stands for a name that belongs to it.
      areas.push({ ...(areaAddress(area) === areaAddress(EVERY_CELL) ? CORNER : area), sheet: where });
      return { ...area, sheet: where };
    },
  });
  return areas;
}

const CORNER: Area = { top: 0, left: 0, bottom: 0, right: 0 };

export interface ReadRecord extends Original {
  /** The sheet that holds it. */
  readonly sheet: string;
  readonly moves: Moves;
  /** What in it does not hold what was written, in words. */
  readonly damage: readonly string[];
}

/** The record of a copy; undefined where there is none. */
export function readRecord(workbook: Workbook): ReadRecord | undefined {
  for (const sheet of workbook.sheets) {
    const find = cellFinder(sheet);
    if (find(HEAD_ROW, 0)?.value === MARK) return readLines(sheet, workbook);
  }
  return undefined;
}

function readLines(record: Sheet, workbook: Workbook): ReadRecord {
  const find = cellFinder(record);
  const text = (row: number, column: number): string => String(find(row, column)?.value ?? '');
  const moves = new Moves(workbook.sheets.map(({ name }) => name));
  const damage: string[] = [];
  const cells: OriginalCell[] = [];
  const outside: OriginalOutside[] = [];
  const added: string[] = [];
  const sums: string[] = [];
  const last = record.cells.reduce((most, { row }) => Math.max(most, row), FIRST_ROW - 1);
  for (let row = FIRST_ROW; row <= last; row++) {
    const kind = text(row, 0);
    const texts = Array.from({ length: TEXTS }, (_, at) => text(row, PLACE + at));
    const sum = text(row, PLACE + TEXTS);
    if (kind === '' && sum === '' && texts.every((one) => one === '')) continue;
    const [place = '', is = '', was = '', spill = '', fill = '', note = ''] = texts;
    const whole = kind === 'cell' || kind === 'outside' ? texts : [place];
    const held = areaHeld(find(row, 1)?.formula, record.name);
    if (kind === 'outside') {
      const at = parseCell(note);
      if (checksum([kind, ...texts].join('\n')) !== sum || !at)
        damage.push(`line ${row + 1} of the sheet ${record.name}`);
      else {
        sums.push(sum);
        outside.push({ what: spill, name: place, sheet: fill, ...at, is, was });
        if (fill !== '' && held)
          moves.add({ ...cellArea(at.row, at.column), sheet: fill }, held === 'gone' ? undefined : held);
      }
      continue;
    }
    const from = kind === 'added' ? { ...CORNER, sheet: place } : placeOf(place);
    if (checksum([kind, ...whole].join('\n')) !== sum || !held || !from) {
      damage.push(`line ${row + 1} of the sheet ${record.name}${place === '' ? '' : `, for ${place}`}`);
      continue;
    }
    sums.push(sum);
    moves.add(from, held === 'gone' ? undefined : held);
    if (kind === 'added') added.push(held === 'gone' ? place : held.sheet);
    if (kind !== 'cell') continue;
    cells.push({
      sheet: from.sheet,
      row: from.top,
      column: from.left,
      is,
      ...(was !== '' && { was }),
      ...(spill !== '' && { spill }),
      ...(fill !== '' && { fill }),
      ...(note !== '' && { note }),
    });
  }
  const basis = text(HEAD_ROW, 1);
  const wanted = Number(find(HEAD_ROW, PLACE)?.value ?? 0);
  const all = checksum([basis, ...sums].join('\n'));
  const missing = wanted - sums.length - damage.length;
  if (missing > 0) damage.push(`${missing} of its ${wanted} lines, which are gone`);
  else if (damage.length === 0 && text(HEAD_ROW, PLACE + TEXTS) !== all) damage.push('its first line');
  return { basis, added, cells, outside, sheet: record.name, moves, damage };
}

const placeOf = (text: string): Placed | undefined => areasIn(text, '')[0];

/** Where a held area lies now; undefined where nothing like it was ever written there. */
function areaHeld(formula: string | undefined, record: string): Placed | 'gone' | undefined {
  const inner = /^ROWS\((.*)\)$/i.exec((formula ?? '').trim())?.[1];
  if (inner === undefined) return undefined;
  if (inner.includes('#REF!')) return 'gone';
  const [area, ...more] = areasIn(inner, record);
  return more.length > 0 ? undefined : area;
}
