import { CellError, type CellValue } from '../../../src/cells/value';
import { worksheetFunctions } from '../../../src/call/functions';
import { recalculate } from '../../../src/workbook/recalculate';
import type { Cell, Sheet, Workbook } from '../../../src/package/model';
import { areaAddress, cellAddress, parseArea } from '../../../src/cells/address';
import type { CellDescription } from '../../../src/package/description';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../../src/package';
import type { Reply, Step } from './install';

interface Content {
  readonly formula?: string;
  value: CellValue;
  /** Filled by the formula of the cell at this place. */
  readonly spilledFrom?: string;
}

class Refused extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

const place = (row: number, column: number): string => `${row} ${column}`;
const placeOf = (text: string): [number, number] => text.split(' ').map(Number) as [number, number];

/** The workbook behind the stand-in for Excel. Its formulas are worked out by the project's headless engine. */
export class StandInWorkbook {
  readonly sheets: StandInSheet[] = [];
  active: StandInSheet;
  selection: { row: number; column: number; rows: number; columns: number } = {
    row: 0,
    column: 0,
    rows: 1,
    columns: 1,
  };
  mode = 'Automatic';
  /** How often everything was recalculated by command. */
  fullCalculations = 0;
  isStale = false;
  /** Files that were opened as new workbooks. */
  readonly created: Uint8Array[] = [];
  private readonly objects = new Map<number, unknown>();
  private childIds = 1_000_000;

  constructor() {
    this.active = this.addSheet('Sheet1');
  }

  addSheet(name: string): StandInSheet {
    if (this.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) {
      throw new Refused('ItemAlreadyExists', `A sheet is named ${name} already.`);
    }
    const sheet = new StandInSheet(this, name, `{${this.sheets.length + 1}}`);
    this.sheets.push(sheet);
    return sheet;
  }

  sheet(idOrName: string): StandInSheet {
    const found = this.sheets.find(({ id, name }) => id === idOrName || name === idOrName);
    if (!found) throw new Refused('ItemNotFound', `There is no sheet ${idOrName}.`);
    return found;
  }

  select(sheet: string, address: string): void {
    const area = parseArea(address);
    if (!area) throw new Error(`${address} is no address`);
    this.active = this.sheet(sheet);
    const { top: row, left: column, bottom, right } = area;
    this.selection = { row, column, rows: bottom - row + 1, columns: right - column + 1 };
  }

  /** Carries out one batch, as Excel does at a sync. */
  async execute(steps: readonly Step[]): Promise<Reply> {
    const loaded: { from: number; name: string; value: unknown }[] = [];
    try {
      for (const step of steps) {
        if (step.op === 'file') {
          loaded.push({ from: 0, name: 'value', value: Buffer.from(this.file()).toString('base64') });
          continue;
        }
        if (step.op === 'create') {
          this.created.push(Uint8Array.from(Buffer.from(step.file, 'base64')));
          continue;
        }
        const target =
          step.from === 0 ? this.root() : (this.objects.get(step.from) as Record<string, unknown>);
        if (step.op === 'set') {
          if (step.name === 'formulas' || step.name === 'values') {
            (target as unknown as StandInRange).write(step.value as unknown[][]);
          } else target[step.name] = step.value;
        } else if (step.op === 'get') this.objects.set(step.to, target[step.name]);
        else if (step.op === 'call') {
          const method = target[step.name] as (...given: unknown[]) => unknown;
          if (typeof method !== 'function')
            throw new Refused('ApiNotFound', `The stand-in has no ${step.name}.`);
          const result = await method.apply(
            target,
            step.given.map((one) => this.argument(one)),
          );
          if (Array.isArray(result)) loaded.push({ from: step.to, name: 'value', value: result });
          else this.objects.set(step.to, result);
        } else {
          if (this.isStale && this.mode === 'Automatic') await this.calculate();
          for (const name of step.names) this.load(target, step.from, name.trim(), loaded);
        }
      }
      if (this.isStale && this.mode === 'Automatic') await this.calculate();
      return { loaded };
    } catch (error) {
      if (error instanceof Refused) return { loaded, error: { code: error.code, message: error.message } };
      throw error;
    }
  }

  private load(
    target: Record<string, unknown>,
    from: number,
    name: string,
    loaded: { from: number; name: string; value: unknown }[],
  ): void {
    loaded.push({ from, name: 'isNullObject', value: target === NOTHING });
    if (target === NOTHING) return;
    const [first = '', rest] = name.split('/');
    if (first !== 'items') {
      if (!(first in target)) throw new Refused('InvalidArgument', `There is no property ${first}.`);
      loaded.push({ from, name: first, value: target[first] });
      return;
    }
    const known = loaded.find((entry) => entry.from === from && entry.name === 'items')?.value as
      number[] | undefined;
    const items = target['items'] as Record<string, unknown>[];
    const ids = known ?? items.map(() => this.childIds++);
    items.forEach((item, i) => {
      const id = ids[i] as number;
      this.objects.set(id, item);
      if (rest) this.load(item, id, rest, loaded);
    });
    if (!known) loaded.push({ from, name: 'items', value: ids });
  }

  private argument(given: unknown): unknown {
    const isObject = typeof given === 'object' && given !== null && 'objectId' in given;
    return isObject ? this.objects.get(given.objectId as number) : given;
  }

  private root(): Record<string, unknown> {
    return {
      worksheets: this.worksheets(),
      application: this.application(),
      getSelectedRange: () => {
        const { row, column, rows, columns } = this.selection;
        return this.active.getRangeByIndexes(row, column, rows, columns);
      },
      getActiveCell: () => this.active.getRangeByIndexes(this.selection.row, this.selection.column, 1, 1),
      insertWorksheetsFromBase64: (text: string) => this.insert(Uint8Array.from(Buffer.from(text, 'base64'))),
    };
  }

  private worksheets(): Record<string, unknown> {
    return {
      items: this.sheets,
      getItem: (name: string) => this.sheet(name),
      add: (name: string) => this.addSheet(name),
    };
  }

  private application(): Record<string, unknown> {
    return {
      calculationMode: this.mode,
      calculationState: 'Done',
      calculate: async (type: string) => {
        if (type === 'Full') this.fullCalculations += 1;
        await this.calculate();
      },
    };
  }

  private insert(file: Uint8Array): string[] {
    const ids = worksheetFunctions.map(({ id }) => id);
    return readWorkbook(file, ids).sheets.map((read) => {
      const sheet = this.addSheet(read.name);
      for (const { row, column, value, formula } of read.cells) {
        sheet.put(row, column, { value, ...(formula !== undefined && { formula }) });
      }
      this.isStale = true;
      return sheet.id;
    });
  }

  /** The workbook as Excel saves it. */
  file(): Uint8Array {
    const sheets = this.sheets.map((sheet) => ({ name: sheet.name, cells: sheet.describe() }));
    return saveWorkbook(newWorkbook({ sheets }), []);
  }

  private async calculate(): Promise<void> {
    this.isStale = false;
    for (const sheet of this.sheets) sheet.forgetSpills();
    const workbook: Workbook = {
      sheets: this.sheets.map((sheet) => sheet.model()),
      activeSheet: 0,
      names: [],
      styles: [],
      date1904: false,
      parts: new Map(),
    };
    for (const { sheet, row, column, formula, value, spill } of await recalculate(
      workbook,
      worksheetFunctions,
    )) {
      const into = this.sheet(sheet);
      into.put(row, column, { formula, value });
      spill?.forEach((line, down) => {
        line.forEach((cell, across) => {
          if (down + across > 0)
            into.put(row + down, column + across, { value: cell, spilledFrom: place(row, column) });
        });
      });
    }
  }
}

const NOTHING: Record<string, unknown> = {};

class StandInSheet {
  readonly protection = { protected: false };
  readonly cells = new Map<string, Content>();

  constructor(
    readonly book: StandInWorkbook,
    public name: string,
    readonly id: string,
  ) {}

  put(row: number, column: number, content: Content): void {
    this.cells.set(place(row, column), content);
  }

  /** Writes as Excel does with what is typed. */
  type(row: number, column: number, input: unknown): void {
    this.book.isStale = true;
    if (input === '' || input === null) this.cells.delete(place(row, column));
    else if (typeof input === 'string' && input.startsWith('=')) {
      if (!balanced(input)) throw new Refused('InvalidArgument', 'The formula is incomplete.');
      this.put(row, column, { formula: input.slice(1), value: null });
    } else if (typeof input === 'string' && input.startsWith("'"))
      this.put(row, column, { value: input.slice(1) });
    else this.put(row, column, { value: input as CellValue });
  }

  forgetSpills(): void {
    for (const [key, { spilledFrom }] of this.cells) if (spilledFrom !== undefined) this.cells.delete(key);
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

  /** The cells with what their formulas fill, for a file. */
  describe(): Record<string, CellDescription> {
    const described: Record<string, CellDescription> = {};
    for (const [key, { formula, value, spilledFrom }] of this.cells) {
      const [row, column] = placeOf(key);
      const filled = [...this.cells].flatMap(([other, content]) =>
        spilledFrom === undefined && content.spilledFrom === key ? [placeOf(other)] : [],
      );
      const area = {
        top: row,
        left: column,
        bottom: Math.max(row, ...filled.map(([r]) => r)),
        right: Math.max(column, ...filled.map(([, c]) => c)),
      };
      described[cellAddress(row, column)] = {
        value,
        ...(formula !== undefined && { formula }),
        ...(filled.length > 0 && { fills: areaAddress(area) }),
      };
    }
    return described;
  }

  /** Takes a row out; those below move up. */
  deleteRow(row: number): void {
    const moved = [...this.cells].map(([key, content]): [[number, number], Content] => [
      placeOf(key),
      content,
    ]);
    this.cells.clear();
    for (const [[r, c], content] of moved)
      if (r !== row) this.cells.set(place(r > row ? r - 1 : r, c), content);
  }

  readonly charts = {
    all: [] as StandInChart[],
    add: (type: string, values: StandInRange): StandInChart => {
      const chart = new StandInChart(type, values);
      this.charts.all.push(chart);
      return chart;
    },
  };

  readonly tables = {
    all: [] as StandInRange[],
    add: (range: StandInRange, hasHeaders: boolean): StandInRange => {
      const [head = []] = range.values;
      if (!hasHeaders || new Set(head).size < head.length || head.includes('')) {
        throw new Refused('InvalidArgument', 'Every column of a table has a name of its own.');
      }
      this.tables.all.push(range);
      return range;
    },
  };

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

class StandInSeries {
  name = '';
  x: StandInRange | undefined;

  constructor(public values?: StandInRange) {}

  setValues(range: StandInRange): void {
    this.values = range;
  }

  setXAxisValues(range: StandInRange): void {
    this.x = range;
  }
}

class StandInChart {
  readonly title = { text: '' };
  readonly legend = { visible: true };
  readonly axes = { categoryAxis: { title: { text: '' } }, valueAxis: { title: { text: '' } } };
  readonly all: StandInSeries[];
  readonly series = {
    getItemAt: (index: number) => this.all[index],
    add: (name: string): StandInSeries => {
      const one = new StandInSeries();
      one.name = name;
      this.all.push(one);
      return one;
    },
  };
  place: readonly StandInRange[] = [];

  constructor(
    readonly type: string,
    values: StandInRange,
  ) {
    this.all = [new StandInSeries(values)];
  }

  setPosition(...corners: StandInRange[]): void {
    this.place = corners;
  }
}

class StandInRange {
  numberFormat: unknown;
  readonly format = { autofitColumns: () => undefined, font: {}, fill: {} };

  constructor(
    readonly worksheet: StandInSheet,
    readonly rowIndex: number,
    readonly columnIndex: number,
    readonly rowCount: number,
    readonly columnCount: number,
  ) {}

  private map<T>(read: (content: Content | undefined) => T): T[][] {
    return Array.from({ length: this.rowCount }, (_, down) =>
      Array.from({ length: this.columnCount }, (__, across) =>
        read(this.worksheet.cells.get(place(this.rowIndex + down, this.columnIndex + across))),
      ),
    );
  }

  /** Of a cell that another one fills Excel gives that one's formula. */
  get formulas(): unknown[][] {
    return this.map((content) => {
      const source =
        content?.spilledFrom === undefined ? content : this.worksheet.cells.get(content.spilledFrom);
      return source?.formula === undefined ? shown(content?.value ?? null) : `=${source.formula}`;
    });
  }

  get values(): unknown[][] {
    return this.map((content) => shown(content?.value ?? null));
  }

  get valueTypes(): string[][] {
    return this.map((content) => {
      const value = content?.value ?? null;
      if (value instanceof CellError) return 'Error';
      return { number: 'Double', string: 'String', boolean: 'Boolean' }[typeof value as string] ?? 'Empty';
    });
  }

  get hasSpill(): boolean | null {
    const kinds = new Set(this.map((content) => content?.spilledFrom !== undefined).flat());
    return kinds.size === 1 ? kinds.has(true) : null;
  }

  write(rows: readonly (readonly unknown[])[]): void {
    if (rows.length !== this.rowCount || rows.some((row) => row.length !== this.columnCount)) {
      throw new Refused('InvalidArgument', 'The values do not fit the range.');
    }
    if (this.worksheet.protection.protected) throw new Refused('AccessDenied', 'The sheet is protected.');
    rows.forEach((row, down) => {
      row.forEach((input, across) => {
        this.worksheet.type(this.rowIndex + down, this.columnIndex + across, input);
      });
    });
  }

  merge(): void {
    // How cells look is not kept here.
  }

  getEntireRow(): { delete: () => void } {
    return {
      delete: () => {
        this.worksheet.deleteRow(this.rowIndex);
      },
    };
  }

  getCell(row: number, column: number): StandInRange {
    return this.worksheet.getRangeByIndexes(this.rowIndex + row, this.columnIndex + column, 1, 1);
  }

  getSpillParentOrNullObject(): StandInRange | typeof NOTHING {
    const from = this.worksheet.cells.get(place(this.rowIndex, this.columnIndex))?.spilledFrom;
    return from === undefined ? NOTHING : this.worksheet.getRangeByIndexes(...placeOf(from), 1, 1);
  }
}

const shown = (value: CellValue): unknown => (value instanceof CellError ? value.code : (value ?? ''));

const balanced = (formula: string): boolean => {
  const bare = formula.replace(/"[^"]*"/g, '');
  return bare.split('(').length === bare.split(')').length;
};

const EMPTY_SHEET: Omit<Sheet, 'name' | 'cells'> = {
  state: 'visible',
  columns: [],
  rows: [],
  defaultColumnWidth: 8.43,
  defaultRowHeight: 15,
  merges: [],
  frozen: { rows: 0, columns: 0 },
  showsGridlines: true,
  isProtected: false,
  zoom: 100,
  validations: [],
  conditionalFormats: [],
  hyperlinks: [],
  notes: [],
  tables: [],
};
