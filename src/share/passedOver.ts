import { cellAddress, quotedSheet, areaAddress, areasOverlap, cellArea, type Area } from '../cells/address';
import { CellError } from '../cells/value';
import { isCall, tokenize } from '../cells/formulaTokens';
import type { CellChange } from '../package/changes';
import { allOf } from '../derive/native';
import type { Sheet } from '../package/model';
import type { CalculatedWorkbook, SheetRange } from '../workbook/calculated';
import { constantText, placeKey, type Place } from '../workbook/references';
import type { CallsOfFormula } from './convert';
import { isClockAlone, OTHER_INPUTS } from './frozen';
import type { HelperSheets } from './helperSheets';
import type { NamedFormulas } from './namedFormulas';
import { runsOf } from './runs';
import { readsLines } from './working';
import { cellsIn, inGroups, sizeOf, stillIs, type Question } from './questions';

/** Functions that answer where a cell is in error, and do not pass the error on. */
const PASSES_OVER =
  /^(?:IFERROR|IFNA|IS(?:ERROR|ERR|NA|NUMBER|TEXT|NONTEXT|LOGICAL)|ERROR\.TYPE|TYPE|COUNT(?:A|BLANK|IFS?)?|SUMIFS?|AVERAGEIFS?|MAXIFS|MINIFS|AGGREGATE|X?MATCH|[XVH]?LOOKUP|FILTER|D(?:SUM|COUNTA?|GET|MAX|MIN|AVERAGE|PRODUCT|STDEVP?|VARP?))$/i;

/** A range of more cells is asked as a whole. */
const MOST_ASKED = 400;

/** More lines of a working are not asked one by one. */
const MOST_LINES = 50;
/** So far below what a sheet holds a call may be filled down. */
const ROWS_BELOW = 200;
const MOST_FREE = 5000;
/** The number of #REF! among errors. */
const REF = 4;

/** A formula of ours that lives in the copy, itself or by a name in it, and the cells that it fills there. */
export interface LiveFormula extends Place {
  readonly formula: string;
  readonly area: Area;
  readonly calls: CallsOfFormula;
}

interface Node extends SheetRange, Place {
  readonly formula: string;
  readonly live?: LiveFormula;
}

/**
 * A copy refuses some entries that the function itself may take, such as another text with a unit. Where a formula passes
 * over errors (`IFERROR(…, 0)`, `COUNT(…)`), such a refusal would come out as a number: it says that it cannot tell
 * instead, while what is in error rests on entries that the copy was not made for.
 */
export class PassedOver {
  private readonly nodes: Node[];
  private readonly byPlace = new Map<string, Node>();
  private readonly asked = new Map<string, { readonly holds: string; readonly isRead: boolean }>();
  private readonly questions = new Map<LiveFormula, string>();

  constructor(
    private readonly calculated: CalculatedWorkbook,
    private readonly names: NamedFormulas,
    live: readonly LiveFormula[],
    private readonly helpers: HelperSheets,
  ) {
    const own = new Map(live.map((one) => [placeKey(one.sheet.name, one.row, one.column), one]));
    this.nodes = calculated.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }): Node[] => {
        if (formula === undefined) return [];
        const found = own.get(placeKey(sheet.name, row, column));
        const area = calculated.spill(sheet, row, column) ?? cellArea(row, column);
        return [{ sheet, row, column, formula, area, ...(found && { live: found }) }];
      }),
    );
    const over = live.length === 0 ? [] : this.nodes.filter(({ formula }) => this.passesOver(formula));
    if (over.length === 0) return;
    for (const node of this.nodes)
      for (const { row, column } of cellsIn(node.sheet, node.area))
        this.byPlace.set(placeKey(node.sheet.name, row, column), node);
    for (const node of over) this.ask(node);
  }

  /** A formula that passes over errors, with its answer only where the copy can tell. */
  asking(change: CellChange): CellChange {
    const { formula } = change;
    const asked = this.asked.get(placeKey(change.sheet, change.row, change.column));
    if (formula === undefined || !asked) return change;
    const words = constantText(OTHER_INPUTS);
    const { sheet, row, column } = change;
    // In another cell it would pass over what nobody has asked.
    const isAstray = this.helpers.mayGoAstray(formula, change);
    const when = isAstray ? allOf([asked.holds, this.helpers.standsIn(sheet, row, column)]) : asked.holds;
    // A text would be passed over in its turn, or be compared with a limit.
    return {
      ...change,
      formula: `IF(${when},${formula},${asked.isRead ? `VALUE(${words})` : words})`,
    };
  }

  rests(sheet: string, row: number, column: number): boolean {
    return this.asked.has(placeKey(sheet, row, column));
  }

  private ask(node: Node): void {
    const under = this.under(node);
    const holds = [
      ...new Set(
        under.flatMap((one) => [
          this.holds(one),
          ...(one === node.live || !this.passesOver(one.formula) ? [] : this.answers(one)),
        ]),
      ),
    ];
    if (holds.length === 0) return;
    holds.push(...this.noOthers(node));
    const cells = cellsIn(node.sheet, node.area);
    const isRead = cells.some(({ sheet, row, column }) => this.calculated.isReadAt(sheet, row, column));
    const text = allOf(holds);
    for (const { row, column } of cells)
      this.asked.set(placeKey(node.sheet.name, row, column), { holds: text, isRead });
  }

  /** The formulas of ours that a formula rests on, itself among them. */
  private under(node: Node): LiveFormula[] {
    const seen = new Set<Node>();
    const open = [node];
    for (let one = open.pop(); one; one = open.pop()) {
      if (seen.has(one)) continue;
      seen.add(one);
      const { areas, isVolatile } = this.calculated.reads(one.sheet, one.row, one.column);
      if (isVolatile && !this.names.textsOf(one.formula).every(isClockAlone)) open.push(...this.nodes);
      else for (const area of areas) open.push(...this.inside(area));
    }
    return [...seen].flatMap(({ live }) => live ?? []);
  }

  private inside({ sheet, area }: SheetRange): readonly Node[] {
    if (sizeOf(area) > this.nodes.length)
      return this.nodes.filter((one) => one.sheet === sheet && areasOverlap(one.area, area));
    return cellsIn(sheet, area).flatMap(
      ({ row, column }) => this.byPlace.get(placeKey(sheet.name, row, column)) ?? [],
    );
  }

  /** The text of the cell that says whether the copy can tell what a formula gives. */
  private holds(live: LiveFormula): string {
    const known = this.questions.get(live);
    if (known !== undefined) return known;
    const { sheet, row, column, formula, area, calls } = live;
    const own = `${quotedSheet(sheet.name)}!${areaAddress(area)}`;
    const results = this.passesOver(formula) ? calls.results : [own];
    const asked = this.calculated.reads(sheet, row, column).areas.flatMap((one) => this.entries(one, calls));
    const isRight = `${results.map(countErrors).join('+')}=0`;
    const lines = calls.results.filter(readsLines);
    const isWhole = lines.length === calls.results.length && lines.length <= MOST_LINES;
    const text = this.helpers.placeQuestions(
      `${sheet.name}!${cellAddress(row, column)}`,
      [...inGroups(asked), ...(isWhole ? this.inPlace(live, lines) : [])],
      isRight,
    );
    this.questions.set(live, text);
    return text;
  }

  /**
   * Where a cell is in error, whether that is from its own working or from what it reads, and all of these are there: not
   * where it holds the formula of another cell, or rows of the working were deleted.
   */
  private inPlace({ sheet, row, column, formula, area }: LiveFormula, lines: readonly string[]): Question[] {
    const own = `${quotedSheet(sheet.name)}!${areaAddress(area)}`;
    const isThere = lines.map((line) => `IF(ISERROR(${line}),ERROR.TYPE(${line})<>${REF},TRUE)`);
    const known = { symbol: 'the working', text: allOf(isThere) };
    if (this.passesOver(formula)) return [known];
    const { areas } = this.calculated.reads(sheet, row, column);
    const read = areas
      .filter((one) => sizeOf(one.area) <= MOST_ASKED)
      .map((one) => `${quotedSheet(one.sheet.name)}!${areaAddress(one.area)}`);
    const errors = [...lines, ...read].map(countErrors).join('+');
    return [known, { symbol: own, text: `NOT(${errors}=0)` }];
  }

  /** Whether a formula that passes over errors is in no error itself, which it was not when the copy was made. */
  private answers({ sheet, row, column, area }: LiveFormula): string[] {
    const cells = cellsIn(sheet, area);
    if (cells.some((one) => this.calculated.at(sheet, one.row, one.column) instanceof CellError)) return [];
    const cell = `${quotedSheet(sheet.name)}!${areaAddress(area)}`;
    const address = `${sheet.name}!${cellAddress(row, column)}`;
    return [this.helpers.placeQuestions(address, [], `${countErrors(cell)}=0`)];
  }

  /** Whether no other cells of a range of results came to be in error, as those do that a call was copied to. */
  private noOthers(node: Node): string[] {
    const runs = this.calculated.reads(node.sheet, node.row, node.column).areas.flatMap(({ sheet, area }) => {
      const near = { ...area, bottom: Math.min(area.bottom, lastRow(sheet) + ROWS_BELOW) };
      if (sizeOf(near) > MOST_FREE) return [];
      const cells = cellsIn(sheet, near);
      const free = cells.filter(({ row, column }) => this.isFree(sheet, row, column));
      if (free.length === cells.length) return [];
      return columnsOf(free).map((run) => `${quotedSheet(sheet.name)}!${areaAddress(run)}`);
    });
    if (runs.length === 0) return [];
    const address = `${node.sheet.name}!${cellAddress(node.row, node.column)}`;
    return [this.helpers.placeQuestions(address, [], `${runs.map(countErrors).join('+')}=0`)];
  }

  /** Whether a cell has no formula, and is in no error either. */
  private isFree(sheet: Sheet, row: number, column: number): boolean {
    return (
      !this.byPlace.has(placeKey(sheet.name, row, column)) &&
      !(this.calculated.at(sheet, row, column) instanceof CellError)
    );
  }

  private passesOver(formula: string): boolean {
    return this.names.textsOf(formula).some(passesOver);
  }

  /** Whether the cells hold something of the kind that they held when the copy was made. */
  private entries({ sheet, area }: SheetRange, { settles, words }: CallsOfFormula): Question[] {
    if (sizeOf(area) > MOST_ASKED) {
      const range = `${quotedSheet(sheet.name)}!${areaAddress(area)}`;
      const count = this.calculated.evaluate(`COUNT(${range})`)[0]?.[0];
      return [{ symbol: range, text: `COUNT(${range})=${String(count)}` }];
    }
    return cellsIn(sheet, area).map(({ row, column, text }): Question => {
      const value = this.calculated.at(sheet, row, column);
      // A calculated cell may be in error for reasons of its own, which are asked where it is calculated.
      const isOther = settles ? `ISERROR(${text})` : `NOT(ISTEXT(${text}))`;
      const known = (words.get(placeKey(sheet.name, row, column)) ?? []).map(
        (word) => `TRIM(${text})=${constantText(word)}`,
      );
      const own = typeof value === 'string' || settles ? [stillIs(text, value)] : [];
      const all = [isOther, ...(settles ? [] : known), ...own];
      const [only = ''] = all;
      return { symbol: text, text: all.length === 1 ? only : anyWithoutError(all) };
    });
  }
}

const countErrors = (text: string): string => `SUMPRODUCT(ISERROR(${text})*1)`;

const lastRow = ({ cells }: Sheet): number => cells.reduce((last, { row }) => Math.max(last, row), 0);

/** Cells of a sheet as columns of cells that lie one under another. */
function columnsOf(cells: readonly { readonly row: number; readonly column: number }[]): Area[] {
  const columns = [...new Set(cells.map(({ column }) => column))];
  return columns.flatMap((column) =>
    runsOf(cells.flatMap((one) => (one.column === column ? [one.row] : []))).map(({ from, to }): Area => ({
      top: from,
      bottom: to,
      left: column,
      right: column,
    })),
  );
}

/** Conditions of which one must hold; a cell in error answers the first. */
const anyWithoutError = ([first = '', ...more]: readonly string[]): string =>
  `IF(${first},TRUE,OR(${more.join(',')}))`;

/** Whether a formula answers where a cell is in error. */
export function passesOver(formula: string): boolean {
  const tokens = tokenize(formula);
  return tokens.some(({ kind, text }, i) => kind === 'name' && isCall(tokens, i) && PASSES_OVER.test(text));
}
