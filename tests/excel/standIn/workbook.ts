import { worksheetFunctions } from '../../../src/call/functions';
import { parseArea, parseCell } from '../../../src/cells/address';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../../src/package';
import type { Workbook } from '../../../src/package/model';
import { addCharts } from '../../../src/package/author';
import { readReference } from '../../../src/cells/reference';
import { Book } from '../../../src/sheet/book';
import { traceOf } from '../../../src/sheet/trace';
import { contentOf } from '../../../src/workbook/content';
import { recalculate } from '../../../src/workbook/recalculate';
import type { Reply, Step } from './install';
import { absolute, StandInRange } from './range';
import { NOTHING, place, StandInSheet } from './sheet';
import { Refused } from './typed';

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
  readonly iteration = { enabled: false };
  /** Between arguments and in numbers, as the country has them. */
  separator = ',';
  decimalSeparator = '.';
  /** A person is typing into a cell: Excel does nothing for an add-in meanwhile. */
  isEditing = false;
  /** How often everything was recalculated by command. */
  fullCalculations = 0;
  isStale = false;
  /** Of the batches that it was sent, in characters. */
  readonly sizes: number[] = [];
  hasPrinter = true;
  /** Files that were opened as new workbooks. */
  readonly created: Uint8Array[] = [];
  /** What the names of the workbook stand for. */
  names = new Map<string, string>();
  hiddenNames = new Set<string>();
  /** How to take back each step that a person can undo, the latest last. */
  readonly undos: { readonly group: number | undefined; readonly back: () => void }[] = [];
  private group: number | undefined;
  private readonly objects = new Map<number, unknown>();
  private childIds = 1_000_000;

  constructor() {
    this.active = this.addSheet('Sheet1');
  }

  addSheet(name: string): StandInSheet {
    if (name.length === 0 || name.length > 31 || /[[\]:*?/\\]|^'|'$/.test(name))
      throw new Refused('InvalidArgument', `${name} cannot be the name of a sheet.`);
    if (this.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) {
      throw new Refused('ItemAlreadyExists', `A sheet is named ${name} already.`);
    }
    const sheet = new StandInSheet(this, name, `{${this.sheets.length + 1}}`);
    this.sheets.push(sheet);
    return sheet;
  }

  sheet(idOrName: string): StandInSheet {
    const found = this.sheets.find(
      ({ id, name }) => id === idOrName || name.toLowerCase() === idOrName.toLowerCase(),
    );
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
    this.sizes.push(JSON.stringify(steps).length);
    try {
      if (this.isEditing && steps.length > 0)
        throw new Refused('InvalidOperationInCellEditMode', 'Excel is in cell-editing mode.');
      const [first] = steps;
      this.group = first?.op === 'group' ? first.id : undefined;
      if (steps.some(isChange)) this.remember();
      for (const step of steps) await this.carryOut(step, loaded);
      if (this.isStale && this.mode === 'Automatic') await this.calculate();
      return { loaded };
    } catch (error) {
      if (error instanceof Refused) return { loaded, error: { code: error.code, message: error.message } };
      throw error;
    }
  }

  private async carryOut(
    step: Step,
    loaded: { from: number; name: string; value: unknown }[],
  ): Promise<void> {
    if (step.op === 'group') return;
    if (step.op === 'file') {
      loaded.push({ from: 0, name: 'value', value: Buffer.from(this.file()).toString('base64') });
      return;
    }
    if (step.op === 'create') {
      this.created.push(Uint8Array.from(Buffer.from(step.file, 'base64')));
      return;
    }
    const target = step.from === 0 ? this.root() : (this.objects.get(step.from) as Record<string, unknown>);
    if (step.op === 'set') {
      if (target instanceof StandInRange && (step.name === 'formulas' || step.name === 'values')) {
        target.write(step.value as unknown[][]);
      } else if (!(step.name in target)) {
        throw new Refused('InvalidArgument', `There is no property ${step.name}.`);
      } else target[step.name] = step.value;
    } else if (step.op === 'get') this.objects.set(step.to, target[step.name]);
    else if (step.op === 'call') {
      const method = target[step.name] as (...given: unknown[]) => unknown;
      if (typeof method !== 'function') throw new Refused('ApiNotFound', `The stand-in has no ${step.name}.`);
      const result = await method.apply(
        target,
        step.given.map((one) => this.argument(one)),
      );
      if (Array.isArray(result) || typeof result === 'string')
        loaded.push({ from: step.to, name: 'value', value: result });
      else this.objects.set(step.to, result);
    } else {
      if (this.isStale && this.mode === 'Automatic') await this.calculate();
      for (const name of step.names) this.load(target, step.from, name.trim(), loaded);
    }
  }

  /** Every sync that changes something is one step to undo; those of one group are one. */
  private remember(): void {
    if (this.group !== undefined && this.undos.at(-1)?.group === this.group) return;
    const names = new Map(this.names);
    const hiddenNames = new Set(this.hiddenNames);
    const sheets = this.sheets.map((sheet) => ({
      sheet,
      cells: new Map(sheet.cells),
      looks: new Map(sheet.looks),
      validations: new Map(sheet.validations),
      merges: new Set(sheet.merges),
      widths: new Map(sheet.widths),
      conditions: [...sheet.conditions],
    }));
    this.undos.push({
      group: this.group,
      back: () => {
        this.names = names;
        this.hiddenNames = hiddenNames;
        this.sheets.splice(0, this.sheets.length, ...sheets.map(({ sheet }) => sheet));
        for (const { sheet, ...before } of sheets) Object.assign(sheet, before);
      },
    });
  }

  /** A person presses Ctrl+Z. */
  undo(): void {
    this.undos.pop()?.back();
  }

  /** What Excel cannot take back empties the list of steps, and is refused among steps that belong together. */
  cannotUndo(): void {
    if (this.group !== undefined) throw new Refused('UndoNotSupported', 'This cannot be undone.');
    this.undos.length = 0;
  }

  private load(
    target: Record<string, unknown>,
    from: number,
    name: string,
    loaded: { from: number; name: string; value: unknown }[],
  ): void {
    loaded.push({ from, name: 'isNullObject', value: target === NOTHING });
    if (target === NOTHING) return;
    const [first = '', ...others] = name.split('/');
    const rest = others.join('/');
    if (first !== 'items') {
      if (!(first in target)) throw new Refused('InvalidArgument', `There is no property ${first}.`);
      if (rest !== '') {
        const child = target[first] as Record<string, unknown>;
        const id = this.childIds++;
        this.objects.set(id, child);
        loaded.push({ from, name: first, value: { objectId: id } });
        this.load(child, id, rest, loaded);
        return;
      }
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
      if (rest !== '') this.load(item, id, rest, loaded);
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
      names: this.namesObject(),
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
      getActiveWorksheet: () => this.active,
      add: (name: string) => this.addSheet(name),
    };
  }

  private namesObject(): Record<string, unknown> {
    const { names, hiddenNames } = this;
    const item = (name: string) => ({
      name,
      formula: `=${names.get(name) ?? ''}`,
      value: names.get(name),
      get visible() {
        return !hiddenNames.has(name);
      },
      set visible(is: boolean) {
        if (is) hiddenNames.delete(name);
        else hiddenNames.add(name);
      },
    });
    return {
      items: [...this.names.keys()].map(item),
      add: (name: string, to: StandInRange | string) => {
        if (!/^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name) || parseCell(name) || /^[rc]$/i.test(name))
          throw new Refused('InvalidArgument', `${name} cannot be a name.`);
        if ([...this.names.keys()].some((known) => known.toLowerCase() === name.toLowerCase()))
          throw new Refused('ItemAlreadyExists', `The name ${name} is taken.`);
        const formula = to instanceof StandInRange ? absolute(to) : to.replace(/^=/, '');
        const place = readReference(formula);
        if (!(to instanceof StandInRange) && !to.startsWith('='))
          throw new Refused('InvalidArgument', `${to} is no formula.`);
        if (place) this.sheet(place.sheet);
        this.names.set(name, formula);
        return item(name);
      },
    };
  }

  private application(): Record<string, unknown> {
    const application = {
      calculationState: 'Done',
      decimalSeparator: this.decimalSeparator,
      iterativeCalculation: this.iteration,
      calculate: async (type: string) => {
        if (type === 'Full') this.fullCalculations += 1;
        await this.calculate();
      },
    };
    return Object.defineProperty(application, 'calculationMode', {
      get: () => this.mode,
      set: (mode: string) => (this.mode = mode),
      enumerable: true,
    });
  }

  private insert(file: Uint8Array): string[] {
    this.cannotUndo();
    const ids = worksheetFunctions.map(({ id }) => id);
    return readWorkbook(file, ids).sheets.map((read) => {
      const sheet = this.addSheet(read.name);
      for (const { row, column, value, formula } of read.cells) {
        if (formula !== undefined || value !== null) {
          sheet.put(row, column, { value, ...(formula !== undefined && { formula }) });
        }
      }
      this.isStale = true;
      return sheet.id;
    });
  }

  /** The workbook as Excel saves it. */
  file(): Uint8Array {
    const described = this.sheets.map((sheet) => sheet.describe());
    const named = (hidden: boolean): Record<string, string> =>
      Object.fromEntries([...this.names].filter(([name]) => this.hiddenNames.has(name) === hidden));
    const workbook = newWorkbook({
      sheets: described.map(({ sheet }) => sheet),
      styles: Object.assign({}, ...described.map(({ styles }) => styles)) as Record<string, object>,
      names: named(false),
      hiddenNames: named(true),
    });
    return saveWorkbook(
      this.sheets
        .filter(({ charts }) => charts.all.length > 0)
        .reduce(
          (whole, { name, charts }) =>
            addCharts(
              whole,
              name,
              charts.all.map((chart) => chart.describe()),
            ),
          workbook,
        ),
      [],
    );
  }

  private model(): Workbook {
    return {
      sheets: this.sheets.map((sheet) => sheet.model()),
      activeSheet: 0,
      names: [...this.names].map(([name, formula]) => ({ name, formula, hidden: false })),
      styles: [],
      date1904: false,
      parts: new Map(),
    };
  }

  /** What Excel tells of the cells that a formula reads and that read it: it throws where there are none. */
  tracedFrom({ worksheet, rowIndex, columnIndex }: StandInRange): {
    readonly reads: readonly StandInRange[];
    readonly readers: readonly StandInRange[];
  } {
    const book = new Book(contentOf(this.model()), worksheetFunctions);
    book.calculate();
    const sheetAt = (index: number): StandInSheet => this.sheets[index] ?? worksheet;
    const place = { sheet: this.sheets.indexOf(worksheet), row: rowIndex, column: columnIndex };
    const { reads, readers } = traceOf(book, place);
    const some = (all: readonly StandInRange[]): readonly StandInRange[] => {
      if (all.length === 0) throw new Refused('ItemNotFound', 'No cells were found.');
      return all;
    };
    return {
      get reads() {
        return some(
          reads.map(({ sheet, top, left, bottom, right }) =>
            sheetAt(sheet).getRangeByIndexes(top, left, bottom - top + 1, right - left + 1),
          ),
        );
      },
      get readers() {
        return some(
          readers.map(({ sheet, row, column }) => sheetAt(sheet).getRangeByIndexes(row, column, 1, 1)),
        );
      },
    };
  }

  private async calculate(): Promise<void> {
    this.isStale = false;
    for (const sheet of this.sheets) sheet.forgetSpills();
    for (const { sheet, row, column, formula, value, spill } of await recalculate(
      this.model(),
      worksheetFunctions,
    )) {
      const into = this.sheet(sheet);
      if (into.isLost(row, column)) continue;
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

const isChange = (step: Step): boolean =>
  step.op === 'set' || (step.op === 'call' && /^(add|insert|delete|clear|merge|unprotect)/.test(step.name));
