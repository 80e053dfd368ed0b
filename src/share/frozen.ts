import { CellError, type CellValue } from '../cells/value';
import type { Area } from '../cells/address';
import { cellAddress, quotedSheet } from '../cells/address';
import { nativeNumber } from '../core/expr/native';
import type { Sheet, Workbook } from '../package/model';
import type { CellChange } from '../package/changes';
import { constantText, placeKey, type Place, type References, type Values } from '../workbook/references';
import type { HelperSheets } from './helperSheets';
import { readsOf, type Reads } from './reads';

/** Nothing that a person fills in looks like it. */
export const FROZEN_FILL = '#DDD9E6';

export const OTHER_INPUTS = 'made for other inputs: ask for a new copy';

/** Cells that a frozen formula may read one by one; of a larger range nobody could follow the questions. */
const MOST_WATCHED = 2000;
/** Every program takes so many arguments. */
const MOST_ARGUMENTS = 30;

/** A value that has no formula in the copy, and the cells that it fills. */
export interface FrozenFormula extends Place {
  readonly formula: string;
  readonly area: Area;
}

/**
 * Frozen values in a copy that lives: each asks whether what it was made from is still there, and so does all that rests
 * on it, so that no verdict is given of numbers that no longer belong together.
 */
export class FrozenWatch {
  /** For each place the cells of the working that say whether the frozen values it rests on still hold. */
  private readonly asked = new Map<string, readonly string[]>();
  /** Places of frozen values that are held for good: what they read cannot be told. */
  readonly unwatched: string[] = [];

  constructor(
    private readonly workbook: Workbook,
    private readonly values: Values,
    private readonly references: References,
    frozen: readonly FrozenFormula[],
    private readonly helpers: HelperSheets,
  ) {
    const own = new Set<string>();
    const sources: { sheet: Sheet; area: Area; holds: string }[] = [];
    for (const one of frozen) {
      const holds = this.watch(one);
      if (holds === undefined) continue;
      sources.push({ sheet: one.sheet, area: one.area, holds });
      for (const place of placesOf(one.sheet, one.area)) {
        own.add(place);
        this.asked.set(place, [holds]);
      }
    }
    if (sources.length > 0) this.follow(sources, own);
  }

  /** A formula that gives its result only while all frozen values that it rests on hold. */
  asking(change: CellChange): CellChange {
    const holds = this.asked.get(placeKey(change.sheet, change.row, change.column));
    if (!holds || holds.length === 0) return change;
    const text = change.formula ?? frozenText(change.value);
    return { ...change, formula: `IF(${allOf(holds)},${text},${constantText(OTHER_INPUTS)})` };
  }

  rests(sheet: string, row: number, column: number): boolean {
    return this.asked.has(placeKey(sheet, row, column));
  }

  private watch({ sheet, row, column, formula }: FrozenFormula): string | undefined {
    const { areas, opaque } = this.reads(formula, { sheet, row, column });
    const cells = new Map(
      areas.flatMap(({ sheet: other, area }) => {
        const size = (area.bottom - area.top + 1) * (area.right - area.left + 1);
        return size > MOST_WATCHED ? [] : placesIn(other, area).map((place) => [place.text, place] as const);
      }),
    );
    if (opaque || (cells.size === 0 && areas.length > 0)) {
      this.unwatched.push(`${sheet.name}!${cellAddress(row, column)}`);
      return undefined;
    }
    if (cells.size === 0) return undefined;
    return this.helpers.placeQuestions(
      {
        sheet: sheet.name,
        cell: cellAddress(row, column),
        what: `=${formula}`,
        says: 'A value that no worksheet formula gives: it holds while what it was made from is as it was.',
      },
      [...cells.values()].map(({ text, sheet: other, row: r, column: c }) => ({
        symbol: text,
        text: stillIs(text, this.values.at(other, r, c)),
      })),
    );
  }

  private follow(
    sources: readonly { sheet: Sheet; area: Area; holds: string }[],
    own: ReadonlySet<string>,
  ): void {
    const formulas = this.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }) => {
        if (formula === undefined || own.has(placeKey(sheet.name, row, column))) return [];
        const spill = this.values.spill(sheet, row, column);
        const area = spill ?? { top: row, left: column, bottom: row, right: column };
        const reads = this.reads(formula, { sheet, row, column });
        return [{ sheet, area, reads, holds: new Set<string>() }];
      }),
    );
    let open = sources.map(({ sheet, area, holds }) => ({
      sheet,
      area,
      holds: [holds] as readonly string[],
    }));
    while (open.length > 0) {
      const next: typeof open = [];
      for (const formula of formulas) {
        const before = formula.holds.size;
        for (const { sheet, area, holds } of open) {
          const meets = formula.reads.areas.some((read) => read.sheet === sheet && overlap(read.area, area));
          if (meets || formula.reads.opaque) for (const one of holds) formula.holds.add(one);
        }
        if (formula.holds.size > before) next.push({ ...formula, holds: [...formula.holds] });
      }
      open = next;
    }
    for (const { sheet, area, holds } of formulas) {
      if (holds.size === 0) continue;
      for (const place of placesOf(sheet, area)) this.asked.set(place, [...holds]);
    }
  }

  private reads(formula: string, place: Place): Reads {
    return readsOf(formula, place, this.references);
  }
}

const overlap = (a: Area, b: Area): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;

function placesIn(
  sheet: Sheet,
  { top, left, bottom, right }: Area,
): { sheet: Sheet; row: number; column: number; text: string }[] {
  return Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across) => {
      const [row, column] = [top + down, left + across];
      return { sheet, row, column, text: `${quotedSheet(sheet.name)}!${cellAddress(row, column)}` };
    }),
  ).flat();
}

const placesOf = (sheet: Sheet, area: Area): string[] =>
  placesIn(sheet, area).map(({ row, column }) => placeKey(sheet.name, row, column));

/** Longer texts are compared by their beginning. */
const COMPARED = 200;

/** Whether a cell holds what it held when the copy was made; numbers that are calculated differ in their last digits. */
function stillIs(cell: string, value: CellValue): string {
  if (value instanceof CellError) return `ISERROR(${cell})`;
  if (value === null) return `ISBLANK(${cell})`;
  if (typeof value === 'number') {
    const same = value === 0 ? `${cell}=0` : `ABS(${cell}-${nativeNumber(value)})<=1E-9*ABS(${cell})`;
    return `IF(AND(ISNUMBER(${cell}),NOT(ISLOGICAL(${cell}))),${same},FALSE)`;
  }
  if (typeof value === 'boolean') return `IF(ISLOGICAL(${cell}),${cell}=${constantText(value)},FALSE)`;
  const same =
    value.length > COMPARED
      ? `EXACT(LEFT(${cell},${COMPARED}),${constantText(value.slice(0, COMPARED))})`
      : `EXACT(${cell},${constantText(value)})`;
  return `IF(ISTEXT(${cell}),${same},FALSE)`;
}

function allOf(holds: readonly string[]): string {
  if (holds.length === 1) return holds[0] ?? '';
  if (holds.length <= MOST_ARGUMENTS) return `AND(${holds.join(',')})`;
  const groups = Array.from({ length: Math.ceil(holds.length / MOST_ARGUMENTS) }, (_, i) =>
    allOf(holds.slice(i * MOST_ARGUMENTS, (i + 1) * MOST_ARGUMENTS)),
  );
  return allOf(groups);
}

const frozenText = (value: CellValue): string =>
  value instanceof CellError
    ? value.code === '#N/A'
      ? 'NA()'
      : 'VALUE("refused when shared")'
    : value === null
      ? '""'
      : typeof value === 'string' && value.length > COMPARED
        ? longText(value)
        : constantText(value);

/** Texts inside a formula have at most 255 letters. */
const longText = (value: string): string =>
  (value.match(new RegExp(`[\\s\\S]{1,${COMPARED}}`, 'g')) ?? [])
    .map((piece) => constantText(piece))
    .join('&');
