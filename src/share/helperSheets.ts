import { columnLetters } from '../cells/address';
import {
  putColumns,
  putParts,
  tablesIn,
  type DataTables,
  type NativeRows,
  type OneCell,
} from '../derive/native';
import type { CellDescription, SheetDescription } from '../package/description';
import type { Question } from './questions';
import { WorkingLines, type LineText, type WorkingHead, type WorkingLine } from './working';

const BARE = { symbol: '', equation: '', unit: '""', only: [] } as const;

/** The sheets that a native copy brings along: the rows of tables that it looks up, and its working line by line. */
export class HelperSheets {
  private readonly working: WorkingLines;
  private places: Map<string, { first: number; last: number }> | undefined;

  constructor(
    private readonly tables: DataTables,
    private readonly names: { readonly tables: string; readonly steps: string },
    private readonly state: NonNullable<SheetDescription['state']>,
  ) {
    this.working = new WorkingLines(names.steps);
  }

  /** Places the parts of a call and gives the text that names one of them. */
  placeParts(head: WorkingHead, parts: OneCell['parts']): (name: string) => string {
    const lineOf = (name: string): number => parts.findIndex((part) => part.name === name);
    const at = this.working.place(head, (own) =>
      parts.map(({ symbol, text }): WorkingLine => {
        const local = putParts(text, (name) => own(lineOf(name)));
        return { ...BARE, role: 'step', says: symbol, texts: [local] };
      }),
    );
    return (name) => at(lineOf(name));
  }

  /** What was placed for a formula that then came to nothing is taken back. */
  undone<T>(place: () => T): T {
    const before = this.working.count;
    try {
      return place();
    } catch (error) {
      this.working.keep(before);
      throw error;
    }
  }

  /** Places the lines of a call; gives the texts of its results. */
  placeRows(head: WorkingHead, { rows, results }: NativeRows): string[] {
    const lines = rows.filter(({ role }) => role !== 'unit');
    const lineOf = (name: string): number => lines.findIndex((line) => line.name === name);
    const units = new Map<string, string>();
    const textOf = (own: LineText, text: string): string =>
      putParts(text, (name) => units.get(name) ?? own(lineOf(name)));
    const at = this.working.place(head, (own) => {
      for (const { name, text, says, equation, unit, role } of rows)
        if (role === 'unit')
          units.set(name, this.working.placeUnit({ ...BARE, role, says, equation, unit, texts: [text] }));
      return lines.map(({ text, unit, role, says, symbol, equation, only }): WorkingLine => ({
        role,
        says,
        symbol,
        equation,
        texts: [textOf(own, text)],
        unit,
        only: only.map(lineOf),
      }));
    });
    return results.map((name) => at(lineOf(name)));
  }

  /** Places the results of a call that is part of a formula; gives the text of their range. */
  placeResults(head: WorkingHead, results: readonly (readonly string[])[]): string {
    const at = this.working.place(head, () =>
      results.map((row, i): WorkingLine => ({
        ...BARE,
        role: 'step',
        says: results.length === 1 ? 'Value' : `Value ${i + 1}`,
        texts: row,
      })),
    );
    const width = Math.max(...results.map((row) => row.length));
    return results.length === 1 && width === 1
      ? at(0)
      : at(0, 0, { line: results.length - 1, column: width - 1 });
  }

  /** Places the number of a row, which a cell in it tells; gives its text. */
  placeRow(sheet: string, row: number, cell: string): string {
    const says =
      'The rows that formulas of this sheet belong to: where one no longer stands in its row it says so.';
    const head = { sheet, cell: `row ${row + 1}`, what: 'Rows', says, group: `rows\n${sheet}` };
    const line = { ...BARE, role: 'step', says: 'Row', texts: [`ROW(${cell})`] } as const;
    return this.working.place(head, () => [line])(0);
  }

  /**
   * Places questions one a row; gives the text of the cell that says whether all are answered with yes, or what makes
   * them needless.
   */
  placeQuestions(head: WorkingHead, questions: readonly Question[], unless?: string): string {
    const last = questions.length;
    const all = (range: string): string =>
      unless === undefined ? `AND(${range})` : last === 0 ? `AND(${unless})` : `OR(${unless},AND(${range}))`;
    const at = this.working.place(head, (own) => [
      ...questions.map(({ symbol, text }): WorkingLine => ({
        ...BARE,
        role: 'question',
        says: `Is ${symbol} as it was?`,
        texts: [text],
      })),
      {
        ...BARE,
        role: 'result',
        says: 'All as it was',
        texts: [all(last === 0 ? '' : own(0, 0, { line: last - 1, column: 0 }))],
      },
    ]);
    return at(last);
  }

  /** Puts the places of tables and lines into a text: known only once all are collected. */
  withPlaces(text: string, sheet?: string): string {
    return this.withColumns(this.working.resolved(text, sheet), sheet);
  }

  describe(): SheetDescription[] {
    const working = this.working.describe(this.state, (text) => this.withColumns(text, this.names.steps));
    return [...(this.tables.tables.size > 0 ? [this.tablesSheet()] : []), ...(working ? [working] : [])];
  }

  private withColumns(text: string, sheet?: string): string {
    if (tablesIn(text).size === 0) return text;
    const places = this.layout();
    const prefix = sheet === this.names.tables ? '' : `${this.names.tables}!`;
    return putColumns(text, (id, column) => {
      const { first, last } = places.get(id) ?? { first: 1, last: 1 };
      const letter = columnLetters(column);
      return `${prefix}$${letter}$${first}:$${letter}$${last}`;
    });
  }

  /** Asked for only once all tables are collected. */
  private layout(): Map<string, { first: number; last: number }> {
    let row = 4;
    return (this.places ??= new Map(
      [...this.tables.tables].map(([id, { rows }]) => {
        const first = row + 2;
        const last = first + rows.length - 1;
        row = last + 2;
        return [id, { first, last }];
      }),
    ));
  }

  private tablesSheet(): SheetDescription {
    const cells: Record<string, CellDescription | string | number> = {
      A1: { value: 'Tables of this copy', style: 'share title' },
      A2: 'Only the rows that its formulas look up, in SI units. The sources stand beside the functions in Moldsheet.',
    };
    const places = this.layout();
    for (const [id, { title, heads, rows }] of this.tables.tables) {
      const { first } = places.get(id) ?? { first: 1 };
      cells[`A${first - 2}`] = { value: title, style: 'share head' };
      heads.forEach(
        (head, i) => (cells[`${columnLetters(i)}${first - 1}`] = { value: head, style: 'share small' }),
      );
      rows.forEach((line, down) => {
        line.forEach((value, i) => (cells[`${columnLetters(i)}${first + down}`] = value));
      });
    }
    return { name: this.names.tables, state: 'hidden', columns: { A: 26, 'B:H': 20 }, cells };
  }
}
