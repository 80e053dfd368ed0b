/** Drawings, and what they and the rest of the file say of cells: charts, controls, pivot tables. */
import { areaAddress, parseArea } from '../../cells/address';
import { readText, relationshipsOf, writeText, type EditableParts } from '../relationships';
import { applyEdits, child, descendants, escapeXml, parseXml, withAttributes, type Edit } from '../xml';
import { CannotChange } from './acts';
import { anchorEdits } from './anchors';
import { rewriteFormula, type Rewriting } from './formula';
import type { Plan } from './plan';

/** Pictures and charts of the sheet, where they hang. */
export function moveDrawings(parts: EditableParts, sheetPart: string, plan: Plan, how: Rewriting): void {
  for (const part of targets(parts, sheetPart, 'drawing'))
    change(parts, part, (root) => anchorEdits(root, plan, how));
}

/** What the drawing of a sheet shows from cells: series of charts, texts of boxes, values of controls. */
export function rewriteDrawings(parts: EditableParts, sheetPart: string, how: Rewriting): void {
  for (const drawing of targets(parts, sheetPart, 'drawing')) {
    change(parts, drawing, (root) =>
      [...descendants(root, 'sp'), ...descendants(root, 'cxnSp'), ...descendants(root, 'pic')].flatMap(
        (shape) => attributeEdits(shape, ['textlink'], how),
      ),
    );
    for (const kind of ['chart', 'chartEx'])
      for (const chart of targets(parts, drawing, kind)) rewriteChart(parts, chart, how);
  }
  for (const control of targets(parts, sheetPart, 'ctrlProp'))
    change(parts, control, (root) =>
      attributeEdits(root, ['fmlaLink', 'fmlaRange', 'fmlaGroup', 'fmlaTxbx'], how),
    );
}

/** Sheets that hold one chart and no cells. */
export function rewriteChartSheets(parts: EditableParts, book: string, how: Rewriting): void {
  for (const sheet of targets(parts, book, 'chartsheet')) rewriteDrawings(parts, sheet, how);
}

function rewriteChart(parts: EditableParts, chart: string, how: Rewriting): void {
  change(parts, chart, (root) =>
    descendants(root, 'f').flatMap((formula) => {
      const text = rewriteFormula(formula.text, how);
      return text === formula.text || formula.selfClosing
        ? []
        : [{ start: formula.end, end: formula.closeStart, text: escapeXml(text) }];
    }),
  );
}

function attributeEdits(
  element: ReturnType<typeof parseXml>,
  names: readonly string[],
  how: Rewriting,
): Edit[] {
  const changed = names.flatMap((name) => {
    const text = element.attributes[name];
    const after = text === undefined || text === '' ? text : rewriteFormula(text, how);
    return after === text || after === undefined ? [] : [[name, after] as const];
  });
  return changed.length === 0
    ? []
    : [
        {
          start: element.start,
          end: element.end,
          text: withAttributes(element, Object.fromEntries(changed)),
        },
      ];
}

export function targets(parts: EditableParts, part: string, kind: string): string[] {
  return relationshipsOf(parts, part)
    .filter((one) => one.kind === kind && !one.external && parts.has(one.target))
    .map(({ target }) => target);
}

export function change(
  parts: EditableParts,
  part: string,
  make: (root: ReturnType<typeof parseXml>) => Edit[],
): void {
  const xml = readText(parts, part);
  if (xml === undefined) return;
  const edits = make(parseXml(xml, part));
  if (edits.length > 0) writeText(parts, part, applyEdits(xml, edits));
}

/** Pivot tables of the sheet move whole or stand in the way. */
export function movePivots(parts: EditableParts, sheetPart: string, plan: Plan, how: Rewriting): void {
  for (const part of targets(parts, sheetPart, 'pivotTable'))
    change(parts, part, (root) => {
      const location = child(root, 'location');
      const area = parseArea(location?.attributes['ref'] ?? '');
      if (!location || !area) return [];
      const name = root.attributes['name'] ?? '';
      const placed = plan.cut(how.from, area).map((piece) => plan.area(how.from, piece));
      const [one] = placed;
      const whole =
        placed.length === 1 &&
        one?.sheet === how.to &&
        one.bottom - one.top === area.bottom - area.top &&
        one.right - one.left === area.right - area.left;
      if (!whole)
        throw new CannotChange(
          `The pivot table "${name}" at ${areaAddress(area)} on "${how.from}" stands in the way: its cells can only move together.`,
        );
      return [
        {
          start: location.start,
          end: location.end,
          text: withAttributes(location, { ref: areaAddress(one) }),
        },
      ];
    });
}

/** The cells that pivot tables are made from. */
export function rewritePivotSources(
  parts: EditableParts,
  book: string,
  how: Omit<Rewriting, 'from' | 'to'>,
): void {
  for (const part of targets(parts, book, 'pivotCacheDefinition'))
    change(parts, part, (root) =>
      descendants(root, 'worksheetSource').flatMap((source) => {
        const { ref, sheet } = source.attributes;
        const area = parseArea(ref ?? '');
        if (!area || sheet === undefined) return [];
        const placed = how.area(sheet, area);
        if (!placed)
          throw new CannotChange(
            `A pivot table is made from ${ref ?? ''} on "${sheet}"; delete the pivot table first.`,
          );
        return [
          {
            start: source.start,
            end: source.end,
            text: withAttributes(source, { ref: areaAddress(placed), sheet: placed.sheet }),
          },
        ];
      }),
    );
}
