import { columnLetters } from '../cells/address';
import type { SheetDescription } from '../package/description';
import { quotedSheet } from '../cells/address';
import {
  FIRST_ROW,
  HEAD_ROWS,
  VALUES,
  type Block,
  type Working,
  type WorkingHead,
  type WorkingLine,
} from './workingLine';
import { describeWorking } from './workingSheet';

/** More columns side by side are followed by nobody. */
export const MOST_COLUMNS = 50;

/** Gives the text of a line, or of a range of lines, that a text is to read. */
export type LineText = (line: number, column?: number, to?: { line: number; column: number }) => string;

const MARK = { open: '\uE004', close: '\uE005' } as const;
const MARKS = new RegExp(`${MARK.open}([^${MARK.close}]*)${MARK.close}`, 'g');
/** In place of a number where the line is one of the units. */
const UNITS = -1;

/** Whether a text reads a line of the working. */
export const readsLines = (text: string): boolean => text.includes(MARK.open);

const markOf = (...places: readonly number[]): string => MARK.open + places.join('\n') + MARK.close;

/**
 * The working of a copy, one value a line. Where a line stands is known only once all are there: until then texts name
 * lines by marks.
 */
export class WorkingLines {
  private readonly placed: Working[] = [];
  private readonly units = new Map<string, WorkingLine>();
  private known: { blocks: Block[]; at: Map<number, { row: number; column: number }> } | undefined;

  constructor(private readonly name: string) {}

  /** Places lines, which may name one another. */
  place(head: WorkingHead, lines: (at: LineText) => readonly WorkingLine[]): LineText {
    const id = this.placed.length;
    const at: LineText = (line, column = 0, to) =>
      to ? markOf(id, line, column, to.line, to.column) : markOf(id, line, column);
    this.placed.push({ ...head, lines: lines(at) });
    this.known = undefined;
    return at;
  }

  get count(): number {
    return this.placed.length;
  }

  /** Keeps the first so many of all that was placed. */
  keep(count: number): void {
    this.placed.length = count;
    this.known = undefined;
  }

  /** A line that many calls have in common: what one unit is. */
  placeUnit(line: WorkingLine): string {
    const [text = ''] = line.texts;
    if (!this.units.has(text)) this.units.set(text, line);
    this.known = undefined;
    return markOf(UNITS, [...this.units.keys()].indexOf(text), 0);
  }

  /** A text as it stands on a sheet, once all is placed. */
  resolved(text: string, sheet?: string): string {
    const isOwn = sheet === this.name;
    return text.replace(MARKS, (_, inside: string) => {
      const [id = 0, ...places] = inside.split('\n').map(Number);
      const { row, column } = this.placeOf(id);
      const cell = (line: number, across: number): string => {
        const letters = columnLetters(VALUES + column + across);
        return isOwn ? `${letters}${row + HEAD_ROWS + line}` : `$${letters}$${row + HEAD_ROWS + line}`;
      };
      const [line = 0, across = 0, toLine, toAcross] = places;
      const range =
        toLine === undefined || toAcross === undefined
          ? cell(line, across)
          : `${cell(line, across)}:${cell(toLine, toAcross)}`;
      return isOwn ? range : `${quotedSheet(this.name)}!${range}`;
    });
  }

  /** The sheet; undefined where nothing is placed. */
  describe(
    state: NonNullable<SheetDescription['state']>,
    text: (own: string) => string,
  ): SheetDescription | undefined {
    if (this.placed.length === 0) return undefined;
    const units = [...this.units.values()];
    const head = {
      sheet: '',
      cell: '',
      what: 'Units',
      says: 'What a plain number is, as the cell of the units has it.',
    };
    const blocks = this.layout().blocks;
    return describeWorking(
      this.name,
      state,
      units.length === 0 ? blocks : [{ row: FIRST_ROW, columns: [{ ...head, lines: units }] }, ...blocks],
      (own) => this.resolved(text(own), this.name),
    );
  }

  private placeOf(id: number): { row: number; column: number } {
    if (id === UNITS) return { row: FIRST_ROW, column: 0 };
    const found = this.layout().at.get(id);
    if (!found) throw new Error(`nothing is placed as ${id}`);
    return found;
  }

  private layout(): NonNullable<typeof this.known> {
    if (this.known) return this.known;
    let row = FIRST_ROW + (this.units.size > 0 ? HEAD_ROWS + this.units.size + 1 : 0);
    const blocks: { row: number; columns: Working[] }[] = [];
    const at = new Map<number, { row: number; column: number }>();
    const open = new Map<string, (typeof blocks)[number]>();
    this.placed.forEach((working, id) => {
      const key = `${working.group ?? ''}\n${likeness(working)}`;
      const present = working.group === undefined ? undefined : open.get(key);
      if (present && present.columns.length < MOST_COLUMNS) {
        at.set(id, { row: present.row, column: present.columns.push(working) - 1 });
        return;
      }
      const block = { row, columns: [working] };
      row += HEAD_ROWS + working.lines.length + 1;
      blocks.push(block);
      open.set(key, block);
      at.set(id, { row: block.row, column: 0 });
    });
    return (this.known = { blocks, at });
  }
}

/** Workings of which all lines say the same may stand side by side. */
const likeness = ({ lines }: Working): string =>
  lines
    .map(({ role, says, symbol, equation, unit, only }) =>
      [role, says, symbol, role === 'input' ? '' : equation, unit, only.join(' ')].join('\t'),
    )
    .join('\n');
