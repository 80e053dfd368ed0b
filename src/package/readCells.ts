import { CellError, isErrorCode, type CellValue, type ErrorCode } from '../cells/value';
import type { Area } from '../cells/address';
import type { Cell, Row } from './model';
import { MAX_COLUMNS, MAX_ROWS, cellAddress, parseArea, parseCell } from '../cells/address';
import { shiftFormula } from './shiftFormula';
import type { KnownFunctions } from './spelling';
import { fromFileSpelling } from './spelling';
import { UnreadableWorkbook } from './unreadable';
import type { Attributes, OpenTag } from './xmlHandler';
import { decodeText, flag, numeric } from './xml';

export interface CellContext {
  readonly sharedStrings: readonly string[];
  readonly known: KnownFunctions;
  readonly dynamicMarks: ReadonlySet<number>;
  readonly date1904: boolean;
}

interface Shared {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/** Takes the events inside `<sheetData>`. Rows and cells may leave their number out; then they follow the one before. */
export class CellReader {
  readonly rows: Row[] = [];
  private readonly cells: Cell[] = [];
  private readonly shared = new Map<string, Shared>();
  /** Cells of shared formulas whose text stands in another cell: place in `cells` → group. */
  private readonly waiting = new Map<number, string>();
  private row = -1;
  private column = -1;
  private cell: Attributes = {};
  private formula: Attributes | undefined;
  private formulaText = '';
  private valueText: string | undefined;
  private inlineText = '';
  private within: 'f' | 'v' | 't' | undefined;
  private phonetic = 0;

  constructor(
    private readonly sheet: string,
    private readonly context: CellContext,
  ) {}

  open(tag: OpenTag): void {
    const { name, attributes } = tag;
    if (name === 'row') this.openRow(attributes);
    else if (name === 'c') this.openCell(attributes);
    else if (name === 'f') {
      this.formula = attributes;
      this.within = 'f';
    } else if (name === 'v') {
      this.valueText = '';
      this.within = 'v';
    } else if (name === 'rPh') this.phonetic++;
    else if (name === 't' && this.phonetic === 0) this.within = 't';
  }

  text(text: string): void {
    if (this.within === 'f') this.formulaText += text;
    else if (this.within === 'v') this.valueText = (this.valueText ?? '') + text;
    else if (this.within === 't') this.inlineText += text;
  }

  close(name: string): void {
    if (name === 'c') this.closeCell();
    else if (name === 'rPh') this.phonetic--;
    this.within = undefined;
  }

  finish(): Cell[] {
    for (const [at, group] of this.waiting) {
      const cell = this.cells[at];
      const master = this.shared.get(group);
      if (cell === undefined || master === undefined) continue;
      const formula = shiftFormula(master.formula, cell.row - master.row, cell.column - master.column);
      this.cells[at] = { ...cell, formula };
    }
    return this.cells.sort((a, b) => a.row - b.row || a.column - b.column);
  }

  private openRow(attributes: Attributes): void {
    this.row = attributes['r'] === undefined ? this.row + 1 : numeric(attributes['r'], 0) - 1;
    this.column = -1;
    if (!Number.isInteger(this.row) || this.row < 0 || this.row >= MAX_ROWS) {
      throw new UnreadableWorkbook(
        `The sheet "${this.sheet}" has a row ${attributes['r'] ?? this.row + 1}; a sheet ends at ${MAX_ROWS}.`,
      );
    }
    const { ht, hidden, s, customFormat } = attributes;
    if (ht === undefined && hidden === undefined && !flag(customFormat)) return;
    this.rows.push({
      row: this.row,
      hidden: flag(hidden),
      ...(ht === undefined ? {} : { height: numeric(ht, 15) }),
      ...(flag(customFormat) ? { style: numeric(s, 0) } : {}),
    });
  }

  private openCell(attributes: Attributes): void {
    const address = attributes['r'];
    const place = address === undefined ? { row: this.row, column: this.column + 1 } : parseCell(address);
    if (place === undefined || place.row !== this.row || place.column >= MAX_COLUMNS) {
      throw new UnreadableWorkbook(
        `The sheet "${this.sheet}" has a cell at an impossible place (${(address ?? '').slice(0, 20)}).`,
      );
    }
    this.column = place.column;
    this.cell = attributes;
    this.formula = undefined;
    this.formulaText = '';
    this.valueText = undefined;
    this.inlineText = '';
  }

  private closeCell(): void {
    const { row, column } = this;
    const value = this.readValue();
    const formula = this.readFormula();
    const type = this.formula?.['t'];
    const spill = type === 'array' ? parseArea(this.formula?.['ref'] ?? cellAddress(row, column)) : undefined;
    const isFixed = spill !== undefined && !this.context.dynamicMarks.has(numeric(this.cell['cm'], 0));
    this.cells.push({
      row,
      column,
      value,
      ...(formula === undefined ? {} : { formula }),
      ...(formula === undefined || spill === undefined ? {} : arrayOf(spill, isFixed)),
      style: numeric(this.cell['s'], 0),
    });
  }

  /** A formula of a shared group without text of its own is filled in at the end. */
  private readFormula(): string | undefined {
    if (this.formula === undefined || this.formula['t'] === 'dataTable') return undefined;
    const formula = fromFileSpelling(this.formulaText.trim(), this.context.known);
    const group = this.formula['t'] === 'shared' ? (this.formula['si'] ?? '0') : undefined;
    if (formula !== '') {
      if (group !== undefined && !this.shared.has(group))
        this.shared.set(group, { row: this.row, column: this.column, formula });
      return formula;
    }
    if (group !== undefined) this.waiting.set(this.cells.length, group);
    return undefined;
  }

  private readValue(): CellValue {
    const type = this.cell['t'] ?? 'n';
    if (type === 'inlineStr') return decodeText(this.inlineText);
    const text = this.valueText;
    if (text === undefined) return null;
    switch (type) {
      case 's':
        return this.context.sharedStrings[numeric(text, -1)] ?? '';
      case 'str':
        return decodeText(text);
      case 'b':
        return flag(text.trim());
      case 'e':
        return new CellError(readError(text.trim()));
      case 'd':
        return dateSerial(text.trim(), this.context.date1904);
      default: {
        const number = text.trim() === '' ? NaN : Number(text);
        return Number.isFinite(number) ? number : null;
      }
    }
  }
}

function arrayOf(spill: Area, isFixed: boolean): Pick<Cell, 'spill' | 'fixedArray'> {
  return isFixed ? { spill, fixedArray: true } : { spill };
}

function readError(code: string): ErrorCode {
  if (isErrorCode(code)) return code;
  return code === '#GETTING_DATA' ? '#N/A' : '#VALUE!';
}

/** An ISO date as a serial number; text that is none stays text. */
function dateSerial(text: string, date1904: boolean): CellValue {
  const time = Date.parse(/[zZ]|[+-]\d\d:\d\d$/.test(text) || !text.includes('T') ? text : `${text}Z`);
  return Number.isNaN(time) ? text : time / 86_400_000 + 25_569 - (date1904 ? 1462 : 0);
}
