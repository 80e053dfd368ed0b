import { CellError, type Argument, type CellValue } from '../../cells/value';
import { isLikelyDate, mayBeDate, typedForDate } from '../../call/dates';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { inputsOf } from '../../core/define';
import type { CellRef } from '../../whatif/plan';
import { cellText } from '../../whatif/plan';
import { callsIn, definitionOf, type Call } from '../../work/calls';
import { cellsOf, readGiven, type Surroundings } from '../../work/givenArguments';
import { refusalIn, type RefusedCall } from '../../panel/work/refusal';
import { isOurs } from '../formulas';
import { readFrom, type Facts, type FormulaCell, type SheetFacts } from './facts';

/** What a button of a finding does. */
export type Cure =
  | { readonly does: 'go'; readonly to: CellRef }
  | { readonly does: 'enter text'; readonly into: CellRef; readonly text: string }
  | { readonly does: 're-enter' }
  | { readonly does: 'fetch the list' }
  | { readonly does: 'calculate automatically' }
  | { readonly does: 'stop iterating' }
  | { readonly does: 'unprotect'; readonly sheet: string };

export const GROUPS = ['mode', 'protected', 'lost', 'oldList', 'blank', 'errors', 'tables'] as const;

export interface Finding {
  readonly group: (typeof GROUPS)[number];
  /** Absent for what is true of the whole workbook. */
  readonly at?: CellRef;
  readonly says: string;
  readonly cures: readonly Cure[];
}

/**
 * What keeps the open workbook from being right. `entered` are the cells that were entered again before: where they
 * still show `#NAME?`, Excel does not know their function.
 */
export async function examine(
  facts: Facts,
  functions: readonly WorksheetFunction[],
  entered: ReadonlySet<string>,
): Promise<Finding[]> {
  const found: Finding[] = modeFindings(facts);
  for (const sheet of facts.sheets) {
    const around: Surroundings = { sheet: sheet.name, read: readFrom(facts), functions };
    const ours = sheet.formulas.filter(({ formula }) => isOurs(formula));
    if (sheet.isProtected && ours.length > 0) found.push(protectedFinding(sheet));
    for (const cell of sheet.formulas) {
      if (cell.formula.toUpperCase().startsWith('=TABLE(')) found.push(tableFinding(sheet, cell));
      else if (ours.includes(cell)) found.push(...(await ourFindings(cell, around, entered)));
      else if (cell.value instanceof CellError)
        found.push(errorFinding(sheet.name, cell, shownError(cell.value)));
    }
  }
  return found.map((finding) => throughProtection(finding, facts));
}

/** What changes cells of a protected sheet is refused by Excel: that is said, with the button that opens the sheet. */
function throughProtection(finding: Finding, { sheets }: Facts): Finding {
  const closed = finding.cures
    .map((cure) =>
      cure.does === 'enter text' ? cure.into.sheet : cure.does === 're-enter' ? finding.at?.sheet : undefined,
    )
    .find((name) => sheets.some((sheet) => sheet.name === name && sheet.isProtected));
  if (closed === undefined) return finding;
  return {
    ...finding,
    says: `${finding.says} ${closed} is protected: take that off first.`,
    cures: [{ does: 'unprotect', sheet: closed }, ...finding.cures],
  };
}

function modeFindings({ mode, iterates }: Facts): Finding[] {
  const found: Finding[] = [];
  if (mode === 'Manual') {
    found.push({
      group: 'mode',
      says: 'Excel calculates only when told to (F9): what the cells show may be older than their inputs.',
      cures: [{ does: 'calculate automatically' }],
    });
  }
  if (iterates) {
    found.push({
      group: 'mode',
      says: 'Iterative calculation is on: a MOLD function in a circle of cells gives #CALC!, and a circle made by mistake is not reported.',
      cures: [{ does: 'stop iterating' }],
    });
  }
  return found;
}

const protectedFinding = ({ name }: SheetFacts): Finding => ({
  group: 'protected',
  says: `${name} is protected: its formulas cannot be entered again there, nor a list or a text format be set. Protect it again afterwards (Review, Protect Sheet).`,
  cures: [{ does: 'unprotect', sheet: name }],
});

function tableFinding({ name }: SheetFacts, { row, column }: FormulaCell): Finding {
  const at = { sheet: name, row, column };
  return {
    group: 'tables',
    at,
    says: 'is part of a data table (What-If Analysis), which stays empty or in error over MOLD functions, as Goal Seek gives wrong numbers. The What if tab, TRY.TABLE and TRY.SOLVE do the same rightly.',
    cures: [{ does: 'go', to: at }],
  };
}

const shownError = ({ code, message }: CellError): string => (message === '' ? code : `${code} ${message}`);

const errorFinding = (
  sheet: string,
  { row, column }: FormulaCell,
  says: string,
  cures: readonly Cure[] = [],
): Finding => {
  const at = { sheet, row, column };
  return { group: 'errors', at, says, cures: [...cures, { does: 'go', to: at }] };
};

async function ourFindings(
  cell: FormulaCell,
  around: Surroundings,
  entered: ReadonlySet<string>,
): Promise<Finding[]> {
  const { sheet } = around;
  const at = { sheet, row: cell.row, column: cell.column };
  const calls = callsIn(cell.formula);
  if (cell.value instanceof CellError && cell.value.code === '#NAME?') {
    const unknown = calls.find(({ id }) => !around.functions.some((fn) => fn.id === id));
    if (unknown)
      return [errorFinding(sheet, cell, `#NAME? There is no function ${unknown.id} in this version.`)];
    const isOld = entered.has(cellText(at));
    return [
      isOld
        ? {
            group: 'oldList',
            at,
            says: `still shows #NAME?: Excel goes by an older list of functions, without ${calls[0]?.id ?? 'this one'}. It keeps a list up to a day.`,
            cures: [{ does: 'fetch the list' }],
          }
        : {
            group: 'lost',
            at,
            says: 'shows #NAME?: it was calculated while the add-in was missing. Only entering it again heals it.',
            cures: [{ does: 're-enter' }],
          },
    ];
  }
  const blanks = (await Promise.all(calls.map((call) => blankFindings(call, at, around)))).flat();
  if (!(cell.value instanceof CellError)) return blanks;
  const refused = await refusalIn(calls, around);
  const says = refused ? `${cell.value.code} ${refused.message}` : shownError(cell.value);
  return [...blanks, errorFinding(sheet, cell, says, refused && dateCures(refused, sheet))];
}

/** More of one range are no news. */
const MOST_BLANKS = 5;

/** Inputs whose cell is blank: Excel hands over 0 for it, where the function would say or take something else. */
async function blankFindings(call: Call, at: CellRef, around: Surroundings): Promise<Finding[]> {
  const fn = around.functions.find(({ id }) => id === call.id);
  if (!fn) return [];
  const all = await Promise.all(call.args.map((one) => readGiven(one, around)));
  const given = all.map(({ value }) => value);
  const reader = `${fn.id} in ${cellText(at)}`;
  return call.args.flatMap((argument, place): Finding[] => {
    const parameter = fn.parameters[Math.min(place, fn.parameters.length - 1)];
    const cells = cellsOf(argument);
    if (!parameter || !cells) return [];
    const isRange = onlyCell(given[place]) === undefined;
    return blanksIn(given[place])
      .slice(0, MOST_BLANKS)
      .flatMap(([down, across]): Finding[] => {
        const { top, left } = cells.area;
        const blank = { sheet: cells.sheet ?? around.sheet, row: top + down, column: left + across };
        const finding = (says: string): Finding[] => [
          { group: 'blank', at: blank, says, cures: [{ does: 'go', to: blank }] },
        ];
        if (!isRange && !parameter.optional) return finding(`is blank: ${reader} needs ${parameter.name}.`);
        if (!zeroCounts(fn, given, place, [down, across])) return [];
        return finding(
          `is blank: Excel may hand it to ${reader} as 0, not as left out. Type ${isRange ? 'its value' : parameter.name}, or take the cell out of the formula.`,
        );
      });
  });
}

/** The value of an argument that is one cell; undefined for ranges and what was left out. */
const onlyCell = (value: Argument): CellValue | undefined =>
  value?.length === 1 && value[0]?.length === 1 ? value[0][0] : undefined;

const blanksIn = (value: Argument): [down: number, across: number][] =>
  (value ?? []).flatMap((line, down) =>
    line.flatMap((cell, across): [number, number][] => (cell === null ? [[down, across]] : [])),
  );

/** Whether a call answers for 0 in a blank cell with something else than a refusal, and other than without it. */
function zeroCounts(
  fn: WorksheetFunction,
  given: readonly Argument[],
  place: number,
  [down, across]: readonly [number, number],
): boolean {
  const filled = given.map((value, at) =>
    at === place
      ? value?.map((line, row) => line.map((cell, column) => (row === down && column === across ? 0 : cell)))
      : value,
  );
  const [withZero, without] = [fn.call(filled), fn.call(given)];
  return withZero.some((line, row) =>
    line.some(
      (cell, column) =>
        !(cell instanceof CellError) &&
        JSON.stringify(cell) !== JSON.stringify(without[row]?.[column] ?? null),
    ),
  );
}

/** A thread or a fraction that became a date is entered again as the text that it was. */
function dateCures({ call, given }: RefusedCall, sheet: string): Cure[] {
  const definition = definitionOf(call);
  if (!definition) return [];
  return inputsOf(definition).flatMap(({ reading }, place): Cure[] => {
    const { value, origin } = given[place] ?? {};
    const only = onlyCell(value);
    if (!mayBeDate(reading) || origin?.from !== 'cells') return [];
    if (typeof only !== 'number' || !isLikelyDate(only) || !('read' in reading)) return [];
    const text = typedForDate(only, (name) => reading.read(name, 'in', 'text'));
    const { area } = origin;
    return [
      {
        does: 'enter text',
        into: { sheet: origin.sheet ?? sheet, row: area.top, column: area.left },
        text,
      },
    ];
  });
}
