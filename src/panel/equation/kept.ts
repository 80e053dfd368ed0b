/** The equations of their own that a workbook has: its cells with UNIT.FORMULA, read from the sheet itself. */
import { unitFormula } from '../../call/tools/unitFormula';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { CellError, type CellValue } from '../../cells/value';
import type { Host, Range } from '../host';
import { callsIn } from '../../work/calls';
import { readGiven } from '../../work/givenArguments';
import type { EquationDraft } from './draft';

export interface KeptEquation {
  readonly cell: Range;
  /** What it gives now; of an error what it says. */
  readonly value: CellValue;
  /** As it would be typed into the editor. */
  readonly draft: EquationDraft;
}

/** Whether a formula calls it at all: most do not. */
const MENTIONS = new RegExp(`\\b${unitFormula.name.replace('.', '\\.')}\\s*\\(`, 'i');

export const isEquation = (formula: string): boolean => MENTIONS.test(formula);

export async function keptEquations(
  host: Host,
  functions: readonly WorksheetFunction[],
): Promise<readonly KeptEquation[]> {
  const found: KeptEquation[] = [];
  for (const cell of host.formulasWhere?.(isEquation) ?? []) {
    const kept = await equationAt(host, functions, cell);
    if (kept) found.push(kept);
  }
  return found;
}

async function equationAt(
  host: Host,
  functions: readonly WorksheetFunction[],
  cell: Range,
): Promise<KeptEquation | undefined> {
  const read = async (range: Range): Promise<CellValue[][]> =>
    (await host.read(range)).map((line) => line.map(({ value }) => value));
  const [[view] = []] = await host.read(cell);
  const call = callsIn(view?.formula ?? '').find(({ id }) => id === unitFormula.name);
  if (!view || !call) return undefined;
  const around = { sheet: cell.sheet, read, functions };
  const [equation, inputs, unit] = await Promise.all(
    [0, 1, 2].map(async (at) => (await readGiven(call.args[at] ?? [], around)).value),
  );
  const [[label = null] = []] = cell.column > 0 ? await read({ ...cell, column: cell.column - 1 }) : [];
  return {
    cell,
    value: view.value,
    draft: {
      result: typeof label === 'string' ? label : '',
      equation: textOf(equation?.[0]?.[0]),
      rows: (inputs ?? []).flatMap(([symbol, value, its]) =>
        textOf(symbol) === '' ? [] : [{ symbol: textOf(symbol), value: textOf(value), unit: textOf(its) }],
      ),
      unit: textOf(unit?.[0]?.[0]),
    },
  };
}

const textOf = (value: CellValue | undefined): string =>
  value === null || value === undefined || value instanceof CellError ? '' : String(value);
