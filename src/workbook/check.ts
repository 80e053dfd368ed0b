import { cellAt } from '../call/broadcast';
import type { CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { findDefinition } from '../call/findDefinition';
import { NAMESPACE } from '../cells/namespace';
import { readCall, type ReadCall } from '../call/readCall';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { inputsOf, type Definition } from '../core/define';
import { evaluate } from '../core/evaluate';
import { quantityText } from '../core/format';
import { systemUnit, toSI, type System } from '../core/quantity';
import { isListed } from '../derive/words';
import { unusual, type Unusual } from '../derive/unusual';
import { nearestNames } from '../tables/names';
import { cellAddress } from '../cells/address';
import type { Limits } from '../sheet/budget';
import { cellFinder, type Workbook } from '../package/model';
import { calledFunctions, callsOurs } from '../package/spelling';
import { CalculatedWorkbook, type CellCall, type OurFormula } from './calculated';

/** A cell and what is to be said of it. */
export interface Finding {
  readonly sheet: string;
  readonly cell: string;
  readonly says: string;
}

export interface ChangedResult {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  /** What the file holds. */
  readonly before: CellValue;
  /** What the present catalogue gives. */
  readonly now: CellValue;
  /** Where it is another one since a function of ours answers otherwise: which, and why. */
  readonly because: readonly string[];
}

/** What a person should know of a sheet before saving it anew. */
export interface CheckReport {
  readonly formulas: number;
  readonly changed: readonly ChangedResult[];
  /** MOLD functions that do not exist. */
  readonly unknown: readonly Finding[];
  /** Plain numbers that would be usual in the other system of units. */
  readonly otherUnits: readonly Finding[];
  /** Values for which the equation was not made, or that are not usual in this trade. */
  readonly outside: readonly Finding[];
  readonly cautions: readonly Finding[];
  /** Inputs that a function needs and whose cells hold nothing. */
  readonly blank: readonly Finding[];
  /** Formulas that are not calculated here: the value stored in the file stands, with the reason. */
  readonly kept: readonly Finding[];
  /** Results in error, with what they say. */
  readonly errors: readonly Finding[];
}

/** Results that differ by less come from the last digits of a file. */
const SAME = 1e-12;
/** Longer spills are looked at no further: the same is said of them all. */
const MOST_PLACES = 1000;

export function checkWorkbook(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  limits?: Limits,
): CheckReport {
  const calculated = CalculatedWorkbook.of(workbook, functions, limits);
  const formulas = calculated.ourFormulas();
  const unknown: Finding[] = [];
  const otherUnits: Finding[] = [];
  const outside: Finding[] = [];
  const cautions: Finding[] = [];
  const blank: Finding[] = [];
  for (const at of formulas) {
    const here = { sheet: at.sheet.name, cell: cellAddress(at.row, at.column) };
    unknown.push(...unknownIn(at.formula, functions).map((says) => ({ ...here, says })));
    // A row that is kept free, `IF(B7="","",…)`, misses nothing.
    const isFree = calculated.at(at.sheet, at.row, at.column) === '';
    for (const call of calculated.callsIn(at)) {
      const told = look(call);
      otherUnits.push(...told.otherUnits.map((says) => ({ ...here, says })));
      outside.push(...told.outside.map((says) => ({ ...here, says })));
      cautions.push(...told.cautions.map((says) => ({ ...here, says })));
      if (!isFree) blank.push(...blankInputs(call).map((says) => ({ ...here, says })));
    }
  }
  const changed = changedResults(calculated, formulas, functions);
  const kept = calculated.kept().map(({ sheet, row, column, reason }) => ({
    sheet: workbook.sheets[sheet]?.name ?? '',
    cell: cellAddress(row, column),
    says: reason,
  }));
  const errors = resultsInError(calculated, new Set(kept.map(({ sheet, cell }) => `${sheet}!${cell}`)));
  return { formulas: formulas.length, changed, unknown, otherUnits, outside, cautions, blank, kept, errors };
}

function resultsInError(now: CalculatedWorkbook, kept: ReadonlySet<string>): Finding[] {
  return now.workbook.sheets.flatMap((sheet) =>
    sheet.cells.flatMap(({ row, column, formula }) => {
      if (formula === undefined || kept.has(`${sheet.name}!${cellAddress(row, column)}`)) return [];
      return resultCells({ sheet, row, column }, now).flatMap(([r, c]): Finding[] => {
        const value = now.at(sheet, r, c);
        if (!(value instanceof CellError)) return [];
        return [
          { sheet: sheet.name, cell: cellAddress(r, c), says: `${value.code} ${value.message}`.trim() },
        ];
      });
    }),
  );
}

/** The cells that a formula fills. */
function resultCells(
  { sheet, row, column }: Pick<OurFormula, 'sheet' | 'row' | 'column'>,
  now: CalculatedWorkbook,
): (readonly [row: number, column: number])[] {
  const area = now.spill(sheet, row, column) ?? { top: row, left: column, bottom: row, right: column };
  const width = area.right - area.left + 1;
  return Array.from({ length: (area.bottom - area.top + 1) * width }, (_, at) => [
    area.top + Math.floor(at / width),
    area.left + (at % width),
  ]);
}

/** Of our formulas; of others only what follows from a function that answers otherwise than when the file was saved. */
function changedResults(
  now: CalculatedWorkbook,
  ours: readonly OurFormula[],
  functions: readonly WorksheetFunction[],
): ChangedResult[] {
  const { sheets } = now.workbook;
  const cells = ours.map((at) => ({ ...at, index: sheets.indexOf(at.sheet), differing: differing(at, now) }));
  const changed = new Set(
    cells.flatMap(({ index, row, column, differing: found }) =>
      found.length > 0 ? [`${index} ${row} ${column}`] : [],
    ),
  );
  const reasons = now.basisReasons(functions, ({ sheet, row, column }) =>
    changed.has(`${sheet} ${row} ${column}`),
  );
  const own = cells.flatMap(({ index, row, column, differing: found }) =>
    found.map((one) => ({ ...one, because: reasons({ sheet: index, row, column }) })),
  );
  const others = sheets.flatMap((sheet, index) =>
    sheet.cells.flatMap(({ row, column, formula }) => {
      if (formula === undefined || callsOurs(formula)) return [];
      const because = reasons({ sheet: index, row, column });
      if (because.length === 0) return [];
      return differing({ sheet, row, column, formula }, now).map((one) => ({ ...one, because }));
    }),
  );
  return [...own, ...others];
}

function differing(
  { sheet, row, column, formula }: Omit<OurFormula, 'cell'>,
  now: CalculatedWorkbook,
): Omit<ChangedResult, 'because'>[] {
  const stored = cellFinder(sheet);
  // A file that another program made holds no results yet: none of them is another one.
  if ((stored(row, column)?.value ?? null) === null) return [];
  return resultCells({ sheet, row, column }, now).flatMap(([r, c]) => {
    const before = stored(r, c)?.value ?? null;
    const value = now.at(sheet, r, c);
    return same(before, value)
      ? []
      : [{ sheet: sheet.name, cell: cellAddress(r, c), formula, before, now: value }];
  });
}

function same(a: CellValue, b: CellValue): boolean {
  if (a instanceof CellError && b instanceof CellError) return a.code === b.code;
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
  return a === b;
}

function unknownIn(formula: string, functions: readonly WorksheetFunction[]): string[] {
  const ids = functions.map(({ id }) => id);
  return [...new Set(calledFunctions(formula))]
    .filter((id) => !ids.includes(id))
    .map((id) => {
      const listed = functions.filter(isListed).map((one) => one.id);
      const nearest = nearestNames(id, listed).map((one) => `${NAMESPACE}.${one}`);
      return `There is no function ${NAMESPACE}.${id}; nearest: ${nearest.join(', ')}.`;
    });
}

interface Told {
  readonly otherUnits: ReadonlySet<string>;
  readonly outside: ReadonlySet<string>;
  readonly cautions: ReadonlySet<string>;
}

/** What there is to say of one call, once for all places of its answer. */
function look(call: CellCall): { readonly [K in keyof Told]: readonly string[] } {
  const outside = new Set<string>();
  const cautions = new Set<string>();
  const otherUnits = new Set<string>();
  const definition = definitionIfAny(call.id);
  const read = definition && readIfAny(definition, call);
  if (definition && read) {
    const { rows, columns } = read.shape;
    for (let n = 0; n < Math.min(rows * columns, MOST_PLACES); n++) {
      const [row, column] = [Math.floor(n / columns), n % columns];
      for (const { says, fitsOther } of unusualInputs(definition, call, read, row, column))
        (fitsOther ? otherUnits : outside).add(says);
      try {
        const { values, system } = read.at(row, column);
        const found = evaluate(definition, values, system);
        for (const says of found.outside) outside.add(says);
        for (const says of found.cautions) cautions.add(says);
      } catch {
        // What is refused says so in its cell.
      }
    }
  }
  return { otherUnits: [...otherUnits], outside: [...outside], cautions: [...cautions] };
}

const isBlank = (cell: CellValue | undefined): boolean => cell === null || cell === '';

/** Inputs that must be given and are not, named with the cells that they are read from. */
function blankInputs({ id, args, argTexts }: CellCall): string[] {
  const definition = definitionIfAny(id);
  if (!definition) return [];
  return inputsOf(definition).flatMap((input, i) => {
    const cells = args[i]?.flat();
    if (input.optional || !cells || !cells.every(isBlank)) return [];
    return [`${id} needs ${input.name}, and ${argTexts[i] ?? 'its cell'} is blank.`];
  });
}

/** Of the inputs of one place, what SHOW.CHECK would say of each. */
function unusualInputs(
  definition: Definition,
  { argTexts, id }: CellCall,
  read: ReadCall,
  row: number,
  column: number,
): Unusual[] {
  let system: System;
  try {
    system = read.systemAt(row, column);
  } catch {
    return [];
  }
  const values = valuesSoFar(read, row, column);
  return inputsOf(definition).flatMap((input, i) => {
    const { reading } = input;
    const cells = read.args[i];
    const cell = cells && cellAt(cells, row, column);
    if (reading.as !== 'quantity' || cell === undefined || isBlank(cell)) return [];
    // Behind an argument that is refused, a plain number says as much: perhaps both are in the other units.
    const isPlain = typeof cell === 'number';
    const unread =
      isPlain && reading.kind !== 'percent' ? toSI(cell, systemUnit(reading.kind, system)) : undefined;
    const si = values[i] ?? unread;
    const found = unusual(input, si, system, isPlain);
    if (!found || typeof si !== 'number') return [];
    const given = quantityText(si, reading.kind, system);
    const text = argTexts[i] ?? '';
    const from = isPlain && Number.isNaN(Number(text)) ? ` (${text})` : '';
    return [{ ...found, says: `${id}, ${input.name} ${given}${from}: ${found.says}` }];
  });
}

/** The arguments of a place up to the first that is refused. */
function valuesSoFar(read: ReadCall, row: number, column: number): readonly unknown[] {
  const values: unknown[] = [];
  try {
    read.into(values, row, column);
  } catch {
    // What is refused says so in its cell.
  }
  return values;
}

function definitionIfAny(id: string): Definition | undefined {
  try {
    return findDefinition(id);
  } catch {
    return undefined;
  }
}

function readIfAny(definition: Definition, { args }: CellCall): ReadCall | undefined {
  try {
    return readCall(definition, args);
  } catch {
    return undefined;
  }
}
