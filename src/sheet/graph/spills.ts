/** Puts what a formula answers into its cell and, where it is an array, into the ones beside and below. */
import {
  areaAddress,
  areaContains,
  areasOverlap,
  cellAddress,
  MAX_COLUMNS,
  MAX_ROWS,
  type Area,
} from '../../cells/address';
import { CellError } from '../../cells/value';
import { ArrayValue, ERRORS, type Scalar } from '../values';
import { DIRTY } from './cells';
import { begun } from './origin';
import { eachPlace, type Dependents } from './dependents';
import type { Formula } from './nodes';

/** A quarter of a full column: what is read, written and shown at once must fit in memory. */
const MOST_SPILLED = MAX_ROWS / 4;

export class Spills {
  constructor(
    private readonly dependents: Dependents,
    private readonly sheetNames: readonly string[],
    private readonly merges: readonly (readonly Area[])[],
  ) {}

  put(formula: Formula, value: Scalar | ArrayValue): void {
    this.dependents.unblock(formula);
    const wanted = areaOf(formula, value);
    if (wanted instanceof CellError) {
      this.fill(formula, undefined, wanted);
      return;
    }
    const obstacle = wanted && !formula.fixed ? this.obstacle(formula, wanted) : undefined;
    if (wanted && obstacle) {
      this.fill(formula, undefined, new CellError('#SPILL!', obstacle));
      this.dependents.block(formula, wanted);
    } else this.fill(formula, wanted, value);
  }

  /** Gives up the cells of an area that a formula's result fills no more, or all of them. */
  clear(formula: Formula, area: Area, but: Area | undefined): void {
    const { sheet } = formula;
    const cells = this.dependents.sheets[sheet];
    eachPlace(area, (row, column) => {
      if (but && areaContains(but, row, column)) return;
      if (cells?.formula(row, column) !== formula || isAnchor(formula, row, column)) return;
      cells.setFormula(row, column, undefined);
      cells.set(row, column, null);
      this.dependents.touch(sheet, row, column);
    });
  }

  /** The cells that a formula's result fills in the file: who reads them waits for it. */
  reserve(formula: Formula, area: Area): void {
    const cells = this.dependents.sheets[formula.sheet];
    formula.area = area;
    eachPlace(area, (row, column) => {
      if (cells?.formula(row, column)) return;
      cells?.setFormula(row, column, formula);
      cells?.set(row, column, DIRTY);
    });
  }

  private fill(formula: Formula, area: Area | undefined, value: Scalar | ArrayValue): void {
    const { sheet, area: before } = formula;
    const cells = this.dependents.sheets[sheet];
    if (!cells) return;
    if (before) this.clear(formula, before, area);
    formula.area = area;
    if (!area) {
      cells.set(
        formula.row,
        formula.column,
        this.asCell(
          formula,
          value instanceof ArrayValue ? value.at(0, 0) : value,
          formula.row,
          formula.column,
        ),
      );
      return;
    }
    let grown = 0;
    eachPlace(area, (row, column) => {
      const owner = cells.formula(row, column);
      if (owner && owner !== formula) return;
      if (!owner) {
        cells.setFormula(row, column, formula);
        grown++;
      }
      const part = partOf(value, row - area.top, column - area.left);
      cells.set(row, column, this.asCell(formula, part, row, column));
    });
    if (grown > 0) this.dependents.touchArea(sheet, area);
  }

  /** A blank result shows 0. */
  private asCell({ sheet }: Formula, value: Scalar, row: number, column: number): Scalar {
    return value === null ? 0 : begun(value, this.sheetNames[sheet], row, column);
  }

  /** What is in the way, and what to do about it. */
  private obstacle(formula: Formula, area: Area): string | undefined {
    const isOneCell = area.top === area.bottom && area.left === area.right;
    const merged = isOneCell ? undefined : this.merges[formula.sheet]?.find((one) => areasOverlap(one, area));
    if (merged) return `The result would fill merged cells: take the merge of ${areaAddress(merged)} apart.`;
    const cells = this.dependents.sheets[formula.sheet];
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (isAnchor(formula, row, column)) continue;
        const owner = cells?.formula(row, column);
        const isTaken = owner ? owner !== formula : cells?.get(row, column) !== null;
        if (!isTaken) continue;
        return `The result needs more cells than are free: clear ${cellAddress(row, column)}.`;
      }
    }
    return undefined;
  }
}

const isAnchor = (formula: Formula, row: number, column: number): boolean =>
  formula.row === row && formula.column === column;

/** Undefined for the formula's own cell alone. */
function areaOf(formula: Formula, value: Scalar | ArrayValue): Area | CellError | undefined {
  if (formula.fixed) return formula.fixed;
  if (!(value instanceof ArrayValue)) return undefined;
  const { row: top, column: left } = formula;
  const bottom = top + value.rows - 1;
  const right = left + value.columns - 1;
  if (bottom >= MAX_ROWS || right >= MAX_COLUMNS) {
    return new CellError('#SPILL!', 'The result does not fit on the sheet.');
  }
  if (value.size > MOST_SPILLED) {
    return new CellError('#SPILL!', `A result may fill ${MOST_SPILLED} cells; this one has ${value.size}.`);
  }
  return { top, left, bottom, right };
}

/** A single row, column or value repeats in the area of an old array formula; beyond any other there is nothing. */
function partOf(value: Scalar | ArrayValue, row: number, column: number): Scalar {
  if (!(value instanceof ArrayValue)) return value;
  const r = value.rows === 1 ? 0 : row;
  const c = value.columns === 1 ? 0 : column;
  return r < value.rows && c < value.columns ? value.at(r, c) : ERRORS['#N/A'];
}
