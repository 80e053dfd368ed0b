/** Formulas that several cells share: written once in the file, read anew in each cell. */
import { areaAddress } from '../../cells/address';
import { shiftFormula } from '../shiftFormula';
import { escapeXml } from '../xml';
import type { Attributes } from '../xmlHandler';
import type { CellXml, FormulaXml, RowXml } from './sheetCells';

interface Place {
  readonly row: number;
  readonly column: number;
}

/** The formula of every cell, shared ones written out for each. */
export function formulaTexts(rows: readonly RowXml[]): Map<CellXml, string> {
  const masters = new Map<string, CellXml>();
  const texts = new Map<CellXml, string>();
  for (const { cells } of rows) {
    for (const cell of cells) {
      const { formula } = cell;
      if (!formula) continue;
      const group = formula.tag.attributes['t'] === 'shared' ? formula.tag.attributes['si'] : undefined;
      if (group === undefined || formula.text !== '') {
        texts.set(cell, formula.text);
        if (group !== undefined) masters.set(group, cell);
        continue;
      }
      const master = masters.get(group);
      if (master?.formula)
        texts.set(
          cell,
          shiftFormula(master.formula.text, cell.row - master.row, cell.column - master.column),
        );
    }
  }
  return texts;
}

/** A formula after an act: its text, its cell, and the area that it fills where it fills several. */
export interface FormulaAfter {
  readonly text: string;
  readonly at: Place;
  readonly ref?: string;
  /** The cells that a data table puts its values into: the `r1` and `r2` of its element. */
  readonly inputs?: Attributes;
}

/**
 * The `<f>` elements that read otherwise after an act. A group stays one where its members still read alike; else each
 * gets a text of its own.
 */
export function formulaElements(
  texts: ReadonlyMap<CellXml, string>,
  after: ReadonlyMap<CellXml, FormulaAfter>,
): Map<CellXml, string> {
  const groups = new Map<string, CellXml[]>();
  for (const cell of texts.keys()) {
    const group = groupOf(cell);
    if (group !== undefined) groups.set(group, [...(groups.get(group) ?? []), cell]);
  }
  const kept = new Map<string, string>();
  for (const [group, members] of groups) {
    const ref = commonArea(members, after);
    if (ref !== undefined) kept.set(group, ref);
  }
  const elements = new Map<CellXml, string>();
  for (const [cell, one] of after) {
    const { formula } = cell;
    if (!formula) continue;
    const { attributes } = formula.tag;
    const group = groupOf(cell);
    const area = group === undefined ? undefined : kept.get(group);
    if (area !== undefined && formula.text === '') continue;
    const ref = area ?? one.ref ?? attributes['ref'];
    if (area === undefined && group !== undefined) {
      elements.set(cell, element(formula, without(attributes, ['t', 'si', 'ref']), one.text));
    } else if (one.text !== formula.text || ref !== attributes['ref'] || one.inputs)
      elements.set(
        cell,
        element(formula, { ...attributes, ...(ref !== undefined && { ref }), ...one.inputs }, one.text),
      );
  }
  return elements;
}

function groupOf({ formula }: CellXml): string | undefined {
  const { t, si } = formula?.tag.attributes ?? {};
  return t === 'shared' ? si : undefined;
}

/** The area of a group that can stay; undefined where a member is gone or reads otherwise than the first. */
function commonArea(
  members: readonly CellXml[],
  after: ReadonlyMap<CellXml, FormulaAfter>,
): string | undefined {
  const [master] = members;
  const first = master && after.get(master);
  if (!first || master.formula?.text === '') return undefined;
  let area = { top: first.at.row, bottom: first.at.row, left: first.at.column, right: first.at.column };
  for (const cell of members) {
    const one = after.get(cell);
    if (!one) return undefined;
    const { row, column } = one.at;
    if (shiftFormula(first.text, row - first.at.row, column - first.at.column) !== one.text) return undefined;
    area = {
      top: Math.min(area.top, row),
      bottom: Math.max(area.bottom, row),
      left: Math.min(area.left, column),
      right: Math.max(area.right, column),
    };
  }
  return areaAddress(area);
}

function element({ tag }: FormulaXml, attributes: Attributes, text: string): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escapeXml(value)}"`);
  return `<${tag.prefix}f${written.join('')}>${escapeXml(text)}</${tag.prefix}f>`;
}

const without = (attributes: Attributes, names: readonly string[]): Attributes =>
  Object.fromEntries(Object.entries(attributes).filter(([name]) => !names.includes(name)));
