import { quotedSheet } from '../cells/address';
import type { CellDescription, SheetDescription } from '../package/description';
import type { Question } from './questions';
import { runsOf } from './runs';

/** Functions take 255 arguments at most. */
const MOST_ARGUMENTS = 200;
const FIRST_ROW = 4;

interface Line {
  readonly says: string;
  readonly text: string;
}

/**
 * What a copy asks before it answers, each question once: whether cells are as they were, in which row a cell stands.
 * Nobody reads them to follow a calculation: they stand on a hidden sheet of their own.
 */
export class QuestionSheet {
  private readonly lines: Line[] = [];
  private readonly rows = new Map<string, number>();

  constructor(private readonly name: string) {}

  /** Places a question; gives the text of the cell that answers it. */
  place(says: string, text: string): string {
    return `${quotedSheet(this.name)}!$B$${this.rowOf(says, text)}`;
  }

  /** The same of several, which must all be answered with yes, or of what makes them needless. */
  placeAll(says: string, questions: readonly Question[], unless?: string): string {
    const rows = questions.map(({ symbol, text }) => this.rowOf(`Is ${symbol} as it was?`, text));
    const all = rows.length === 0 ? [] : [allOfRows(rows)];
    const either = [...(unless === undefined ? [] : [unless]), ...all];
    return this.place(says, either.length > 1 ? `OR(${either.join(',')})` : `AND(${either.join('')})`);
  }

  private rowOf(says: string, text: string): number {
    const row = this.rows.get(text) ?? FIRST_ROW + this.lines.push({ says, text }) - 1;
    this.rows.set(text, row);
    return row;
  }

  /** The sheet; undefined where nothing is asked. */
  describe(text: (own: string) => string): SheetDescription | undefined {
    if (this.lines.length === 0) return undefined;
    const cells: Record<string, CellDescription> = {
      A1: { value: 'What this copy asks before it answers', style: 'share title' },
      A2: {
        value:
          'A value that rests on a cell which is no longer as it was says so, instead of a number that does not belong to it.',
        style: 'share small',
      },
    };
    this.lines.forEach((line, i) => {
      cells[`A${FIRST_ROW + i}`] = { value: line.says };
      cells[`B${FIRST_ROW + i}`] = { formula: text(line.text) };
    });
    return { name: this.name, state: 'hidden', columns: { A: 70, B: 12 }, cells };
  }
}

/** Whether all of these rows say yes; those one under another as one range. */
function allOfRows(rows: readonly number[]): string {
  const ranges = runsOf(rows).map(({ from, to }) => (from === to ? `$B$${from}` : `$B$${from}:$B$${to}`));
  const pieces = Array.from(
    { length: Math.ceil(ranges.length / MOST_ARGUMENTS) },
    (_, i) => `AND(${ranges.slice(i * MOST_ARGUMENTS, (i + 1) * MOST_ARGUMENTS).join(',')})`,
  );
  return pieces.length === 1 ? (pieces[0] ?? '') : `AND(${pieces.join(',')})`;
}
