import { cellAddress, columnLetters, type Area } from '../cells/address';
import { SYSTEMS, type Kind, type System } from '../core/quantity';
import type { Ground } from './ground';
import { linesOf } from './lines';
import { convertedStyle, STYLES, type Look } from './looks';
import { freeName } from './names';
import type { FormPlan, PlannedCell, PlannedList, PlannedName, PlannedRule, Place } from './plan';
import { systemSign, unitChoices } from './units';

/** The columns of a form, by what stands in them. */
const COLUMNS = [
  { head: 'Name', look: STYLES.head, full: 31, least: 20 },
  { head: 'Entered', look: STYLES.headRight, full: 11, least: 9 },
  { head: 'Unit', look: STYLES.headUnit, full: 10, least: 8 },
  { head: 'Value', look: STYLES.headRight, full: 11, least: 10 },
  { head: 'Unit', look: STYLES.headUnit, full: 9, least: 8 },
  { head: 'Note', look: STYLES.note, full: 54, least: 30 },
  { head: 'Formula', look: STYLES.formula, full: 52, least: 12 },
] as const;
export const WIDTH = COLUMNS.length;
export const HEADS = COLUMNS.map(({ head }) => head);

type ColumnName = 'label' | 'entry' | 'entryUnit' | 'value' | 'unit' | 'note' | 'formula';
const AT: Readonly<Record<ColumnName, number>> = {
  label: 0,
  entry: 1,
  entryUnit: 2,
  value: 3,
  unit: 4,
  note: 5,
  formula: 6,
};

/** Characters of small print that fit where one digit of the sheet's font does. */
const SMALL_PRINT = 1.25;
/** Characters that the arrow of a list takes. */
const ARROW = 2;
/** What a rule of the format holds: letters in a list, in its title, in its text. */
const MOST = { list: 255, title: 32, text: 255 } as const;

/** A text that stands, or one that a formula gives. */
export type HeadText = { readonly value: string } | { readonly formula: string };

/** Addresses of cells of one row, such as `D12`. */
export interface RowCells {
  readonly value: string;
  readonly unit: string;
  readonly entry: string;
  readonly entryUnit: string;
}

/** Writes the rows of a form one under another into a plan. */
export class Rows {
  private readonly cells: PlannedCell[] = [];
  private readonly merges: Area[] = [];
  private readonly heights = new Map<number, number>();
  private readonly rules: PlannedRule[] = [];
  private readonly verdicts: Area[] = [];
  private readonly names: PlannedName[] = [];
  private readonly lists: PlannedList[] = [];
  private readonly width: readonly number[];
  private row: number;
  /** As formulas refer to the cell that says `in` or `mm`. */
  private unitsText: string | undefined;

  constructor(
    private readonly ground: Ground,
    private readonly at: Place,
    /** Of the units cell that the form brings where the sheet has none. */
    private readonly fallback: System,
  ) {
    this.row = at.row;
    this.width = COLUMNS.map(({ full, least }, i) => {
      const present = ground.width(at.column + i);
      return present === undefined ? full : Math.max(present, least);
    });
    const { units } = ground;
    if (units) this.unitsText = units.name ?? absolute(units.row, units.column);
  }

  get system(): System {
    return this.ground.units?.system ?? this.fallback;
  }

  get sheet(): string {
    return this.ground.sheet;
  }

  get hasUnits(): boolean {
    return this.unitsText !== undefined;
  }

  /** As formulas refer to the units of the sheet. */
  get units(): string {
    if (this.unitsText === undefined) throw new Error('The form has no units yet');
    return this.unitsText;
  }

  /** The cells of the row that is written next. */
  here(): RowCells {
    return {
      value: this.cell('value'),
      unit: this.cell('unit'),
      entry: this.cell('entry'),
      entryUnit: this.cell('entryUnit'),
    };
  }

  /** The cell of the value some rows further down. */
  valueBelow(rows: number): string {
    return this.cell('value', this.row + rows);
  }

  /** The heads of a table in the columns of the form. */
  tableHeads(heads: readonly HeadText[], note = 'Note', last = ''): void {
    heads.forEach((head, i) => {
      this.putAt(this.row, this.at.column + i, {
        ...head,
        look: i === 0 ? STYLES.listFirst : STYLES.listHead,
      });
    });
    this.put('note', { value: note, look: STYLES.head });
    this.put('formula', { ...(last !== '' && { value: last }), look: STYLES.head });
    this.end(26);
  }

  wide(text: string, look: Look, height?: number): void {
    this.put('label', { value: text, look });
    this.fill('label', look);
    this.merge('label', 'formula');
    this.end(height ?? 5 + 13.5 * linesOf(text, 1.1 * this.chars('label', 'formula')));
  }

  heads(): void {
    COLUMNS.forEach(({ head, look }, i) => {
      const dark = head === 'Note' || head === 'Formula' ? STYLES.head : look;
      this.putAt(this.row, this.at.column + i, { value: head, look: dark });
    });
    this.end(20);
  }

  /** The cell that chooses the units of all that stands below; the note says what it does. */
  unitsRow(): void {
    this.put('label', { value: 'Units of this sheet', look: STYLES.strong });
    this.put('value', { value: this.fallback, look: STYLES.typedWords });
    this.note(
      'Type each number with its unit into the yellow cells. Value shows all in these units: changing them changes no part.',
    );
    this.rule('value', {
      takes: { words: SYSTEMS },
      strict: true,
      title: 'Units',
      text: 'Choose in or mm.',
    });
    this.unitsText = this.name('units');
    this.grow(2, 12.5);
    this.end();
  }

  /** Label and note, with the height that they take. */
  words(label: string, note: string): void {
    this.put('label', { value: label, look: STYLES.label });
    this.grow(linesOf(label, this.chars('label') * 1.05), 13);
    this.note(note);
  }

  private note(text: string): void {
    this.put('note', { value: text, look: STYLES.note });
    this.grow(linesOf(text, this.chars('note') * SMALL_PRINT), 12.5);
  }

  /** An entry that is one of some words, the longest of which is shown whole beside the arrow of the list. */
  word(first: string, offered: readonly string[], title: string): void {
    this.put('entry', { value: first, look: STYLES.typedWords });
    if (offered.length > 0) this.choose('entry', offered, title);
    const width = this.chars('entry') - ARROW;
    this.grow(Math.max(...[first, ...offered].map((one) => linesOf(one, width))), 13);
  }

  /** A note that a formula gives; `sample` is about as long as it gets. */
  noteFormula(formula: string, sample: string): void {
    this.put('note', { formula, look: STYLES.note });
    this.grow(linesOf(sample, this.chars('note') * SMALL_PRINT), 12.5);
  }

  put(column: ColumnName, cell: Omit<PlannedCell, 'row' | 'column'>): void {
    this.putAt(this.row, this.at.column + AT[column], cell);
  }

  /** The formula of the value, where a person can read it. */
  formulaText(formula: string, of = this.cell('value')): void {
    this.put('formula', { formula: `FORMULATEXT(${of})`, look: STYLES.formula });
    this.grow(linesOf(formula, this.chars('formula')), 12.5);
  }

  blanks(): void {
    this.put('entry', { look: STYLES.blank });
    this.put('entryUnit', { look: STYLES.blank });
  }

  noFormula(): void {
    this.put('formula', { look: STYLES.formula });
  }

  /** A row whose text, given by a formula, fills all but the label. */
  wideFormula(label: string, formula: string, sample: string, look: Look): void {
    this.put('label', { value: label, look });
    this.put('entry', { formula, look });
    this.fill('entry', look);
    this.merge('entry', 'formula');
    this.grow(linesOf(sample, 1.1 * this.chars('entry', 'formula')), 13.5);
    this.end();
  }

  wideText(label: string, text: string, look: Look): void {
    this.put('label', { value: label, look });
    this.put('entry', { value: text, look });
    this.fill('entry', look);
    this.merge('entry', 'formula');
    this.grow(linesOf(text, 1.1 * this.chars('entry', 'formula')), 13.5);
    this.end();
  }

  /** The unit of a kind in the units of the sheet. */
  unitOf(kind: Kind): Omit<PlannedCell, 'row' | 'column'> {
    const [inch, mm] = [systemSign(kind, 'in'), systemSign(kind, 'mm')];
    if (inch === mm) return { value: inch === '' ? '–' : inch, look: STYLES.unit };
    return { formula: `IF(${this.units}="mm","${mm}","${inch}")`, look: STYLES.unit };
  }

  /** The cell beside an entry that says its unit; its address, where there are units to choose from. */
  entryUnit(kind: Kind, unit: { readonly value: string } | { readonly formula: string }): string | undefined {
    const choices = unitChoices(kind);
    if (choices.length < 2) {
      this.put('entryUnit', { value: choices[0] ?? '–', look: STYLES.blank });
      return undefined;
    }
    this.put('entryUnit', { ...unit, look: STYLES.typedUnit });
    this.choose('entryUnit', choices, 'Unit');
    return this.cell('entryUnit');
  }

  /** The unit of all that is typed below into the column. */
  columnUnit(column: 'entry' | 'entryUnit', kind: Kind, unit: string): void {
    const choices = unitChoices(kind);
    if (choices.length < 2) {
      this.put(column, { value: choices[0] ?? '–', look: STYLES.blank });
      return;
    }
    this.put(column, { value: unit, look: STYLES.typedUnit });
    this.choose(column, choices, 'Unit');
  }

  /** Offers words without insisting on them. */
  choose(column: ColumnName, words: readonly string[], title: string): void {
    const fits = words.join(',').length <= MOST.list && !words.some((word) => word.includes(','));
    this.rule(column, {
      takes: fits ? { words } : { cells: this.list(title, words) },
      strict: false,
      title,
      text: 'This is not in the list of choices. Keep it only if you mean it.',
    });
  }

  rule(column: ColumnName, { title, text, ...rule }: Omit<PlannedRule, 'row' | 'column'>): void {
    this.rules.push({
      ...rule,
      title: title.slice(0, MOST.title),
      text: text.length > MOST.text ? `${text.slice(0, MOST.text - 1)}…` : text,
      row: this.row,
      column: this.at.column + AT[column],
    });
  }

  /** Gives the value a name; one that is taken gets a number. */
  name(wanted: string, rows = 1): string {
    const own = new Set(this.names.map(({ name }) => name));
    const name = freeName(wanted, (one) => own.has(one) || this.ground.isTaken(one));
    const column = this.at.column + AT.value;
    this.names.push({
      name,
      area: { top: this.row, left: column, bottom: this.row + rows - 1, right: column },
    });
    return name;
  }

  /** A word of the scale over two columns, colored by it. */
  verdict(formula: string): void {
    this.put('value', { formula, look: STYLES.words });
    this.put('unit', { look: STYLES.words });
    this.merge('value', 'unit');
    const column = this.at.column;
    this.verdicts.push({
      top: this.row,
      left: column + AT.value,
      bottom: this.row,
      right: column + AT.unit,
    });
    this.grow(2, 14);
  }

  value(formula: string, format: string, isText = false): void {
    this.put('value', { formula, look: isText ? STYLES.words : convertedStyle(format) });
  }

  /** The address of a cell of this row. */
  cell(column: ColumnName, row = this.row): string {
    return cellAddress(row, this.at.column + AT[column]);
  }

  end(points?: number): void {
    this.heights.set(this.row, points ?? Math.max(18, this.heights.get(this.row) ?? 0));
    this.row += 1;
  }

  plan(): FormPlan {
    return {
      sheet: this.ground.sheet,
      area: { ...this.across(this.at.row), bottom: this.row - 1 },
      cells: this.cells,
      merges: this.merges,
      heights: [...this.heights].map(([row, points]) => ({ row, points })),
      widths: this.width.flatMap((characters, i) =>
        this.ground.width(this.at.column + i) === characters
          ? []
          : [{ column: this.at.column + i, characters }],
      ),
      rules: this.rules,
      verdicts: this.verdicts,
      names: this.names,
      lists: this.lists,
    };
  }

  private putAt(row: number, column: number, cell: Omit<PlannedCell, 'row' | 'column'>): void {
    this.cells.push({ row, column, ...cell });
  }

  /** The other cells of a merged run draw its borders and color. */
  private fill(from: ColumnName, look: Look): void {
    for (let i = AT[from] + 1; i < WIDTH; i++) this.putAt(this.row, this.at.column + i, { look });
  }

  private merge(from: ColumnName, to: ColumnName): void {
    const { column } = this.at;
    this.merges.push({ top: this.row, left: column + AT[from], bottom: this.row, right: column + AT[to] });
  }

  private across(row: number): Area {
    const { column } = this.at;
    return { top: row, left: column, bottom: row, right: column + WIDTH - 1 };
  }

  private chars(from: ColumnName, to = from): number {
    return this.width.slice(AT[from], AT[to] + 1).reduce((sum, one) => sum + one, 0);
  }

  private grow(lines: number, each: number): void {
    this.heights.set(this.row, Math.max(this.heights.get(this.row) ?? 18, 5 + lines * each));
  }

  /** The cells of a list, which one workbook needs once. */
  private list(title: string, words: readonly string[]): string {
    const { sheet, present, free } = this.ground.lists;
    const known = present.find((one) => one.title === title && one.words === words.length);
    const planned = this.lists.find((one) => one.title === title);
    const column = known?.column ?? planned?.column ?? free + this.lists.length;
    if (!known && !planned) this.lists.push({ sheet, column, title, words });
    const letters = columnLetters(column);
    return `${quotedSheet(sheet)}!$${letters}$2:$${letters}$${words.length + 1}`;
  }
}

export const absolute = (row: number, column: number): string => `$${columnLetters(column)}$${row + 1}`;

/** A sheet as every formula may name it. */
export const quotedSheet = (name: string): string => `'${name.replaceAll("'", "''")}'`;
