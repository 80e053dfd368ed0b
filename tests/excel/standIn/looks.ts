import type { StyleDescription } from '../../../src/package/description';
import type { Borders, Horizontal, LineStyle, Side } from '../../../src/package/model';
import type { StandInRange } from './range';
import { Refused } from './typed';

const HORIZONTAL: Readonly<Record<string, Horizontal>> = {
  General: 'general',
  Left: 'left',
  Center: 'center',
  Right: 'right',
};
const VERTICAL = { Top: 'top', Center: 'center', Bottom: 'bottom' } as const;
const oneOf = <T>(known: Readonly<Record<string, T>>, given: string): T => {
  const found = known[given];
  if (found === undefined) throw new Refused('InvalidArgument', `${given} is not known here.`);
  return found;
};

const colorOf = (color: string): string => {
  if (!/^#[\da-f]{6}$/i.test(color)) throw new Refused('InvalidArgument', `${color} is no color.`);
  return color;
};

/** The looks of a range's cells, written as Excel's `format` object takes them. */
export class StandInFormat {
  readonly font: StandInFont;
  readonly fill: StandInFill;
  readonly borders: { getItem: (edge: string) => StandInBorder };
  readonly protection: StandInLock;

  constructor(private readonly range: StandInRange) {
    this.font = new StandInFont(range);
    this.fill = new StandInFill(range);
    this.protection = new StandInLock(range);
    this.borders = { getItem: (edge) => new StandInBorder(range, edge) };
  }

  set columnWidth(points: number) {
    this.range.checkUnlocked();
    for (let at = 0; at < this.range.columnCount; at++)
      this.range.worksheet.widths.set(this.range.columnIndex + at, points);
  }

  set shrinkToFit(shrink: boolean) {
    this.range.dress({ shrink });
  }

  get rowHeight(): number {
    return this.range.worksheet.heights.get(this.range.rowIndex) ?? 15;
  }

  get columnWidth(): number {
    return this.range.worksheet.widths.get(this.range.columnIndex) ?? 48;
  }

  set rowHeight(points: number) {
    this.range.checkUnlocked();
    for (let at = 0; at < this.range.rowCount; at++)
      this.range.worksheet.heights.set(this.range.rowIndex + at, points);
  }

  set horizontalAlignment(word: string) {
    this.range.dress({ horizontal: oneOf(HORIZONTAL, word) });
  }

  set verticalAlignment(word: string) {
    this.range.dress({ vertical: oneOf(VERTICAL, word) });
  }

  set wrapText(wrap: boolean) {
    this.range.dress({ wrap });
  }

  set indentLevel(indent: number) {
    this.range.dress({ indent });
  }

  autofitColumns(): void {
    // Widths of what is shown are not worked out here.
  }
}

class StandInFont {
  constructor(private readonly range: StandInRange) {}

  private set(change: NonNullable<StyleDescription['font']>): void {
    this.range.dress((before) => ({ font: { ...before.font, ...change } }));
  }

  set bold(bold: boolean) {
    this.set({ bold });
  }

  set italic(italic: boolean) {
    this.set({ italic });
  }

  set size(size: number) {
    this.set({ size });
  }

  set name(name: string) {
    this.set({ name });
  }

  set underline(word: string) {
    this.set({ underline: oneOf({ None: 'none', Single: 'single', Double: 'double' } as const, word) });
  }

  set color(color: string) {
    this.set({ color: colorOf(color) });
  }
}

class StandInFill {
  constructor(private readonly range: StandInRange) {}

  set color(fill: string) {
    this.range.dress({ fill: colorOf(fill) });
  }
}

class StandInLock {
  constructor(private readonly range: StandInRange) {}

  set locked(locked: boolean) {
    this.range.dress({ locked });
  }
}

/** A line around a range, or between its cells, where it is drawn on both that it lies between. */
class StandInBorder {
  private readonly lines: readonly (readonly [StandInRange, Side])[];

  constructor(range: StandInRange, edge: string) {
    const { rowCount: rows, columnCount: columns } = range;
    const part = (row: number, column: number, down: number, across: number): StandInRange => {
      if (down === 0 || across === 0) throw new Refused('InvalidArgument', `The range has no line ${edge}.`);
      return range.worksheet.getRangeByIndexes(
        range.rowIndex + row,
        range.columnIndex + column,
        down,
        across,
      );
    };
    const edges: Readonly<Record<string, () => readonly (readonly [StandInRange, Side])[]>> = {
      EdgeTop: () => [[part(0, 0, 1, columns), 'top']],
      EdgeRight: () => [[part(0, columns - 1, rows, 1), 'right']],
      EdgeBottom: () => [[part(rows - 1, 0, 1, columns), 'bottom']],
      EdgeLeft: () => [[part(0, 0, rows, 1), 'left']],
      InsideHorizontal: () => [
        [part(0, 0, rows - 1, columns), 'bottom'],
        [part(1, 0, rows - 1, columns), 'top'],
      ],
      InsideVertical: () => [
        [part(0, 0, rows, columns - 1), 'right'],
        [part(0, 1, rows, columns - 1), 'left'],
      ],
    };
    this.lines = oneOf(edges, edge)();
  }

  private set(change: { line?: LineStyle; color?: string }): void {
    for (const [range, side] of this.lines)
      range.dress((before) => {
        const borders: Borders = {
          ...before.borders,
          [side]: { line: 'thin', ...before.borders?.[side], ...change },
        };
        return { borders };
      });
  }

  set style(style: string) {
    this.set({
      line: oneOf({ Continuous: 'thin', Double: 'double', Dash: 'dashed', Dot: 'dotted' } as const, style),
    });
  }

  set weight(weight: string) {
    this.set({
      line: oneOf({ Hairline: 'hair', Thin: 'thin', Medium: 'medium', Thick: 'thick' } as const, weight),
    });
  }

  set color(color: string) {
    this.set({ color: colorOf(color) });
  }
}
