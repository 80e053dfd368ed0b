import { putColumns, putParts, tablesIn, type DataTables, type OneCell } from '../derive/native';
import type { CellDescription, SheetDescription } from '../package/description';
import { columnLetters } from '../cells/address';

/**
 * The two hidden sheets of a native copy: the rows of tables that it looks up, and the working of calls that are too
 * long for one cell, each as a block of one value a row.
 */
export class HelperSheets {
  private readonly blocks: Block[] = [];
  private nextRow = 4;
  private places: Map<string, { first: number; last: number }> | undefined;

  constructor(
    private readonly tables: DataTables,
    private readonly names: { readonly tables: string; readonly steps: string },
  ) {}

  /** Places the parts of a call and gives the text that names one of them. */
  placeParts(where: string, what: string, parts: OneCell['parts']): (name: string) => string {
    const first = this.nextRow + 1;
    const at = new Map(parts.map(({ name }, i) => [name, `${this.names.steps}!$C$${first + i}`]));
    const local = new Map(parts.map(({ name }, i) => [name, `$C$${first + i}`]));
    this.blocks.push({
      row: this.nextRow,
      where,
      what,
      lines: parts.map(({ symbol, text }) => ({
        symbol,
        text: putParts(text, (name) => local.get(name) ?? ''),
      })),
    });
    this.nextRow = first + parts.length + 1;
    return (name) => at.get(name) ?? '';
  }

  /** Places the results of a call that is part of a formula; gives the text of their range. */
  placeResults(where: string, what: string, results: readonly (readonly string[])[]): string {
    const first = this.nextRow + 1;
    this.blocks.push({
      row: this.nextRow,
      where,
      what,
      lines: results.map((row, i) => ({ symbol: `result ${i + 1}`, text: row[0] ?? '', more: row.slice(1) })),
    });
    this.nextRow = first + results.length + 1;
    const width = Math.max(...results.map((row) => row.length));
    const from = `$C$${first}`;
    const to = `$${columnLetters(1 + width)}$${first + results.length - 1}`;
    return `${this.names.steps}!${from === to ? from : `${from}:${to}`}`;
  }

  /** Places questions one a row; gives the text of the cell that says whether all are answered with yes. */
  placeQuestions(
    where: string,
    what: string,
    questions: readonly { readonly symbol: string; readonly text: string }[],
  ): string {
    const first = this.nextRow + 1;
    const last = first + questions.length;
    this.blocks.push({
      row: this.nextRow,
      where,
      what,
      lines: [...questions, { symbol: 'all as it was', text: `AND($C$${first}:$C$${last - 1})` }],
    });
    this.nextRow = last + 2;
    return `${this.names.steps}!$C$${last}`;
  }

  /** Puts the places of tables into a text: known only once all are collected. */
  withColumns(text: string, sheet?: string): string {
    if (tablesIn(text).size === 0) return text;
    const places = this.layout();
    const prefix = sheet === this.names.tables ? '' : `${this.names.tables}!`;
    return putColumns(text, (id, column) => {
      const { first, last } = places.get(id) ?? { first: 1, last: 1 };
      const letter = columnLetters(column);
      return `${prefix}$${letter}$${first}:$${letter}$${last}`;
    });
  }

  describe(): SheetDescription[] {
    const sheets: SheetDescription[] = [];
    if (this.tables.tables.size > 0) sheets.push(this.tablesSheet());
    if (this.blocks.length > 0) sheets.push(this.stepsSheet());
    return sheets;
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

  private stepsSheet(): SheetDescription {
    const cells: Record<string, CellDescription | string> = {
      A1: { value: 'Working of this copy', style: 'share title' },
      A2: 'Calls that are too long for one cell, in SI units, one value a row.',
    };
    for (const { row, where, what, lines } of this.blocks) {
      cells[`A${row}`] = { value: where, style: 'share head' };
      cells[`B${row}`] = { value: what, style: 'share head' };
      lines.forEach(({ symbol, text, more = [] }, i) => {
        cells[`B${row + 1 + i}`] = symbol;
        [text, ...more].forEach((formula, right) => {
          cells[`${columnLetters(2 + right)}${row + 1 + i}`] = { formula: this.withColumns(formula) };
        });
      });
    }
    return { name: this.names.steps, state: 'hidden', columns: { A: 22, B: 28, 'C:H': 18 }, cells };
  }
}

interface Block {
  readonly row: number;
  readonly where: string;
  readonly what: string;
  readonly lines: readonly {
    readonly symbol: string;
    readonly text: string;
    readonly more?: readonly string[];
  }[];
}
