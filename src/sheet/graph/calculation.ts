/** Which formula is calculated when: each after what it reads, and after an edit only what depends on it. */
import type { Area } from '../../cells/address';
import { CellError } from '../../cells/value';
import { Stopped, type Budget } from '../budget';
import type { Run } from '../formula/code';
import { Frame, type Reader } from '../formula/frame';
import type { WorkbookView } from '../functions/spec';
import { ArrayValue, Keep, Raised, raise, type Scalar, type SheetArea, type Value } from '../values';
import { DIRTY, SheetCells, type Stored } from './cells';
import { Dependents } from './dependents';
import { State, type Formula } from './nodes';
import { begun } from './origin';
import { Spills } from './spills';

/** Runs within runs, where a formula reads what its text does not say (INDIRECT, a branch of IF): each costs stack. */
const DEEPEST_RUN = 60;
/** LAMBDAs inside one another; Excel's own limit is 1,024 divided by the number of parameters and one. */
const DEEPEST_LAMBDA = 1_024;
/** How often one formula may run in one calculation before it is held to move its own precedents. */
const MOST_RUNS = 30;

const CIRCLE = new CellError('#REF!', 'The formula depends on its own result: break the circle.');
const TOO_DEEP = new CellError('#NUM!', 'LAMBDAs call one another too deeply.');

/** A cell must be calculated first, and the stack is too deep to do it here. */
class SetAside extends Error {
  constructor(readonly formula: Formula) {
    super();
  }
}

export interface Settings {
  readonly date1904: boolean;
  /** The workbook says that circles are calculated round and round: they are kept. */
  readonly iterates: boolean;
  readonly sheetNames: readonly string[];
  /** Of each sheet. */
  readonly merges: readonly (readonly Area[])[];
}

export class Calculation implements Reader {
  readonly date1904: boolean;
  readonly sheets: readonly SheetCells[];
  private readonly dependents: Dependents;
  private readonly spills: Spills;
  private readonly running: Formula[] = [];
  private ran: Formula[] = [];
  /** The last calculation was stopped: the next one goes on with it. */
  private isUnfinished = false;
  private depth = 0;
  private lambdas = 0;
  private calculation = 1;
  private moment = 0;
  private budget: Budget | undefined;
  /** Formulas that came to a result, each as often as it did. */
  finished = 0;

  constructor(
    private readonly settings: Settings,
    readonly view: WorkbookView,
  ) {
    this.date1904 = settings.date1904;
    this.sheets = settings.sheetNames.map(() => new SheetCells());
    this.dependents = new Dependents(this.sheets);
    this.spills = new Spills(this.dependents, settings.sheetNames, settings.merges);
  }

  // What formulas ask.

  read(sheet: number, row: number, column: number): Scalar {
    const value = this.cells(sheet).get(row, column);
    return value === DIRTY ? this.demand(sheet, row, column) : value;
  }

  eachCell(area: SheetArea, visit: (value: Scalar, row: number, column: number) => void): void {
    this.ready(area);
    this.cells(area.sheet).each(area, visit as (value: Stored, row: number, column: number) => void);
  }

  array(area: SheetArea): ArrayValue {
    this.ready(area);
    return this.cells(area.sheet).array(area);
  }

  memo<T>(area: SheetArea, key: string, make: () => T): T {
    const range = this.dependents.ranges.find(area);
    if (!range) return make();
    this.ready(area);
    const memo = (range.memo ??= new Map());
    if (!memo.has(key)) memo.set(key, make());
    return memo.get(key) as T;
  }

  tick(steps: number): void {
    this.budget?.spend(steps);
  }

  deeper(body: () => Value): Value {
    this.tick(1);
    if (this.lambdas >= DEEPEST_LAMBDA) return TOO_DEEP;
    this.lambdas++;
    try {
      return body();
    } catch (error) {
      // The stack itself is the limit where the bodies are long.
      if (error instanceof RangeError) return TOO_DEEP;
      throw error;
    } finally {
      this.lambdas--;
    }
  }

  now(): number {
    return this.moment;
  }

  random(): number {
    return Math.random();
  }

  cells(sheet: number): SheetCells {
    return this.sheets[sheet] ?? raise('#REF!');
  }

  // Putting cells in.

  /** Into a workbook that is still being read: nothing is calculated yet that could depend on it. */
  loadValue(sheet: number, row: number, column: number, value: Scalar): void {
    this.cells(sheet).set(row, column, begun(value, this.settings.sheetNames[sheet], row, column));
  }

  loadFormula(formula: Formula): void {
    const { sheet, row, column } = formula;
    const cells = this.cells(sheet);
    cells.set(row, column, DIRTY);
    cells.setFormula(row, column, formula);
    this.dependents.link(formula);
  }

  /** Once all cells are there: what a formula's result fills in the file waits for it. */
  loadSpill(formula: Formula, area: Area): void {
    const { stored } = formula;
    if (stored !== undefined) {
      const kept = this.cells(formula.sheet).array({ sheet: formula.sheet, ...area });
      formula.stored = ArrayValue.build(kept.rows, kept.columns, (row, column) => {
        const isOwn = row + area.top === formula.row && column + area.left === formula.column;
        const value = isOwn ? (stored as Scalar) : (kept.at(row, column) as Stored);
        return value === DIRTY ? null : value;
      });
    }
    this.spills.reserve(formula, area);
  }

  /** A typed value, or a blank. */
  setValue(sheet: number, row: number, column: number, value: Scalar): void {
    this.edit(sheet, row, column, () => {
      this.loadValue(sheet, row, column, value);
    });
  }

  setFormula(formula: Formula): void {
    this.edit(formula.sheet, formula.row, formula.column, () => {
      this.loadFormula(formula);
    });
  }

  private edit(sheet: number, row: number, column: number, change: () => void): void {
    this.dependents.forgets = true;
    this.release(sheet, row, column);
    change();
    this.dependents.touch(sheet, row, column);
  }

  /** What stood in a cell until now goes: its formula, or its part of a spilled result. */
  private release(sheet: number, row: number, column: number): void {
    const cells = this.cells(sheet);
    const formula = cells.formula(row, column);
    if (!formula) return;
    cells.setFormula(row, column, undefined);
    if (formula.row !== row || formula.column !== column) this.dependents.touchFormula(formula);
    else {
      this.dependents.unlink(formula);
      if (formula.area) this.spills.clear(formula, formula.area, undefined);
    }
  }

  readers(sheet: number, row: number, column: number): Iterable<Formula> {
    return this.dependents.readers(sheet, row, column);
  }

  // Calculating.

  /**
   * Brings every cell up to date and answers which formulas ran, those before a stop included. `now` is a serial number.
   */
  calculate(budget: Budget, now: number): readonly Formula[] {
    this.budget = budget;
    this.moment = now;
    this.calculation++;
    const { dependents } = this;
    if (!this.isUnfinished) {
      this.ran = [];
      dependents.touchVolatiles();
    }
    this.isUnfinished = true;
    dependents.forgets = false;
    try {
      // A result that spills may call for others; those come behind.
      for (let at = 0; at < dependents.dirty.length; at++) {
        const formula = dependents.dirty[at] as Formula;
        if (formula.state !== State.Clean) this.run(formula);
      }
      dependents.dirty = [];
      this.isUnfinished = false;
    } catch (error) {
      dependents.dirty = dependents.dirty.filter(({ state }) => state !== State.Clean);
      throw error;
    } finally {
      for (const formula of this.ran) formula.runs = 0;
      this.budget = undefined;
    }
    return this.ran;
  }

  /** Works out what stands in no cell, as if it stood in one. */
  evaluate<T>(budget: Budget, sheet: number, row: number, column: number, part: (frame: Frame) => T): T {
    this.budget = budget;
    try {
      return part(new Frame(this, sheet, row, column, undefined));
    } finally {
      this.budget = undefined;
    }
  }

  /** Part of a formula that is known only now (INDIRECT), inside the one that asks. */
  within(sheet: number, row: number, column: number, run: Run): Value {
    return run(new Frame(this, sheet, row, column, undefined));
  }

  private demand(sheet: number, row: number, column: number): Scalar {
    const cells = this.cells(sheet);
    const formula = cells.formula(row, column);
    if (!formula) return null;
    if (formula.state === State.Running || formula.state === State.Waiting) return this.circle(formula);
    if (this.depth >= DEEPEST_RUN) throw new SetAside(formula);
    this.run(formula);
    const value = cells.get(row, column);
    return value === DIRTY ? CIRCLE : value;
  }

  /** Calculates a formula and first, without calls inside calls, all that it reads by its text. */
  private run(first: Formula): void {
    const stack = [first];
    this.depth++;
    try {
      for (let formula = stack.at(-1); formula; formula = stack.at(-1)) {
        if (formula.state === State.Clean || formula.state === State.Running) stack.pop();
        else if (formula.state === State.Dirty) {
          formula.state = State.Visited;
          this.pushPrecedents(formula, stack);
        } else {
          stack.pop();
          this.runOne(formula, stack);
        }
      }
    } catch (error) {
      for (const formula of stack) if (formula.state !== State.Clean) formula.state = State.Dirty;
      throw error;
    } finally {
      this.depth--;
    }
  }

  private runOne(formula: Formula, stack: Formula[]): void {
    try {
      this.evaluateCell(formula);
    } catch (error) {
      formula.state = State.Dirty;
      // Only the outermost run has the stack to spare.
      if (!(error instanceof SetAside) || this.depth > 1) throw error;
      formula.state = State.Waiting;
      stack.push(formula, error.formula);
    }
  }

  private pushPrecedents(formula: Formula, stack: Formula[]): void {
    const push = (one: Formula | undefined) => {
      if (one?.state === State.Dirty) stack.push(one);
    };
    for (const place of formula.shape.reads) {
      if (!place.isCell) continue;
      const row = place.row(formula);
      const column = place.column(formula);
      const cells = this.sheets[place.sheet(formula)];
      if (cells?.get(row, column) === DIRTY) push(cells.formula(row, column));
    }
    for (const range of formula.ranges) this.openIn(range.area, push, range);
  }

  /** Calculates whatever of an area is not: what a formula's text did not say that it reads. */
  private ready(area: SheetArea): void {
    const open: Formula[] = [];
    this.openIn(area, (formula) => {
      open.push(formula);
    });
    for (const formula of open) {
      if (formula.state === State.Clean) continue;
      if (formula.state === State.Running || formula.state === State.Waiting) raise(this.circle(formula));
      if (this.depth >= DEEPEST_RUN) throw new SetAside(formula);
      this.run(formula);
    }
  }

  /** The formulas of an area that are still to be calculated; an area without any is not looked through again. */
  private openIn(
    area: SheetArea,
    visit: (formula: Formula) => void,
    range = this.dependents.ranges.find(area),
  ): void {
    if (range?.cleanIn === this.calculation) return;
    const cells = this.cells(area.sheet);
    let open = 0;
    let count = 1;
    cells.each(area, (value, row, column) => {
      count++;
      if (value !== DIRTY) return;
      open++;
      const formula = cells.formula(row, column);
      if (formula) visit(formula);
    });
    this.tick(count);
    if (range && open === 0) range.cleanIn = this.calculation;
  }

  private evaluateCell(formula: Formula): void {
    formula.state = State.Running;
    formula.kept = undefined;
    formula.isCircular = formula.runs >= MOST_RUNS;
    if (formula.runs++ === 0) this.ran.push(formula);
    this.tick(1);
    this.running.push(formula);
    let value: Scalar | ArrayValue;
    try {
      value = formula.isCircular ? CIRCLE : this.result(formula);
    } catch (error) {
      if (error instanceof SetAside || error instanceof Stopped) throw error;
      value = this.kept(formula, error);
    } finally {
      this.running.pop();
    }
    if (formula.isCircular) value = this.settings.iterates ? this.kept(formula, ITERATES) : CIRCLE;
    if (isNewError(value, formula.stored) && !formula.shape.isOurs) {
      value = this.kept(formula, new Keep(`It would be ${value.code} now. ${value.message}`.trim()));
    }
    formula.state = State.Clean;
    this.finished++;
    this.spills.put(formula, value);
  }

  /** The value of the formula as its cell takes it. */
  private result({ shape, sheet, row, column, fixed, isDynamic }: Formula): Scalar | ArrayValue {
    const frame = new Frame(this, sheet, row, column, undefined);
    const value = shape.run(frame);
    return fixed || isDynamic ? frame.plain(value) : frame.one(value);
  }

  /** All formulas from one on that is read while it runs go into themselves. */
  private circle(formula: Formula): CellError {
    for (let at = this.running.length - 1; at >= 0; at--) {
      const one = this.running[at] as Formula;
      one.isCircular = true;
      if (one === formula) break;
    }
    return CIRCLE;
  }

  /** The stored value of what cannot be calculated; an error with the reason where that value counts for nothing. */
  private kept(formula: Formula, error: unknown): Scalar | ArrayValue {
    if (error instanceof Raised) return error.cell;
    const reason =
      error instanceof Keep
        ? error.message
        : error instanceof RangeError
          ? 'It is too long or nested too deeply.'
          : `A fault of the program: ${error instanceof Error ? error.message : String(error)}.`;
    if (formula.shape.isOurs || formula.stored === undefined) return new CellError('#NAME?', reason);
    formula.kept = reason;
    return formula.stored;
  }
}

/**
 * Whether a stored number, text or truth value would become an error that begins here, though nothing was edited: then
 * rather this calculation falls short than the one that stored the value.
 */
function isNewError(value: Scalar | ArrayValue, stored: Scalar | ArrayValue | undefined): value is CellError {
  return (
    value instanceof CellError &&
    value.origin === undefined &&
    stored !== undefined &&
    !(stored instanceof CellError)
  );
}

const ITERATES = new Keep('It depends on its own result, and the workbook calculates such circles in steps.');
