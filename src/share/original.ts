/**
 * What a shared copy carries to be turned back: a hidden part of custom XML in the namespace below.
 *
 *     <original xmlns="urn:moldsheet:original:1" basis="basis 2, 2.0.0">
 *       <added name="MoldTables"/>                         a sheet that sharing added
 *       <sheet name="Press">
 *         <f r="D12" is="…" was="MOLD.…" spill="D12:D14"/>  a rewritten cell: its formula or value now, its formula before
 *         <v r="B3" is="12"/>                               any other cell with content, as it was when shared
 *       </sheet>
 *     </original>
 *
 * Formulas are in our spelling, without `=`; `is` of a value is the JSON of it, of a formula starts with `=`.
 */
import { CellError, type CellValue } from '../cells/value';
import type { Cell, Sheet } from '../package/model';
import { cellAddress, parseCell } from '../cells/address';
import { childrenOf, escapeXml, parseXml } from '../package/xml';

export const ORIGINAL_NAMESPACE = 'urn:moldsheet:original:1';

export interface OriginalCell {
  readonly row: number;
  readonly column: number;
  /** What stood there when the copy was made. */
  readonly is: string;
  /** The formula with our functions, for a rewritten cell. */
  readonly was?: string;
  /** The cells that it filled. */
  readonly spill?: string;
}

export interface Original {
  readonly basis: string;
  readonly added: readonly string[];
  readonly sheets: readonly { readonly name: string; readonly cells: readonly OriginalCell[] }[];
}

/** A cell's content as text that can be compared after another program has saved it. */
export function contentText(cell: Pick<Cell, 'formula' | 'value'> | undefined): string {
  if (cell?.formula !== undefined) return `=${cell.formula}`;
  const value: CellValue = cell?.value ?? null;
  return JSON.stringify(value instanceof CellError ? value.code : value);
}

export function originalXml({ basis, added, sheets }: Original): string {
  const attribute = (name: string, value: string | undefined): string =>
    value === undefined ? '' : ` ${name}="${escapeXml(value)}"`;
  const cell = ({ row, column, is, was, spill }: OriginalCell): string =>
    `<${was === undefined ? 'v' : 'f'} r="${cellAddress(row, column)}"${attribute('is', is)}${attribute('was', was)}${attribute('spill', spill)}/>`;
  return (
    `<original xmlns="${ORIGINAL_NAMESPACE}"${attribute('basis', basis)}>` +
    added.map((name) => `<added${attribute('name', name)}/>`).join('') +
    sheets
      .map(({ name, cells }) => `<sheet${attribute('name', name)}>${cells.map(cell).join('')}</sheet>`)
      .join('') +
    '</original>'
  );
}

export function readOriginal(xml: string): Original {
  const root = parseXml(xml, 'the original formulas');
  const text = (value: string | undefined): string => value ?? '';
  return {
    basis: text(root.attributes['basis']),
    added: childrenOf(root, 'added').map(({ attributes }) => text(attributes['name'])),
    sheets: childrenOf(root, 'sheet').map((sheet) => ({
      name: text(sheet.attributes['name']),
      cells: sheet.children.flatMap(({ attributes }): OriginalCell[] => {
        const place = parseCell(text(attributes['r']));
        if (!place) return [];
        const { is = '', was, spill } = attributes;
        return [{ ...place, is, ...(was !== undefined && { was }), ...(spill !== undefined && { spill }) }];
      }),
    })),
  };
}

/** The content of all cells that hold any, for the comparison when the copy comes back. */
export function cellsAsShared(
  sheet: Sheet,
  rewritten: ReadonlyMap<string, { was: string; spill?: string }>,
): OriginalCell[] {
  return sheet.cells.flatMap((cell): OriginalCell[] => {
    const { row, column, value, formula } = cell;
    if (formula === undefined && value === null) return [];
    const found = rewritten.get(cellAddress(row, column));
    return [{ row, column, is: contentText(cell), ...found }];
  });
}
