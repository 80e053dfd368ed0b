/** The variants of a workbook, as its sheet "Variants" has them. */
import { readReference, type SheetReference } from '../../cells/reference';
import type { CellValue } from '../../cells/value';
import type { Area } from '../../cells/address';
import { cellFinder, type Sheet, type Workbook } from '../../package/model';
import { isSameName, type CellRef } from '../plan';

export const SHEET = 'Variants';
/** Columns before the variants: name, cell, unit, the design as it is. */
export const UNIT = 2;
export const NOW = 3;
/** Rows above the first input: title, note, names. */
export const NAMES = 3;

/** What the sheet says of a variant whose results are old. */
export const AGAIN = 'Made for other values: work out again.';

/** Variants that the sheet has columns for. */
export const ROOM = 12;

export interface Variant {
  readonly name: string;
  /** Whether its results are what the design gives, as the sheet itself says. */
  readonly standing: string;
  /** In the order of the inputs; null where none was given. */
  readonly values: readonly CellValue[];
}

/** Cells of the sheet that hold what results were worked out for; hidden names keep them. */
export interface Made {
  /** The inputs of each variant, in the columns of the variants. */
  readonly inputs: Area;
  /** What else of the design the results rest on: label, value then, value now, whether it has changed. */
  readonly lines: Area;
}

export interface Variants {
  readonly inputs: readonly (CellRef & { readonly label: string; readonly unit: string })[];
  readonly results: readonly CellRef[];
  readonly made?: Made;
  readonly variants: readonly Variant[];
}

/** The labels of the inputs that a variant leaves out. */
export const missingIn = ({ inputs }: Variants, { values }: Variant): readonly string[] =>
  inputs.flatMap(({ label }, at) => ((values[at] ?? '') === '' ? [label] : []));

export const isSheet = ({ name }: { readonly name: string }): boolean => isSameName(name, SHEET);
export const inputRow = (at: number): number => NAMES + 1 + at;
/** The line between inputs and results, which says whether the results stand. */
export const statusRow = (inputs: number): number => NAMES + 1 + inputs;
export const resultRow = (inputs: number, at: number): number => statusRow(inputs) + 1 + at;

/**
 * Undefined where the workbook has none. The sheet is read as it stands: names and values may be typed over. `look` says
 * what its cells hold where that is newer than the workbook.
 */
export function readVariants(
  workbook: Pick<Workbook, 'names'> & { readonly sheets: readonly Pick<Sheet, 'name' | 'cells'>[] },
  look?: (row: number, column: number) => CellValue,
): Variants | undefined {
  const sheet = workbook.sheets.find(isSheet);
  if (!sheet) return undefined;
  const named = (kind: string): SheetReference[] => {
    const found: (SheetReference | undefined)[] = [];
    for (const { name, formula } of workbook.names) {
      const [, number] = new RegExp(`^variants\\.${kind}\\.(\\d+)$`, 'i').exec(name) ?? [];
      if (number !== undefined) found[Number(number) - 1] = readReference(formula);
    }
    return found.filter((one) => one !== undefined);
  };
  const cells = (kind: string): CellRef[] =>
    named(kind).map((place) => ({ sheet: place.sheet, row: place.area.top, column: place.area.left }));
  const [places, results] = [cells('input'), cells('result')];
  if (places.length === 0) return undefined;
  const find = cellFinder(sheet);
  const value = look ?? ((row: number, column: number): CellValue => find(row, column)?.value ?? null);
  const text = (row: number, column: number): string => String(value(row, column) ?? '');
  const inputs = places.map((cell, at) => ({
    ...cell,
    label: text(inputRow(at), 0),
    unit: text(inputRow(at), UNIT),
  }));
  const variants: Variant[] = [];
  for (let column = NOW + 1; value(NAMES, column) !== null && value(NAMES, column) !== ''; column++)
    variants.push({
      name: String(value(NAMES, column)),
      standing: text(statusRow(inputs.length), column),
      values: inputs.map((_, at) => value(inputRow(at), column)),
    });
  const [kept, lines] = [named('for')[0], named('made')[0]];
  return {
    inputs,
    results,
    ...(kept && lines && { made: { inputs: kept.area, lines: lines.area } }),
    variants,
  };
}
