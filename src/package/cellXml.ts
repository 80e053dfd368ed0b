/** One `<c>` element as files have it. */
import type { CellValue, ErrorCode } from '../cells/value';
import { CellError } from '../cells/value';
import { cellAddress } from '../cells/address';
import { encodeText, textElement } from './xml';

export interface CellXml {
  readonly row: number;
  readonly column: number;
  readonly style: number;
  /** undefined for the formula that nobody has calculated yet. */
  readonly value: CellValue | undefined;
  /** The whole `<f>` element; empty for a constant. */
  readonly formula: string;
  /** The `cm` number that marks a dynamic array. */
  readonly mark?: number | undefined;
  /** A value that an array put here: text then stands as a result, not as typed text. */
  readonly isSpilled?: boolean;
}

export function cellXml(cell: CellXml, prefix = ''): string {
  const { type, content } = valueXml(cell, prefix);
  const style = cell.style === 0 ? '' : ` s="${cell.style}"`;
  const mark = cell.mark === undefined ? '' : ` cm="${cell.mark}"`;
  const kind = type === '' ? '' : ` t="${type}"`;
  const inner = cell.formula + content;
  const open = `<${prefix}c r="${cellAddress(cell.row, cell.column)}"${style}${mark}${kind}`;
  return inner === '' ? `${open}/>` : `${open}>${inner}</${prefix}c>`;
}

function valueXml({ value, formula, isSpilled }: CellXml, prefix: string): { type: string; content: string } {
  const isResult = formula !== '' || isSpilled === true;
  const v = (text: string) => `<${prefix}v>${text}</${prefix}v>`;
  if (value === undefined) return { type: '', content: '' };
  if (value instanceof CellError) return { type: 'e', content: v(fileError(value.code)) };
  switch (typeof value) {
    case 'number':
      return Number.isFinite(value)
        ? { type: '', content: v(String(value)) }
        : { type: 'e', content: v('#NUM!') };
    case 'boolean':
      return { type: 'b', content: v(value ? '1' : '0') };
    case 'string':
      // Typed text stands in the cell itself, so that the table of strings need not be touched.
      return isResult
        ? { type: 'str', content: v(encodeText(value)) }
        : { type: 'inlineStr', content: `<${prefix}is>${textElement(value, prefix)}</${prefix}is>` };
    default:
      // The result "blank" does not exist in files; spreadsheets show it as 0.
      return { type: '', content: isResult ? v('0') : '' };
  }
}

/** The newer errors stand in files as #VALUE! with a rich value beside it, which we do not write. */
function fileError(code: ErrorCode): string {
  return code === '#SPILL!' || code === '#CALC!' ? '#VALUE!' : code;
}
