/** A workbook that calculates: cells in, values out, as often as something changes. */
import { areaContains, MAX_COLUMNS, type Area } from '../cells/address';
import { CellError, type CellValue, type Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { Budget, type Limits } from './budget';
import type { BookCell, BookContent, BookSheet } from './content';
import { DAYS_1904 } from './coerce';
import { directoryOf } from './directory';
import { Shapes } from './formula/shapes';
import { sheetFunctions } from './functions';
import { ourFunction } from './functions/ours';
import type { SheetFunction, WorkbookView } from './functions/spec';
import { Calculation } from './graph/calculation';
import { DIRTY } from './graph/cells';
import { Formula } from './graph/nodes';
import { placeName, told } from './graph/origin';
import {
  ArrayValue,
  canBeHeld,
  ERRORS,
  Keep,
  Raised,
  Reference,
  type Scalar,
  type SheetArea,
  type Value,
} from './values';

/** A cell to change: a formula with its `=`, or a value; null clears it. */
export interface Edit {
  /** Index in the workbook's sheets. */
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** Without its `=`; then the value counts for nothing. */
  readonly formula?: string;
}

export interface CellPlace {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

/** A cell whose stored value stands since its formula could not be calculated. */
export interface KeptCell extends CellPlace {
  readonly reason: string;
}

export class Book {
  private readonly calculation: Calculation;
  private readonly shapes: Shapes;
  private readonly sheetNames: readonly string[];
  /** The formulas whose stored value was kept, as they run. */
  private readonly kept = new Map<Formula, string>();

  constructor(content: BookContent, functions: readonly WorksheetFunction[]) {
    this.sheetNames = content.sheets.map(({ name }) => name);
    this.calculation = new Calculation(
      {
        date1904: content.date1904,
        iterates: content.iterates ?? false,
        sheetNames: this.sheetNames,
        merges: content.sheets.map(({ merges }) => merges ?? []),
      },
      this.view(content),
    );
    this.shapes = new Shapes(directoryOf(content, functionsWith(functions)));
    content.sheets.forEach((sheet, index) => {
      this.load(sheet, index);
    });
  }

  private load({ cells }: BookSheet, sheet: number): void {
    const spills: [Formula, Area][] = [];
    for (const cell of cells) {
      const { row, column, value, formula: text, spill } = cell;
      if (text === undefined) {
        if (value !== null) this.calculation.loadValue(sheet, row, column, value);
        continue;
      }
      if (spill && !canBeHeld(spill)) {
        this.calculation.loadFormula(tooLarge(text, cell, sheet));
        continue;
      }
      const formula = this.formula(text, cell, sheet, value ?? undefined);
      this.calculation.loadFormula(formula);
      if (spill) spills.push([formula, spill]);
    }
    for (const [formula, area] of spills) this.calculation.loadSpill(formula, area);
  }

  private formula(
    text: string,
    { row, column, spill, fixedArray }: Pick<BookCell, 'row' | 'column' | 'spill' | 'fixedArray'>,
    sheet: number,
    stored: Scalar | undefined,
  ): Formula {
    const shape = this.shapes.of(text, { sheet, row, column }, spill !== undefined);
    const fixed = fixedArray ? spill : undefined;
    const isDynamic = spill !== undefined && !fixedArray;
    return new Formula(sheet, row, column, text, shape, fixed, isDynamic, stored);
  }

  /** Calculates everything the first time, then what depends on the cells set since. Answers which formulas ran. */
  calculate(limits?: Limits): readonly CellPlace[] {
    const ran = this.calculation.calculate(new Budget(limits), this.now());
    for (const formula of ran) {
      if (formula.kept === undefined) this.kept.delete(formula);
      else this.kept.set(formula, formula.kept);
    }
    return ran;
  }

  /** How many formulas have come to a result so far: more than before a stop where the calculation got on. */
  get finished(): number {
    return this.calculation.finished;
  }

  /** Puts values and formulas into cells; `calculate` then brings what depends on them up to date. */
  set(edits: readonly Edit[]): void {
    for (const { sheet, row, column, value, formula: text } of edits) {
      if (text === undefined) this.calculation.setValue(sheet, row, column, value);
      else this.calculation.setFormula(this.typed(text, sheet, row, column));
    }
  }

  /** What is typed anew may spill, as everything typed in today's programs. */
  private typed(text: string, sheet: number, row: number, column: number): Formula {
    const shape = this.shapes.of(text, { sheet, row, column }, true);
    return new Formula(sheet, row, column, text, shape, undefined, true, undefined);
  }

  /** The value of a cell, typed, calculated or spilled; an error says why, and where it began. */
  value(sheet: number, row: number, column: number): CellValue {
    const value = this.calculation.sheets[sheet]?.get(row, column) ?? null;
    // It has no value.
    if (value === DIRTY) return NOT_CALCULATED;
    return value instanceof CellError
      ? told(value, placeName(this.sheetNames[sheet] ?? '', row, column))
      : value;
  }

  /** Where the error in a cell began, by the name of the place; undefined where it holds none. */
  errorOrigin(sheet: number, row: number, column: number): string | undefined {
    const value = this.calculation.sheets[sheet]?.get(row, column);
    if (!(value instanceof CellError)) return undefined;
    return value.origin ?? placeName(this.sheetNames[sheet] ?? '', row, column);
  }

  /** What a calculation has not reached, since it was stopped or is still under way. */
  isUnreached(sheet: number, row: number, column: number): boolean {
    return this.calculation.sheets[sheet]?.get(row, column) === DIRTY;
  }

  /** The cells that a formula's result fills, when more than its own. */
  spill(sheet: number, row: number, column: number): Area | undefined {
    const formula = this.calculation.sheets[sheet]?.formula(row, column);
    return formula?.row === row && formula.column === column ? formula.area : undefined;
  }

  /** The cells whose formulas read a cell, or a cell that its formula fills. */
  readers({ sheet, row, column }: CellPlace): CellPlace[] {
    return [...this.calculation.readers(sheet, row, column)];
  }

  /** The cells that the text of a cell's formula names, in its order; none where it holds no formula. */
  reads({ sheet, row, column }: CellPlace): SheetArea[] {
    const formula = this.calculation.sheets[sheet]?.formula(row, column);
    return formula ? formula.shape.reads.flatMap((place) => place.areas(formula)) : [];
  }

  /** The formula of a cell may read what its text does not name, as INDIRECT does, or the time. */
  isVolatile({ sheet, row, column }: CellPlace): boolean {
    return this.calculation.sheets[sheet]?.formula(row, column)?.shape.isVolatile ?? false;
  }

  /** The place of the formula that fills a cell; undefined for what is typed. */
  formulaAt({ sheet, row, column }: CellPlace): (CellPlace & { readonly text: string }) | undefined {
    const formula = this.calculation.sheets[sheet]?.formula(row, column);
    return formula && { sheet, row: formula.row, column: formula.column, text: formula.text };
  }

  /** Why the stored value of a cell was kept, if it was. */
  keptReason(sheet: number, row: number, column: number): string | undefined {
    return this.calculation.sheets[sheet]?.formula(row, column)?.kept;
  }

  keptCells(): KeptCell[] {
    return Array.from(this.kept, ([{ sheet, row, column }, reason]) => ({ sheet, row, column, reason }));
  }

  /** Works out a formula, without its `=`, that stands in no cell, as if it were typed into one. */
  evaluate(text: string, place: CellPlace = { sheet: 0, row: 0, column: 0 }, limits?: Limits): Matrix {
    const { sheet, row, column } = place;
    const shape = this.shapes.of(text, place, true);
    const plain = this.calculation.evaluate(new Budget(limits), sheet, row, column, (frame) => {
      try {
        return frame.plain(shape.run(frame));
      } catch (error) {
        if (error instanceof Raised) return error.cell;
        if (error instanceof Keep) return new CellError('#NAME?', error.message);
        throw error;
      }
    });
    const array = plain instanceof ArrayValue ? plain : new ArrayValue(1, 1, [plain]);
    const cells = array.dense();
    return Array.from({ length: array.rows }, (_, r) =>
      cells
        .slice(r * array.columns, (r + 1) * array.columns)
        .map((value) => (value instanceof CellError ? told(value, '') : value)),
    );
  }

  /** As the workbook's own serial number. */
  private now(): number {
    const date = new Date();
    const local = date.getTime() - date.getTimezoneOffset() * 60_000;
    return local / 86_400_000 + 25_569 - (this.calculation.date1904 ? DAYS_1904 : 0);
  }

  private view({ sheets, isFromMacintosh = false }: BookContent): WorkbookView {
    const hidden = sheets.map(({ rows }) => new Set(rows.flatMap((row) => (row.hidden ? [row.row] : []))));
    return {
      sheetNames: this.sheetNames,
      isFromMacintosh,
      ...(sheets.some(({ isDate }) => isDate) && {
        isDate: (sheet, row, column) => sheets[sheet]?.isDate?.(row, column) ?? false,
      }),
      formulaAt: (sheet, row, column) => {
        const formula = this.calculation.sheets[sheet]?.formula(row, column);
        return formula?.row === row && formula.column === column ? formula.text : undefined;
      },
      spillAt: (sheet, row, column) => {
        const formula = this.calculation.sheets[sheet]?.formula(row, column);
        if (formula?.row !== row || formula.column !== column) return undefined;
        return { sheet, ...(formula.area ?? { top: row, left: column, bottom: row, right: column }) };
      },
      hiddenRow: (sheet, row) => {
        if (!hidden[sheet]?.has(row)) return undefined;
        const isFiltered = sheets[sheet]?.filters?.some((area) =>
          areaContains({ ...area, left: 0, right: MAX_COLUMNS }, row, 0),
        );
        return isFiltered ? 'filtered' : 'hidden';
      },
      refer: (text, sheet, row, column) => this.refer(text, sheet, row, column),
    };
  }

  private refer(text: string, sheet: number, row: number, column: number): Value {
    const { run } = this.shapes.of(text, { sheet, row, column }, true);
    try {
      const value = this.calculation.within(sheet, row, column, run);
      return value instanceof Reference ? value : ERRORS['#REF!'];
    } catch (error) {
      if (error instanceof Keep) return new CellError('#REF!', error.message);
      throw error;
    }
  }
}

/** An array that its author gave a whole sheet of cells: the values of the file stand. */
function tooLarge(text: string, { row, column, value }: BookCell, sheet: number): Formula {
  const run = (): never => {
    throw new Keep('its array takes in more cells than can be held here');
  };
  const shape = { run, reads: [], isVolatile: false, isOurs: false };
  return new Formula(sheet, row, column, text, shape, undefined, false, value ?? undefined);
}

const NOT_CALCULATED = new CellError('#N/A', 'Not calculated: the calculation was stopped before.');

const builtIn = new Map(sheetFunctions.map((one) => [one.name, one]));

function functionsWith(functions: readonly WorksheetFunction[]): ReadonlyMap<string, SheetFunction> {
  const own = functions.map(ourFunction).map((one) => [one.name.toUpperCase(), one] as const);
  return new Map([...builtIn, ...own]);
}
