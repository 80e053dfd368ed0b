/** Notes and threaded comments, the boxes that notes are shown in, and single cells bound to a document. */
import { areaContains, cellAddress, parseCell, type Area } from '../../cells/address';
import { relationshipsOf, readText, writeText, type EditableParts } from '../relationships';
import { applyEdits, descendants, parseXml, withAttributes, type Edit, type XmlElement } from '../xml';
import { anchorLine } from './anchors';
import type { Rewriting } from './formula';
import type { Plan } from './plan';

export function moveNotes(parts: EditableParts, sheetPart: string, plan: Plan, how: Rewriting): void {
  for (const { kind, target, external } of relationshipsOf(parts, sheetPart)) {
    if (external) continue;
    if (kind === 'comments') moveEntries(parts, target, 'comment', 'ref', plan, how);
    else if (kind === 'threadedComment') moveEntries(parts, target, 'threadedComment', 'ref', plan, how);
    else if (kind === 'tableSingleCells') moveEntries(parts, target, 'singleXmlCell', 'r', plan, how);
    else if (kind === 'vmlDrawing') moveBoxes(parts, target, plan, how);
  }
}

function moveEntries(
  parts: EditableParts,
  part: string,
  name: string,
  attribute: string,
  plan: Plan,
  how: Rewriting,
): void {
  const xml = readText(parts, part);
  if (xml === undefined) return;
  const edits = descendants(parseXml(xml, part), name).flatMap((entry): Edit[] => {
    const cell = parseCell(entry.attributes[attribute] ?? '');
    if (!cell) return [];
    const placed = place(plan, how, cell.row, cell.column);
    return placed
      ? [{ start: entry.start, end: entry.end, text: withAttributes(entry, { [attribute]: placed }) }]
      : [gone(entry)];
  });
  writeText(parts, part, applyEdits(xml, edits));
}

const gone = ({ start, closeEnd }: XmlElement): Edit => ({ start, end: closeEnd, text: '' });

function place(plan: Plan, how: Rewriting, row: number, column: number): string | undefined {
  const placed = plan.area(how.from, { top: row, bottom: row, left: column, right: column });
  return placed?.sheet === how.to ? cellAddress(placed.top, placed.left) : undefined;
}

/** Whether a note or a comment hangs on one of the cells. */
export function holdsNotes(parts: EditableParts, sheetPart: string, area: Area): boolean {
  return relationshipsOf(parts, sheetPart)
    .filter(({ kind, external }) => !external && (kind === 'comments' || kind === 'threadedComment'))
    .flatMap(({ target }) => {
      const root = parseXml(readText(parts, target) ?? '<comments/>', target);
      return [...descendants(root, 'comment'), ...descendants(root, 'threadedComment')];
    })
    .some((entry) => {
      const cell = parseCell(entry.attributes['ref'] ?? '');
      return cell !== undefined && areaContains(area, cell.row, cell.column);
    });
}

/** Drawings of the old kind are often not well-formed, so single stretches of their text are changed. */
function moveBoxes(parts: EditableParts, part: string, plan: Plan, how: Rewriting): void {
  const xml = readText(parts, part);
  if (xml === undefined) return;
  const moved = xml.replace(/<v:shape\b[\s\S]*?<\/v:shape>/g, (shape) => {
    const row = /<x:Row>(\d+)<\/x:Row>/.exec(shape)?.[1];
    const column = /<x:Column>(\d+)<\/x:Column>/.exec(shape)?.[1];
    let text = shape;
    if (row !== undefined && column !== undefined) {
      const cell = parseCell(place(plan, how, Number(row), Number(column)) ?? '');
      if (!cell) return '';
      text = text
        .replace(/<x:Row>\d+<\/x:Row>/, `<x:Row>${cell.row}</x:Row>`)
        .replace(/<x:Column>\d+<\/x:Column>/, `<x:Column>${cell.column}</x:Column>`);
    }
    return text.replace(/<x:Anchor>([^<]*)<\/x:Anchor>/, (whole, list: string) => {
      const [left, leftOff, top, topOff, right, rightOff, bottom, bottomOff] = list.split(',').map(Number);
      if (
        [left, leftOff, top, topOff, right, rightOff, bottom, bottomOff].some((one) => !Number.isFinite(one))
      )
        return whole;
      const line = (axis: 'rows' | 'columns', at = 0, across = 0): number =>
        anchorLine(plan, how, axis, at, across).line;
      const newTop = line('rows', top, left);
      const newLeft = line('columns', left, top);
      // A box keeps its size.
      const newBottom = newTop + (bottom ?? 0) - (top ?? 0);
      const newRight = newLeft + (right ?? 0) - (left ?? 0);
      return `<x:Anchor>${[newLeft, leftOff, newTop, topOff, newRight, rightOff, newBottom, bottomOff].join(', ')}</x:Anchor>`;
    });
  });
  if (moved !== xml) writeText(parts, part, moved);
}
