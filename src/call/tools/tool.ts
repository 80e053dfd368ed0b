import type { Change, Source } from '../../core/define';
import { naming, Refusal } from '../../core/refusal';
import { CellError, type Argument, type CellValue, type Matrix } from '../../cells/value';
import { familyOf, UNITS_PARAMETER, type ParameterWords } from '../../derive/words';
import { inPlaces } from '../places';
import { PassedError, readUnits } from '../readArgument';
import { errorCell } from '../worksheet';
import type { WorksheetFunction } from '../worksheetFunction';
import type { System } from '../../core/quantity';

/** A function about functions: it takes ranges as they are and answers with a table. */
export interface Tool {
  readonly name: string;
  readonly summary: string;
  readonly parameters: readonly ToolParameter[];
  readonly sources: readonly [Source, ...Source[]];
  readonly notes?: readonly string[];
  readonly cautions?: readonly string[];
  readonly related?: readonly string[];
  readonly changes?: readonly Change[];
  /** A call as it is typed, without the namespace, for the help. */
  readonly example: string;
  /**
   * It answers with texts, or reads equations. In Excel its code comes when it is first asked for, so that the numbers
   * need not wait for it: the build leaves out what `run` takes.
   */
  readonly late?: true;
  /** Refuses by throwing a `Refusal`. */
  readonly run: (args: Args) => Matrix;
}

/** The arguments of a tool's call, asked for by their names. */
export interface Args {
  /** The cells given for a parameter; refuses where a required one is missing. */
  readonly range: (name: string) => Matrix;
  readonly rangeIfGiven: (name: string) => Matrix | undefined;
  /** One cell's text. */
  readonly text: (name: string) => string;
  readonly cell: (name: string) => CellValue;
  /** A whole number, the parameter's standard where it is left out. */
  readonly count: (name: string) => number;
  readonly units: () => System;
  /** What follows the named parameters of a repeating one. */
  readonly rest: (name: string) => readonly Argument[];
}

export interface ToolParameter extends ParameterWords {
  /** What a number is when left out. */
  readonly standard?: number;
}

export const parameter = (name: string, says: string, more: Partial<ToolParameter> = {}): ToolParameter => ({
  name,
  says: more.standard === undefined ? says : `${says}. If left out: ${more.standard}`,
  optional: more.standard !== undefined,
  repeating: false,
  ...more,
});

/** A single blank cell is an argument that was left out; of a range the function says what it makes of blanks. */
function leftOutIfBlank(arg: Matrix | undefined): Matrix | undefined {
  const isBlank = arg?.length === 1 && arg[0]?.length === 1 && arg[0][0] === null;
  return isBlank ? undefined : arg;
}

function argsOf(parameters: readonly ToolParameter[], typed: readonly Argument[]): Args {
  const indexOf = (name: string): number => parameters.findIndex((p) => p.name === name);
  const unitsPlace = indexOf(UNITS_PARAMETER.name);
  // Inches where a cell of units was emptied would be a guess. What another function is to be called with, its units
  // among them, is for that function to judge.
  const restPlace = parameters.findIndex(({ repeating }) => repeating);
  const given = inPlaces(typed, unitsPlace, (cells) => cells).map((arg, i) =>
    i === unitsPlace || (restPlace >= 0 && i >= restPlace) ? arg : leftOutIfBlank(arg),
  );
  const rangeIfGiven = (name: string): Matrix | undefined => given[indexOf(name)] ?? undefined;
  const range = (name: string): Matrix => {
    const found = rangeIfGiven(name);
    if (!found) throw new Refusal('is missing', name);
    return found;
  };
  const cell = (name: string): CellValue => {
    const matrix = range(name);
    if (matrix.length !== 1 || matrix[0]?.length !== 1) throw new Refusal('takes a single cell', name);
    const [[value = null] = []] = matrix;
    if (value instanceof CellError) throw new PassedError(value);
    return value;
  };
  return {
    range,
    rangeIfGiven,
    cell,
    text: (name) => {
      const value = cell(name);
      if (value === null || value === '') throw new Refusal('is blank', name);
      return String(value);
    },
    count: (name) => {
      const standard = parameters[indexOf(name)]?.standard;
      if (!rangeIfGiven(name) && standard !== undefined) return standard;
      const value = cell(name);
      if (typeof value === 'number' && Number.isInteger(value) && value > 0) return value;
      throw new Refusal(`is ${String(value)}; it takes a whole number above 0`, name);
    },
    units: () => {
      if (!rangeIfGiven('units')) return 'in';
      return naming('units', () => readUnits(cell('units')));
    },
    rest: (name) => given.slice(indexOf(name)),
  };
}

/** A tool as the worksheet sees it. */
export function toolFunction({ name, summary, parameters, changes, run }: Tool): WorksheetFunction {
  const most = parameters.at(-1)?.repeating ? Infinity : parameters.length;
  return {
    id: name,
    family: familyOf(name),
    summary,
    parameters,
    ...(changes && { changes }),
    call: (given) => {
      try {
        if (given.length > most)
          throw new Refusal(`${name} takes at most ${most} arguments; ${given.length} were given.`);
        return run(argsOf(parameters, given));
      } catch (error) {
        return [[errorCell(error)]];
      }
    },
  };
}
