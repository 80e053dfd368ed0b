/**
 * Makes a workbook of the description of a design sheet: sections of rows that are entries, results and verdicts.
 * Formulas name other rows by their keys; `units` is the cell that chooses the system of the sheet.
 *
 * An entry keeps its own unit: choosing other units changes how the sheet speaks, never the size of the part.
 */
import { KINDS, SYSTEMS, systemUnit, type Kind, type System } from '../src/core/quantity';
import { kindsWithUnit } from '../src/core/readQuantity';
import type {
  CellDescription,
  ConditionDescription,
  SheetDescription,
  StyleDescription,
  ValidationDescription,
  WorkbookDescription,
} from '../src/package/description';
import { columnLetters } from '../src/cells/address';
import type { Design, Either, Entry, Layout, Result, Row, Says, Section, Verdict } from './description';
import { linesOf } from '../src/forms/lines';
import { placed, print } from './layout';
import { placeList, putList } from './list';
import type { Pen } from './pen';
import { SCALE, verdictFormula } from '../src/forms/scale';
import { convertedStyle, FONT, formatOf, INFO, numberStyle, STYLES, typedStyle } from '../src/forms/looks';
import { WHAT_IF, whatIfSheet } from './whatIf';

// A: name, B: entered, C: its unit, D: value in the units of the sheet, E: their symbol, F: note, G: formula.
const PLAIN: Layout = {
  widths: { A: 31, B: 11, C: 10, D: 11, E: 9, F: 54, G: 52 },
  note: ['F', 'F'],
  formula: ['G', 'G'],
};
const UNITS_ROW = 4;
const HEADS_ROW = 5;
export const UNITS_CELL = `D${UNITS_ROW}`;
/** Characters of small print that fit where one digit of the sheet's font does. */
const SMALL_PRINT = 1.25;
/** Characters that the arrow of a list takes. */
const ARROW = 2;

/** The whole workbook, formulas without results. */
export function workbookOf(design: Design, units: System): WorkbookDescription {
  const sheet = new SheetMaker(design, units);
  const sheets = [sheet.make()];
  if (design.whatIf.length > 0) sheets.push(whatIfSheet(design, sheet));
  return {
    sheets,
    styles: sheet.styles,
    font: FONT,
    properties: { title: design.title, subject: design.scenario },
  };
}

export class SheetMaker implements Pen {
  readonly styles: Record<string, StyleDescription> = { ...STYLES };
  private readonly cells: Record<string, CellDescription> = {};
  private readonly heights: Record<number, number> = {};
  private readonly merges: string[] = [];
  private readonly validations: ValidationDescription[] = [];
  readonly conditions: ConditionDescription[] = [];
  private readonly rowOf = new Map<string, number>();
  private readonly ranges = new Map<string, string>();
  private readonly layout: Layout;

  constructor(
    private readonly design: Design,
    private readonly units: System,
  ) {
    this.layout = design.layout ?? PLAIN;
    let row = HEADS_ROW + 1;
    for (const { rows, list } of design.sections) {
      row += 2;
      for (const one of rows) {
        for (const key of keysOf(one)) {
          if (this.rowOf.has(key)) throw new Error(`Two rows are called ${key}`);
          this.rowOf.set(key, row++);
        }
      }
      if (list) row = placeList(list, row, this.ranges);
    }
  }

  make(): SheetDescription {
    const { title, scenario, danger, sheet, sections, cautions, whatIf } = this.design;
    this.wide(1, { value: title, style: 'title' }, 26);
    this.wide(2, { value: scenario, style: 'scenario' });
    this.wide(3, { value: danger, style: 'danger' });
    this.unitsRow();
    this.heads();
    let row = HEADS_ROW + 1;
    for (const section of sections) row = this.section(section, row);
    if (whatIf.length > 0) {
      this.put(`A${row}`, {
        value: `What if: ${whatIf.map((one) => one.title.toLowerCase()).join(', ')}`,
        style: 'link',
        link: `#'${WHAT_IF}'!A1`,
      });
      this.heights[row] = 24;
      row += 1;
    }
    this.wide(row, { value: 'Cautions', style: 'section' }, 22);
    for (const caution of cautions) this.wide(++row, { value: caution, style: 'caution' });
    return {
      name: sheet,
      tabColor: '#24475C',
      gridlines: false,
      columns: this.layout.widths,
      rows: this.heights,
      cells: this.cells,
      merges: this.merges,
      // Lists are wide: the names of their rows stay in view.
      freeze: `${sections.some(({ list }) => list) ? 'B' : 'A'}${HEADS_ROW + 1}`,
      validations: this.validations,
      conditions: this.conditions,
      print: print(`A1:${this.last}${row}`, `${HEADS_ROW}:${HEADS_ROW}`),
    };
  }

  place(key: string, from = ''): string | undefined {
    const range = this.ranges.get(key);
    if (range !== undefined) return from + range;
    const row = key === 'units' ? UNITS_ROW : this.rowOf.get(key);
    return row === undefined ? undefined : `${from}D${row}`;
  }

  unitCell(key: string, from: string): string {
    return `${from}E${String(this.rowOf.get(key))}`;
  }

  style(description: StyleDescription): string {
    const name = JSON.stringify(description);
    this.styles[name] = description;
    return name;
  }

  private unitsRow(): void {
    const at = UNITS_CELL;
    this.put(`A${UNITS_ROW}`, { value: 'Units of this sheet', style: 'strong' });
    this.put(at, { value: this.units, style: 'typedWords' });
    this.across(this.layout.note, UNITS_ROW, {
      value:
        'Type in the yellow cells, each number with its unit. Column D shows all in these units: changing them changes no part.',
      style: 'note',
    });
    this.heights[UNITS_ROW] = 30;
    this.validations.push({
      cells: at,
      choices: SYSTEMS,
      refusal: { title: 'Units', text: 'Choose in or mm.' },
    });
  }

  private heads(): void {
    const heads = ['Name', 'Entered', 'Unit', 'Value', 'Unit'];
    this.across(this.layout.note, HEADS_ROW, { value: 'Note', style: 'head' });
    this.across(this.layout.formula, HEADS_ROW, { value: 'Formula', style: 'head' });
    heads.forEach((value, i) => {
      const style =
        value === 'Entered' || value === 'Value' ? 'headRight' : value === 'Unit' ? 'headUnit' : 'head';
      this.put(`${columnLetters(i)}${HEADS_ROW}`, { value, style });
    });
    this.heights[HEADS_ROW] = 20;
  }

  private section({ title, decide, rows, list }: Section, at: number): number {
    this.wide(at, { value: title, style: 'section' }, 22);
    this.wide(at + 1, { value: `Decide: ${decide}`, style: 'decide' });
    let row = at + 2;
    rows.forEach((one, i) => {
      if (one.type === 'entry') this.entry(one, row, rows.slice(0, i), rows.slice(i));
      else if (one.type === 'result') this.result(one, row);
      else if (one.type === 'verdict') this.verdict(one, row);
      else if (one.type === 'either') this.either(one, row);
      else this.says(one, row);
      row += keysOf(one).length;
    });
    return list ? putList(list, row, this) : row;
  }

  private entry(one: Entry, row: number, before: readonly Row[], from: readonly Row[]): void {
    this.named(one, row);
    const words = typeof one.value === 'string';
    this.put(`B${row}`, { value: one.value, style: words ? 'typedWords' : this.style(typedStyle) });
    if (one.choices) {
      this.choose(`B${row}`, one.choices, one.label);
      const width = this.width('B') - ARROW;
      this.grow(
        row,
        Math.max(...[String(one.value), ...one.choices].map((word) => linesOf(word, width))),
        13,
      );
    }
    if (one.unit === '') {
      this.put(`C${row}`, { style: 'blank', value: '–' });
      this.put(`E${row}`, { style: 'unit', value: '–' });
      this.put(`D${row}`, {
        // A blank cell that is only referred to counts as 0, a number that nobody typed.
        formula: `IF(B${row}="","",B${row})`,
        style: words ? 'words' : this.style(convertedStyle(one.format ?? 'General')),
      });
      this.formulaText(row);
      return;
    }
    const kind = kindOfUnit(one.unit);
    this.put(`C${row}`, { value: one.unit, style: 'typedUnit' });
    this.choose(`C${row}`, unitChoices(kind), 'Unit');
    this.put(`E${row}`, this.unitOf(kind));
    const style = this.style(convertedStyle(one.format ?? formatOf(kind)));
    const last = before.at(-1);
    if (last?.type === 'entry' && last.unit !== '') {
      // The first of the run converts them all.
      this.put(`D${row}`, { style });
      this.formulaText(row, 'spills from above');
      return;
    }
    const stop = from.findIndex((next) => next.type !== 'entry' || next.unit === '');
    const end = row + (stop < 0 ? from.length : stop) - 1;
    const run = (column: string) => (end === row ? `${column}${row}` : `${column}${row}:${column}${end}`);
    this.put(`D${row}`, {
      // In Excel a function gets 0 for a blank cell (OfficeDev/office-js #1951).
      formula: `IF(${run('B')}="", "", MOLD.UNIT.CONVERT(${run('B')}, ${run('C')}, ${run('E')}))`,
      ...(end > row && { fills: run('D') }),
      style,
    });
    this.formulaText(row);
  }

  private result({ lines, formula, kind, format }: Result, at: number): void {
    lines.forEach((line, i) => {
      const row = at + i;
      this.named(line, row);
      this.blanks(row);
      const style = kind === 'text' ? 'words' : this.style(numberStyle(format ?? formatOf(kind)));
      if (i === 0) {
        this.put(`D${row}`, {
          formula: placed(formula, (key) => this.place(key)),
          ...(lines.length > 1 && { fills: `D${at}:D${at + lines.length - 1}` }),
          style,
        });
        this.formulaText(row);
      } else {
        this.put(`D${row}`, { style });
        this.formulaText(row, 'spills from above');
      }
      this.put(`E${row}`, kind === 'text' ? { style: 'unit', value: '–' } : this.unitOf(kind));
    });
  }

  private verdict({ judged, ...one }: Pick<Verdict, 'label' | 'note' | 'judged'>, row: number): void {
    this.words(one, row, verdictFormula(judged), SCALE);
  }

  private either({ when, yes, no, ...one }: Either, row: number): void {
    this.words(one, row, `IF(${when}, "${yes}", "${no}")`, [
      [yes, INFO],
      [no, INFO],
    ]);
  }

  private says({ label, formula, verdict }: Says, row: number): void {
    this.words({ label, note: '' }, row, verdict, SCALE);
    this.put(`F${row}`, { formula: placed(formula, (key) => this.place(key)), style: 'note' });
    this.put(`${this.layout.formula[0]}${row}`, { formula: `FORMULATEXT(F${row})`, style: 'formula' });
    this.grow(
      row,
      Math.max(2, linesOf(this.cells[`F${row}`]?.formula ?? '', this.width(...this.layout.formula))),
      12.5,
    );
  }

  /** A row that answers in one of a few words, each with its look. */
  private words(
    one: { readonly label: string; readonly note: string },
    row: number,
    formula: string,
    looks: readonly (readonly [word: string, style: ConditionDescription['style']])[],
  ): void {
    this.named(one, row);
    this.blanks(row);
    this.put(`D${row}`, {
      formula: placed(formula, (key) => (key === 'words' ? `F${row}` : this.place(key))),
      style: 'words',
    });
    this.put(`E${row}`, { style: 'words' });
    this.merges.push(`D${row}:E${row}`);
    this.formulaText(row);
    const cells = `D${row}:E${row}`;
    for (const [word, style] of looks) this.conditions.push({ cells, when: `$D$${row}="${word}"`, style });
    const longest = Math.max(...looks.map(([word]) => linesOf(word, this.width('D', 'E'))));
    this.grow(row, longest, 14);
  }

  named({ label, note }: { readonly label: string; readonly note: string }, row: number): void {
    this.put(`A${row}`, { value: label, style: 'label' });
    this.across(this.layout.note, row, { value: note, style: 'note' });
    this.grow(row, linesOf(label, this.width('A')), 13);
    this.grow(row, linesOf(note, this.width(...this.layout.note) * SMALL_PRINT), 12.5);
  }

  blanks(row: number): void {
    this.put(`B${row}`, { style: 'blank' });
    this.put(`C${row}`, { style: 'blank' });
  }

  formulaText(row: number, text?: string, of = `D${row}`): void {
    const shown: CellDescription = text === undefined ? { formula: `FORMULATEXT(${of})` } : { value: text };
    this.across(this.layout.formula, row, { ...shown, style: 'formula' });
    const formula = text ?? this.cells[of]?.formula ?? '';
    this.grow(row, linesOf(formula, this.width(...this.layout.formula)), 12.5);
  }

  unitOf(kind: Kind): CellDescription {
    const [inch, mm] = [systemUnit(kind, 'in').symbol, systemUnit(kind, 'mm').symbol];
    if (inch === mm) return { value: inch === '' ? '–' : inch, style: 'unit' };
    return { formula: `IF($D$${UNITS_ROW}="mm", "${mm}", "${inch}")`, style: 'unit' };
  }

  choose(cells: string, choices: readonly string[], title: string): void {
    this.validations.push({
      cells,
      choices,
      refusal: {
        style: 'warning',
        title,
        text: 'This is not in the list of choices. Keep it only if you mean it.',
      },
    });
  }

  private wide(row: number, cell: CellDescription, height?: number): void {
    this.put(`A${row}`, cell);
    this.merges.push(`A${row}:${this.last}${row}`);
    const width = this.width('A', this.last);
    this.heights[row] = height ?? 5 + 13.5 * linesOf(String(cell.value), 1.1 * width);
  }

  grow(row: number, lines: number, each: number): void {
    this.heights[row] = Math.max(this.heights[row] ?? 18, 5 + lines * each);
  }

  /** One cell that fills a row's columns from the first to the last. */
  across([first, last]: readonly [string, string], row: number, cell: CellDescription): void {
    this.put(`${first}${row}`, cell);
    if (first !== last) this.merges.push(`${first}${row}:${last}${row}`);
  }

  put(address: string, cell: CellDescription): void {
    this.cells[address] = cell;
  }

  /** Characters that fit into the columns from the first to the last. */
  private width(first: string, last = first): number {
    const letters = Object.keys(this.layout.widths);
    const run = letters.slice(letters.indexOf(first), letters.indexOf(last) + 1);
    return run.reduce((sum, letter) => sum + (this.layout.widths[letter] ?? 0), 0);
  }

  private get last(): string {
    return Object.keys(this.layout.widths).at(-1) ?? 'A';
  }
}

const keysOf = (row: Row): readonly string[] =>
  row.type === 'entry'
    ? [row.key]
    : row.type === 'result'
      ? row.lines.map(({ key }) => key)
      : [`${row.type} ${row.label}`];

/**
 * Kinds share units: in/s is a speed, though a cutting speed may be given in it too. Tons are forces: the formulas of a
 * sheet set them against pressure times area.
 */
function kindOfUnit(unit: string): Kind {
  const kinds = kindsWithUnit(unit).filter((kind) => kind !== 'tonnage');
  const kind =
    kinds.find((one) => SYSTEMS.some((system) => systemUnit(one, system).symbol === unit)) ?? kinds[0];
  if (kind === undefined) throw new Error(`${unit} is no unit`);
  return kind;
}

/** The units to choose from: those that a shop reads off its prints, gauges and data sheets. */
function unitChoices(kind: Kind): string[] {
  return KINDS[kind].units.map(({ symbol }) => symbol).filter((symbol) => symbol !== '');
}
