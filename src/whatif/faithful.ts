import type { WorksheetFunction } from '../call/worksheetFunction';
import { Calculator } from '../workbook/engine/calculator';
import { isCall, tokenize } from '../cells/formulaTokens';
import { cellFinder, type Cell, type Workbook } from '../package/model';
import { agrees } from '../workbook/agrees';
import { between } from './between';
import type { CellRef } from './plan';

/**
 * True where a copy calculates what lies between the inputs and the results as the program that saved the workbook
 * does: it knows every function there, and comes to the values that the workbook holds.
 */
export async function isFaithful(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): Promise<boolean> {
  const part = between(workbook, inputs, results);
  const calculator = new Calculator(part, functions);
  try {
    const calls = part.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => callsIn(formula ?? '')));
    if (!calls.every((name) => calculator.hasFunction(name))) return false;
    await calculator.calculate();
    return part.sheets.every((sheet, index) => {
      const find = cellFinder(sheet);
      return sheet.cells.every((cell) =>
        placesOf(cell).every(([row, column]) =>
          agrees(calculator.value(index, row, column), find(row, column)?.value ?? null),
        ),
      );
    });
  } finally {
    calculator.dispose();
  }
}

const callsIn = (formula: string): string[] => {
  const tokens = tokenize(formula);
  return tokens.flatMap(({ text }, at) => (isCall(tokens, at) ? [text] : []));
};

/** The cells that a formula fills. */
function placesOf({ formula, row, column, spill }: Cell): [number, number][] {
  if (formula === undefined) return [];
  const { top, left, bottom, right } = spill ?? { top: row, left: column, bottom: row, right: column };
  return Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across): [number, number] => [top + down, left + across]),
  ).flat();
}
