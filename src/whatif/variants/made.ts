/**
 * What the results of variants were worked out for, under them on their sheet, and formulas that compare: any program
 * tells by them when the results are old.
 */
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { areaAddress, cellAddress } from '../../cells/address';
import { referenceText } from '../../cells/reference';
import type { CellChange } from '../../package/changes';
import type { CellDescription, ConditionDescription } from '../../package/description';
import type { Workbook } from '../../package/model';
import { MOST_LEAVES } from '../kept/leaves';
import { changedColor, OLD, verdictColors } from '../kept/looks';
import { lineChanges, madeLines, SPARE_LINES, type MadeLine } from '../kept/made';
import { CHANGED } from '../kept/record';
import type { CellRef } from '../plan';
import {
  AGAIN,
  inputRow,
  NAMES,
  NOW,
  resultRow,
  ROOM,
  SHEET,
  statusRow,
  type Made,
  type Variants,
} from './read';

const STANDS = 'For the design as it stands.';
const NOT_YET = 'Not worked out yet.';
const MOST_LINES = MOST_LEAVES + SPARE_LINES;

interface Compared {
  readonly inputs: readonly CellRef[];
  readonly results: readonly CellRef[];
}

export const madeNames = ({ inputs, lines }: Made): Record<string, string> => ({
  'variants.for.1': referenceText({ sheet: SHEET, area: inputs }),
  'variants.made.1': referenceText({ sheet: SHEET, area: lines }),
});

const linesFor = (
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { inputs, results }: Compared,
  { row, most }: { readonly row: number; readonly most: number },
): Promise<MadeLine[]> =>
  madeLines(workbook, functions, { vary: inputs, read: results }, { row, column: 0 }, most);

/** The cells under the results of a new sheet, the row that says whether they stand, and the looks of both. */
export async function madeCells(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  compared: Compared,
  labels: readonly string[],
): Promise<{
  readonly made: Made;
  readonly cells: readonly (readonly [row: number, column: number, cell: CellDescription])[];
  readonly conditions: readonly ConditionDescription[];
}> {
  const [count, results] = [compared.inputs.length, compared.results.length];
  const heading = resultRow(count, results) + 1;
  const first = heading + count + 2;
  const lines = await linesFor(workbook, functions, compared, { row: first, most: MOST_LINES });
  const made: Made = {
    inputs: { top: heading + 1, left: NOW + 1, bottom: heading + count, right: NOW + ROOM },
    lines: { top: first, left: 0, bottom: first + lines.length + SPARE_LINES - 1, right: 3 },
  };
  const cells: [number, number, CellDescription][] = [
    [heading, 0, { value: 'What the results were worked out for', style: 'note' }],
    ...labels.map((label, at): [number, number, CellDescription] => [
      heading + 1 + at,
      0,
      { value: label, style: 'note' },
    ]),
    ...['Of the design', 'Then', 'Now', ''].map((value, at): [number, number, CellDescription] => [
      first - 1,
      at,
      { value, style: 'note' },
    ]),
    ...lineChanges(SHEET, made.lines, lines).map(
      ({ row, column, value, formula }): [number, number, CellDescription] => [
        row,
        column,
        {
          ...(formula === undefined ? { value: value ?? null } : { formula }),
          style: 'note',
        },
      ],
    ),
  ];
  const row = statusRow(count);
  for (let column = NOW + 1; column <= NOW + ROOM; column++)
    cells.push([
      row,
      column,
      { formula: standsFormula(made, column, results > 0 ? row + 1 : row), style: 'standing' },
    ]);
  const all = (from: number, to: number): string =>
    areaAddress({ top: from, left: NOW + 1, bottom: to, right: NOW + ROOM });
  const standing = `${cellAddress(0, NOW + 1).replace(/\d/g, '')}$${row + 1}`;
  const conditions: ConditionDescription[] = [
    { cells: all(row, row), when: `OR(${standing}="${AGAIN}",${standing}="${NOT_YET}")`, style: OLD },
    // What is old has no color of a verdict.
    {
      cells: all(row + 1, row + results),
      when: `${standing}="${AGAIN}"`,
      style: { font: { color: '#8A949C' } },
    },
    ...compared.results.flatMap((_, at) => {
      const line = resultRow(count, at);
      return verdictColors(all(line, line), `IF(${standing}="${STANDS}",${cellAddress(line, NOW + 1)},"")`);
    }),
    changedColor(
      areaAddress({ ...made.lines, left: made.lines.right }),
      cellAddress(made.lines.top, made.lines.right),
      CHANGED,
    ),
  ];
  return { made, cells, conditions };
}

/** What working the results out changes of it. */
export async function madeChanges(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { made, inputs, results, variants }: Variants,
): Promise<CellChange[]> {
  // Begun before results told what they were made for.
  if (!made) return [];
  const { top, bottom } = made.lines;
  const lines = await linesFor(
    workbook,
    functions,
    { inputs, results },
    { row: top, most: bottom - top + 1 },
  );
  return [
    ...inputs.flatMap((_, at) =>
      Array.from({ length: ROOM }, (__, one) => ({
        sheet: SHEET,
        row: made.inputs.top + at,
        column: made.inputs.left + one,
        value: variants[one]?.values[at] ?? null,
      })),
    ),
    ...lineChanges(SHEET, made.lines, lines),
  ];
}

function standsFormula({ inputs, lines }: Made, column: number, result: number): string {
  const cell = (row: number): string => cellAddress(row, column);
  const count = inputs.bottom - inputs.top + 1;
  const area = (top: number): string => `${cell(top)}:${cell(top + count - 1)}`;
  const [given, then] = [area(inputRow(0)), area(inputs.top)];
  const marks = areaAddress({ ...lines, left: lines.right });
  // A blank cell equals zero: what is blank is compared of itself.
  const other = `SUMPRODUCT((${given}<>${then})+(ISBLANK(${given})<>ISBLANK(${then})))>0`;
  return `IF(${cell(NAMES)}="","",IF(${cell(result)}="","${NOT_YET}",IFERROR(IF(OR(COUNTIF(${marks},"${CHANGED}")>0,${other}),"${AGAIN}","${STANDS}"),"${AGAIN}")))`;
}
