/** How sheets look beside their cells: sizes and hiding of rows and columns, merges, what stays in view. */
import { areaAddress, cellAddress } from '../cells/address';
import { insertOrdered } from './metadata';
import type { Row, Sheet, Workbook } from './model';
import { listSheets, readParts } from './read';
import { readText, writeText, type EditableParts } from './relationships';
import type { KnownFunctions } from './spelling';
import { workbookPart } from './open';
import { readSheetXml, type SheetXml } from './structure/sheetCells';
import { behind } from './sheetOrder';
import { applyEdits, child, parseXml, withAttributes, type Edit, type XmlElement } from './xml';

/** What is left out stays as it is; `columns` are all there are from now on, `rows` those that change. */
export type SheetLayout = Partial<
  Pick<Sheet, 'columns' | 'rows' | 'merges' | 'frozen' | 'showsGridlines' | 'tabColor'>
>;

/** The workbook with other layouts, by the names of its sheets. */
export function changeLayout(
  workbook: Workbook,
  layouts: ReadonlyMap<string, SheetLayout>,
  known: KnownFunctions,
): Workbook {
  if (layouts.size === 0) return workbook;
  const parts: EditableParts = new Map(workbook.parts);
  applyLayouts(parts, layouts);
  return readParts(parts, known);
}

export function applyLayouts(parts: EditableParts, layouts: ReadonlyMap<string, SheetLayout>): void {
  const book = workbookPart(parts);
  const sheets = listSheets(parts, book, parseXml(readText(parts, book) ?? '', book));
  for (const { name, part } of sheets) {
    const layout = layouts.get(name);
    if (!layout || part === undefined) continue;
    const xml = readText(parts, part) ?? '';
    writeText(parts, part, laidOut(xml, part, layout));
  }
}

function laidOut(xml: string, part: string, layout: SheetLayout): string {
  const sheet = readSheetXml(xml, part);
  const { root } = sheet;
  const edits: Edit[] = [];
  const replace = (name: string, followers: readonly string[], text: string) => {
    const old = child(root, name);
    if (old) edits.push({ start: old.start, end: old.closeEnd, text });
    else if (text !== '') edits.push(insertOrdered(xml, root, followers, text));
  };
  const p = root.prefix;
  if (layout.tabColor !== undefined)
    replace('sheetPr', behind('sheetPr'), properties(xml, child(root, 'sheetPr'), layout.tabColor, p));
  if (layout.frozen || layout.showsGridlines !== undefined)
    replace('sheetViews', behind('sheetViews'), views(xml, child(root, 'sheetViews'), layout, p));
  if (layout.columns) replace('cols', behind('cols'), columns(layout.columns, p));
  if (layout.merges) {
    const cells = layout.merges.map((area) => `<${p}mergeCell ref="${areaAddress(area)}"/>`).join('');
    replace(
      'mergeCells',
      behind('mergeCells'),
      cells === '' ? '' : `<${p}mergeCells count="${layout.merges.length}">${cells}</${p}mergeCells>`,
    );
  }
  if (layout.rows && layout.rows.length > 0) edits.push(...rows(xml, sheet, layout.rows));
  return applyEdits(xml, edits);
}

function columns(runs: Sheet['columns'], p: string): string {
  const inner = runs
    .map(({ first, last, width, hidden, style }) => {
      const size = width === undefined ? '' : ` width="${width}" customWidth="1"`;
      const look = style === 0 ? '' : ` style="${style}"`;
      return `<${p}col min="${first + 1}" max="${last + 1}"${size}${look}${hidden ? ' hidden="1"' : ''}/>`;
    })
    .join('');
  return inner === '' ? '' : `<${p}cols>${inner}</${p}cols>`;
}

function rows(xml: string, { root, data, rows: present }: SheetXml, changed: readonly Row[]): Edit[] {
  const p = root.prefix;
  const attributes = ({ height, hidden }: Row) => ({
    ht: height === undefined ? undefined : String(height),
    customHeight: height === undefined ? undefined : '1',
    hidden: hidden ? '1' : undefined,
  });
  const edits: Edit[] = [];
  const added: Row[] = [];
  for (const row of changed) {
    const old = present.find((one) => one.row === row.row);
    if (old) edits.push({ ...old.tag, text: withAttributes(old.tag, attributes(row)) });
    else if (row.height !== undefined || row.hidden) added.push(row);
  }
  const written = (row: Row) => {
    const { ht, hidden } = attributes(row);
    const size = ht === undefined ? '' : ` ht="${ht}" customHeight="1"`;
    return `<${p}row r="${row.row + 1}"${size}${hidden === undefined ? '' : ' hidden="1"'}/>`;
  };
  const sorted = [...added].sort((a, b) => a.row - b.row);
  if (data?.selfClosing) {
    const text = `<${p}sheetData>${sorted.map(written).join('')}</${p}sheetData>`;
    return [{ start: data.start, end: data.end, text }];
  }
  const places = new Map<number, string>();
  for (const row of sorted) {
    const at = present.find((one) => one.row > row.row)?.tag.start ?? data?.closeStart ?? xml.length;
    places.set(at, (places.get(at) ?? '') + written(row));
  }
  return [...edits, ...[...places].map(([at, text]) => ({ start: at, end: at, text }))];
}

function views(xml: string, old: XmlElement | undefined, layout: SheetLayout, p: string): string {
  const view = child(old, 'sheetView');
  const grid = layout.showsGridlines;
  const tag = view ?? {
    name: 'sheetView',
    prefix: p,
    attributes: { workbookViewId: '0' },
    selfClosing: true,
    start: 0,
    end: 0,
  };
  const open = withAttributes(
    { ...tag, selfClosing: false },
    grid === undefined ? {} : { showGridLines: grid ? undefined : '0' },
  );
  const kept = (view?.children ?? []).filter(
    ({ name }) => !layout.frozen || (name !== 'pane' && name !== 'selection'),
  );
  const inner = kept.map((one) => xml.slice(one.start, one.closeEnd)).join('');
  return `<${p}sheetViews>${open}${layout.frozen ? pane(layout.frozen, p) : ''}${inner}</${p}sheetView></${p}sheetViews>`;
}

function pane({ rows: down, columns: across }: Sheet['frozen'], p: string): string {
  if (down + across === 0) return '';
  const name = down === 0 ? 'topRight' : across === 0 ? 'bottomLeft' : 'bottomRight';
  const split = (across === 0 ? '' : ` xSplit="${across}"`) + (down === 0 ? '' : ` ySplit="${down}"`);
  const top = cellAddress(down, across);
  return `<${p}pane${split} topLeftCell="${top}" activePane="${name}" state="frozen"/><${p}selection pane="${name}"/>`;
}

function properties(xml: string, old: XmlElement | undefined, color: string, p: string): string {
  const tab = `<${p}tabColor rgb="FF${color.replace('#', '').toUpperCase()}"/>`;
  const kept = (old?.children ?? []).filter(({ name }) => name !== 'tabColor');
  const inner = kept.map((one) => xml.slice(one.start, one.closeEnd)).join('');
  const open = old ? withAttributes({ ...old, selfClosing: false }, {}) : `<${p}sheetPr>`;
  return `${open}${tab}${inner}</${p}sheetPr>`;
}
