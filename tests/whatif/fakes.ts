import type { Argument, CellValue, Matrix } from '../../src/cells/value';
import { CellError } from '../../src/cells/value';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import type { Cell, Sheet, Table, Workbook } from '../../src/package/model';
import type { CellChange } from '../../src/package/changes';
import { needsArrayMark } from '../../src/package/spelling';
import { cellAddress, parseArea, parseCell } from '../../src/cells/address';
import { EMPTY_SHEET } from '../support/emptySheet';

/** A function that answers with `call`; enough for the engine, which reads no more of it. */
export function fake(id: string, call: (args: readonly Argument[]) => Matrix): WorksheetFunction {
  return { id, family: 'Test', summary: 'Test.', parameters: [], call };
}

/** `=MOLD.SEEN(…)`: its arguments as text, so that a test sees what arrives. */
export const seen = fake('SEEN', (args) => [
  [JSON.stringify(args.map((one) => one?.map((row) => row.map(shown)) ?? 'omitted'))],
]);

function shown(value: CellValue): unknown {
  return value instanceof CellError ? `${value.code} ${value.message}`.trim() : value;
}

/** `=MOLD.HALF(x)`: half of each number; refuses what is none and says which. */
export const half = fake('HALF', ([x]) =>
  x
    ? x.map((row) =>
        row.map((value) => {
          if (value instanceof CellError) return value;
          return typeof value === 'number'
            ? value / 2
            : new CellError('#VALUE!', `x: ${JSON.stringify(value)} is not a number.`);
        }),
      )
    : [[new CellError('#VALUE!', 'x is missing.')]],
);

/** `=MOLD.FAULT()`: throws, as no function should. */
export const fault = fake('FAULT', () => {
  throw new Error('slipped');
});

export const fakes = [seen, half, fault];

/** A sheet from what would be typed into it: `{ A1: 5, B1: '=A1*2' }`. */
export function sheet(
  name: string,
  typed: Readonly<Record<string, CellValue>>,
  more: { tables?: readonly Table[]; spills?: readonly string[] } = {},
): Sheet {
  const spills = (more.spills ?? []).map((address) => parseArea(address));
  const cells = Object.entries(typed).map(([address, value]): Cell => {
    const place = parseCell(address);
    if (!place) throw new Error(`${address} is no cell`);
    const formula = typeof value === 'string' && value.startsWith('=') ? value.slice(1) : undefined;
    // As a file marks it once it was saved.
    const mark = formula !== undefined && needsArrayMark(formula) ? parseArea(address) : undefined;
    const spill = spills.find((area) => area?.top === place.row && area.left === place.column) ?? mark;
    return {
      ...place,
      style: 0,
      value: formula === undefined ? value : null,
      ...(formula !== undefined && { formula }),
      ...(spill && { spill }),
    };
  });
  return {
    ...EMPTY_SHEET,
    name,
    cells: cells.sort((a, b) => a.row - b.row || a.column - b.column),
    tables: more.tables ?? [],
  };
}

export function workbook(sheets: readonly Sheet[], names: Workbook['names'] = []): Workbook {
  return { sheets, activeSheet: 0, names, styles: [], date1904: false, parts: new Map() };
}

/** What formulas give, by address, spilled values at their own. */
export function values(results: readonly CellChange[]): Record<string, unknown> {
  return Object.fromEntries(
    results.flatMap(({ row, column, value, spill }) =>
      (spill ?? [[value]]).flatMap((line, down) =>
        line.map((one, right) => [cellAddress(row + down, column + right), shown(one)]),
      ),
    ),
  );
}
