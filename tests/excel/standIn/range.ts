import type { StyleDescription, ValidationDescription } from '../../../src/package/description';
import { areaAddress } from '../../../src/cells/address';
import { CellError, type CellValue } from '../../../src/cells/value';
import type { BorderLine, Side } from '../../../src/package/model';
import { StandInFormat } from './looks';
import { NOTHING, place, placeOf, type Content, type StandInSheet } from './sheet';
import { checkFormula, Refused } from './typed';

/** Excel refuses larger answers on the web: 5 MB, near enough. */
const MOST_CELLS = 500_000;

export class StandInRange {
  readonly format = new StandInFormat(this);
  readonly dataValidation = new StandInValidation(this);
  readonly conditionalFormats = { add: (kind: string) => new StandInCondition(this, kind) };

  constructor(
    readonly worksheet: StandInSheet,
    readonly rowIndex: number,
    readonly columnIndex: number,
    readonly rowCount: number,
    readonly columnCount: number,
  ) {}

  get address(): string {
    return `${this.worksheet.name}!${this.cells}`;
  }

  /** `B3:C5`. */
  get cells(): string {
    const { rowIndex: top, columnIndex: left, rowCount, columnCount } = this;
    return areaAddress({ top, left, bottom: top + rowCount - 1, right: left + columnCount - 1 });
  }

  private map<T>(read: (content: Content | undefined, at: string) => T): T[][] {
    if (this.rowCount * this.columnCount > MOST_CELLS)
      throw new Refused('ResponsePayloadSizeLimitExceeded', 'The answer is too large.');
    return Array.from({ length: this.rowCount }, (_, down) =>
      Array.from({ length: this.columnCount }, (__, across) => {
        const at = place(this.rowIndex + down, this.columnIndex + across);
        return read(this.worksheet.cells.get(at), at);
      }),
    );
  }

  /** Of a cell that another one fills Excel gives that one's formula. */
  get formulas(): unknown[][] {
    return this.map((content) => {
      const source =
        content?.spilledFrom === undefined ? content : this.worksheet.cells.get(content.spilledFrom);
      return source?.formula === undefined ? shown(content?.value ?? null) : `=${source.formula}`;
    });
  }

  /** The same with the signs of the country. */
  get formulasLocal(): unknown[][] {
    const { separator } = this.worksheet.book;
    return this.formulas.map((row) =>
      row.map((one) =>
        typeof one === 'string' && one.startsWith('=') ? one.replaceAll(',', separator) : one,
      ),
    );
  }

  get values(): unknown[][] {
    return this.map((content) => shown(content?.value ?? null));
  }

  get valueTypes(): string[][] {
    return this.map((content) => {
      const value = content?.value ?? null;
      if (value instanceof CellError) return 'Error';
      return { number: 'Double', string: 'String', boolean: 'Boolean' }[typeof value as string] ?? 'Empty';
    });
  }

  get hasSpill(): boolean | null {
    const kinds = new Set(this.map((content) => content?.spilledFrom !== undefined).flat());
    return kinds.size === 1 ? kinds.has(true) : null;
  }

  get numberFormat(): string[][] {
    return this.map((_, at) => this.worksheet.looks.get(at)?.numberFormat ?? 'General');
  }

  set numberFormat(formats: readonly (readonly string[])[]) {
    this.checkSize(formats);
    formats.forEach((row, down) => {
      row.forEach((numberFormat, across) => {
        this.worksheet
          .getRangeByIndexes(this.rowIndex + down, this.columnIndex + across, 1, 1)
          .dress({ numberFormat });
      });
    });
  }

  checkUnlocked(): void {
    if (this.worksheet.protection.protected) throw new Refused('AccessDenied', 'The sheet is protected.');
  }

  dress(change: StyleDescription | ((before: StyleDescription) => StyleDescription)): void {
    this.checkUnlocked();
    for (const at of this.map((_, key) => key).flat()) {
      const before = this.worksheet.looks.get(at) ?? {};
      this.worksheet.looks.set(at, {
        ...before,
        ...(typeof change === 'function' ? change(before) : change),
      });
    }
  }

  private checkSize(rows: readonly (readonly unknown[])[]): void {
    if (rows.length !== this.rowCount || rows.some((row) => row.length !== this.columnCount)) {
      throw new Refused('InvalidArgument', 'The values do not fit the range.');
    }
  }

  write(rows: readonly (readonly unknown[])[]): void {
    this.checkSize(rows);
    rows.forEach((row, down) => {
      row.forEach((input, across) => {
        // Null leaves a cell as it is.
        if (input !== null) this.worksheet.type(this.rowIndex + down, this.columnIndex + across, input);
      });
    });
  }

  clear(what: string): void {
    if (what !== 'Formats') throw new Refused('InvalidArgument', `The stand-in does not clear ${what}.`);
    this.checkUnlocked();
    for (const at of this.map((_, key) => key).flat()) this.worksheet.looks.delete(at);
  }

  getDirectPrecedents(): { readonly ranges: { readonly items: readonly StandInRange[] } } {
    return { ranges: { items: this.worksheet.book.tracedFrom(this).reads } };
  }

  getDirectDependents(): { readonly ranges: { readonly items: readonly StandInRange[] } } {
    return { ranges: { items: this.worksheet.book.tracedFrom(this).readers } };
  }

  merge(): void {
    this.checkUnlocked();
    this.worksheet.merges.add(this.cells);
  }

  select(): void {
    const { worksheet, rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = this;
    worksheet.book.active = worksheet;
    worksheet.book.selection = { row, column, rows, columns };
  }

  getCell(row: number, column: number): StandInRange {
    return this.worksheet.getRangeByIndexes(this.rowIndex + row, this.columnIndex + column, 1, 1);
  }

  getSpillParentOrNullObject(): StandInRange | typeof NOTHING {
    const from = this.worksheet.cells.get(place(this.rowIndex, this.columnIndex))?.spilledFrom;
    return from === undefined ? NOTHING : this.worksheet.getRangeByIndexes(...placeOf(from), 1, 1);
  }
}

export const absolute = ({ worksheet, cells }: StandInRange): string => {
  const sheet = /^\w+$/.test(worksheet.name) ? worksheet.name : `'${worksheet.name.replaceAll("'", "''")}'`;
  return `${sheet}!${cells.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2')}`;
};

const shown = (value: CellValue): unknown => (value instanceof CellError ? value.code : (value ?? ''));

/** The most characters of a list that stands in the rule itself. */
const LONGEST_LIST = 255;

interface Rule {
  readonly list?: { readonly inCellDropDown: boolean; readonly source: string };
  readonly custom?: { readonly formula: string };
}

interface Alert {
  readonly title: string;
  readonly message: string;
  readonly style: string;
  readonly showAlert: boolean;
}

/** What may be entered into the cells of a range. Excel reads the words of a list between commas in every country. */
class StandInValidation {
  constructor(private readonly range: StandInRange) {}

  private get now(): ValidationDescription | undefined {
    return this.range.worksheet.validations.get(this.range.cells);
  }

  private change(change: Partial<ValidationDescription>): void {
    this.range.checkUnlocked();
    const { cells } = this.range;
    this.range.worksheet.validations.set(cells, { ...this.now, ...change, cells });
  }

  get type(): string {
    if (!this.now) return 'None';
    return this.now.choices === undefined ? 'Custom' : 'List';
  }

  get rule(): Rule {
    const choices = this.now?.choices;
    if (choices === undefined) return {};
    return {
      list: { inCellDropDown: true, source: typeof choices === 'string' ? `=${choices}` : choices.join(',') },
    };
  }

  set rule({ list, custom }: Rule) {
    if (custom) {
      checkFormula(custom.formula.slice(1));
      this.change({ accepts: custom.formula.slice(1) });
    }
    if (!list) return;
    if (list.source.startsWith('=')) {
      this.change({ choices: list.source.slice(1) });
      return;
    }
    if (list.source.length > LONGEST_LIST) throw new Refused('InvalidArgument', 'The list is too long.');
    this.change({ choices: list.source.split(',') });
  }

  set ignoreBlanks(_: boolean) {
    this.range.checkUnlocked();
  }

  set prompt({ title, message }: { title: string; message: string }) {
    if (title.length > 32 || message.length > 255)
      throw new Refused('InvalidArgument', 'The prompt is too long.');
    this.change({ prompt: { title, text: message } });
  }

  set errorAlert({ title, message, style, showAlert }: Alert) {
    if (title.length > 32 || message.length > 255)
      throw new Refused('InvalidArgument', 'The alert is too long.');
    const styles = { Stop: 'stop', Warning: 'warning', Information: 'information' } as const;
    if (showAlert)
      this.change({ refusal: { style: styles[style as keyof typeof styles], title, text: message } });
  }

  clear(): void {
    this.range.checkUnlocked();
    this.range.worksheet.validations.delete(this.range.cells);
  }
}

const SIDES: Readonly<Record<string, Side>> = {
  EdgeTop: 'top',
  EdgeRight: 'right',
  EdgeBottom: 'bottom',
  EdgeLeft: 'left',
};

/** A color by formula; it is kept when its formula and both its colors are there. */
class StandInCondition {
  readonly custom;
  private readonly style: {
    font?: { color?: string; bold?: boolean };
    fill?: string;
    borders?: Partial<Record<Side, BorderLine>>;
  } = {};

  constructor(range: StandInRange, kind: string) {
    if (kind !== 'Custom') throw new Refused('InvalidArgument', 'Only formulas are known here.');
    range.checkUnlocked();
    const { style } = this;
    const condition = { cells: range.cells, when: '', style };
    // The newest comes first.
    range.worksheet.conditions.unshift(condition);
    this.custom = {
      rule: {
        set formula(formula: string) {
          checkFormula(formula.slice(1));
          condition.when = formula.slice(1);
        },
      },
      format: {
        font: {
          set color(color: string) {
            style.font = { ...style.font, color };
          },
          set bold(bold: boolean) {
            style.font = { ...style.font, bold };
          },
        },
        borders: {
          getItem: (edge: string) => {
            const side = SIDES[edge];
            if (!side) throw new Refused('InvalidArgument', `A condition has no border ${edge}.`);
            const change = (line: Partial<BorderLine>): void => {
              style.borders = {
                ...style.borders,
                [side]: { line: 'thin', ...style.borders?.[side], ...line },
              };
            };
            return {
              set style(word: string) {
                if (word !== 'Continuous') throw new Refused('InvalidArgument', `${word} is no line here.`);
                change({ line: 'thin' });
              },
              set color(color: string) {
                change({ color });
              },
            };
          },
        },
        fill: {
          set color(color: string) {
            style.fill = color;
          },
        },
      },
    };
  }
}
