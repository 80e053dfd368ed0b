import { useEffect, useState } from 'react';
import type { CellValue } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { cellAddress } from '../../cells/address';
import type { Host } from '../host';
import { useSelectedCell, type SelectedCell } from '../useSelectedCell';
import { callsIn, definitionOf, type Call } from '../../work/calls';
import { readGiven, type Surroundings } from '../../work/givenArguments';
import { workOfCall, type CallWork } from '../../work/workOfCell';

/** The formula behind the selected cell, with our calls in it. */
export interface CellFormula {
  /** `Insert!D38`. */
  readonly address: string;
  /** Where the formula stands, when it fills the selected cell from elsewhere. */
  readonly spilledFrom?: string;
  readonly value: CellValue;
  readonly calls: readonly Call[];
  /** The selected cell in the range that the formula fills. */
  readonly place: { readonly row: number; readonly column: number };
  readonly around: Surroundings;
}

/** How far above and to the left the formula of a spilled cell is looked for. */
const MOST_ROWS = 200;
const MOST_COLUMNS = 26;

async function formulaOf(
  cell: SelectedCell,
  host: Host,
  functions: readonly WorksheetFunction[],
): Promise<CellFormula> {
  const { range, value, formula } = cell;
  const around: Surroundings = {
    sheet: range.sheet,
    read: async (wanted) => (await host.read(wanted)).map((row) => row.map((one) => one.value)),
    functions,
  };
  const found = {
    address: `${range.sheet}!${cellAddress(range.row, range.column)}`,
    value,
    around,
  };
  const calls = callsIn(formula);
  if (formula !== '' || value === null) return { ...found, calls, place: { row: 0, column: 0 } };
  const spill = await spillOver(cell, host, around);
  return spill ? { ...found, ...spill } : { ...found, calls: [], place: { row: 0, column: 0 } };
}

/** The formula that fills a cell from above or from the left: the nearest whose answer reaches it. */
async function spillOver(
  { range: { sheet, row, column } }: SelectedCell,
  host: Host,
  around: Surroundings,
): Promise<Pick<CellFormula, 'calls' | 'place' | 'spilledFrom'> | undefined> {
  const top = Math.max(0, row - MOST_ROWS);
  const left = Math.max(0, column - MOST_COLUMNS);
  const cells = await host.read({
    sheet,
    row: top,
    column: left,
    rows: row - top + 1,
    columns: column - left + 1,
  });
  const candidates = cells
    .flatMap((line, down) =>
      line.map(({ formula }, across) => ({ formula, row: top + down, column: left + across })),
    )
    .map((one) => ({ ...one, calls: callsIn(one.formula) }))
    .filter(({ calls }) => calls.length > 0)
    .sort((a, b) => b.column - a.column || b.row - a.row);
  for (const candidate of candidates) {
    const place = { row: row - candidate.row, column: column - candidate.column };
    const answer = await answerOf(candidate.calls[0] as Call, around);
    if (answer.length <= place.row || (answer[0]?.length ?? 0) <= place.column) continue;
    return {
      calls: candidate.calls,
      place,
      spilledFrom: cellAddress(candidate.row, candidate.column),
    };
  }
  return undefined;
}

async function answerOf(call: Call, around: Surroundings): Promise<readonly (readonly CellValue[])[]> {
  const fn = around.functions.find(({ id }) => id === call.id);
  if (!fn) return [];
  const given = await Promise.all(call.args.map((arg) => readGiven(arg, around)));
  return fn.call(given.map(({ value }) => value));
}

/** The selected cell's formula, kept up to date; undefined while nothing is known yet. */
export function useCellFormula(host: Host, functions: readonly WorksheetFunction[]): CellFormula | undefined {
  const cell = useSelectedCell(host);
  const [formula, setFormula] = useState<CellFormula>();
  useEffect(() => {
    if (!cell) return;
    let isWanted = true;
    void formulaOf(cell, host, functions).then((found) => {
      if (isWanted) setFormula(found);
    });
    return () => {
      isWanted = false;
    };
  }, [cell, host, functions]);
  return cell && formula;
}

/** The work of one call of a formula; undefined while it is read, and for calls that have none. */
export function useCallWork(formula: CellFormula, call: Call | undefined): CallWork | undefined {
  const [shown, setShown] = useState<{ readonly call: Call; readonly work: CallWork }>();
  useEffect(() => {
    const definition = call && definitionOf(call);
    if (!definition) return;
    let isWanted = true;
    void workOfCall(call, definition, formula.around, formula.place).then((work) => {
      if (isWanted) setShown({ call, work });
    });
    return () => {
      isWanted = false;
    };
  }, [formula, call]);
  return shown && shown.call.id === call?.id ? shown.work : undefined;
}
