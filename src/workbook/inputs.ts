/** Which cells of a workbook are there to be changed by a person: the inputs, as its author marked them. */
import { areaContains, MAX_COLUMNS } from '../cells/address';
import type { CellPlace } from '../sheet/book';
import type { Cell, Sheet, Workbook } from '../package/model';

/** Known by what: by the workbook's own marks, or for want of any because formulas read them. */
export interface MarkedInputs {
  readonly marked: boolean;
  has(place: CellPlace): boolean;
  /** Sheet by sheet, row by row. */
  readonly places: readonly CellPlace[];
}

/**
 * Marked are the unlocked cells of a protected sheet, cells with a rule for their entries, and those that look like these:
 * filled in a color that no formula and no heading is filled in. Where a workbook marks nothing, its numbers that formulas
 * read are its inputs.
 */
export function markedInputs(workbook: Workbook, isRead: (place: CellPlace) => boolean): MarkedInputs {
  const marks = new Marks(workbook);
  const marked = placesOf(workbook, (sheet, cell) => marks.has(sheet, cell));
  const places =
    marked.length > 0
      ? marked
      : placesOf(workbook, (sheet, { row, column, value }) => {
          return typeof value === 'number' && isRead({ sheet: workbook.sheets.indexOf(sheet), row, column });
        });
  const keys = new Set(places.map(keyOf));
  return { marked: marked.length > 0, places, has: (place) => keys.has(keyOf(place)) };
}

const keyOf = ({ sheet, row, column }: CellPlace): string => `${sheet} ${row} ${column}`;

function placesOf(workbook: Workbook, isInput: (sheet: Sheet, cell: Cell) => boolean): CellPlace[] {
  return workbook.sheets.flatMap((sheet, index) => {
    if (sheet.state !== 'visible') return [];
    const filled = spilledInto(sheet);
    return sheet.cells.flatMap((cell) => {
      const { row, column, formula } = cell;
      if (formula !== undefined || filled(row, column) || isCovered(sheet, row, column)) return [];
      return isInput(sheet, cell) ? [{ sheet: index, row, column }] : [];
    });
  });
}

/** The cells that a formula elsewhere fills. */
function spilledInto({ cells }: Sheet): (row: number, column: number) => boolean {
  const areas = cells.flatMap(({ spill }) => (spill ? [spill] : []));
  return (row, column) => areas.some((area) => areaContains(area, row, column));
}

const isCovered = ({ merges }: Sheet, row: number, column: number): boolean =>
  merges.some((one) => areaContains(one, row, column) && (one.top !== row || one.left !== column));

class Marks {
  private readonly ruled: ReadonlyMap<Sheet, ReadonlySet<number>>;
  private readonly fills: ReadonlySet<string>;

  constructor(private readonly workbook: Workbook) {
    this.ruled = new Map(workbook.sheets.map((sheet) => [sheet, ruledCells(sheet)]));
    this.fills = this.inputFills();
  }

  has(sheet: Sheet, cell: Cell): boolean {
    if (sheet.isProtected) return this.workbook.styles[cell.style]?.locked === false;
    const fill = this.fillOf(cell);
    return this.isRuled(sheet, cell) || (fill !== undefined && this.fills.has(fill));
  }

  /** The colors that cells with rules for their entries are filled in, and nothing else. */
  private inputFills(): ReadonlySet<string> {
    const of = (isWanted: (sheet: Sheet, cell: Cell) => boolean): Set<string> =>
      new Set(
        this.workbook.sheets.flatMap((sheet) =>
          sheet.cells.flatMap((cell) => (isWanted(sheet, cell) ? (this.fillOf(cell) ?? []) : [])),
        ),
      );
    const others = of((_, { formula }) => formula !== undefined);
    return new Set([...of((sheet, cell) => this.isRuled(sheet, cell))].filter((one) => !others.has(one)));
  }

  private isRuled(sheet: Sheet, { row, column, formula }: Cell): boolean {
    return formula === undefined && (this.ruled.get(sheet)?.has(row * MAX_COLUMNS + column) ?? false);
  }

  private fillOf({ style }: Cell): string | undefined {
    return this.workbook.styles[style]?.fill;
  }
}

/** A rule over whole columns also covers headings: only what is no text, or chosen from a list, is an entry. */
function ruledCells({ validations, cells }: Sheet): ReadonlySet<number> {
  const rules = validations.filter(({ kind }) => kind !== 'none');
  return new Set(
    cells.flatMap(({ row, column, value }) => {
      const rule = rules.find(({ areas }) => areas.some((area) => areaContains(area, row, column)));
      const fits = rule && (rule.kind === 'list' || rule.kind === 'custom' || typeof value !== 'string');
      return fits ? [row * MAX_COLUMNS + column] : [];
    }),
  );
}
