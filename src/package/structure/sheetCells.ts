/** The cells of a sheet as they stand in its XML, each with the stretch of text that it takes. */
import { cellAddress, parseArea, parseCell, type Area } from '../../cells/address';
import { numeric, scanXml, TreeBuilder, type XmlElement } from '../xml';
import type { OpenTag } from '../xmlHandler';

export interface FormulaXml {
  readonly tag: OpenTag;
  readonly end: number;
  readonly text: string;
}

export interface CellXml {
  readonly row: number;
  readonly column: number;
  readonly tag: OpenTag;
  readonly end: number;
  readonly formula?: FormulaXml;
}

export interface RowXml {
  readonly row: number;
  readonly tag: OpenTag;
  readonly cells: CellXml[];
}

export interface SheetXml {
  /** The part without the cells. */
  readonly root: XmlElement;
  readonly data: XmlElement | undefined;
  readonly rows: readonly RowXml[];
}

type Open<T> = { -readonly [K in keyof T]: T[K] };

export function readSheetXml(xml: string, part: string): SheetXml {
  const tree = new TreeBuilder();
  const rows: RowXml[] = [];
  let inData = false;
  let row: RowXml | undefined;
  let cell: Open<CellXml> | undefined;
  let formula: Open<FormulaXml> | undefined;
  let inFormula = false;
  scanXml(xml, part, {
    open(tag) {
      if (tag.name === 'sheetData' && tree.depth === 1) {
        inData = true;
        tree.open(tag);
      } else if (!inData) tree.open(tag);
      else if (tag.name === 'row') {
        row = { row: numeric(tag.attributes['r'], (row?.row ?? -1) + 2) - 1, tag, cells: [] };
        rows.push(row);
      } else if (tag.name === 'c' && row) {
        const column = parseCell(tag.attributes['r'] ?? '')?.column ?? (row.cells.at(-1)?.column ?? -1) + 1;
        cell = { row: row.row, column, tag, end: tag.end };
      } else if (tag.name === 'f' && cell) {
        formula = { tag, end: tag.end, text: '' };
        inFormula = true;
      }
    },
    text(text) {
      if (inFormula && formula) formula.text += text;
      else if (!inData) tree.text(text);
    },
    close(name, start, end) {
      if (name === 'sheetData') inData = false;
      if (!inData) tree.close(name, start, end);
      else if (name === 'f' && cell && formula) {
        formula.end = end;
        cell.formula = formula;
        inFormula = false;
      } else if (name === 'c' && cell) {
        cell.end = end;
        row?.cells.push(cell);
        cell = formula = undefined;
      }
    },
  });
  const root = tree.root;
  if (!root) throw new Error(`The part ${part} is empty.`);
  return { root, data: root.children.find((one) => one.name === 'sheetData'), rows };
}

export const addressOf = ({ row, column }: CellXml): string => cellAddress(row, column);

/** The area that a formula of several cells fills. */
export const arrayArea = ({ formula }: CellXml): Area | undefined => {
  const kind = formula?.tag.attributes['t'];
  return kind === 'array' || kind === 'dataTable'
    ? parseArea(formula?.tag.attributes['ref'] ?? '')
    : undefined;
};

/** A dynamic array grows with its result; the kind without the mark has the area that its author chose. */
export const isDynamic = ({ tag }: CellXml): boolean => tag.attributes['cm'] !== undefined;
