/** Which formulas depend on a cell, and which of them are to be calculated again. */
import type { Area } from '../../cells/address';
import { DIRTY, type SheetCells } from './cells';
import { State, type Formula } from './nodes';
import { Ranges } from './ranges';

export class Dependents {
  readonly ranges: Ranges;
  /** Formulas to be calculated, in the order in which they came up. */
  dirty: Formula[] = [];
  readonly volatiles = new Set<Formula>();
  /** What is marked now rests on another value than the file's: nothing that is stored for it holds any more. */
  forgets = false;
  private readonly front: Formula[] = [];
  private walk = 0;

  constructor(readonly sheets: readonly SheetCells[]) {
    this.ranges = new Ranges(sheets);
  }

  link(formula: Formula): void {
    for (const place of formula.shape.reads) {
      if (place.isCell) {
        this.sheets[place.sheet(formula)]?.addUser(place.row(formula), place.column(formula), formula);
        continue;
      }
      const ranges = place.areas(formula).map((area) => this.ranges.at(area));
      for (const range of ranges) range.users.push(formula);
      formula.ranges = formula.ranges.length === 0 ? ranges : [...formula.ranges, ...ranges];
    }
    if (formula.shape.isVolatile) this.volatiles.add(formula);
    this.dirty.push(formula);
  }

  unlink(formula: Formula): void {
    for (const place of formula.shape.reads) {
      if (!place.isCell) continue;
      this.sheets[place.sheet(formula)]?.removeUser(place.row(formula), place.column(formula), formula);
    }
    for (const range of formula.ranges) this.ranges.removeUser(range, formula);
    this.unblock(formula);
    this.volatiles.delete(formula);
    formula.state = State.Clean;
  }

  /** A formula that found no room is calculated again once something changes there. */
  block(formula: Formula, area: Area): void {
    formula.blocked = this.ranges.at({ sheet: formula.sheet, ...area });
    formula.blocked.users.push(formula);
  }

  unblock(formula: Formula): void {
    if (formula.blocked) this.ranges.removeUser(formula.blocked, formula);
    formula.blocked = undefined;
  }

  /** The formulas that read a cell, or a cell that its formula fills. */
  *readers(sheet: number, row: number, column: number): Generator<Formula> {
    const formula = this.sheets[sheet]?.formula(row, column);
    const places: [number, number][] = [];
    if (formula?.area) eachPlace(formula.area, (r, c) => places.push([r, c]));
    else places.push([row, column]);
    for (const [r, c] of places) {
      yield* this.sheets[sheet]?.users(r, c) ?? [];
      const users: Formula[] = [];
      this.ranges.holding(sheet, r, c, (range) => users.push(...range.users));
      yield* users;
    }
  }

  /** All that depends on a cell is to be calculated again. */
  touch(sheet: number, row: number, column: number): void {
    this.walk++;
    this.reach(sheet, row, column);
    this.spread();
  }

  touchArea(sheet: number, area: Area): void {
    this.walk++;
    eachPlace(area, (row, column) => {
      this.reach(sheet, row, column);
    });
    this.spread();
  }

  touchVolatiles(): void {
    this.walk++;
    for (const formula of this.volatiles) this.mark(formula);
    this.spread();
  }

  touchFormula(formula: Formula): void {
    this.walk++;
    this.mark(formula);
    this.spread();
  }

  /** For every formula that was marked, those that read it or what it spills into. */
  private spread(): void {
    for (let formula = this.front.pop(); formula; formula = this.front.pop()) {
      const { sheet, row, column, area } = formula;
      if (!area) this.reach(sheet, row, column);
      else {
        eachPlace(area, (r, c) => {
          this.reach(sheet, r, c);
        });
      }
    }
  }

  private reach(sheet: number, row: number, column: number): void {
    for (const user of this.sheets[sheet]?.users(row, column) ?? []) this.mark(user);
    this.ranges.holding(sheet, row, column, (range) => {
      if (range.walk === this.walk) return;
      range.walk = this.walk;
      range.memo = undefined;
      range.cleanIn = 0;
      for (const user of range.users) this.mark(user);
    });
  }

  private mark(formula: Formula): void {
    const isNew = formula.state === State.Clean;
    // One that was to be calculated anyway has been here, unless its stored value still held.
    if (!isNew && !(this.forgets && formula.stored !== undefined)) return;
    if (this.forgets) formula.stored = undefined;
    this.front.push(formula);
    if (!isNew) return;
    formula.state = State.Dirty;
    const cells = this.sheets[formula.sheet];
    cells?.set(formula.row, formula.column, DIRTY);
    if (formula.area) {
      eachPlace(formula.area, (row, column) => {
        if (cells?.formula(row, column) === formula) cells.set(row, column, DIRTY);
      });
    }
    this.dirty.push(formula);
  }
}

export function eachPlace(
  { top, left, bottom, right }: Area,
  visit: (row: number, column: number) => void,
): void {
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) visit(row, column);
  }
}
