/** Variations of the first sample, as the What if tab and `moldsheet whatif` run them. */
import { readFileSync } from 'node:fs';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook } from '../../src/package';
import type { Workbook } from '../../src/package/model';
import { WorkbookCopy } from '../../src/whatif/copy';
import type { CellRef } from '../../src/whatif/plan';
import { runWhatIf } from '../../src/whatif/run';

const SAMPLE = 'samples/push-out-insert.xlsx';
const ENTERED = 1;
const VALUE = 3;
const RESULTS = [
  'Force on the seat',
  'Push that breaks it loose',
  'Sink under injection',
  'Witness step after it',
  'Stock to leave',
];

const evenly = (count: number, from: number, to: number): number[] =>
  Array.from({ length: count }, (_, at) => from + ((to - from) * at) / (count - 1));

/** How many variations of five results, and the milliseconds that a person waits for them. */
export async function whatIfCosts(): Promise<[runs: number, ms: number][]> {
  const workbook = readWorkbook(
    readFileSync(SAMPLE),
    worksheetFunctions.map(({ id }) => id),
  );
  const draft = cellOf(workbook, 'Draft per side', ENTERED);
  const friction = cellOf(workbook, 'Friction going in', ENTERED);
  const plans = [
    [{ cell: draft, values: evenly(200, 3, 15) }],
    [
      { cell: draft, values: evenly(100, 3, 15) },
      { cell: friction, values: evenly(100, 0.1, 0.3) },
    ],
  ];
  const costs: [number, number][] = [];
  for (const vary of plans) {
    const copy = new WorkbookCopy(workbook, worksheetFunctions);
    const start = performance.now();
    const results = RESULTS.map((label) => cellOf(workbook, label, VALUE));
    const { rows } = await runWhatIf(copy, { vary, results });
    costs.push([rows.length, performance.now() - start]);
    copy.dispose();
  }
  return costs;
}

function cellOf({ sheets: [sheet] }: Workbook, label: string, column: number): CellRef {
  const row = sheet?.cells.find((one) => one.column === 0 && one.value === label)?.row;
  if (!sheet || row === undefined) throw new Error(`${SAMPLE} has no row "${label}".`);
  return { sheet: sheet.name, row, column };
}
