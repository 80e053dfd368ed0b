/** What a sheet's part holds besides cells, after an act. */
import {
  areasOverlap,
  areaAddress,
  cellAddress,
  MAX_COLUMNS,
  MAX_ROWS,
  parseArea,
  parseCell,
  type Area,
} from '../../cells/address';
import {
  applyEdits,
  child,
  childrenOf,
  descendants,
  escapeXml,
  numeric,
  withAttributes,
  type Edit,
  type XmlElement,
} from '../xml';
import { CannotChange } from './acts';
import { anchorEdits } from './anchors';
import { rewriteFormula, type Rewriting } from './formula';
import type { Axis } from './mapping';
import type { Plan } from './plan';
import { areasAfter, readAreas, ruleAfter, writeAreas } from './rules';
import { formulaEdits, writeRows, type MovedCell } from './sheetData';
import type { SheetXml } from './sheetCells';

const remove = ({ start, closeEnd }: XmlElement): Edit => ({ start, end: closeEnd, text: '' });

const retag = (element: XmlElement, changes: Readonly<Record<string, string | undefined>>): Edit => ({
  start: element.start,
  end: element.end,
  text: withAttributes(element, changes),
});

const retext = (element: XmlElement, text: string): Edit[] =>
  element.selfClosing || text === element.text
    ? []
    : [{ start: element.end, end: element.closeStart, text: escapeXml(text) }];

/** A sheet on which nothing moves, but whose formulas speak of cells that do. */
export function rewriteFormulasOfSheet(xml: string, sheet: SheetXml, how: Rewriting): string {
  const edits = [
    ...formulaEdits(sheet, how),
    ...otherFormulas(sheet.root, how),
    ...linkEdits(sheet.root, how),
  ];
  return edits.length === 0 ? xml : applyEdits(xml, edits);
}

const FORMULAS = new Set(['formula', 'formula1', 'formula2', 'f']);

/** Formulas of rules, lists and sparklines: the innermost elements that hold text. */
function otherFormulas(root: XmlElement, how: Rewriting): Edit[] {
  const edits: Edit[] = [];
  const walk = (element: XmlElement): void => {
    for (const one of element.children) {
      if (one.name === 'sheetData') continue;
      if (FORMULAS.has(one.name) && one.children.length === 0)
        edits.push(...retext(one, rewriteFormula(one.text, how)));
      else if (one.name === 'cfvo') edits.push(...thresholdEdits(one, how));
      walk(one);
    }
  };
  walk(root);
  return edits;
}

function thresholdEdits(cfvo: XmlElement, how: Rewriting): Edit[] {
  const { val } = cfvo.attributes;
  if (val === undefined || val.trim() === '' || Number.isFinite(Number(val))) return [];
  const changed = rewriteFormula(val, how);
  return changed === val ? [] : [retag(cfvo, { val: changed })];
}

function linkEdits(root: XmlElement, how: Rewriting): Edit[] {
  return childrenOf(child(root, 'hyperlinks'), 'hyperlink').flatMap((link) => {
    const { location } = link.attributes;
    if (location === undefined) return [];
    const changed = rewriteFormula(location, how);
    // A link to cells that are gone keeps its words; following it says that there is no such place.
    return changed === location || changed.includes('#REF!') ? [] : [retag(link, { location: changed })];
  });
}

/** The sheet on which cells move. `gone` are the ids of relationships whose parts went away with their cells. */
export function rewriteSheet(
  xml: string,
  sheet: SheetXml,
  plan: Plan,
  how: Rewriting,
  cells: readonly MovedCell[],
  gone: ReadonlySet<string>,
): string {
  const { root } = sheet;
  const edits: Edit[] = [];
  const { data } = sheet;
  if (data) {
    const rows = writeRows(xml, sheet, plan, cells);
    edits.push({
      start: data.start,
      end: data.closeEnd,
      text:
        rows === ''
          ? `<${data.prefix}sheetData/>`
          : `<${data.prefix}sheetData>${rows}</${data.prefix}sheetData>`,
    });
  }
  for (const element of root.children) edits.push(...elementEdits(xml, element, plan, how, cells, gone));
  return applyEdits(xml, edits);
}

function elementEdits(
  xml: string,
  element: XmlElement,
  plan: Plan,
  how: Rewriting,
  cells: readonly MovedCell[],
  gone: ReadonlySet<string>,
): Edit[] {
  switch (element.name) {
    case 'dimension':
      return [retag(element, { ref: usedArea(cells) })];
    case 'sheetViews':
      return descendants(element, 'sheetView').flatMap((view) => viewEdits(view, plan, how));
    case 'cols':
      return columnEdits(element, plan);
    case 'mergeCells':
      return listEdits(element, 'mergeCell', (merge) => mergeEdits(merge, plan, how));
    case 'hyperlinks':
      return listEdits(element, 'hyperlink', (link) => linkOfMoved(link, plan, how));
    case 'conditionalFormatting':
      return ruleEdits(xml, element, plan, how);
    case 'dataValidations':
      return listEdits(element, 'dataValidation', (rule) => ruleEdits(xml, rule, plan, how));
    case 'autoFilter':
      return filterEdits(element, plan, how);
    case 'rowBreaks':
      return listEdits(element, 'brk', (one) => breakEdits(one, plan, 'rows'), ['count', 'manualBreakCount']);
    case 'colBreaks':
      return listEdits(element, 'brk', (one) => breakEdits(one, plan, 'columns'), [
        'count',
        'manualBreakCount',
      ]);
    case 'protectedRanges':
      return listEdits(element, 'protectedRange', (one) => areasEdits(one, 'sqref', plan, how), []);
    case 'ignoredErrors':
      return listEdits(element, 'ignoredError', (one) => areasEdits(one, 'sqref', plan, how), []);
    case 'cellWatches':
      return listEdits(element, 'cellWatch', (one) => areasEdits(one, 'r', plan, how), []);
    case 'scenarios':
      return descendants(element, 'inputCells').flatMap((one) => areasEdits(one, 'r', plan, how));
    case 'sortState':
      return sortEdits(element, plan, how);
    case 'tableParts':
      return listEdits(element, 'tablePart', (one) =>
        Object.entries(one.attributes).some(([name, id]) => name.endsWith(':id') && gone.has(id))
          ? [remove(one)]
          : [],
      );
    case 'controls':
    case 'oleObjects':
      return anchorEdits(element, plan, how);
    case 'customSheetViews':
      return descendants(element, 'customSheetView').flatMap((view) => viewEdits(view, plan, how));
    case 'extLst':
      return extensionEdits(xml, element, plan, how);
    default:
      return [];
  }
}

function usedArea(cells: readonly MovedCell[]): string {
  const [first] = cells;
  if (!first) return 'A1';
  let area = { top: first.row, bottom: first.row, left: first.column, right: first.column };
  for (const { row, column } of cells)
    area = {
      top: Math.min(area.top, row),
      bottom: Math.max(area.bottom, row),
      left: Math.min(area.left, column),
      right: Math.max(area.right, column),
    };
  return areaAddress(area);
}

/** Edits of a list's entries; an empty list goes whole, and its counts follow. */
function listEdits(
  list: XmlElement,
  name: string,
  edit: (entry: XmlElement) => Edit[],
  counts: readonly string[] = ['count'],
): Edit[] {
  const entries = childrenOf(list, name);
  const edits = entries.map(edit);
  const isGone = (entry: XmlElement, own: readonly Edit[]): boolean =>
    own.some(({ start, end, text }) => start === entry.start && end === entry.closeEnd && text === '');
  const left = entries.filter((entry, i) => !isGone(entry, edits[i] ?? [])).length;
  const added = edits.flat().filter(({ text }) => text.startsWith(ADDED)).length;
  if (left === 0 && entries.length > 0) return [remove(list)];
  const changed = counts.filter((count) => list.attributes[count] !== undefined);
  const size = String(left + added);
  return [
    ...(left === entries.length && added === 0
      ? []
      : changed.length === 0
        ? []
        : [retag(list, Object.fromEntries(changed.map((count) => [count, size])))]),
    ...edits.flat(),
  ];
}

/** Marks a text that adds an entry; XML passes over a blank between entries. */
const ADDED = ' ';

function viewEdits(view: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const edits: Edit[] = [];
  const moved = (text: string | undefined): string | undefined => {
    const cell = parseCell(text ?? '');
    if (!cell) return text;
    const placed = plan.area(how.from, {
      top: cell.row,
      bottom: cell.row,
      left: cell.column,
      right: cell.column,
    });
    return placed?.sheet === how.to ? cellAddress(placed.top, placed.left) : text;
  };
  const pane = child(view, 'pane');
  if (pane) {
    const changes: Record<string, string | undefined> = {};
    if ((pane.attributes['state'] ?? '').startsWith('frozen')) {
      for (const [axis, name] of [
        ['rows', 'ySplit'],
        ['columns', 'xSplit'],
      ] as const) {
        const lines = numeric(pane.attributes[name], 0);
        if (lines > 0) changes[name] = String(frozenAfter(plan, axis, lines));
      }
    }
    if (pane.attributes['topLeftCell'] !== undefined)
      changes['topLeftCell'] = moved(pane.attributes['topLeftCell']);
    edits.push(retag(pane, changes));
  }
  for (const selection of childrenOf(view, 'selection')) {
    const areas = areasAfter(plan, how.from, readAreas(selection.attributes['sqref'] ?? ''));
    if (areas.length === 0) continue;
    edits.push(
      retag(selection, { activeCell: moved(selection.attributes['activeCell']), sqref: writeAreas(areas) }),
    );
  }
  return edits;
}

/** Lines above (left of) the freeze; those put in between stay frozen too. */
function frozenAfter(plan: Plan, axis: Axis, lines: number): number {
  if (plan.axis !== axis) return lines;
  const last = plan.line(axis, lines - 1);
  if (last !== undefined) return plan.opened && plan.opened.at >= lines ? lines : last + 1;
  let left = 0;
  for (let line = 0; line < lines; line++) if (plan.line(axis, line) !== undefined) left++;
  return left;
}

function columnEdits(cols: XmlElement, plan: Plan): Edit[] {
  const runs = childrenOf(cols, 'col').map((col) => ({
    col,
    first: numeric(col.attributes['min'], 1) - 1,
    last: numeric(col.attributes['max'], 1) - 1,
  }));
  const { opened } = plan;
  const pieces: { readonly col: XmlElement; readonly first: number; readonly last: number }[] = [];
  for (const { col, first, last } of runs) {
    const placed = plan
      .cut(plan.sheet, { top: 0, bottom: MAX_ROWS - 1, left: first, right: last })
      .flatMap(({ left, right }) => linesAfter(plan, left, right));
    for (const { from, to } of placed) {
      // New columns take the width of the one before them.
      const grows = opened?.axis === 'columns' && last === opened.at - 1;
      pieces.push({ col, first: from, last: Math.min(grows ? to + opened.count : to, MAX_COLUMNS - 1) });
    }
  }
  pieces.sort((a, b) => a.first - b.first);
  if (pieces.length === 0) return [remove(cols)];
  const text = pieces
    .map(({ col, first, last }) => {
      const tag = { ...col, attributes: { min: '', max: '', ...col.attributes }, selfClosing: true };
      return withAttributes(tag, { min: String(first + 1), max: String(last + 1) });
    })
    .join('');
  return [{ start: cols.end, end: cols.closeStart, text }];
}

function linesAfter(
  plan: Plan,
  first: number,
  last: number,
): { readonly from: number; readonly to: number }[] {
  if (plan.axis !== 'columns' || plan.line('columns', first) === first) {
    const to = plan.line('columns', last);
    if (to === last) return [{ from: first, to: last }];
  }
  // Deleted ends: the run shrinks to what is left of it.
  let from = first;
  let to = last;
  while (from <= to && plan.line('columns', from) === undefined) from++;
  while (to >= from && plan.line('columns', to) === undefined) to--;
  const [a, b] = [plan.line('columns', from), plan.line('columns', to)];
  return from > to || a === undefined || b === undefined ? [] : [{ from: a, to: b }];
}

function mergeEdits(merge: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const area = parseArea(merge.attributes['ref'] ?? '');
  if (!area) return [];
  const pieces = plan.cut(how.from, area);
  const placed = pieces.map((piece) => plan.area(how.from, piece));
  const [one] = placed;
  const left = placed.filter((piece) => piece !== undefined);
  if (left.length === 0) return [remove(merge)];
  if (pieces.length > 1 || one?.sheet !== how.to)
    throw new CannotChange(
      `The merged cells ${areaAddress(area)} on "${how.from}" would be parted; take the merge off first.`,
    );
  const single = one.top === one.bottom && one.left === one.right;
  return single ? [remove(merge)] : [retag(merge, { ref: areaAddress(one) })];
}

function linkOfMoved(link: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const areas = areasAfter(plan, how.from, readAreas(link.attributes['ref'] ?? ''));
  const [area] = areas;
  if (!area) return [remove(link)];
  const { location } = link.attributes;
  const changed = location === undefined ? undefined : rewriteFormula(location, how);
  return [
    retag(link, {
      ref: areaAddress(area),
      ...(changed !== undefined && !changed.includes('#REF!') && { location: changed }),
    }),
  ];
}

/** A rule with its areas in `sqref` and its formulas inside; written once more where its parts went different ways. */
function ruleEdits(xml: string, rule: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const areas = readAreas(rule.attributes['sqref'] ?? '');
  const holders = [
    ...descendants(rule, 'formula'),
    ...descendants(rule, 'formula1'),
    ...descendants(rule, 'formula2'),
  ];
  const parts = ruleAfter(
    plan,
    how,
    areas,
    holders.map(({ text }) => text),
  );
  if (parts.length === 0) return areas.length === 0 ? [] : [remove(rule)];
  const thresholds = descendants(rule, 'cfvo').flatMap((cfvo) => thresholdEdits(cfvo, how));
  const written = parts.map((part) => [
    retag(rule, { sqref: writeAreas(part.areas) }),
    ...thresholds,
    ...holders.flatMap((holder, i) => retext(holder, part.formulas[i] ?? holder.text)),
  ]);
  const [first = [], ...more] = written;
  return [
    ...first,
    ...more.map((edits) => ({
      start: rule.closeEnd,
      end: rule.closeEnd,
      text:
        ADDED +
        applyEdits(
          xml.slice(rule.start, rule.closeEnd),
          edits.map((edit) => ({ ...edit, start: edit.start - rule.start, end: edit.end - rule.start })),
        ),
    })),
  ];
}

function areasEdits(element: XmlElement, attribute: string, plan: Plan, how: Rewriting): Edit[] {
  const text = element.attributes[attribute];
  if (text === undefined) return [];
  const areas = areasAfter(plan, how.from, readAreas(text));
  return areas.length === 0 ? [remove(element)] : [retag(element, { [attribute]: writeAreas(areas) })];
}

/** A filter: its area, and its columns counted from the area's first. */
export function filterEdits(filter: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const area = parseArea(filter.attributes['ref'] ?? '');
  if (!area) return [];
  const placed = wholeAfter(plan, how, area, 'The filter of');
  if (!placed) return [remove(filter)];
  const columns = childrenOf(filter, 'filterColumn').flatMap((column) => {
    const at = area.left + numeric(column.attributes['colId'], 0);
    const one = plan.area(how.from, { ...area, left: at, right: at });
    return one ? [retag(column, { colId: String(one.left - placed.left) })] : [remove(column)];
  });
  const sort = childrenOf(filter, 'sortState').flatMap((state) => sortEdits(state, plan, how));
  return [retag(filter, { ref: areaAddress(placed) }), ...columns, ...sort];
}

function sortEdits(state: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const [area] = areasAfter(plan, how.from, readAreas(state.attributes['ref'] ?? ''));
  if (!area) return [remove(state)];
  return [
    retag(state, { ref: areaAddress(area) }),
    ...childrenOf(state, 'sortCondition').flatMap((one) => areasEdits(one, 'ref', plan, how)),
  ];
}

/** An area that must stay in one piece; undefined where it is gone. */
export function wholeAfter(plan: Plan, how: Rewriting, area: Area, what: string): Area | undefined {
  const placed = plan.cut(how.from, area).map((piece) => plan.area(how.from, piece));
  const left = placed.filter((piece) => piece !== undefined);
  const [one] = left;
  if (!one) return undefined;
  if (placed.length > 1 || one.sheet !== how.to)
    throw new CannotChange(
      `${what} ${areaAddress(area)} on "${how.from}" would be parted; take it off first.`,
    );
  return one;
}

function breakEdits(brk: XmlElement, plan: Plan, axis: Axis): Edit[] {
  // The break stands before this line.
  const line = numeric(brk.attributes['id'], 0);
  const to = plan.line(axis, line);
  if (to === undefined) return [remove(brk)];
  return to === line ? [] : [retag(brk, { id: String(to) })];
}

/** Rules, lists and sparklines that came after 2007 keep their areas in elements of their own. */
function extensionEdits(xml: string, extensions: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const edits: Edit[] = [];
  const walk = (element: XmlElement): void => {
    for (const one of element.children) {
      const areas = child(one, 'sqref');
      if (!areas) {
        if (one.name === 'f' && one.children.length === 0)
          edits.push(...retext(one, rewriteFormula(one.text, how)));
        walk(one);
        continue;
      }
      const holders = descendants(one, 'f');
      const parts = ruleAfter(
        plan,
        how,
        readAreas(areas.text),
        holders.map(({ text }) => text),
      );
      if (parts.length === 0) {
        edits.push(remove(one));
        continue;
      }
      const sparkline = one.name === 'sparkline';
      const written = parts.map((part) => [
        ...retext(areas, writeAreas(part.areas)),
        // A sparkline draws the cells it names, wherever it stands itself.
        ...holders.flatMap((holder, i) =>
          retext(holder, sparkline ? rewriteFormula(holder.text, how) : (part.formulas[i] ?? holder.text)),
        ),
      ]);
      const [first = [], ...more] = written;
      edits.push(
        ...first,
        ...more.map((own) => ({
          start: one.closeEnd,
          end: one.closeEnd,
          text: applyEdits(
            xml.slice(one.start, one.closeEnd),
            own.map((edit) => ({ ...edit, start: edit.start - one.start, end: edit.end - one.start })),
          ),
        })),
      );
    }
  };
  walk(extensions);
  return edits;
}

/** Whether anything that only its own sheet can carry lies in an area; its name for a person. */
export function boundToSheet({ root }: SheetXml, area: Area): string | undefined {
  const within = (text: string | undefined): boolean =>
    readAreas(text ?? '').some((one) => areasOverlap(one, area));
  const kinds = [
    ['mergeCell', 'ref', 'merged cells'],
    ['conditionalFormatting', 'sqref', 'colors by rule'],
    ['dataValidation', 'sqref', 'a list or bounds'],
    ['hyperlink', 'ref', 'a link'],
    ['autoFilter', 'ref', 'a filter'],
  ] as const;
  return kinds.find(([name, attribute]) =>
    descendants(root, name).some((one) => within(one.attributes[attribute])),
  )?.[2];
}
