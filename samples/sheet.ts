/**
 * Makes a workbook of a readable description of a design sheet: sections of rows that are entries, results and
 * verdicts. Formulas name other rows by their keys; `units` is the cell that chooses the system of the sheet.
 *
 * An entry keeps its own unit: choosing other units changes how the sheet speaks, never the size of the part.
 */
import { findDefinition } from '../src/call/findDefinition';
import type { Definition, Gives } from '../src/core/define';
import { KINDS, SYSTEMS, systemUnit, type Kind, type System } from '../src/core/quantity';
import { kindsWithUnit } from '../src/core/readQuantity';
import type {
  CellDescription,
  ConditionDescription,
  SheetDescription,
  StyleDescription,
  ValidationDescription,
  WorkbookDescription,
} from '../src/workbook/description';
import { tokenize } from '../src/workbook/formulaTokens';
import { columnLetters } from '../src/workbook/model';
import { convertedStyle, FONT, formatOf, GOOD, INFO, numberStyle, STYLES, typedStyle, WARN } from './style';

export interface Entry {
  readonly type: 'entry';
  readonly key: string;
  readonly label: string;
  readonly value: number | string;
  /** Empty for plain numbers and words. */
  readonly unit: string;
  readonly note: string;
  readonly choices?: readonly string[];
  readonly format?: string;
}

interface Line {
  readonly key: string;
  readonly label: string;
  readonly note: string;
}

export interface Result {
  readonly type: 'result';
  /** More than one where the formula spills down. */
  readonly lines: readonly [Line, ...Line[]];
  readonly formula: string;
  /** What it gives; told by the function where the formula is one call of ours. */
  readonly kind: Kind | 'text';
  readonly format?: string;
}

/** An answer in words. */
export interface Verdict {
  readonly type: 'verdict';
  readonly label: string;
  readonly when: string;
  readonly yes: string;
  readonly no: string;
  readonly note: string;
  /** How bad the others are: a warning, worth knowing, or as good as the first. */
  readonly tone: 'warn' | 'info' | 'either';
}

/** A verdict whose words stand where other rows have a note, because they are long. */
export interface Says {
  readonly type: 'says';
  readonly label: string;
  /** Gives the words. */
  readonly formula: string;
  /** Names rows, and `words`. */
  readonly when: string;
  readonly yes: string;
  readonly no: string;
}

export type Row = Entry | Result | Verdict | Says;

export interface Section {
  readonly title: string;
  /** What this section is there to decide. */
  readonly decide: string;
  readonly rows: readonly Row[];
}

/** A table that one formula spills: values down against values across. */
export interface WhatIf {
  readonly title: string;
  /** Row whose unit the answers have; a ratio where left out. */
  readonly unitOf?: string;
  readonly says: string;
  readonly down: Heads;
  readonly across: Heads;
  /** Names rows of the sheet, and `down` and `across`. */
  readonly formula: string;
  readonly format: string;
  /** Marks answers for which this holds; names rows of the sheet, and `answer`. */
  readonly mark?: { readonly when: string; readonly says: string };
}

interface Heads {
  readonly label: string;
  /** Numbers to type over, or formulas that name rows of the sheet. */
  readonly values: readonly (number | string)[];
  readonly unitOf?: string;
  readonly format: string;
}

export interface Design {
  readonly file: string;
  readonly title: string;
  readonly scenario: string;
  /** The one caution to read before anything else. */
  readonly danger: string;
  readonly sheet: string;
  readonly sections: readonly Section[];
  readonly cautions: readonly string[];
  readonly whatIf: readonly WhatIf[];
}

export function entry(
  key: string,
  label: string,
  value: number | string,
  unit: string,
  note: string,
  options: Pick<Entry, 'choices' | 'format'> = {},
): Entry {
  return { type: 'entry', key, label, value, unit, note, ...options };
}

interface ResultOptions {
  readonly kind?: Kind | 'text';
  readonly format?: string;
}

export function result(
  key: string,
  label: string,
  formula: string,
  note: string,
  options: ResultOptions = {},
): Result {
  return results([{ key, label, note }], formula, options);
}

export function results(
  lines: readonly [Line, ...Line[]],
  formula: string,
  { kind = kindOf(formula), ...options }: ResultOptions = {},
): Result {
  return { type: 'result', lines, formula, kind, ...options };
}

export function verdict(
  label: string,
  when: string,
  yes: string,
  no: string,
  note: string,
  tone: Verdict['tone'] = 'warn',
): Verdict {
  return { type: 'verdict', label, when, yes, no, note, tone };
}

function givesOf(definition: Definition): Gives | undefined {
  switch (definition.type) {
    case 'formula':
      return definition.steps[definition.result]?.gives;
    case 'procedure':
      return definition.gives;
    case 'lookup': {
      const columns = Object.values(definition.columns);
      return columns.length === 1 ? columns[0]?.gives : undefined;
    }
  }
}

export function says(label: string, formula: string, when: string, yes: string, no: string): Says {
  return { type: 'says', label, formula, when, yes, no };
}

/** Whether a function is used in the range that its equation was made for. */
export function check(label: string, formula: string): Says {
  return says(label, formula, 'words="in range"', 'in range', 'out of range');
}

/** What a formula gives that is one call of ours. */
function kindOf(formula: string): Kind | 'text' {
  const name = /^MOLD\.([A-Z.]+)\(/.exec(formula)?.[1];
  const definition = name === undefined ? undefined : findDefinition(name);
  const gives = definition && givesOf(definition);
  if (typeof gives !== 'string') throw new Error(`Say what this gives: ${formula}`);
  return gives;
}

// A: name, B: entered, C: its unit, D: value in the units of the sheet, E: their symbol, F: note, G: formula.
const COLUMNS = { A: 31, B: 10, C: 9, D: 11, E: 9, F: 55, G: 52 } as const;
const LAST = 'G';
const UNITS_ROW = 4;
const HEADS_ROW = 5;
export const UNITS_CELL = `D${UNITS_ROW}`;
/** Characters of small print that fit where one digit of the sheet's font does. */
const SMALL_PRINT = 1.25;

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

/** A formula with the keys in it replaced by cells. */
export function placed(formula: string, place: (key: string) => string | undefined): string {
  return tokenize(formula)
    .map(({ kind, text }, index, all) => {
      if (kind !== 'name' || all[index + 1]?.text === '(' || /^(TRUE|FALSE)$/.test(text)) return text;
      const cell = place(text);
      if (cell === undefined) throw new Error(`No row is called ${text}: ${formula}`);
      return cell;
    })
    .join('');
}

class SheetMaker {
  readonly styles: Record<string, StyleDescription> = { ...STYLES };
  private readonly cells: Record<string, CellDescription> = {};
  private readonly heights: Record<number, number> = {};
  private readonly merges: string[] = [];
  private readonly validations: ValidationDescription[] = [];
  private readonly conditions: ConditionDescription[] = [];
  private readonly rowOf = new Map<string, number>();

  constructor(
    private readonly design: Design,
    private readonly units: System,
  ) {
    let row = HEADS_ROW + 1;
    for (const { rows } of design.sections) {
      row += 2;
      for (const one of rows) {
        for (const key of keysOf(one)) {
          if (this.rowOf.has(key)) throw new Error(`Two rows are called ${key}`);
          this.rowOf.set(key, row++);
        }
      }
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
      columns: COLUMNS,
      rows: this.heights,
      cells: this.cells,
      merges: this.merges,
      freeze: `A${HEADS_ROW + 1}`,
      validations: this.validations,
      conditions: this.conditions,
      print: print(`A1:${LAST}${row}`, `${HEADS_ROW}:${HEADS_ROW}`),
    };
  }

  /** The cell of a row's value, as the sheet itself or another one names it. */
  place(key: string, from = ''): string | undefined {
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
    this.put(`F${UNITS_ROW}`, {
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
    const heads = ['Name', 'Entered', 'Unit', 'Value', 'Unit', 'Note', 'Formula'];
    heads.forEach((value, i) => {
      const style =
        value === 'Entered' || value === 'Value' ? 'headRight' : value === 'Unit' ? 'headUnit' : 'head';
      this.put(`${columnLetters(i)}${HEADS_ROW}`, { value, style });
    });
    this.heights[HEADS_ROW] = 20;
  }

  private section({ title, decide, rows }: Section, at: number): number {
    this.wide(at, { value: title, style: 'section' }, 22);
    this.wide(at + 1, { value: `Decide: ${decide}`, style: 'decide' });
    let row = at + 2;
    rows.forEach((one, i) => {
      if (one.type === 'entry') this.entry(one, row, rows.slice(0, i), rows.slice(i));
      else if (one.type === 'result') this.result(one, row);
      else if (one.type === 'verdict') this.verdict(one, row);
      else this.says(one, row);
      row += keysOf(one).length;
    });
    return row;
  }

  private entry(one: Entry, row: number, before: readonly Row[], from: readonly Row[]): void {
    this.named(one, row);
    const words = typeof one.value === 'string';
    this.put(`B${row}`, { value: one.value, style: words ? 'typedWords' : this.style(typedStyle) });
    if (one.choices) this.choose(`B${row}`, one.choices, one.label);
    if (one.unit === '') {
      this.put(`C${row}`, { style: 'blank', value: '–' });
      this.put(`E${row}`, { style: 'unit', value: '–' });
      this.put(`D${row}`, {
        formula: `B${row}`,
        style: words ? 'words' : this.style(convertedStyle(one.format ?? 'General')),
      });
      this.formulaText(row, `=B${row}`);
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
      formula: `MOLD.UNIT.CONVERT(${run('B')}, ${run('C')}, ${run('E')})`,
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

  private verdict(
    { when, yes, no, tone, ...one }: Verdict,
    row: number,
    condition = placed(when, (key) => this.place(key)),
  ): void {
    this.named(one, row);
    this.blanks(row);
    const words = { yes: tone === 'either' ? yes : `✓ ${yes}`, no: tone === 'warn' ? `✗ ${no}` : no };
    const formula = `IF(${condition}, "${words.yes}", "${words.no}")`;
    this.put(`D${row}`, { formula, style: 'words' });
    this.put(`E${row}`, { style: 'words' });
    this.merges.push(`D${row}:E${row}`);
    this.formulaText(row);
    const cells = `D${row}:E${row}`;
    this.conditions.push(
      { cells, when: `$D$${row}="${words.yes}"`, style: tone === 'either' ? INFO : GOOD },
      { cells, when: `$D$${row}="${words.no}"`, style: tone === 'warn' ? WARN : INFO },
    );
    this.grow(row, linesOf(yes.length > no.length ? words.yes : words.no, COLUMNS.D + COLUMNS.E), 14);
  }

  private says({ label, formula, when, yes, no }: Says, row: number): void {
    this.verdict(
      { type: 'verdict', label, when, yes, no, note: '', tone: 'warn' },
      row,
      placed(when, (key) => (key === 'words' ? `F${row}` : this.place(key))),
    );
    this.put(`F${row}`, { formula: placed(formula, (key) => this.place(key)), style: 'note' });
    this.put(`G${row}`, { formula: `FORMULATEXT(F${row})`, style: 'formula' });
    this.grow(row, Math.max(2, linesOf(this.cells[`F${row}`]?.formula ?? '', COLUMNS.G)), 12.5);
  }

  private named({ label, note }: { readonly label: string; readonly note: string }, row: number): void {
    this.put(`A${row}`, { value: label, style: 'label' });
    this.put(`F${row}`, { value: note, style: 'note' });
    this.grow(row, linesOf(label, COLUMNS.A * 1.05), 13);
    this.grow(row, linesOf(note, COLUMNS.F * SMALL_PRINT), 12.5);
  }

  private blanks(row: number): void {
    this.put(`B${row}`, { style: 'blank' });
    this.put(`C${row}`, { style: 'blank' });
  }

  private formulaText(row: number, text?: string): void {
    const shown: CellDescription = text === undefined ? { formula: `FORMULATEXT(D${row})` } : { value: text };
    this.put(`G${row}`, { ...shown, style: 'formula' });
    const formula = text ?? this.cells[`D${row}`]?.formula ?? '';
    this.grow(row, linesOf(formula, COLUMNS.G), 12.5);
  }

  private unitOf(kind: Kind): CellDescription {
    const [inch, mm] = [systemUnit(kind, 'in').symbol, systemUnit(kind, 'mm').symbol];
    if (inch === mm) return { value: inch === '' ? '–' : inch, style: 'unit' };
    return { formula: `IF($D$${UNITS_ROW}="mm", "${mm}", "${inch}")`, style: 'unit' };
  }

  private choose(cells: string, choices: readonly string[], title: string): void {
    this.validations.push({
      cells,
      choices,
      refusal: { style: 'warning', title, text: 'This is none of the choices of the list.' },
    });
  }

  private wide(row: number, cell: CellDescription, height?: number): void {
    this.put(`A${row}`, cell);
    this.merges.push(`A${row}:${LAST}${row}`);
    const width = Object.values(COLUMNS).reduce((sum, one) => sum + one, 0);
    this.heights[row] = height ?? 5 + 13.5 * linesOf(String(cell.value), 1.1 * width);
  }

  private grow(row: number, lines: number, each: number): void {
    this.heights[row] = Math.max(this.heights[row] ?? 18, 5 + lines * each);
  }

  private put(address: string, cell: CellDescription): void {
    this.cells[address] = cell;
  }
}

const keysOf = (row: Row): readonly string[] =>
  row.type === 'entry'
    ? [row.key]
    : row.type === 'result'
      ? row.lines.map(({ key }) => key)
      : [`${row.type} ${row.label}`];

function kindOfUnit(unit: string): Kind {
  const [kind] = kindsWithUnit(unit);
  if (kind === undefined) throw new Error(`${unit} is no unit`);
  return kind;
}

/** The units to choose from: those that a shop reads off its prints, gauges and data sheets. */
function unitChoices(kind: Kind): string[] {
  return KINDS[kind].units.map(({ symbol }) => symbol).filter((symbol) => symbol !== '');
}

const WHAT_IF = 'What if';
const WHAT_IF_COLUMNS = { A: 34, 'B:H': 12 } as const;

function whatIfSheet(design: Design, maker: SheetMaker): SheetDescription {
  const cells: Record<string, CellDescription> = {};
  const heights: Record<number, number> = { 1: 26 };
  const conditions: ConditionDescription[] = [];
  const merges = ['A1:H1', 'A2:H2'];
  const home = /^\w+$/.test(design.sheet) ? `${design.sheet}!` : `'${design.sheet}'!`;
  const away = (formula: string, extra: Readonly<Record<string, string>> = {}) =>
    placed(formula, (key) => extra[key] ?? maker.place(key, home));
  cells['A1'] = { value: `${design.title}: what if`, style: 'title' };
  cells['A2'] = {
    value:
      'Each table is one formula that spills. Yellow heads may be typed over; everything else follows the other sheet, in its units.',
    style: 'scenario',
  };
  heights[2] = 20;
  let row = 4;
  for (const { title, unitOf, says, down, across, formula, format, mark } of design.whatIf) {
    const columns = across.values.map((_, i) => columnLetters(2 + i));
    const last = columns.at(-1) ?? 'C';
    const first = row + 3;
    const end = first + down.values.length - 1;
    cells[`A${row}`] =
      unitOf === undefined
        ? { value: title, style: 'section' }
        : { formula: `"${title}, "&${maker.unitCell(unitOf, home)}`, style: 'section' };
    merges.push(`A${row}:H${row}`, `A${row + 1}:H${row + 1}`);
    heights[row] = 22;
    cells[`A${row + 1}`] = { value: says, style: 'decide' };
    heights[row + 1] = 5 + 13.5 * linesOf(says, 34 + 7 * 12);
    const named = ({ label, unitOf: of }: Heads): CellDescription =>
      of === undefined ? { value: label } : { formula: `"${label}, "&${maker.unitCell(of, home)}` };
    cells[`A${row + 2}`] = { ...named(across), style: 'headRight' };
    cells[`B${row + 2}`] = { style: 'head' };
    const head = (value: number | string, { format: numberFormat }: Heads): CellDescription =>
      typeof value === 'number'
        ? { value, style: maker.style({ ...typedStyle, numberFormat }) }
        : { formula: away(value), style: maker.style({ ...numberStyle(numberFormat), fill: '#DFE8EE' }) };
    across.values.forEach((value, i) => {
      cells[`${String(columns[i])}${row + 2}`] = head(value, across);
    });
    heights[row + 2] = 20;
    down.values.forEach((value, i) => {
      cells[`A${first + i}`] = i === 0 ? { ...named(down), style: 'label' } : { style: 'label' };
      cells[`B${first + i}`] = head(value, down);
      columns.forEach((column) => {
        cells[`${column}${first + i}`] = { style: maker.style(convertedStyle(format)) };
      });
      heights[first + i] = 18;
    });
    const corner = `C${first}`;
    const area = `${corner}:${last}${end}`;
    cells[corner] = {
      ...cells[corner],
      formula: away(formula, { down: `B${first}:B${end}`, across: `C${row + 2}:${last}${row + 2}` }),
      fills: area,
    };
    cells[`A${end + 1}`] = { formula: `FORMULATEXT(${corner})`, style: 'formula' };
    merges.push(`A${end + 1}:H${end + 1}`);
    heights[end + 1] = 18;
    row = end + 2;
    if (mark) {
      conditions.push({ cells: area, when: away(mark.when, { answer: corner }), style: WARN });
      cells[`A${row}`] = { value: mark.says, style: 'decide' };
      merges.push(`A${row}:H${row}`);
      row += 1;
    }
    row += 1;
  }
  return {
    name: WHAT_IF,
    tabColor: '#C9B458',
    gridlines: false,
    columns: WHAT_IF_COLUMNS,
    rows: heights,
    cells,
    merges,
    freeze: 'A3',
    conditions,
    print: print(`A1:H${row - 1}`, '1:2'),
  };
}

const print = (area: string, titleRows: string): NonNullable<SheetDescription['print']> => ({
  paper: 'Letter',
  landscape: true,
  area,
  titleRows,
  footer: { left: '&F', center: '&A', right: 'Page &P of &N' },
  margins: { side: 0.5, top: 0.5, bottom: 0.6 },
});

/** Lines that a text takes in a column of so many characters, broken at spaces. */
function linesOf(text: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    const needed = used === 0 ? word.length : used + 1 + word.length;
    if (needed <= width) used = needed;
    else {
      lines += used === 0 ? 0 : 1;
      lines += Math.floor((word.length - 1) / width);
      used = word.length % width;
    }
  }
  return lines;
}
