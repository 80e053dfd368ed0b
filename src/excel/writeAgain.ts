/// <reference types="office-js" />
import { readReference } from '../cells/reference';
import { areaContains } from '../cells/address';
import type { CellValue } from '../cells/value';
import { numberText } from '../core/format';
import type { CellChange } from '../package/changes';
import type { KeptWhatIf } from '../whatif/kept/record';
import { plainText } from '../whatif/table';
import { inOneStep } from './undoStep';
import { fillCells } from './writeCells';

/** Writes changes of cells into the open workbook, one step to undo; looks stay. */
export const writeChanges = (changes: readonly CellChange[]): Promise<void> =>
  inOneStep((context) => write(context, changes));

/** The same for a what-if that was run again, with the names of the lines in its charts. */
export const writeAgain = (kept: KeptWhatIf, { changes }: { readonly changes: readonly CellChange[] }) =>
  inOneStep(async (context) => {
    await write(context, changes);
    if (kept.vary.length > 1) await nameLines(context, kept);
  });

async function write(context: Excel.RequestContext, changes: readonly CellChange[]): Promise<void> {
  for (const name of new Set(changes.map(({ sheet }) => sheet))) {
    // Later changes of the same cell win.
    const cells = new Map(
      changes
        .filter(({ sheet }) => sheet === name)
        .map(({ row, column, value, formula }) => [
          `${row} ${column}`,
          { row, column, value, ...(formula !== undefined && { formula }) },
        ]),
    );
    await fillCells(context, context.workbook.worksheets.getItem(name), [...cells.values()]);
  }
  await context.sync();
}

/** A line of a matrix's chart is named by a text, which the value at the head of its cells may have left behind. */
async function nameLines(context: Excel.RequestContext, { tables }: KeptWhatIf): Promise<void> {
  const [first] = tables;
  if (!first) return;
  const sheet = context.workbook.worksheets.getItem(first.sheet);
  const heads = tables.map(({ area: { top, left, bottom, right } }) =>
    sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1),
  );
  for (const range of heads) range.load('values');
  sheet.charts.load('items/name');
  await context.sync();
  const all = sheet.charts.items.map(({ series }) => series);
  for (const series of all) series.load('items/name');
  await context.sync();
  const sources = all.flatMap(({ items }) =>
    items.map((series) => ({ series, source: series.getDimensionDataSourceString('Values') })),
  );
  await context.sync();
  for (const { series, source } of sources) {
    const area = readReference(source.value.replace(/^=/, ''))?.area;
    const at = tables.findIndex((table) => area && areaContains(table.area, area.top, area.left));
    const table = tables[at]?.area;
    if (!area || !table) continue;
    const values = heads[at]?.values as CellValue[][] | undefined;
    const head =
      area.left === area.right ? values?.[0]?.[area.left - table.left] : values?.[area.top - table.top]?.[0];
    series.name = typeof head === 'number' ? numberText(head) : plainText(head ?? null);
  }
  await context.sync();
}
