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
const EDGES: Readonly<Record<string, Side>> = {
  EdgeTop: 'top',
  EdgeRight: 'right',
  EdgeBottom: 'bottom',
  EdgeLeft: 'left',
};

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
    this.borders = { getItem: (edge) => new StandInBorder(range, oneOf(EDGES, edge)) };
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

class StandInBorder {
  constructor(
    private readonly range: StandInRange,
    private readonly side: Side,
  ) {}

  private set(change: { line?: LineStyle; color?: string }): void {
    this.range.dress((before) => {
      const borders: Borders = {
        ...before.borders,
        [this.side]: { line: 'thin', ...before.borders?.[this.side], ...change },
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
