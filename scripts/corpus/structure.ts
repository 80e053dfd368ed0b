/**
 * Does each act on the structure of foreign workbooks and compares the files part by part: nothing may be lost that was
 * not deleted, every formula must speak of the cells it spoke of before, and have the value that it had before.
 * `npm run corpus -- --structure FOLDER`.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { worksheetFunctions as functions } from '../../src/call/functions';
import { areaContains, cellAddress, parseArea, type Area } from '../../src/cells/address';
import { isCall, tokenize } from '../../src/cells/formulaTokens';
import type { Cell, Sheet, Workbook } from '../../src/package/model';
import { readWorkbook, UnreadableWorkbook } from '../../src/package';
import { readText } from '../../src/package/relationships';
import { knownFunctions } from '../../src/package/spelling';
import { CannotChange, changeStructure, type StructureAct } from '../../src/package/structure';
import { planOf } from '../../src/package/structure/plan';
import { parseXml, type XmlElement } from '../../src/package/xml';
import { readZip } from '../../src/package/zip';
import { calculatedFully, compareValues, type Places } from './structureValues';

const IDS = functions.map(({ id }) => id);
const KNOWN = knownFunctions(IDS);

export interface StructureReport {
  readonly files: number;
  readonly acts: number;
  readonly refused: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
  readonly features: Readonly<Record<string, number>>;
  /** Formulas whose values before and after were compared, over all acts. */
  readonly compared: number;
  /** Formulas with another value afterwards, by the reason that a spreadsheet program would have too. */
  readonly reasons: Readonly<Record<string, number>>;
  /** Files that take too long to be calculated after each act. */
  readonly notCalculated: number;
}

/** What a file has that an act could lose. */
const FEATURES: Readonly<Record<string, (parts: ReadonlyMap<string, Uint8Array>) => boolean>> = {
  charts: (parts) => [...parts.keys()].some((part) => /\/charts\/chart/.test(part)),
  tables: (parts) => [...parts.keys()].some((part) => /\/tables\//.test(part)),
  pivots: (parts) => [...parts.keys()].some((part) => /\/pivotTables\//.test(part)),
  rules: (parts) => inSheets(parts, '<conditionalFormatting') || inSheets(parts, '<dataValidation '),
  arrays: (parts) => inSheets(parts, 't="array"'),
  filters: (parts) => inSheets(parts, '<autoFilter'),
  notes: (parts) => [...parts.keys()].some((part) => /comments\d*\.xml$/i.test(part)),
  threads: (parts) => [...parts.keys()].some((part) => part.includes('threadedComments/')),
  sparklines: (parts) => inSheets(parts, 'sparklineGroup '),
  shared: (parts) => inSheets(parts, 't="shared"'),
};

const inSheets = (parts: ReadonlyMap<string, Uint8Array>, text: string): boolean =>
  [...parts].some(
    ([part, bytes]) => /worksheets\/[^/]+\.xml$/.test(part) && Buffer.from(bytes).includes(text),
  );

/** Files of each kind that an act could lose something of. */
const EACH = 5;
/** Cells; larger files would take the time of all others. */
const LARGE = 20_000;

export function tryStructure(folder: string, seed: number, most: number): StructureReport {
  const random = xoroshiro128plus(seed);
  const draw = (below: number): number => uniformInt(random, 0, Math.max(0, below - 1));
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.xls[xm]$/i.test(name))
    .sort();
  const report = {
    files: 0,
    acts: 0,
    refused: {} as Record<string, number>,
    faults: [] as string[],
    features: Object.fromEntries(Object.keys(FEATURES).map((key) => [key, 0])),
    compared: 0,
    reasons: {} as Record<string, number>,
    notCalculated: 0,
  };
  const isWanting = (key: string): boolean => (report.features[key] ?? 0) < EACH;
  while (names.length > 0 && (report.files < most || Object.keys(FEATURES).some(isWanting))) {
    const [name = ''] = names.splice(draw(names.length), 1);
    const bytes = readFileSync(join(folder, name));
    const has = featuresOf(bytes);
    // Each feature often enough, then whatever comes.
    if (!has.some(isWanting) && (report.files >= most || draw(4) !== 0)) continue;
    let workbook: Workbook;
    try {
      workbook = readWorkbook(bytes, IDS);
    } catch (error) {
      if (!(error instanceof UnreadableWorkbook)) report.faults.push(`${name}: read: ${String(error)}`);
      continue;
    }
    if (workbook.sheets.reduce((sum, sheet) => sum + sheet.cells.length, 0) > LARGE) continue;
    for (const key of has) report.features[key] = (report.features[key] ?? 0) + 1;
    report.files += 1;
    tryFile(name, workbook, draw, report);
  }
  return report;
}

function featuresOf(bytes: Uint8Array): string[] {
  try {
    const parts = readZip(bytes);
    return Object.keys(FEATURES).filter((key) => FEATURES[key]?.(parts));
  } catch {
    return [];
  }
}

type Growing = { -readonly [K in keyof StructureReport]: StructureReport[K] } & {
  readonly refused: Record<string, number>;
  readonly faults: string[];
  readonly reasons: Record<string, number>;
};

function tryFile(name: string, workbook: Workbook, draw: (below: number) => number, report: Growing): void {
  const calculated = calculatedFully(workbook);
  if (!calculated) report.notCalculated += 1;
  for (const act of actsFor(workbook, draw)) {
    report.acts += 1;
    const fault = (what: string): void => {
      report.faults.push(`${name}: ${JSON.stringify(act)}: ${what}`);
    };
    try {
      const after = changeStructure(workbook, act, KNOWN);
      compare(workbook, after, act).forEach(fault);
      const now = calculated && calculatedFully(after);
      if (!calculated || !now) continue;
      for (const [turn, places] of placesOf(act).entries()) {
        const only = turn > 0 ? act.sheet : undefined;
        const { compared, reasons, faults } = compareValues(calculated, now, places, only);
        report.compared += compared;
        for (const [reason, count] of Object.entries(reasons))
          report.reasons[reason] = (report.reasons[reason] ?? 0) + count;
        faults.slice(0, 3).forEach(fault);
      }
    } catch (error) {
      if (error instanceof CannotChange) {
        const kind = error.message.replace(/"[^"]*"|[A-Z]+\d+(:[A-Z]+\d+)?/g, '…');
        report.refused[kind] = (report.refused[kind] ?? 0) + 1;
      } else
        fault(error instanceof Error ? (error.stack ?? '').split('\n').slice(0, 3).join(' ') : String(error));
    }
  }
}

/** Where an act puts the cells; twice for a copied sheet, whose cells stay and are there once more. */
function placesOf(act: StructureAct): Places[] {
  const stays: Places = (sheet, area) => ({ ...area, sheet });
  const on =
    (to: string): Places =>
    (sheet, area) => ({ ...area, sheet: sheet === act.sheet ? to : sheet });
  switch (act.do) {
    case 'moveSheet':
    case 'hideSheet':
      return [stays];
    case 'renameSheet':
      return [on(act.name)];
    case 'copySheet':
      return [stays, on(act.name)];
    case 'deleteSheet':
      return [(sheet, area) => (sheet === act.sheet ? undefined : { ...area, sheet })];
    default: {
      const plan = planOf(act);
      return [(sheet, area) => plan.area(sheet, area)];
    }
  }
}

/** Prints what was found; 1 where something was lost or wrong. */
export function structureReport(report: StructureReport, seed: string): number {
  const { files, acts, features, refused, faults, compared, reasons, notCalculated } = report;
  console.log(`seed ${seed}: ${files} files, ${acts} acts, ${faults.length} faults`);
  console.log(
    `files with: ${Object.entries(features)
      .map(([name, count]) => `${name} ${count}`)
      .join(', ')}`,
  );
  console.log(
    `${compared} values of formulas compared after the acts (${notCalculated} files take too long to calculate); other values:`,
  );
  for (const [why, count] of Object.entries(reasons).sort(([, a], [, b]) => b - a))
    console.log(`  ${count} times: ${why}`);
  for (const [why, count] of Object.entries(refused).sort(([, a], [, b]) => b - a))
    console.log(`  refused ${count} times: ${why}`);
  for (const fault of faults) console.log(`  FAULT ${fault.slice(0, 500)}`);
  return faults.length > 0 ? 1 : 0;
}

function actsFor(workbook: Workbook, draw: (below: number) => number): StructureAct[] {
  const sheet = workbook.sheets[draw(workbook.sheets.length)];
  if (!sheet) return [];
  const rows = Math.max(2, ...sheet.cells.map(({ row }) => row + 1));
  const columns = Math.max(2, ...sheet.cells.map(({ column }) => column + 1));
  const own = { sheet: sheet.name };
  const area = (): Area => {
    const [top, left] = [draw(rows), draw(columns)];
    return { top, left, bottom: top + draw(3), right: left + draw(2) };
  };
  const other = workbook.sheets[draw(workbook.sheets.length)]?.name ?? sheet.name;
  return [
    { do: 'insert', what: 'rows', ...own, at: draw(rows), count: 1 + draw(3) },
    { do: 'insert', what: 'columns', ...own, at: draw(columns), count: 1 + draw(2) },
    { do: 'delete', what: 'rows', ...own, at: draw(rows), count: 1 + draw(3) },
    { do: 'delete', what: 'columns', ...own, at: draw(columns), count: 1 },
    { do: 'insertCells', ...own, area: area(), shift: 'rows' },
    { do: 'deleteCells', ...own, area: area(), shift: 'columns' },
    { do: 'moveCells', ...own, area: area(), to: { sheet: other, row: rows + 3, column: columns + 1 } },
    { do: 'moveRows', ...own, at: 0, count: 1, to: rows },
    { do: 'renameSheet', ...own, name: 'Renamed (1)' },
    { do: 'moveSheet', ...own, to: draw(workbook.sheets.length) },
    { do: 'copySheet', ...own, name: 'Copy of it' },
    ...(workbook.sheets.length > 1 ? [{ do: 'deleteSheet', ...own } as const] : []),
  ];
}

/** Elements whose number an act may change though nothing is lost: positions, runs, hints. */
const FREE = new Set([
  'row',
  'c',
  'v',
  'f',
  'is',
  't',
  'col',
  'cols',
  'dimension',
  'selection',
  'definedName',
  'definedNames',
  'mergeCell',
  'mergeCells',
  'tableColumn',
  'Override',
  'Relationship',
  'sheet',
]);

function compare(before: Workbook, after: Workbook, act: StructureAct): string[] {
  const faults: string[] = [];
  const deletes = act.do === 'delete' || act.do === 'deleteCells' || act.do === 'deleteSheet';
  for (const part of after.parts.keys()) {
    if (!/\.(xml|rels)$/.test(part)) continue;
    const now = counts(after, part);
    const old = before.parts.has(part) ? counts(before, part) : undefined;
    if (!old || deletes) continue;
    for (const [name, count] of old)
      if (!FREE.has(name) && (now.get(name) ?? 0) < count)
        faults.push(`${part} lost ${count - (now.get(name) ?? 0)} ${name}`);
  }
  if (!deletes)
    for (const part of before.parts.keys())
      if (!after.parts.has(part) && !/calcChain/.test(part)) faults.push(`lost the part ${part}`);
  faults.push(...cellFaults(before, after, act));
  return faults.slice(0, 3);
}

function counts({ parts }: Workbook, part: string): Map<string, number> {
  const found = new Map<string, number>();
  const walk = (element: XmlElement): void => {
    found.set(element.name, (found.get(element.name) ?? 0) + 1);
    element.children.forEach(walk);
  };
  walk(parseXml(readText(parts, part) ?? '', part));
  return found;
}

/** Every cell is where the act puts it, with its value and style, and its formula reads the cells it read. */
function cellFaults(before: Workbook, after: Workbook, act: StructureAct): string[] {
  const faults: string[] = [];
  const [place = () => undefined] = placesOf(act);
  const find = new Map(
    after.sheets.map((sheet) => [
      sheet.name,
      new Map(sheet.cells.map((cell) => [cellAddress(cell.row, cell.column), cell])),
    ]),
  );
  for (const sheet of before.sheets) {
    for (const cell of sheet.cells) {
      const at = place(sheet.name, {
        top: cell.row,
        bottom: cell.row,
        left: cell.column,
        right: cell.column,
      });
      if (!at) continue;
      const now = find.get(at.sheet)?.get(cellAddress(at.top, at.left));
      if (!now) {
        if (cell.value !== null || cell.formula !== undefined)
          faults.push(`${sheet.name}!${cellAddress(cell.row, cell.column)} is gone`);
        continue;
      }
      const spilled = sheet.cells.some(
        (one) => one.spill && one !== cell && areaContains(one.spill, cell.row, cell.column),
      );
      if (!spilled && String(now.value) !== String(cell.value) && !isHeader(before, sheet, cell))
        faults.push(
          `${sheet.name}!${cellAddress(cell.row, cell.column)}: ${String(cell.value)} became ${String(now.value)}`,
        );
      if (now.style !== cell.style)
        faults.push(`${sheet.name}!${cellAddress(cell.row, cell.column)}: another style`);
      if (cell.formula === undefined) continue;
      const expected = references(cell.formula, sheet.name).map(({ sheet: where, area }) =>
        place(where, area),
      );
      const read = references(now.formula ?? '', at.sheet);
      const left = expected.filter((one) => one !== undefined);
      if (
        left.length !== read.length ||
        left.some((one, i) => !sameArea(one, read[i]?.area, read[i]?.sheet))
      ) {
        faults.push(
          `${sheet.name}!${cellAddress(cell.row, cell.column)}: ${cell.formula} reads ${now.formula ?? 'nothing'}`,
        );
      }
    }
  }
  return faults;
}

const isHeader = (_before: Workbook, sheet: Sheet, cell: Cell): boolean =>
  sheet.tables.some(({ area }) => areaContains(area, cell.row, cell.column) && cell.row === area.top);

const sameArea = (
  a: Area & { readonly sheet: string },
  b: Area | undefined,
  sheet: string | undefined,
): boolean =>
  b !== undefined &&
  a.sheet.toLowerCase() === sheet?.toLowerCase() &&
  a.top === b.top &&
  a.bottom === b.bottom &&
  a.left === b.left &&
  a.right === b.right;

/** A second, simpler reading of the references with cells on both ends; those of other workbooks and several sheets left out. */
function references(formula: string, own: string): { readonly sheet: string; readonly area: Area }[] {
  const tokens = tokenize(formula);
  const found: { sheet: string; area: Area }[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const text = tokens[at]?.text ?? '';
    if (tokens[at]?.kind !== 'name' || isCall(tokens, at) || !/^\$?[A-Z]{1,3}\$?\d+$/i.test(text)) continue;
    if (tokens[at + 1]?.text === '!' || tokens[at + 1]?.kind === 'bracket') continue;
    const second = tokens[at + 1]?.text === ':' ? (tokens[at + 2]?.text ?? '') : '';
    const two =
      /^\$?[A-Z]{1,3}\$?\d+$/i.test(second) && !isCall(tokens, at + 2) && tokens[at + 3]?.text !== '!';
    if (tokens[at + 1]?.text === ':' && tokens[at + 3]?.text === '!') continue;
    const area = parseArea((two ? `${text}:${second}` : text).replaceAll('$', ''));
    const mark = tokens[at - 1]?.text === '!';
    const name = mark ? (tokens[at - 2]?.text ?? '').replace(/^'|'$/g, '').replaceAll("''", "'") : own;
    const beyond =
      mark &&
      (tokens[at - 3]?.kind === 'bracket' ||
        tokens[at - 3]?.text === ':' ||
        name.includes('[') ||
        name.includes(':'));
    if (area && !beyond) found.push({ sheet: name, area });
    if (two) at += 2;
  }
  return found;
}
