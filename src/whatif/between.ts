import { isCall, tokenize } from '../cells/formulaTokens';
import type { Token } from '../cells/formulaTokens';
import { areasOverlap, cellArea, parseArea, parseCell } from '../cells/address';
import { readReference } from '../cells/reference';
import { cellFinder } from '../package/model';
import type { Area } from '../cells/address';
import type { Cell, Workbook } from '../package/model';
import { isSameName } from './plan';
import type { CellRef } from './plan';

/** What these read does not stand in their text, or is not a cell's value. */
const OPAQUE = /^(?:INDIRECT|OFFSET|FORMULATEXT|ISFORMULA|CELL|INFO|SUBTOTAL|AGGREGATE|LAMBDA|LET)$/i;

/** Larger areas are taken to hold a blank cell. */
const MOST_LOOKED_AT = 10_000;

interface Place {
  readonly sheet: number;
  readonly area: Area;
}

interface Formula {
  readonly sheet: number;
  readonly cell: Cell;
}

/**
 * The workbook with only those formulas that lie between the inputs and the results, so that calculating it again and
 * again costs no more than it must: all others become the values they have. Where the text of a formula does not say
 * what it reads, all stay. The inputs hold values in any case.
 */
export function between(
  workbook: Workbook,
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): Workbook {
  // A value over the formula of a spill clears all that it filled.
  const anchors = inputs.map((input) => placeOf(workbook, input));
  const sources = anchors.map((anchor) => spillFrom(workbook, anchor));
  const kept = formulasBetween(
    workbook,
    sources,
    results.map((result) => placeOf(workbook, result)),
  );
  const stays = (cell: Cell, sheet: number) =>
    cell.formula === undefined || ((kept?.has(cell) ?? true) && !isIn(anchors, { sheet, cell }));
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet, index) => ({
      ...sheet,
      cells: sheet.cells.flatMap((cell) => {
        const inSpill = isIn(sources, { sheet: index, cell }) && !isIn(anchors, { sheet: index, cell });
        return inSpill ? [] : [stays(cell, index) ? cell : valueOnly(cell)];
      }),
    })),
  };
}

/** Undefined where a formula on the way does not say what it reads. */
function formulasBetween(
  workbook: Workbook,
  sources: readonly Place[],
  results: readonly Place[],
): Set<Cell> | undefined {
  const under = formulaFinder(workbook);
  const named = namedPlaces(workbook);
  const seen = new Set<Formula>();
  const readers = new Map<Formula, Formula[]>();
  const varying: Formula[] = [];
  const open = results.flatMap(under);
  for (let formula = open.pop(); formula; formula = open.pop()) {
    if (seen.has(formula) || isIn(sources, formula)) continue;
    seen.add(formula);
    const places = placesIn(formula.cell.formula ?? '', formula.sheet, workbook, named);
    if (!places) return undefined;
    if (places.some((place) => sources.some((source) => meets(source, place)))) varying.push(formula);
    for (const read of places.flatMap(under)) {
      const others = readers.get(read);
      if (others) others.push(formula);
      else readers.set(read, [formula]);
      open.push(read);
    }
  }
  const kept = new Set<Cell>();
  for (let formula = varying.pop(); formula; formula = varying.pop()) {
    if (kept.has(formula.cell)) continue;
    kept.add(formula.cell);
    varying.push(...(readers.get(formula) ?? []));
  }
  return kept;
}

/** Finds the formulas whose results stand in a place, or could come to stand there. */
function formulaFinder(workbook: Workbook): (place: Place) => readonly Formula[] {
  const sheets = workbook.sheets.map((one, sheet) => ({
    find: cellFinder(one),
    formulas: one.cells.flatMap((cell): Formula[] => (cell.formula === undefined ? [] : [{ sheet, cell }])),
  }));
  const found = new Map<string, readonly Formula[]>();
  return (place) => {
    const key = JSON.stringify(place);
    const known = found.get(key);
    if (known) return known;
    const { sheet, area } = place;
    const { find = () => undefined, formulas = [] } = sheets[sheet] ?? {};
    // A result may grow into a cell that is blank now.
    const hasBlank = !everyCell(area, (row, column) => {
      const cell = find(row, column);
      return cell !== undefined && (cell.formula !== undefined || cell.value !== null);
    });
    const under = formulas.filter(
      ({ cell }) =>
        areasOverlap(extentOf(cell), area) ||
        (hasBlank && cell.row <= area.bottom && cell.column <= area.right),
    );
    found.set(key, under);
    return under;
  };
}

function everyCell(
  { top, left, bottom, right }: Area,
  holds: (row: number, column: number) => boolean,
): boolean {
  if ((bottom - top + 1) * (right - left + 1) > MOST_LOOKED_AT) return false;
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) if (!holds(row, column)) return false;
  }
  return true;
}

const extentOf = (cell: Cell): Area => cell.spill ?? cellArea(cell.row, cell.column);

const meets = (a: Place, b: Place): boolean => a.sheet === b.sheet && areasOverlap(a.area, b.area);

const isIn = (places: readonly Place[], { sheet, cell }: Formula): boolean =>
  places.some((place) => meets(place, { sheet, area: cellArea(cell.row, cell.column) }));

const valueOnly = ({ row, column, value, style }: Cell): Cell => ({ row, column, value, style });

const placeOf = (workbook: Workbook, cell: CellRef): Place => ({
  sheet: indexOf(workbook, cell.sheet),
  area: cellArea(cell.row, cell.column),
});

const spillFrom = (workbook: Workbook, { sheet, area }: Place): Place => {
  const cell = workbook.sheets[sheet]?.cells.find(
    ({ row, column }) => row === area.top && column === area.left,
  );
  return { sheet, area: cell?.spill ?? area };
};

const indexOf = (workbook: Workbook, name: string): number =>
  workbook.sheets.findIndex((sheet) => isSameName(sheet.name, name));

/** What a formula reads; undefined where its text does not say. */
function placesIn(
  formula: string,
  own: number,
  workbook: Workbook,
  named: ReadonlyMap<string, Place>,
): Place[] | undefined {
  const tokens = tokenize(formula).filter(({ kind }) => kind !== 'space');
  const places: Place[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    // Tables, whole rows and ranges whose ends are worked out.
    if (token.kind === 'bracket' || token.text === ':') return undefined;
    if (token.kind === 'quoted' || (token.kind === 'name' && tokens[at + 1]?.text === '!')) continue;
    if (token.kind !== 'name') continue;
    if (isCall(tokens, at)) {
      if (OPAQUE.test(token.text)) return undefined;
      continue;
    }
    if (/^(?:TRUE|FALSE)$/i.test(token.text)) continue;
    const isQualified = tokens[at - 1]?.text === '!';
    const place = isQualified ? undefined : named.get(token.text.toLowerCase());
    if (place && tokens[at + 1]?.text !== ':') {
      places.push(place);
      continue;
    }
    const sheet = isQualified ? indexOf(workbook, sheetName(tokens[at - 2])) : own;
    if (!parseCell(token.text) || sheet < 0) return undefined;
    const isRange = tokens[at + 1]?.text === ':';
    const area = parseArea(isRange ? `${token.text}:${tokens[at + 2]?.text ?? ''}` : token.text);
    if (!area) return undefined;
    places.push({ sheet, area });
    if (isRange) at += 2;
  }
  return places;
}

/** Names of the whole workbook that are plain cells, and stand for nothing else on any sheet; in lower case. */
function namedPlaces(workbook: Workbook): ReadonlyMap<string, Place> {
  const local = new Set(
    workbook.names.flatMap((one) => (one.sheet === undefined ? [] : [one.name.toLowerCase()])),
  );
  return new Map(
    workbook.names.flatMap(({ name, formula }): [string, Place][] => {
      const read = local.has(name.toLowerCase()) ? undefined : readReference(formula);
      const sheet = read ? indexOf(workbook, read.sheet) : -1;
      return read && sheet >= 0 && isFixed(formula) ? [[name.toLowerCase(), { sheet, area: read.area }]] : [];
    }),
  );
}

/** Another cell of the name would be meant from another cell: only names with every sign of `$` are the same everywhere. */
const isFixed = (formula: string): boolean => /!\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?$/i.test(formula);

const sheetName = (token: Token | undefined): string =>
  token?.kind === 'quoted' ? token.text.slice(1, -1).replaceAll("''", "'") : (token?.text ?? '');
