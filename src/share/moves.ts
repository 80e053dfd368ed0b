import { areaAddress, MAX_COLUMNS, MAX_ROWS, type Area } from '../cells/address';
import type { Placed } from '../package/structure/mapping';
import { rewriteFormula } from '../package/structure/formula';

export const EVERY_CELL: Area = { top: 0, left: 0, bottom: MAX_ROWS - 1, right: MAX_COLUMNS - 1 };

/** Where the cells of a workbook went while another program had it. */
export class Moves {
  private readonly areas = new Map<string, Placed | undefined>();
  private readonly sheets = new Map<string, string>();

  /** `names`: the sheets that there are now. What nobody tells of has stayed where it was. */
  constructor(private readonly names: readonly string[]) {}

  /** Undefined for what was deleted. */
  add(from: Placed, to: Placed | undefined): void {
    this.areas.set(keyOf(from), to);
    if (to) this.sheets.set(from.sheet.toLowerCase(), to.sheet);
  }

  /** The present name of a sheet; undefined where it is gone. */
  sheet(name: string): string | undefined {
    return (
      this.sheets.get(name.toLowerCase()) ??
      this.names.find((one) => one.toLowerCase() === name.toLowerCase())
    );
  }

  area(sheet: string, area: Area): Placed | undefined {
    const key = keyOf({ ...area, sheet });
    if (this.areas.has(key)) return this.areas.get(key);
    const name = this.sheet(sheet);
    return name === undefined ? undefined : { ...area, sheet: name };
  }

  cell(sheet: string, row: number, column: number): Placed | undefined {
    return this.area(sheet, { top: row, bottom: row, left: column, right: column });
  }

  /** A formula of a sheet with its references where they are now. */
  formula(text: string, sheet: string): string {
    return rewriteFormula(text, {
      from: sheet,
      to: this.sheet(sheet) ?? sheet,
      area: (where, area) => this.area(where, area),
      span: (first, last) => {
        const [from, to] = [this.sheet(first), this.sheet(last)];
        return from === undefined || to === undefined ? undefined : [from, to];
      },
    });
  }
}

const keyOf = ({ sheet, ...area }: Placed): string => `${sheet.toLowerCase()}\n${areaAddress(area)}`;
