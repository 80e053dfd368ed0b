/** Replaces single cells in the text of a sheet; everything else keeps every character. */
import type { CellValue } from '../cells/value';
import type { Area } from '../cells/address';
import type { Cell } from './model';
import { MAX_COLUMNS, areaAddress, parseArea, parseCell } from '../cells/address';
import { cellXml } from './cellXml';
import { toFileSpelling } from './spelling';
import type { Edit } from './xml';
import type { OpenTag } from './xmlHandler';
import { applyEdits, escapeXml, numeric, scanXml, withAttributes } from './xml';

/** What one cell becomes. */
export interface CellPatch {
  readonly row: number;
  readonly column: number;
  readonly style: number;
  readonly value: CellValue;
  readonly formula?: PatchedFormula;
  readonly isSpilled?: boolean;
}

export interface PatchedFormula {
  /** In our spelling. */
  readonly text: string;
  /** The `<f>` element of the file still says the same. */
  readonly isUnchanged: boolean;
  /** Area and `cm` number of a dynamic array. */
  readonly array?: { readonly area: Area; readonly mark: number };
}

interface FoundCell {
  readonly tag: OpenTag;
  readonly row: number;
  readonly column: number;
  end: number;
  formula?: { readonly tag: OpenTag; end: number; hasText: boolean };
}

export const cellKey = (row: number, column: number): number => row * MAX_COLUMNS + column;

export function patchSheet(
  xml: string,
  part: string,
  patches: ReadonlyMap<number, CellPatch>,
  cellAt: (row: number, column: number) => Cell | undefined,
): string {
  const scan = new SheetScan(patches);
  scanXml(xml, part, scan);
  const edits = scan.insertions.map(({ at, keys, wrap }) => ({
    start: at.start,
    end: at.end,
    text: wrap(keys.map((key) => newCell(patches.get(key), scan.prefix)).join('')),
  }));
  const broken = brokenGroups(scan.found, patches);
  for (const [key, found] of scan.found) {
    const patch = patches.get(key);
    const group = found.formula?.tag.attributes['si'];
    const isOrphan = group !== undefined && broken.has(group);
    if (patch !== undefined) edits.push(replaceCell(xml, found, patch, isOrphan));
    else if (isOrphan) edits.push(...ownFormula(found, cellAt(found.row, found.column)?.formula));
  }
  edits.push(...scan.dimensionEdit());
  return applyEdits(xml, edits);
}

/** Shared formulas whose text stands in a cell that gets another formula: the other cells then need the text themselves. */
function brokenGroups(
  found: ReadonlyMap<number, FoundCell>,
  patches: ReadonlyMap<number, CellPatch>,
): Set<string> {
  const broken = new Set<string>();
  for (const [key, { formula }] of found) {
    const group = formula?.tag.attributes['si'];
    const patch = patches.get(key);
    if (group === undefined || patch === undefined || formula?.hasText !== true) continue;
    if (patch.formula?.isUnchanged !== true || patch.formula.array !== undefined) broken.add(group);
  }
  return broken;
}

function ownFormula({ formula }: FoundCell, text: string | undefined): Edit[] {
  if (formula === undefined || text === undefined) return [];
  return [{ start: formula.tag.start, end: formula.end, text: formulaXml(text, formula.tag.prefix) }];
}

function formulaXml(formula: string, prefix: string, area?: Area): string {
  const array = area === undefined ? '' : ` t="array" ref="${areaAddress(area)}"`;
  return `<${prefix}f${array}>${escapeXml(toFileSpelling(formula))}</${prefix}f>`;
}

function replaceCell(xml: string, found: FoundCell, patch: CellPatch, isOrphan: boolean): Edit {
  const { prefix, attributes } = found.tag;
  const { formula } = patch;
  const isKept =
    formula?.isUnchanged === true && formula.array === undefined && !isOrphan && found.formula !== undefined;
  const formulaText =
    formula === undefined
      ? ''
      : isKept && found.formula !== undefined
        ? xml.slice(found.formula.tag.start, found.formula.end)
        : formulaXml(formula.text, prefix, formula.array?.area);
  const keptMark = isKept && attributes['cm'] !== undefined ? numeric(attributes['cm'], 0) : undefined;
  const mark = formula?.array?.mark ?? keptMark;
  return {
    start: found.tag.start,
    end: found.end,
    text: cellXml({ ...patch, formula: formulaText, mark }, prefix),
  };
}

function newCell(patch: CellPatch | undefined, prefix: string): string {
  if (patch === undefined) return '';
  const { formula } = patch;
  const text = formula === undefined ? '' : formulaXml(formula.text, prefix, formula.array?.area);
  return cellXml({ ...patch, formula: text, mark: formula?.array?.mark }, prefix);
}

interface Insertion {
  readonly at: { readonly start: number; readonly end: number };
  readonly keys: readonly number[];
  readonly wrap: (cells: string) => string;
}

const asIs = (cells: string) => cells;

/** One walk over the sheet that finds the cells to replace and the places where missing ones belong. */
class SheetScan {
  readonly found = new Map<number, FoundCell>();
  readonly insertions: Insertion[] = [];
  prefix = '';
  private readonly pendingRows: readonly number[];
  private nextRow = 0;
  private readonly columnsByRow = new Map<number, number[]>();
  private dimension: OpenTag | undefined;
  private inData = false;
  private dataTag: OpenTag | undefined;
  private rowTag: OpenTag | undefined;
  private row = -1;
  private column = -1;
  private pendingColumns: number[] = [];
  private cell: FoundCell | undefined;
  private inserted: Area | undefined;
  private hasInsertedIntoRow = false;
  private inFormula = false;

  constructor(private readonly patches: ReadonlyMap<number, CellPatch>) {
    for (const { row, column } of patches.values()) {
      const columns = this.columnsByRow.get(row);
      if (columns === undefined) this.columnsByRow.set(row, [column]);
      else columns.push(column);
    }
    for (const columns of this.columnsByRow.values()) columns.sort((a, b) => a - b);
    this.pendingRows = [...this.columnsByRow.keys()].sort((a, b) => a - b);
  }

  open(tag: OpenTag): void {
    if (tag.name === 'dimension' && !this.inData) this.dimension = tag;
    else if (tag.name === 'sheetData' && this.dataTag === undefined) {
      this.inData = true;
      this.dataTag = tag;
      this.prefix = tag.prefix;
    } else if (!this.inData) return;
    else if (tag.name === 'row') this.openRow(tag);
    else if (tag.name === 'c') this.openCell(tag);
    else if (tag.name === 'f' && this.cell !== undefined) {
      this.cell.formula = { tag, end: tag.end, hasText: false };
      this.inFormula = true;
    }
  }

  text(text: string): void {
    if (this.inFormula && this.cell?.formula !== undefined && text.trim() !== '')
      this.cell.formula.hasText = true;
  }

  close(name: string, start: number, end: number): void {
    if (!this.inData) return;
    if (name === 'f' && this.cell?.formula !== undefined) {
      this.cell.formula.end = end;
      this.inFormula = false;
    } else if (name === 'c') this.closeCell(end);
    else if (name === 'row') this.closeRow(start);
    else if (name === 'sheetData') this.closeData(start);
  }

  /** The used area in the file's head, grown by what was added. */
  dimensionEdit(): Edit[] {
    const old = parseArea(this.dimension?.attributes['ref'] ?? '');
    if (this.dimension === undefined || this.inserted === undefined) return [];
    const ref = areaAddress(old === undefined ? this.inserted : union(old, this.inserted));
    return [
      { start: this.dimension.start, end: this.dimension.end, text: withAttributes(this.dimension, { ref }) },
    ];
  }

  private openRow(tag: OpenTag): void {
    this.row = tag.attributes['r'] === undefined ? this.row + 1 : numeric(tag.attributes['r'], 0) - 1;
    this.column = -1;
    this.rowTag = tag;
    for (; (this.pendingRows[this.nextRow] ?? Infinity) <= this.row; this.nextRow++) {
      const row = this.pendingRows[this.nextRow] ?? 0;
      if (row < this.row) this.insertRow(row, tag.start);
    }
    this.hasInsertedIntoRow = false;
    this.pendingColumns = [...(this.columnsByRow.get(this.row) ?? [])];
  }

  private openCell(tag: OpenTag): void {
    const address = tag.attributes['r'];
    this.column = (address === undefined ? undefined : parseCell(address)?.column) ?? this.column + 1;
    this.insertCells({ start: tag.start, end: tag.start }, this.row, this.takeColumns(this.column));
    if (this.pendingColumns[0] === this.column) this.pendingColumns.shift();
    this.cell = { tag, row: this.row, column: this.column, end: tag.end };
  }

  private closeCell(end: number): void {
    const { cell } = this;
    this.cell = undefined;
    if (cell === undefined) return;
    cell.end = end;
    const key = cellKey(cell.row, cell.column);
    if (this.patches.has(key) || cell.formula?.tag.attributes['t'] === 'shared') this.found.set(key, cell);
  }

  private closeRow(start: number): void {
    const tag = this.rowTag;
    const columns = this.takeColumns(Infinity);
    if (tag === undefined) return;
    // The hint which columns a row spans may not hold any more.
    const open = () => withAttributes({ ...tag, selfClosing: false }, { spans: undefined });
    if (tag.selfClosing && columns.length > 0) {
      this.insertCells(tag, this.row, columns, (cells) => `${open()}${cells}</${tag.prefix}row>`);
      return;
    }
    this.insertCells({ start, end: start }, this.row, columns);
    if (this.hasInsertedIntoRow && tag.attributes['spans'] !== undefined) {
      this.insertions.push({ at: { start: tag.start, end: tag.end }, keys: [], wrap: open });
    }
  }

  private closeData(start: number): void {
    this.inData = false;
    const tag = this.dataTag;
    const rows = this.pendingRows.slice(this.nextRow);
    if (tag === undefined || rows.length === 0) return;
    if (!tag.selfClosing) {
      for (const row of rows) this.insertRow(row, start);
      return;
    }
    const open = withAttributes({ ...tag, selfClosing: false }, {});
    const last = `</${tag.prefix}sheetData>`;
    this.insertions.push({ at: { start: tag.start, end: tag.end }, keys: [], wrap: () => open });
    for (const row of rows) this.insertRow(row, tag.end);
    this.insertions.push({ at: { start: tag.end, end: tag.end }, keys: [], wrap: () => last });
  }

  private insertRow(row: number, at: number): void {
    const { prefix } = this;
    const wrap = (cells: string) => `<${prefix}row r="${row + 1}">${cells}</${prefix}row>`;
    this.insertCells({ start: at, end: at }, row, this.columnsByRow.get(row) ?? [], wrap);
  }

  private takeColumns(before: number): number[] {
    const count = this.pendingColumns.findIndex((column) => column >= before);
    return this.pendingColumns.splice(0, count < 0 ? this.pendingColumns.length : count);
  }

  private insertCells(at: Insertion['at'], row: number, columns: readonly number[], wrap = asIs): void {
    const [first] = columns;
    const last = columns.at(-1);
    if (first === undefined || last === undefined) return;
    this.hasInsertedIntoRow = true;
    this.insertions.push({
      at: { start: at.start, end: at.end },
      keys: columns.map((column) => cellKey(row, column)),
      wrap,
    });
    const area = { top: row, left: first, bottom: row, right: last };
    this.inserted = this.inserted === undefined ? area : union(this.inserted, area);
  }
}

function union(a: Area, b: Area): Area {
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}
