/** The sheet of a design to hand on: inputs, results and verdicts as they are, without anything to type over. */
import { quotedSheet, type Area } from '../cells/address';
import { DEFERS } from '../derive/help';
import type { HandedOn } from './design';
import { linesOf } from './lines';
import { numberStyle, STYLES, valueFormat, type Look } from './looks';
import type { FormPlan, PlannedCell } from './plan';

/** Characters of label, value, unit and what is signed. */
const WIDTHS = [46, 16, 11, 16] as const;
const LAST = WIDTHS.length - 1;
/** Rows to sign in. */
const SIGNED = ['Drawn by', 'Checked by', 'Date', 'Revision'];

type Content = Pick<PlannedCell, 'value' | 'formula'>;

/** Lines of the design on the sheet `from`, which the formulas refer to. */
export function planHandOn(title: string, lines: readonly HandedOn[], sheet: string, from: string): FormPlan {
  const cells: PlannedCell[] = [];
  const heights: { row: number; points: number }[] = [];
  const merges: FormPlan['merges'][number][] = [];
  const verdicts: FormPlan['verdicts'][number][] = [];
  let row = 0;
  const put = (column: number, content: Content, look: Look): void => {
    cells.push({ row, column, ...content, look });
  };
  /** The other cells of a merged run draw its borders and color. */
  const wideFrom = (left: number, right: number, content: Content, look: Look): Area => {
    put(left, content, look);
    for (let column = left + 1; column <= right; column++) put(column, {}, look);
    const area = { top: row, left, bottom: row, right };
    merges.push(area);
    return area;
  };
  const end = (points?: number): void => {
    if (points !== undefined) heights.push({ row, points });
    row += 1;
  };
  const wide = (content: Content, look: Look, points: number): void => {
    wideFrom(0, LAST, content, look);
    end(points);
  };
  wide({ value: title }, STYLES.title, 26);
  const width = WIDTHS.reduce((sum, one) => sum + one, 0);
  wide({ value: DEFERS }, STYLES.danger, 5 + 13.5 * linesOf(DEFERS, width));
  let before = '';
  for (const { section, label, value, unit, kind } of lines) {
    if (section !== before) wide({ value: section }, STYLES.section, 22);
    before = section;
    put(0, { value: label }, STYLES.label);
    const there = (cell: string) => ({ formula: `${quotedSheet(from)}!${cell}` });
    if (kind === 'verdict' || kind === 'text') {
      const area = wideFrom(1, 2, there(value), STYLES.words);
      if (kind === 'verdict') verdicts.push(area);
    } else {
      put(1, there(value), numberStyle(valueFormat(kind)));
      put(2, there(unit ?? ''), STYLES.unit);
    }
    end(5 + 13 * linesOf(label, WIDTHS[0]));
  }
  wide({ value: 'Handed on' }, STYLES.section, 22);
  for (const who of SIGNED) {
    put(0, { value: who }, STYLES.label);
    wideFrom(1, LAST, {}, STYLES.typedName);
    end(20);
  }
  wide({ formula: 'MOLD.SHOW.BASIS()' }, STYLES.decide, 20);
  return {
    sheet,
    area: { top: 0, left: 0, bottom: row - 1, right: LAST },
    cells,
    merges,
    heights,
    widths: WIDTHS.map((characters, column) => ({ column, characters })),
    rules: [],
    verdicts,
    names: [],
    lists: [],
  };
}
