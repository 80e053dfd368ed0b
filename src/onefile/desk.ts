/** The workbook of the page, alive: its marked inputs can be changed, and everything follows. */
import { inOwnSign } from '../cells/decimalSign';
import { CellError, type CellValue } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { cellFinder, type Cell, type Sheet, type Validation, type Workbook } from '../package/model';
import { lookWith } from '../render/drawings/look';
import type { CellPlace } from '../sheet/book';
import { CalculatedWorkbook } from '../workbook/calculated';
import type { CellView, Range } from '../workbook/cells';
import { boundsText, choicesOf, entryAnswer, entryRuleOf, type EntryAnswer } from '../workbook/entryAnswer';
import { markedInputs, type MarkedInputs } from '../workbook/inputs';
import { ruleLooks, type Looks } from '../workbook/looks';
import { isSameName } from '../whatif/plan';
import { readEntry } from './readEntry';

/** Milliseconds that following a change may take. */
const LIMITS = { time: 20_000 };

/** An input that is another one than in the workbook. */
export interface Changed extends CellPlace {
  readonly was: CellValue;
  readonly is: CellValue;
}

export class Desk {
  readonly inputs: MarkedInputs;
  private readonly book: CalculatedWorkbook;
  private readonly changes = new Map<string, Changed>();
  private looks: Looks | undefined;

  constructor(
    readonly workbook: Workbook,
    readonly functions: readonly WorksheetFunction[],
  ) {
    this.book = CalculatedWorkbook.of(workbook, functions, LIMITS);
    this.inputs = markedInputs(workbook, (place) => this.book.isRead(place));
  }

  sheet(index: number): Sheet {
    return this.workbook.sheets[index] as Sheet;
  }

  /** The cell as the workbook has it. */
  original({ sheet, row, column }: CellPlace): Cell | undefined {
    return cellFinder(this.sheet(sheet))(row, column);
  }

  value({ sheet, row, column }: CellPlace): CellValue {
    return this.book.at(this.sheet(sheet), row, column);
  }

  get overlays(): Looks {
    return (this.looks ??= ruleLooks(this.book, this.workbook.sheets));
  }

  /** Cells that charts show, as they are now. */
  readonly look = lookWith((formula) => this.book.evaluate(formula));

  /** The inputs that differ from the workbook's. */
  get changed(): readonly Changed[] {
    return [...this.changes.values()];
  }

  /** The cells that could not be calculated here, with the reason: what they show is the value of the file. */
  kept(): readonly (CellPlace & { readonly reason: string })[] {
    return this.book.kept();
  }

  rule({ sheet, row, column }: CellPlace): Validation | undefined {
    return entryRuleOf(this.sheet(sheet), row, column);
  }

  choices(place: CellPlace): readonly CellValue[] | undefined {
    const rule = this.rule(place);
    return rule && choicesOf(rule, place, this.evaluate);
  }

  bounds(place: CellPlace): string | undefined {
    const rule = this.rule(place);
    return rule && rule.kind !== 'list' ? boundsText(rule) : undefined;
  }

  /** Puts in what was typed. Says what there is to say of it; what is kept out changes nothing. */
  enter(place: CellPlace, text: string): EntryAnswer | undefined {
    const before = this.value(place);
    const format = this.workbook.styles[this.original(place)?.style ?? 0]?.numberFormat ?? 'General';
    const entry = readEntry(text, format);
    if (entry === undefined)
      return { style: 'stop', text: 'A formula cannot be typed here: put in a number or words.' };
    this.put(place, entry);
    const rule = this.rule(place);
    const answer = rule && entryAnswer(rule, entry, place, this.evaluate);
    if (answer?.style === 'stop') this.put(place, before);
    if (answer || typeof entry !== 'string' || typeof before !== 'number' || !/^[-+\d.,\s]+$/.test(entry))
      return answer;
    return {
      style: 'information',
      text: `"${entry}" is no number here: write ${inOwnSign('0.5')} for a half.`,
    };
  }

  /** All inputs as they are in the workbook. */
  putBack(): void {
    for (const { was, ...place } of this.changed) this.put(place, was);
  }

  /** Cells by the name of their sheet, for the panel's tools. */
  readonly read = (range: Range): Promise<CellView[][]> => {
    const index = this.workbook.sheets.findIndex(({ name }) => isSameName(name, range.sheet));
    if (index < 0) return Promise.resolve([]);
    return Promise.resolve(
      Array.from({ length: range.rows }, (_, down) =>
        Array.from({ length: range.columns }, (__, across): CellView => {
          const place = { sheet: index, row: range.row + down, column: range.column + across };
          const formula = this.original(place)?.formula;
          return { value: this.value(place), formula: formula === undefined ? '' : `=${formula}` };
        }),
      ),
    );
  };

  private readonly evaluate = (formula: string, place: CellPlace) => this.book.evaluate(formula, place);

  private put(place: CellPlace, value: CellValue): void {
    const was = this.original(place)?.value ?? null;
    const key = `${place.sheet} ${place.row} ${place.column}`;
    if (same(was, value)) this.changes.delete(key);
    else this.changes.set(key, { sheet: place.sheet, row: place.row, column: place.column, was, is: value });
    this.looks = undefined;
    this.book.change([{ sheet: place.sheet, row: place.row, column: place.column, value }], LIMITS);
  }
}

const same = (a: CellValue, b: CellValue): boolean =>
  a instanceof CellError || b instanceof CellError ? false : Object.is(a, b);
