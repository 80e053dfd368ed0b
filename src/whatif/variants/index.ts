/** Named sets of inputs side by side on the sheet "Variants": what each was set to, what the design gives for it. */
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { cellAddress } from '../../cells/address';
import { referenceText } from '../../cells/reference';
import { CellError, type CellValue } from '../../cells/value';
import { Refusal } from '../../core/refusal';
import { addSheets } from '../../package/author';
import type { CellChange } from '../../package/changes';
import type { CellDescription, ConditionDescription, SheetsDescription } from '../../package/description';
import type { Workbook } from '../../package/model';
import { Book } from '../../sheet/book';
import type { Limits } from '../../sheet/budget';
import type { CellInput } from '../../workbook/cells';
import { contentOf } from '../../workbook/content';
import { WorkbookCopy } from '../copy';
import { headingOf, type Heading } from '../heading';
import { STYLES } from '../kept/looks';
import { cellText, isSameName, viewOf, type CellRef } from '../plan';
import { holdInputs, put, puttingBack, shown, type Journal, type TrialCells } from '../run';
import { madeCells, madeChanges, madeNames } from './made';
import {
  inputRow,
  isSheet,
  missingIn,
  NAMES,
  NOW,
  readVariants,
  resultRow,
  ROOM,
  SHEET,
  statusRow,
  UNIT,
  type Variant,
  type Variants,
} from './read';

/** Wide enough for words such as a metal's name. */
const COLUMN = 18;

/** The workbook with a sheet for variants of these inputs, which has none yet. */
export async function beginVariants(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): Promise<Workbook> {
  return addSheets(workbook, await planVariants(workbook, functions, inputs, results));
}

/** That sheet as a plan, for the writer of files and that of Excel. */
export async function planVariants(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): Promise<SheetsDescription> {
  if (workbook.sheets.some(isSheet))
    throw new Refusal(`The workbook has a sheet "${SHEET}" already: add to it, or rename it first.`);
  if (inputs.length === 0 || results.length === 0)
    throw new Refusal('Name at least one input and one result.');
  const copy = new WorkbookCopy(workbook, functions);
  // A variant is put into its cells as values: what a formula gives must stay the formula's.
  await holdInputs(copy, inputs, false);
  const cells: Record<string, CellDescription> = {};
  const conditions: ConditionDescription[] = [];
  const place = (row: number, column: number, cell: CellDescription): void => {
    cells[cellAddress(row, column)] = cell;
  };
  place(0, 0, { value: 'Variants of this design', style: 'title' });
  place(1, 0, {
    value:
      'Values in yellow cells may be changed: then have the results worked out again. Red: other than the design now.',
    style: 'note',
  });
  const heads = ['', 'Cell', 'Unit', 'Design now'];
  for (let column = 0; column <= NOW + ROOM; column++)
    place(NAMES, column, { value: heads[column] || null, style: 'head' });
  const labels: string[] = [];
  const line = async (row: number, cell: CellRef, isInput: boolean): Promise<void> => {
    const { label, unit }: Heading = await headingOf(copy, cell);
    if (isInput) labels.push(label);
    const reference = referenceText({
      sheet: cell.sheet,
      area: { top: cell.row, left: cell.column, bottom: cell.row, right: cell.column },
    });
    place(row, 0, { value: label, style: 'label' });
    place(row, 1, { value: cellText(cell), style: 'note' });
    place(row, UNIT, { value: unit || null, style: 'note' });
    place(row, NOW, {
      formula: isInput ? `IF(ISBLANK(${reference}),"",${reference})` : `IFERROR(${reference},"error")`,
      style: 'value',
    });
    for (let column = NOW + 1; column <= NOW + ROOM; column++)
      place(row, column, { style: isInput ? 'tried' : 'value' });
    const area = `${cellAddress(row, NOW + 1)}:${cellAddress(row, NOW + ROOM)}`;
    const first = cellAddress(row, NOW + 1);
    if (isInput)
      conditions.push({
        cells: area,
        when: `AND(${first}<>"",${first}<>$${cellAddress(row, NOW)})`,
        style: { font: { bold: true, color: '#9C0006' } },
      });
  };
  for (const [at, cell] of inputs.entries()) await line(inputRow(at), cell, true);
  for (const [at, cell] of results.entries()) await line(resultRow(inputs.length, at), cell, false);
  place(statusRow(inputs.length), 0, { value: 'Results', style: 'status' });
  copy.dispose();
  const { made, ...below } = await madeCells(workbook, functions, { inputs, results }, labels);
  for (const [row, column, cell] of below.cells) place(row, column, cell);
  conditions.push(...below.conditions);
  const named = (kind: string, all: readonly CellRef[]): [string, string][] =>
    all.map(({ sheet, row, column }, at) => [
      `variants.${kind}.${at + 1}`,
      referenceText({ sheet, area: { top: row, left: column, bottom: row, right: column } }),
    ]);
  return {
    styles: { ...STYLES, standing: { ...STYLES.note, wrap: true, vertical: 'top' } },
    hiddenNames: {
      ...Object.fromEntries([...named('input', inputs), ...named('result', results)]),
      ...madeNames(made),
    },
    sheets: [
      {
        name: SHEET,
        columns: { A: 34, B: 16, C: 12, [`D:${cellAddress(0, NOW + ROOM).replace(/\d/g, '')}`]: COLUMN },
        rows: { 1: 24, [statusRow(inputs.length) + 1]: 42 },
        freeze: cellAddress(NAMES + 1, NOW + 1),
        cells,
        conditions,
        print: {
          paper: 'Letter',
          landscape: true,
          area: `A1:${cellAddress(resultRow(inputs.length, results.length - 1), NOW + ROOM)}`,
        },
      },
    ],
  };
}

/** What adding the present values under a name changes; a name that is there takes them anew. */
export function presentChanges(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  name: string,
): CellChange[] {
  const { inputs, variants } = required(workbook);
  const wanted = name.trim();
  if (wanted === '') throw new Refusal('Give the variant a name.');
  const known = variants.findIndex((one) => isSameName(one.name, wanted));
  const at = known < 0 ? variants.length : known;
  if (at >= ROOM) throw new Refusal(`The sheet has room for ${ROOM} variants.`);
  const book = new Book(contentOf(workbook), functions);
  book.calculate();
  const column = NOW + 1 + at;
  const present = inputs.map(({ sheet, row, column: from }) =>
    plain(book.value(indexOf(workbook, sheet), row, from)),
  );
  const there = variants[known];
  if (there?.values.some((value, i) => value !== null && value !== '' && value !== present[i]))
    throw new Refusal(
      `There is a variant "${there.name}" with other values, which would be lost: give another name, or empty its column on the sheet "${SHEET}" first.`,
    );
  return [
    change(NAMES, column, there?.name ?? wanted),
    ...present.map((value, one) => change(inputRow(one), column, value)),
  ];
}

/**
 * What the design of a calculated workbook gives for every variant; for one with an input left out, which. Values are tried
 * in a copy unless other cells are given, with a journal of what those held.
 */
export async function resultChanges(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  limits?: Limits,
  there?: { readonly cells: TrialCells; readonly journal: Journal },
): Promise<CellChange[]> {
  const found = required(workbook);
  await sameUnits(workbook, functions, found);
  const { inputs, results, variants } = found;
  const cells: TrialCells = there?.cells ?? new WorkbookCopy(workbook, functions, limits);
  const held = await holdInputs(cells, inputs, true);
  cells.focus?.(inputs, results);
  const whole = variants.filter((variant) => missingIn(found, variant).length === 0);
  const given = new Map<Variant, readonly CellValue[]>();
  await puttingBack(cells, held, there?.journal, async () => {
    for (const variant of whole) {
      await put(
        cells,
        held.map(({ cell }, at) => ({ cell, content: plain(variant.values[at] ?? null) })),
      );
      await cells.recalculate();
      const values: CellValue[] = [];
      for (const cell of results) values.push(shown(await viewOf(cells, cell)));
      given.set(variant, values);
    }
  });
  const worked = variants.flatMap((variant, at): CellChange[] => {
    const values = given.get(variant);
    const missing = `missing: ${missingIn(found, variant).join(', ')}`;
    return results.map((_, one) =>
      change(
        resultRow(inputs.length, one),
        NOW + 1 + at,
        values ? plain(values[one] ?? null) : one === 0 ? missing : '',
      ),
    );
  });
  return [...worked, ...(await madeChanges(workbook, functions, found))];
}

/** What putting a variant's inputs into the design changes. */
export async function applyChanges(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  name: string,
): Promise<CellChange[]> {
  const found = required(workbook);
  await sameUnits(workbook, functions, found);
  const { inputs, variants } = found;
  const variant = variants.find((one) => isSameName(one.name, name.trim()));
  if (!variant)
    throw new Refusal(
      `There is no variant "${name}"; there ${variants.length === 1 ? 'is' : 'are'} ${variants.map((one) => `"${one.name}"`).join(', ') || 'none'}.`,
    );
  const missing = missingIn(found, variant);
  if (missing.length > 0)
    throw new Refusal(`"${variant.name}" leaves out ${missing.join(', ')}: nothing was changed.`);
  return inputs.map(({ sheet, row, column }, at) => ({
    sheet: workbook.sheets[indexOf(workbook, sheet)]?.name ?? sheet,
    row,
    column,
    value: variant.values[at] ?? null,
  }));
}

/** The values of variants are in the units that stood beside their cells then. */
async function sameUnits(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { inputs }: Variants,
): Promise<void> {
  const copy = new WorkbookCopy(workbook, functions);
  for (const cell of inputs) {
    const { unit } = await headingOf(copy, cell);
    if (unit !== cell.unit)
      throw new Refusal(
        `${cell.label} is in ${unit || 'no unit'} now; the variants have it in ${cell.unit || 'no unit'}. Put the unit back, or type the values anew and the unit beside them on the sheet "${SHEET}".`,
      );
  }
  copy.dispose();
}

function required(workbook: Workbook): Variants {
  const found = readVariants(workbook);
  if (!found) throw new Refusal('The workbook has no variants yet: begin with inputs and results.');
  return found;
}

const indexOf = (workbook: Workbook, name: string): number =>
  workbook.sheets.findIndex((sheet) => isSameName(sheet.name, name));

const change = (row: number, column: number, value: CellValue): CellChange => ({
  sheet: SHEET,
  row,
  column,
  value,
});

const plain = (value: CellValue): CellInput => (value instanceof CellError ? value.code : value);
