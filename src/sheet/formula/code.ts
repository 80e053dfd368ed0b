/** What a formula is compiled to, and what the compiler knows. */
import type { Area } from '../../cells/address';
import type { SheetFunction } from '../functions/spec';
import type { Scalar, Value } from '../values';
import type { Frame } from './frame';
import type { At, Place } from './places';
import type { Node } from './syntax';

export type Run = (frame: Frame) => Value;

/** A part of a formula. Neither closure raises: an error is a value. */
export interface Code {
  readonly value: Run;
  /** As one scalar: that of a single cell, or the one that an old formula takes of a range. */
  readonly scalar: (frame: Frame) => Scalar;
  /** Never more than one cell, so that `scalar` says all. */
  readonly isSingle: boolean;
}

/** Any value; as a scalar, the one that an old formula would take of it. */
export const general = (value: Run): Code => ({
  value,
  scalar: (frame) => frame.one(value(frame)),
  isSingle: false,
});

/** A scalar, however it is asked for. */
export const single = (scalar: (frame: Frame) => Scalar): Code => ({ value: scalar, scalar, isSingle: true });

/** The workbook as the compiler asks it. Names are found without regard to case. */
export interface Directory {
  readonly sheetNamed: (name: string) => number | undefined;
  readonly functions: ReadonlyMap<string, SheetFunction>;
  tableNamed(name: string): TablePlace | undefined;
  tableAt(at: At): TablePlace | undefined;
  /** The formula of a name as a sheet knows it. */
  named(name: string, sheet: number): string | undefined;
  /** Upper-case names and tables that look like cells. */
  readonly cellLike: ReadonlySet<string>;
  /** Says that there is none, and which ones come near. */
  unknownFunction(name: string): string;
}

/** A table and where its parts lie. */
export interface TablePlace {
  readonly name: string;
  readonly sheet: number;
  readonly area: Area;
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
  readonly columns: readonly string[];
}

/** What is known where a part of a formula stands. */
export interface Compiler {
  readonly book: Directory;
  readonly from: At;
  /** The formula of a name: all its cells are counted from the cell that asks. */
  readonly isName: boolean;
  /** Scalar operations go over arrays cell by cell; if not, they take one cell of each (implicit intersection). */
  readonly lifts: boolean;
  /** Upper-case variables, the innermost last. */
  readonly scope: readonly string[];
  /** Names that are being compiled, so that a LAMBDA may call itself. */
  readonly names: Map<string, { code?: Code }>;
  /** Notes cells that the formula may read. */
  reads(place: Place): void;
  isVolatile(): void;
  /** Marks that the formula calls one of our own functions. */
  isOurs(): void;
  compile(node: Node): Code;
  with(changes: Partial<Pick<Compiler, 'from' | 'isName' | 'lifts' | 'scope' | 'reads'>>): Compiler;
}
