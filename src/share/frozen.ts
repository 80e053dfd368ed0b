import { CellError, type CellValue } from '../cells/value';
import { areaAddress, areasOverlap, cellArea, cellAddress, quotedSheet, type Area } from '../cells/address';
import { isCall, tokenize } from '../cells/formulaTokens';
import type { Sheet } from '../package/model';
import type { CellChange } from '../package/changes';
import { allOf } from '../derive/native';
import type { CalculatedWorkbook, SheetRange } from '../workbook/calculated';
import { constantText, placeKey, type Place } from '../workbook/references';
import type { HelperSheets } from './helperSheets';
import type { NamedFormulas } from './namedFormulas';
import { cellsIn, COMPARED, inGroups, sizeOf, stillIs, type Question, type WatchedCell } from './questions';

/** Nothing that a person fills in looks like it. */
export const FROZEN_FILL = '#DDD9E6';

export const OTHER_INPUTS = 'made for other inputs: ask for a new copy';

/** A range of so many cells is watched cell by cell, blank or not; of a larger one those that hold something. */
const MOST_BLANK = 2000;
/** More cells than that make a sheet of questions that is larger than the workbook. */
const MOST_WATCHED = 20_000;

/** A value that has no formula in the copy, and the cells that it fills. */
export interface FrozenFormula extends Place {
  readonly formula: string;
  readonly area: Area;
}

/**
 * Frozen values in a copy that lives: each asks whether what it was made from is still there, and so does all that rests
 * on it, so that no verdict is given of numbers that no longer belong together.
 */
export class FrozenWatch {
  /** By place, the cells of the working that say whether the frozen values it rests on still hold, and its formula. */
  private readonly asked = new Map<string, { readonly holds: readonly string[]; readonly formula: string }>();
  /** Places of frozen values that are held for good: what they read cannot be told. */
  readonly unwatched: string[] = [];

  constructor(
    private readonly calculated: CalculatedWorkbook,
    private readonly names: NamedFormulas,
    frozen: readonly FrozenFormula[],
    private readonly helpers: HelperSheets,
  ) {
    const own = new Set<string>();
    const sources: { sheet: Sheet; area: Area; holds: string }[] = [];
    for (const one of frozen) {
      const holds = this.watch(one);
      if (holds === undefined) continue;
      sources.push({ sheet: one.sheet, area: one.area, holds });
      for (const place of placesOf(one.sheet, one.area)) {
        own.add(place);
        this.asked.set(place, { holds: [holds], formula: one.formula });
      }
    }
    if (sources.length > 0) this.follow(sources, own);
  }

  /** A formula that gives its result only while all frozen values that it rests on hold. */
  asking(change: CellChange): CellChange {
    const { sheet, row, column } = change;
    const asked = this.asked.get(placeKey(sheet, row, column));
    if (!asked) return change;
    const text = change.formula ?? frozenText(change.value);
    const when = this.helpers.mayGoAstray(asked.formula, change)
      ? [...asked.holds, this.helpers.standsIn(sheet, row, column)]
      : asked.holds;
    return { ...change, formula: `IF(${allOf(when)},${text},${constantText(OTHER_INPUTS)})` };
  }

  rests(sheet: string, row: number, column: number): boolean {
    return this.asked.has(placeKey(sheet, row, column));
  }

  private watch({ sheet, row, column, formula }: FrozenFormula): string | undefined {
    const questions = this.questions(sheet, row, column, formula);
    if (questions === undefined) {
      this.unwatched.push(`${sheet.name}!${cellAddress(row, column)}`);
      return undefined;
    }
    if (questions.length === 0) return undefined;
    return this.helpers.placeQuestions(`${sheet.name}!${cellAddress(row, column)}`, questions);
  }

  /** Whether all is as it was; undefined where that would be too much to ask. */
  private questions(sheet: Sheet, row: number, column: number, formula: string): Question[] | undefined {
    const { areas, isVolatile } = this.calculated.reads(sheet, row, column);
    const texts = this.names.textsOf(formula);
    const clock = texts.some((text) => /\b(?:TODAY|NOW)\s*\(/i.test(text));
    const isOpaque = isVolatile && !texts.every(isClockAlone);
    // What a text does not name may be anything that somebody typed.
    const all = [...areas, ...(isOpaque ? this.calculated.workbook.sheets.map(everything) : [])];
    const cells = new Map<string, WatchedCell>();
    const counts: Question[] = [];
    for (const [at, { sheet: other, area }] of all.entries()) {
      const isNamed = at < areas.length;
      const isSmall = sizeOf(area) <= MOST_BLANK;
      const found = isSmall ? cellsIn(other, area) : this.usedIn(other, area);
      for (const one of found)
        if (isNamed || !this.calculated.isFormula(other, one.row, one.column)) cells.set(one.text, one);
      if (cells.size > MOST_WATCHED) return undefined;
      if (isNamed && !isSmall) counts.push(this.countOf(other, area, found));
    }
    const asked = [...cells.values()].map(({ text, sheet: other, row: r, column: c }): Question => ({
      symbol: text,
      text: stillIs(text, this.calculated.at(other, r, c)),
    }));
    const day = this.calculated.evaluate('TODAY()')[0]?.[0];
    const today = { symbol: 'the day', text: `TODAY()=${String(day)}` };
    return [...inGroups(asked), ...counts, ...(clock ? [today] : [])];
  }

  /** The cells of an area that hold something. */
  private usedIn(sheet: Sheet, area: Area): WatchedCell[] {
    return sheet.cells.flatMap(({ row, column }) => {
      const own = this.calculated.spill(sheet, row, column) ?? cellArea(row, column);
      const [top, bottom] = [Math.max(own.top, area.top), Math.min(own.bottom, area.bottom)];
      const [left, right] = [Math.max(own.left, area.left), Math.min(own.right, area.right)];
      return top > bottom || left > right ? [] : cellsIn(sheet, { top, left, bottom, right });
    });
  }

  /** Whether nothing came into the blank cells of a large area. */
  private countOf(sheet: Sheet, area: Area, used: readonly WatchedCell[]): Question {
    const range = `${quotedSheet(sheet.name)}!${areaAddress(area)}`;
    const count = used.filter(({ row, column }) => {
      const value = this.calculated.at(sheet, row, column);
      return (value !== null && value !== '') || this.calculated.isFormula(sheet, row, column);
    }).length;
    return { symbol: range, text: `COUNTA(${range})=${count}` };
  }

  private follow(
    sources: readonly { sheet: Sheet; area: Area; holds: string }[],
    own: ReadonlySet<string>,
  ): void {
    const formulas = this.calculated.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }) => {
        if (formula === undefined || own.has(placeKey(sheet.name, row, column))) return [];
        const area = this.calculated.spill(sheet, row, column) ?? cellArea(row, column);
        const { areas, isVolatile } = this.calculated.reads(sheet, row, column);
        const isOpaque = isVolatile && !this.names.textsOf(formula).every(isClockAlone);
        return [{ sheet, area, areas, formula, isOpaque, holds: new Set<string>() }];
      }),
    );
    let open = sources.map(({ sheet, area, holds }) => ({
      sheet,
      area,
      holds: [holds] as readonly string[],
    }));
    while (open.length > 0) {
      const next: typeof open = [];
      for (const one of formulas) {
        const before = one.holds.size;
        for (const { sheet, area, holds } of open) {
          const meets = one.areas.some((read) => read.sheet === sheet && areasOverlap(read.area, area));
          if (meets || one.isOpaque) for (const hold of holds) one.holds.add(hold);
        }
        if (one.holds.size > before) next.push({ ...one, holds: [...one.holds] });
      }
      open = next;
    }
    for (const { sheet, area, formula, holds } of formulas) {
      if (holds.size === 0) continue;
      for (const place of placesOf(sheet, area)) this.asked.set(place, { holds: [...holds], formula });
    }
  }
}

/** Only the time makes a volatile formula differ from one calculation to the next, not cells that its text does not name. */
export const isClockAlone = (formula: string): boolean => {
  const tokens = tokenize(formula);
  return !tokens.some(
    ({ text }, i) =>
      (isCall(tokens, i) && /^(?:INDIRECT|OFFSET|CELL|INFO|INDEX)$/i.test(text)) || text === ':',
  );
};

/** All of a sheet that anything stands in. */
function everything(sheet: Sheet): SheetRange {
  const area = { top: 0, left: 0, bottom: 0, right: 0 };
  for (const { row, column } of sheet.cells) {
    area.bottom = Math.max(area.bottom, row);
    area.right = Math.max(area.right, column);
  }
  return { sheet, area };
}

const placesOf = (sheet: Sheet, area: Area): string[] =>
  cellsIn(sheet, area).map(({ row, column }) => placeKey(sheet.name, row, column));

const frozenText = (value: CellValue): string =>
  value instanceof CellError
    ? value.code === '#N/A'
      ? 'NA()'
      : 'VALUE("refused when shared")'
    : value === null
      ? '""'
      : typeof value === 'string' && value.length > COMPARED
        ? longText(value)
        : constantText(value);

/** Texts inside a formula have at most 255 letters. */
const longText = (value: string): string =>
  (value.match(new RegExp(`[\\s\\S]{1,${COMPARED}}`, 'g')) ?? [])
    .map((piece) => constantText(piece))
    .join('&');
