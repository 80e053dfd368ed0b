/** The nodes of the graph: formulas, and the ranges that they read. */
import type { Area } from '../../cells/address';
import type { Run } from '../formula/code';
import type { Place } from '../formula/places';
import type { ArrayValue, Scalar, SheetArea } from '../values';

/** A compiled formula, the same for all cells of one shape. */
export interface Shape {
  readonly run: Run;
  /** The cells that it may read, as far as its text says. */
  readonly reads: readonly Place[];
  readonly isVolatile: boolean;
  /** It calls one of our functions, so that it is never kept. */
  readonly isOurs: boolean;
}

export enum State {
  Clean,
  Dirty,
  /** What it reads is being calculated first. */
  Visited,
  Running,
  /** Set aside half-way until a cell far down has its value. */
  Waiting,
}

/** The formula of one cell. */
export class Formula {
  state = State.Dirty;
  /** The ranges of several cells that it reads. */
  ranges: readonly Range[] = [];
  /** The cells that its result fills, beyond its own. */
  area: Area | undefined;
  /** Where it could not spill: it is calculated again when something changes there. */
  blocked: Range | undefined;
  /** Why its stored value was kept. */
  kept: string | undefined;
  /** It was found to read its own result. */
  isCircular = false;
  /** How often it ran in this calculation. */
  runs = 0;

  constructor(
    readonly sheet: number,
    readonly row: number,
    readonly column: number,
    readonly text: string,
    readonly shape: Shape,
    /** Old array formulas: the cells that their author gave them. */
    readonly fixed: Area | undefined,
    /** Spills; if not, one cell of the result is taken, as before there were spills. */
    readonly isDynamic: boolean,
    /** What the file holds as its value; undefined once that counts for nothing, since the cell was typed or what it reads was. */
    public stored: Scalar | ArrayValue | undefined,
  ) {}
}

/** One for each distinct range that formulas read. */
export class Range {
  readonly users: Formula[] = [];
  /** The last walk that passed here. */
  walk = 0;
  /** The calculation in which all in it was found calculated. */
  cleanIn = 0;
  /** What functions made of its cells for later. */
  memo: Map<string, unknown> | undefined;

  constructor(readonly area: SheetArea) {}
}
