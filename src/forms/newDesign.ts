/** A workbook of a design: the sheet to work on, and one to hand on. */
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { System } from '../core/quantity';
import { DEFERS } from '../derive/help';
import { newWorkbook } from '../package';
import { addToSheet } from '../package/addToSheet';
import type { CellDescription, ConditionDescription, SheetDescription } from '../package/description';
import type { Workbook } from '../package/model';
import { knownFunctions } from '../package/spelling';
import { recalculate } from '../workbook/recalculate';
import { FROZEN_ROWS, planDesign, type HandedOn } from './design';
import { linesOf } from './lines';
import { FONT, numberStyle, STYLES, valueFormat, type Look } from './looks';
import { SCALE } from './scale';
import type { Section } from './sections/section';
import { writeForm } from './write';

const DESIGN = 'Design';
const HAND_ON = 'Hand on';
const TITLE = 'Design sheet';

export interface DesignWish {
  readonly sections: readonly Section[];
  readonly system: System;
  readonly title?: string;
}

export async function newDesign(
  { sections, system, title = TITLE }: DesignWish,
  functions: readonly WorksheetFunction[],
): Promise<Workbook> {
  const { plan, lines } = planDesign(title, sections, DESIGN, system);
  const looks = new Map<string, Look>();
  const handOn = handOnSheet(title, lines, (look) => {
    const name = JSON.stringify(look);
    looks.set(name, look);
    return name;
  });
  const empty = newWorkbook({
    sheets: [
      {
        name: DESIGN,
        tabColor: '#24475C',
        gridlines: false,
        freeze: `A${FROZEN_ROWS + 1}`,
        cells: {},
        print: {
          paper: 'Letter',
          landscape: true,
          titleRows: `${FROZEN_ROWS}:${FROZEN_ROWS}`,
          footer: { left: '&F', center: '&A', right: 'Page &P of &N' },
          margins: { side: 0.5, top: 0.5, bottom: 0.6 },
        },
      },
      handOn,
    ],
    styles: Object.fromEntries(looks),
    font: FONT,
    properties: { title },
  });
  const written = await writeForm(empty, plan, functions);
  const known = knownFunctions(functions.map(({ id }) => id));
  return addToSheet(written, { sheet: HAND_ON, changes: await recalculate(written, functions) }, known);
}

const WIDTHS = { A: 46, B: 16, C: 11, D: 16 } as const;
/** Rows to sign in. */
const SIGNED = ['Drawn by', 'Checked by', 'Date', 'Revision'];

/** Inputs, results and verdicts as they are, without anything to type over. */
function handOnSheet(
  title: string,
  lines: readonly HandedOn[],
  style: (look: Look) => string,
): SheetDescription {
  const cells: Record<string, CellDescription> = {};
  const rows: Record<number, number> = {};
  const merges: string[] = [];
  const conditions: ConditionDescription[] = [];
  let row = 0;
  const wide = (cell: CellDescription, height: number) => {
    cells[`A${++row}`] = cell;
    merges.push(`A${row}:D${row}`);
    rows[row] = height;
  };
  wide({ value: title, style: style(STYLES.title) }, 26);
  const width = Object.values(WIDTHS).reduce((sum, one) => sum + one, 0);
  wide({ value: DEFERS, style: style(STYLES.danger) }, 5 + 13.5 * linesOf(DEFERS, width));
  let before = '';
  for (const { section, label, value, unit, kind } of lines) {
    if (section !== before) wide({ value: section, style: style(STYLES.section) }, 22);
    before = section;
    row += 1;
    cells[`A${row}`] = { value: label, style: style(STYLES.label) };
    rows[row] = 5 + 13 * linesOf(label, WIDTHS.A);
    const from = `${DESIGN}!`;
    if (kind === 'verdict' || kind === 'text') {
      cells[`B${row}`] = { formula: from + value, style: style(STYLES.words) };
      merges.push(`B${row}:C${row}`);
      if (kind !== 'verdict') continue;
      for (const [word, look] of SCALE)
        conditions.push({ cells: `B${row}:C${row}`, when: `$B$${row}="${word}"`, style: look });
      continue;
    }
    cells[`B${row}`] = { formula: from + value, style: style(numberStyle(valueFormat(kind))) };
    cells[`C${row}`] = { formula: `${from}${unit ?? ''}`, style: style(STYLES.unit) };
  }
  wide({ value: 'Handed on', style: style(STYLES.section) }, 22);
  for (const who of SIGNED) {
    row += 1;
    cells[`A${row}`] = { value: who, style: style(STYLES.label) };
    cells[`B${row}`] = { style: style(STYLES.typedName) };
    merges.push(`B${row}:D${row}`);
    rows[row] = 20;
  }
  wide({ formula: 'MOLD.SHOW.BASIS()', style: style(STYLES.decide) }, 20);
  return {
    name: HAND_ON,
    gridlines: false,
    columns: WIDTHS,
    rows,
    cells,
    merges,
    conditions,
    print: {
      paper: 'Letter',
      footer: { left: '&F', center: '&A', right: 'Page &P of &N' },
      margins: { side: 0.7, top: 0.6, bottom: 0.7 },
    },
  };
}
