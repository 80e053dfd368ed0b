import { areaAddress, cellAddress, columnLetters, parseArea } from '../../../src/cells/address';
import { CellError, type CellValue } from '../../../src/cells/value';
import type {
  CellDescription,
  ConditionDescription,
  SheetDescription,
  StyleDescription,
  ValidationDescription,
} from '../../../src/package/description';
import type { Cell, Sheet } from '../../../src/package/model';
import { StandInPages } from './pages';
import { EMPTY_SHEET } from '../../support/emptySheet';
import { StandInCharts } from './charts';
import { StandInRange } from './range';
import { checkFormula, isTypedCall, Refused, typedText } from './typed';
import type { StandInWorkbook } from './workbook';

export interface Content {
  readonly formula?: string;
  readonly value: CellValue;
  /** Filled by the formula of the cell at this place. */
  readonly spilledFrom?: string;
}

export const place = (row: number, column: number): string => `${row} ${column}`;
export const placeOf = (text: string): [number, number] => text.split(' ').map(Number) as [number, number];

/** What the `…OrNullObject` methods give where there is nothing. */
export const NOTHING: Record<string, unknown> = {};

/** Excel keeps whole pixels of 1/96 inch, and its file counts them in digits of 7. */
const charactersOf = (points: number): number => Math.round((points * 96) / 72) / 7;

export class StandInSheet {
  readonly protection: StandInProtection;
  cells = new Map<string, Content>();
  looks = new Map<string, StyleDescription>();
  validations = new Map<string, ValidationDescription>();
  merges = new Set<string>();
  conditions: ConditionDescription[] = [];
  widths = new Map<number, number>();
  readonly heights = new Map<number, number>();
  showGridlines = true;
  tabColor = '';
  readonly pageLayout: StandInPages;
  frozen = { rows: 0, columns: 0 };
  readonly freezePanes = {
    freezeRows: (rows: number) => (this.frozen = { rows, columns: 0 }),
    freezeAt: (area: string) => {
      const kept = parseArea(area);
      if (kept?.top !== 0 || kept.left !== 0)
        throw new Refused('InvalidArgument', `${area} does not begin at A1.`);
      this.frozen = { rows: kept.bottom + 1, columns: kept.right + 1 };
    },
  };
  readonly charts = new StandInCharts();
  readonly visibility = 'Visible';

  constructor(
    readonly book: StandInWorkbook,
    public name: string,
    readonly id: string,
  ) {
    this.protection = new StandInProtection(book);
    this.pageLayout = new StandInPages(book);
  }

  put(row: number, column: number, content: Content): void {
    this.cells.set(place(row, column), content);
  }

  /** Writes as Excel does with what is typed. */
  type(row: number, column: number, input: unknown): void {
    const at = place(row, column);
    if (this.protection.protected && this.looks.get(at)?.locked !== false)
      throw new Refused('AccessDenied', 'The sheet is protected.');
    this.book.isStale = true;
    const isText = this.looks.get(at)?.numberFormat === '@';
    if (input === '' || input === null) this.cells.delete(at);
    else if (typeof input !== 'string') this.put(row, column, { value: input as CellValue });
    else if (isText) this.put(row, column, { value: input.replace(/^'/, '') });
    else if (input.startsWith('=')) {
      checkFormula(input.slice(1));
      this.put(row, column, { formula: input.slice(1), value: null });
    } else if (input.startsWith("'")) this.put(row, column, { value: input.slice(1) });
    else {
      const { value, format } = typedText(input);
      if (format !== undefined) this.looks.set(at, { ...this.looks.get(at), numberFormat: format });
      this.put(row, column, { value });
    }
  }

  forgetSpills(): void {
    for (const [key, { spilledFrom }] of this.cells) if (spilledFrom !== undefined) this.cells.delete(key);
  }

  /** Excel binds a function when its formula is entered: what came in without the add-in stays `#NAME?` until then. */
  isLost(row: number, column: number): boolean {
    const content = this.cells.get(place(row, column));
    const { formula = '', value } = content ?? {};
    const isNamed = value instanceof CellError && value.code === '#NAME?';
    return isNamed && (isTypedCall(formula) || formula.startsWith('_xldudf_'));
  }

  activate(): void {
    this.book.active = this;
    this.book.selection = { row: 0, column: 0, rows: 1, columns: 1 };
  }

  getRangeByIndexes(row: number, column: number, rows: number, columns: number): StandInRange {
    return new StandInRange(this, row, column, rows, columns);
  }

  getUsedRangeOrNullObject(): StandInRange | typeof NOTHING {
    const places = [...this.cells.keys()].map(placeOf);
    if (places.length === 0) return NOTHING;
    const rows = places.map(([row]) => row);
    const columns = places.map(([, column]) => column);
    const [top, left] = [Math.min(...rows), Math.min(...columns)];
    return this.getRangeByIndexes(top, left, Math.max(...rows) - top + 1, Math.max(...columns) - left + 1);
  }

  /** The sheet for a file; styles go under the name of their cell. */
  describe(): { sheet: SheetDescription; styles: Record<string, StyleDescription> } {
    const cells: Record<string, CellDescription> = {};
    const styles: Record<string, StyleDescription> = {};
    for (const key of new Set([...this.cells.keys(), ...this.looks.keys()])) {
      const address = cellAddress(...placeOf(key));
      const look = this.looks.get(key);
      const style = `${this.id}${address}`;
      if (look) styles[style] = look;
      cells[address] = { ...this.describeContent(key), ...(look && { style }) };
    }
    const sheet = {
      name: this.name,
      cells,
      gridlines: this.showGridlines,
      ...(this.tabColor !== '' && { tabColor: this.tabColor }),
      ...(this.frozen.rows > 0 && { freeze: cellAddress(this.frozen.rows, this.frozen.columns) }),
      ...(this.pageLayout.isSet && { print: this.pageLayout.describe() }),
      columns: Object.fromEntries(
        [...this.widths].map(([column, points]) => [columnLetters(column), charactersOf(points)]),
      ),
      merges: [...this.merges],
      conditions: this.conditions,
      rows: Object.fromEntries([...this.heights].map(([row, points]) => [row + 1, points])),
      validations: [...this.validations.values()],
    };
    return { sheet, styles };
  }

  private describeContent(key: string): CellDescription {
    const content = this.cells.get(key);
    if (!content) return {};
    const [row, column] = placeOf(key);
    const filled = [...this.cells].flatMap(([other, one]) =>
      content.spilledFrom === undefined && one.spilledFrom === key ? [placeOf(other)] : [],
    );
    const area = {
      top: row,
      left: column,
      bottom: Math.max(row, ...filled.map(([r]) => r)),
      right: Math.max(column, ...filled.map(([, c]) => c)),
    };
    return {
      value: content.value,
      ...(content.formula !== undefined && { formula: content.formula }),
      ...(filled.length > 0 && { fills: areaAddress(area) }),
    };
  }

  model(): Sheet {
    const cells = [...this.cells].map(([key, { formula, value }]): Cell => {
      const [row, column] = placeOf(key);
      return { row, column, value, style: 0, ...(formula !== undefined && { formula }) };
    });
    return {
      ...EMPTY_SHEET,
      name: this.name,
      cells: cells.sort((a, b) => a.row - b.row || a.column - b.column),
    };
  }
}

class StandInProtection {
  protected = false;
  /** A password keeps an add-in from taking the protection away. */
  password = '';

  constructor(private readonly book: StandInWorkbook) {}

  unprotect(): void {
    if (this.password !== '') throw new Refused('AccessDenied', 'The password is not right.');
    this.book.cannotUndo();
    this.protected = false;
  }
}
