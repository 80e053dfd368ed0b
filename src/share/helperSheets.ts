import { cellAddress, columnLetters, quotedSheet } from '../cells/address';
import {
  ASKED,
  allOf,
  putColumns,
  putParts,
  tablesIn,
  type DataTables,
  type NativeRow,
  type NativeRows,
  type OneCell,
} from '../derive/native';
import type { CellDescription, SheetDescription } from '../package/description';
import type { CellChange } from '../package/changes';
import type { Question } from './questions';
import { QuestionSheet } from './questionSheet';
import { runsOf } from './runs';
import { SharedLines, type KnownLine, type PlacedLine } from './sharedLines';
import { goesAlong } from './slice';
import { WorkingLines, type LineText } from './working';
import type { WorkingHead, WorkingLine } from './workingLine';

/** No sheet has so many columns. */
const A_ROW = 20_000;
const STANDS = `ROW()+COLUMN()/${A_ROW}=`;

const BARE = { symbol: '', equation: '', unit: '""', only: [] } as const;

/** The sheets that a native copy brings along: the rows of tables that it looks up, and its working line by line. */
export class HelperSheets {
  private readonly working: WorkingLines;
  private readonly shared = new SharedLines();
  private readonly questions: QuestionSheet;
  private places: Map<string, { first: number; last: number }> | undefined;

  constructor(
    private readonly tables: DataTables,
    private readonly names: { readonly tables: string; readonly steps: string; readonly questions: string },
    private readonly state: NonNullable<SheetDescription['state']>,
  ) {
    this.working = new WorkingLines(names.steps);
    this.questions = new QuestionSheet(names.questions);
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
      this.shared.keep(before);
      throw error;
    }
  }

  /**
   * Places the lines of a call; gives the texts of its results. Lines that stand already, of the same function with the
   * same arguments, are read there.
   */
  placeRows(head: WorkingHead & { readonly subject: string }, { rows, results }: NativeRows): string[] {
    const { subject } = head;
    const identities = this.shared.identify(rows);
    const known = this.shared.of(subject);
    const sharedAs = ({ name }: NativeRow): KnownLine | undefined => known.get(identities.get(name) ?? -1);
    const all = rows.filter(({ role }) => role !== 'unit');
    const fresh = all.filter((row) => !sharedAs(row));
    // A line that counts in some cases alone stands below the questions which case it is.
    const lines = fresh.some(({ only }) => only.length > 0) ? all : fresh;
    const isFresh = new Set(lines.map(({ name }) => name));
    const lineOf = (name: string): number => lines.findIndex((line) => line.name === name);
    const placeOf = (name: string, own: LineText): PlacedLine => {
      const shared = isFresh.has(name) ? undefined : known.get(identities.get(name) ?? -1);
      return shared ?? { at: own, line: lineOf(name) };
    };
    const units = new Map<string, string>();
    const textOf = (own: LineText, { text, asks = [] }: NativeRow): string =>
      putParts(text, (name) => {
        if (name === ASKED) return allTrue(asks.map((one) => placeOf(one, own)));
        const { at, line } = placeOf(name, own);
        return units.get(name) ?? at(line);
      });
    for (const { name, text, says, equation, unit, role } of rows)
      if (role === 'unit')
        units.set(name, this.working.placeUnit({ ...BARE, role, says, equation, unit, texts: [text] }));
    const before = [
      ...new Set(all.flatMap((row) => (isFresh.has(row.name) ? [] : (sharedAs(row)?.where ?? [])))),
    ];
    const says =
      before.length === 0
        ? head.says
        : `${head.says} Its inputs and other lines stand at ${before.join(', ')}.`;
    const count = this.working.count;
    let placed: LineText | undefined;
    if (lines.length > 0)
      placed = this.working.place({ ...head, says }, (own) =>
        lines.map((row): WorkingLine => {
          const { unit, role, symbol, equation, only } = row;
          return {
            role,
            says: row.says,
            symbol,
            equation,
            texts: [textOf(own, row)],
            unit,
            only: only.map(lineOf),
          };
        }),
      );
    if (placed)
      for (const [line, { name }] of lines.entries()) {
        const identity = identities.get(name) ?? -1;
        if (!known.has(identity))
          this.shared.add(subject, identity, {
            at: placed,
            line,
            count,
            where: `${head.sheet}!${head.cell}`,
          });
      }
    return results.map((name) => {
      const { at, line } = placeOf(name, placed ?? NOWHERE);
      return at(line);
    });
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

  /**
   * The condition that a formula stands in the cell that it was written for, wherever rows and columns were put in, and
   * that all else holds. What reads the working, unlike what reads cells, says the same wherever it is put.
   */
  standsIn(sheet: string, row: number, column: number, asks: readonly string[] = []): string {
    const address = cellAddress(row, column);
    const own = `${quotedSheet(sheet)}!${address}`;
    const mark = `ROW(${own})+COLUMN(${own})/${A_ROW}`;
    const text = asks.length === 0 ? mark : `IF(${allOf(asks)},${mark},0)`;
    return `${STANDS}${this.questions.place(`Where stands ${address} of ${sheet}?`, text)}`;
  }

  /**
   * Whether what stands in a cell by this formula asks nowhere where it stands, though it would read other cells in
   * another place. One that fills an area has many places: it is an array, which nobody fills along.
   */
  mayGoAstray(formula: string, { formula: text = '', spill }: CellChange): boolean {
    return spill === undefined && goesAlong(formula) && !text.includes(STANDS);
  }

  /**
   * Places questions on what a cell rests on; gives the text of the cell that says whether all are answered with yes, or
   * what makes them needless.
   */
  placeQuestions(cell: string, questions: readonly Question[], unless?: string): string {
    return this.questions.placeAll(`Is all as it was that ${cell} rests on?`, questions, unless);
  }

  /** Puts the places of tables and lines into a text: known only once all are collected. */
  withPlaces(text: string, sheet?: string): string {
    return this.withColumns(this.working.resolved(text, sheet), sheet);
  }

  describe(): SheetDescription[] {
    const working = this.working.describe(this.state, (text) => this.withColumns(text, this.names.steps));
    const questions = this.questions.describe((text) => this.withPlaces(text, this.names.questions));
    return [
      ...(this.tables.tables.size > 0 ? [this.tablesSheet()] : []),
      ...(questions ? [questions] : []),
      ...(working ? [working] : []),
    ];
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

/** Of a call whose lines all stand elsewhere. */
const NOWHERE: LineText = () => {
  throw new Error('it has no lines of its own');
};

/** Whether all are true; lines that stand one under another as one range. */
function allTrue(places: readonly PlacedLine[]): string {
  const texts = [...new Set(places.map(({ at }) => at))].flatMap((at) =>
    runsOf(places.filter((place) => place.at === at).map(({ line }) => line)).map(({ from, to }) =>
      from === to ? at(from) : at(from, 0, { line: to, column: 0 }),
    ),
  );
  return `AND(${texts.join(',')})`;
}
