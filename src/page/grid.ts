import {
  CanceledError,
  CommandType,
  ICommandService,
  LifecycleService,
  LifecycleStages,
  ObjectMatrix,
  UniverInstanceType,
} from '@univerjs/core';
import type {
  ICellData,
  Injector,
  IWorkbookData,
  Univer,
  Workbook as GridWorkbook,
  Worksheet,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import {
  BuiltInUIPart,
  ILayoutService,
  IUIPartsService,
  SetCellEditVisibleOperation,
  SetRangeValuesCommand,
  SetRangeValuesMutation,
  SetSelectionsOperation,
} from '@univerjs/preset-sheets-core';
import type { ISetRangeValuesMutationParams } from '@univerjs/preset-sheets-core';
import { isDateFormat } from 'numfmt';
import type { ComponentType } from 'react';
import { areaContains, type Area } from '../cells/address';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { newWorkbook } from '../package';
import type { SheetLayout } from '../package/layout';
import type { Sheet, Validation, Workbook } from '../package/model';
import type { CellTrace } from '../panel/host';
import type { CellPlace, KeptCell } from '../sheet/book';
import { contentOf } from '../workbook/content';
import { addToCellMenu } from './cellMenu';
import { GridCalculation, type Calculated } from './calculation';
import { openLists } from './cellLists';
import { moveWhatIsCut } from './cutPaste';
import { readOwnSign } from './decimalSign';
import { editWholeNumbers } from './editedNumbers';
import { formatEntries } from './entryFormats';
import { EntryFormulas } from './entryFormulas';
import { guardEntries, type GridPlace } from './entryGuard';
import { explainErrors } from './errorAlerts';
import { drawFilterArrows } from './filterArrows';
import { GridCells } from './gridCells';
import { gridContent } from './gridContent';
import { gridData, gridSheet, sheetId } from './gridData';
import { GridDrawings } from './gridDrawings';
import { changedLayout } from './gridLayout';
import { everyFormula, putSpills, putValues, type Place, type Target } from './gridResults';
import { HeldEntries, type EntryDesk } from './heldEntries';
import type { TypedCell } from './journal';
import { fitNumbers } from './numbersFit';
import { drawRuleColors, RuleColors } from './ruleColors';
import { ruleResources } from './rules';
import type { ActContext } from './structureActs';
import { takePastes } from './largePastes';
import { pastedCell } from './pasteTable';
import { nameControls } from './nameControls';
import { painted } from './painted';
import { markNotes } from './noteMarks';
import { TroubleMarks } from './troubleMarks';
import { nextOf } from './troubles';
import { createUniver } from './univer';
import { writeCells, type WrittenCells } from './writeCells';

type FWorkbook = NonNullable<ReturnType<FUniver['getWorkbook']>>;
type FWorksheet = ReturnType<FWorkbook['getActiveSheet']>;

const FIRST = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };

/** What a change of a cell's content has; the rest is its looks. */
const CONTENT = ['v', 'f', 'si', 'p', 't'] as const;

/** A number in a date format is read otherwise by our functions. */
const mayChangeFormat = ({ s }: ICellData): boolean =>
  s !== undefined && (s === null || typeof s === 'string' || 'n' in s);

/** What moves cells or changes what formulas may name. */
const REBUILDS = /^sheet\.mutation\.(move-range|set-row-(hidden|visible))$/;

export interface GridOptions extends EntryDesk {
  readonly functions: readonly WorksheetFunction[];
  /** Stands under the formula bar. */
  readonly note: ComponentType;
  readonly dark: boolean;
  /** A calculation takes long, or has ended. */
  readonly onBusy: (is: boolean) => void;
  /** Cells that show the value of the file, since their formula cannot be calculated. */
  readonly onKept: (cells: readonly KeptCell[]) => void;
  /** What draws charts and pictures has not come. */
  readonly onMissing: (error: unknown) => void;
  /** Why something was not pasted. */
  readonly onRefusedPaste: (why: string) => void;
}

/** What a command of the grid is about, as far as it says. */
export interface GridCommand {
  readonly id: string;
  readonly params: object | undefined;
}

/** The spreadsheet grid: shows one workbook at a time and calculates it. */
export class Grid {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly calculation: GridCalculation;
  private readonly univer: Univer;
  private readonly colors: RuleColors;
  readonly drawings: GridDrawings;
  private entries: EntryFormulas | undefined;
  private count = 0;
  private opened: Workbook = newWorkbook();
  /** The grid's ids of the sheets, in the order in which they are calculated. */
  private calculatedSheets: string[] = [];
  private readonly edited = new Map<string, { sheetId: string; row: number; column: number }>();
  private readonly held: HeldEntries;
  private readonly troubleMarks: TroubleMarks;
  private isRebuildDue = false;
  /** Asked before every command on sheets; true stops it. */
  refuses: ((command: GridCommand) => boolean) | undefined;
  /** Cells that were cut are pasted where a person is. */
  movesCut: ((from: { readonly sheet: string; readonly area: Area }) => void) | undefined;
  /** A person asked for what a column of a filter shows. */
  opensFilter: (() => void) | undefined;
  /** A person asked for a form at the selected cell. */
  asksForm: (() => void) | undefined;
  private noted: ReadonlySet<string> = new Set();
  /** Hears at once what was typed into cells. */
  heardTyping: ((cells: readonly TypedCell[]) => void) | undefined;
  private readonly editListeners = new Set<() => void>();
  private readonly lookListeners = new Set<() => void>();

  constructor(
    private readonly container: HTMLElement,
    private readonly options: GridOptions,
  ) {
    this.calculation = new GridCalculation(options.functions, {
      calculated: (what) => {
        this.put(what);
      },
      busy: options.onBusy,
    });
    this.held = new HeldEntries(this, options);
    this.colors = new RuleColors(this.calculation);
    nameControls(container);
    this.troubleMarks = new TroubleMarks(container, (sheet) => {
      this.toNextTrouble(sheet);
    });
    this.univer = createUniver({
      container,
      functions: options.functions,
      dark: options.dark,
      onStarting: () => {
        this.entries = new EntryFormulas(this.injector, this.calculation, this.placeOf);
      },
    });
    this.injector = this.univer.__getInjector();
    this.api = FUniver.newAPI(this.univer);
    this.drawings = new GridDrawings(this.injector, this.calculation, (id) =>
      this.opened.sheets.findIndex((_, index) => sheetId(index) === id),
    );
    this.listen();
  }

  /** The grid's id of the workbook on show. */
  get unitId(): string {
    return `workbook-${this.count}`;
  }

  get workbook(): FWorkbook {
    const workbook = this.api.getWorkbook(this.unitId);
    if (!workbook) throw new Error('The grid shows no workbook yet.');
    return workbook;
  }

  /** The workbook as it was opened, or as the last act on its structure left it. */
  get file(): Workbook {
    return this.opened;
  }

  sheet(name: string): FWorksheet {
    const sheet = this.workbook.getSheetByName(name);
    if (!sheet) throw new Error(`The workbook has no sheet "${name}".`);
    return sheet;
  }

  /** The content of a sheet, by its name. */
  cells(name: string): GridCells {
    return this.cellsOf(this.sheet(name).getSheet());
  }

  private cellsOf(sheet: Worksheet): GridCells {
    const index = this.calculatedSheets.indexOf(sheet.getSheetId());
    return new GridCells(this, sheet, index, this.workbook.getWorkbook().getStyles());
  }

  /** The sheet that stood at this place when the workbook was opened, wherever it is and whatever it is called now. */
  openedSheet(index: number): GridCells | undefined {
    const sheet = this.workbook.getSheetBySheetId(sheetId(index));
    return sheet ? this.cells(sheet.getSheetName()) : undefined;
  }

  /** The sheet of the workbook as it was opened, by the grid's id. */
  private openedAs(id: string | undefined): Sheet | undefined {
    return this.opened.sheets.find((_, index) => sheetId(index) === id);
  }

  /** What a person changed of the layout of a sheet, by its place when the workbook was opened. */
  changedLayout(index: number): SheetLayout | undefined {
    const sheet = this.workbook.getSheetBySheetId(sheetId(index))?.getSheet();
    const opened = this.opened.sheets[index];
    return sheet && opened && changedLayout(opened, gridSheet(opened, index), sheet);
  }

  /** What a command on the structure is about. */
  actContext(params: object | undefined): ActContext {
    const { subUnitId } = (params ?? {}) as { subUnitId?: string };
    const { workbook } = this;
    const active = workbook.getActiveSheet();
    const named = subUnitId === undefined ? undefined : workbook.getSheetBySheetId(subUnitId);
    return {
      sheetNames: workbook.getSheets().map((sheet) => sheet.getSheetName()),
      sheet: (named ?? active).getSheetName(),
      selection: workbook.getActiveRange()?.getRange(),
      nameOf: (id) => this.opened.names[Number(/^name-(\d+)$/.exec(id)?.[1] ?? 0) - 1],
      sheetOf: (id) => workbook.getSheetBySheetId(id)?.getSheetName(),
    };
  }

  /** Where a person is. */
  place(): { sheet: string; row: number; column: number } {
    const range = this.workbook.getActiveRange();
    const sheet = this.workbook.getActiveSheet().getSheetName();
    return { sheet, row: range?.getRow() ?? 0, column: range?.getColumn() ?? 0 };
  }

  selected(): { sheet: string; area: Area } {
    const { startRow, startColumn, endRow, endColumn } = this.workbook.getActiveRange()?.getRange() ?? FIRST;
    const sheet = this.workbook.getActiveSheet().getSheetName();
    return { sheet, area: { top: startRow, left: startColumn, bottom: endRow, right: endColumn } };
  }

  private dataOf(workbook: Workbook): IWorkbookData {
    const data = gridData(workbook, this.unitId);
    return { ...data, resources: [...(data.resources ?? []), ...ruleResources(workbook)] };
  }

  /** What the sheet of a calculated cell is called. */
  sheetName(calculated: number): string {
    return this.workbook.getSheetBySheetId(this.calculatedSheets[calculated] ?? '')?.getSheetName() ?? '';
  }

  /** Brings a cell to the front. */
  select(sheetName: string, row: number, column: number): void {
    const sheet = this.sheet(sheetName);
    this.workbook.setActiveSheet(sheet);
    sheet.getRange(row, column).activate();
    sheet.scrollToCell(Math.max(0, row - 3), 0);
  }

  selectArea(sheetName: string, { top, left, bottom, right }: Area): void {
    this.sheet(sheetName)
      .getRange(top, left, bottom - top + 1, right - left + 1)
      .activate();
  }

  /** To the first cell of the sheet, or to the last row and column that hold something. */
  toCorner(which: 'first' | 'last'): void {
    const sheet = this.workbook.getActiveSheet();
    const places = which === 'first' ? [] : this.cells(sheet.getSheetName()).places();
    const most = (of: readonly number[]) => of.reduce((a, b) => Math.max(a, b), 0);
    const row = most(places.map((one) => one.row));
    const column = most(places.map((one) => one.column));
    sheet.getRange(row, column).activate();
    sheet.scrollToCell(Math.max(0, row - 3), Math.max(0, column - 2));
  }

  /** What is typed goes into the selected cell. */
  focus(): void {
    this.injector.get(ILayoutService).focus();
  }

  redraw(): void {
    this.workbook.getActiveSheet().refreshCanvas();
  }

  /** Takes over what is being typed into a cell. */
  async finishEditing(): Promise<void> {
    if (this.workbook.isCellEditing()) await this.workbook.endEditingAsync(true);
  }

  /** What a cell on show reads and what reads it, in ranges by the names of their sheets. */
  trace(sheetName: string, row: number, column: number): CellTrace {
    const sheet = this.calculatedSheets.indexOf(this.sheet(sheetName).getSheetId());
    const { reads, readsMore, readers, error } = this.calculation.trace({ sheet, row, column });
    const cell = (place: CellPlace) => ({
      sheet: this.sheetName(place.sheet),
      row: place.row,
      column: place.column,
      rows: 1,
      columns: 1,
    });
    return {
      reads: reads.map(({ sheet: of, top, left, bottom, right }) => ({
        sheet: this.sheetName(of),
        row: top,
        column: left,
        rows: bottom - top + 1,
        columns: right - left + 1,
      })),
      readsMore,
      readers: readers.map(cell),
      error: error.map(cell),
    };
  }

  /**
   * Replaces the workbook on show, and waits until it is calculated. `onShown` is called before that, when the values
   * that came with the workbook are on the screen.
   */
  async show(workbook: Workbook, onShown: () => void): Promise<void> {
    const before = this.count > 0 ? this.unitId : undefined;
    this.count += 1;
    this.opened = workbook;
    this.calculatedSheets = workbook.sheets.map((_, index) => sheetId(index));
    this.noted = new Set(
      workbook.sheets.flatMap(({ notes }, index) =>
        notes.map(({ row, column }) => `${sheetId(index)} ${row} ${column}`),
      ),
    );
    this.edited.clear();
    this.held.forget();
    this.isRebuildDue = false;
    this.colors.load(workbook);
    this.univer.createUnit<unknown, GridWorkbook>(UniverInstanceType.UNIVER_SHEET, this.dataOf(workbook));
    if (before === undefined) {
      this.setUp();
      await this.injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
    } else this.api.disposeUnit(before);
    await painted();
    if (this.opened !== workbook) return;
    onShown();
    const content = contentOf(workbook);
    const sheets = content.sheets.map((one, index) => ({ ...one, isDate: this.isDate(sheetId(index)) }));
    await this.calculation.load({ ...content, sheets });
    await this.drawings.load(workbook, this.unitId).catch(this.options.onMissing);
  }

  /** Waits until no calculation is under way. */
  async calculated(): Promise<void> {
    this.takeEdits();
    await this.calculation.settled();
  }

  setDark(dark: boolean): void {
    this.api.toggleDarkMode(dark);
  }

  /** Calls back after every change a person made to the workbook. */
  onEdit(listener: () => void): () => void {
    this.editListeners.add(listener);
    return () => this.editListeners.delete(listener);
  }

  /** Calls back when the selection moves, and when the values on show have changed. */
  onLook(listener: () => void): () => void {
    this.lookListeners.add(listener);
    return () => this.lookListeners.delete(listener);
  }

  private listen(): void {
    const commands = this.injector.get(ICommandService);
    commands.beforeCommandExecuted(({ id, params }) => {
      if (!id.startsWith('sheet.command.') && id !== SetCellEditVisibleOperation.id) return;
      // The grid's own way to stop a command is an exception that it knows.
      if (this.refuses?.({ id, params })) throw new CanceledError();
    });
    commands.onCommandExecuted(({ id, type, params }, options) => {
      // The grid's own event leaves out the first selection after a workbook was opened.
      if (id === SetSelectionsOperation.id) this.look();
      // Results of formulas, and what concerns only this screen, are marked local: they are no edits.
      if (type !== CommandType.MUTATION || options?.onlyLocal) return;
      this.noteEdit(id, params);
      if (!id.startsWith('sheet.mutation.')) return;
      this.editListeners.forEach((heard) => {
        heard();
      });
    });
  }

  /** Whether a cell is in a date format at this moment. */
  private isDate(id: string): (row: number, column: number) => boolean {
    const { unitId } = this;
    return (row, column) => {
      const workbook = this.api.getWorkbook(unitId)?.getWorkbook();
      const cell = workbook?.getSheetBySheetId(id)?.getCellRaw(row, column);
      return isDateFormat(workbook?.getStyles().getStyleByCell(cell)?.n?.pattern ?? '');
    };
  }

  private readonly placeOf = (unitId: string, id: string, row: number, column: number) => {
    const sheet = unitId === this.unitId ? this.calculatedSheets.indexOf(id) : -1;
    return sheet < 0 ? undefined : { sheet, row, column };
  };

  private noteEdit(id: string, params: object | undefined): void {
    if (REBUILDS.test(id)) this.isRebuildDue = true;
    else if (id === SetRangeValuesMutation.id) {
      const { unitId, subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
      if (unitId !== this.unitId) return;
      new ObjectMatrix(cellValue ?? {}).forValue((row, column, cell) => {
        if (cell && !CONTENT.some((key) => key in cell) && !mayChangeFormat(cell)) return;
        this.edited.set(`${subUnitId} ${row} ${column}`, { sheetId: subUnitId, row, column });
      });
    } else return;
    // The grid has not finished with it yet.
    queueMicrotask(() => {
      this.takeEdits();
    });
  }

  /** Gives what was changed to the calculation. */
  private takeEdits(): void {
    const edits = [...this.edited.values()].flatMap(({ sheetId: id, row, column }) => {
      const sheet = this.workbook.getSheetBySheetId(id)?.getSheet();
      if (!sheet) return [];
      const cell = { row, column, ...this.cellsOf(sheet).typed(row, column) };
      return [{ sheet: this.calculatedSheets.indexOf(id), name: sheet.getName(), cell }];
    });
    this.edited.clear();
    if (edits.length > 0) this.heardTyping?.(edits.map(({ name, cell }) => ({ sheet: name, ...cell })));
    if (this.isRebuildDue) {
      this.isRebuildDue = false;
      this.rebuild();
      return;
    }
    for (const { sheet, cell } of edits) {
      this.calculation.edit({ sheet, ...cell });
      this.held.note({ sheet, row: cell.row, column: cell.column });
    }
  }

  rulesAt({ sheet, row, column }: CellPlace): readonly Validation[] {
    const rules = this.openedAs(this.calculatedSheets[sheet])?.validations ?? [];
    return rules.filter(({ areas }) => areas.some((area) => areaContains(area, row, column)));
  }

  /** The content of a cell as it would be typed. */
  typedText({ sheet, row, column }: CellPlace): string {
    const { value, formula } = this.cells(this.sheetName(sheet)).typed(row, column);
    return formula === undefined ? String(value ?? '') : `=${formula}`;
  }

  /** The selected cell, if there is a list to choose from. */
  private listCell(): GridPlace | undefined {
    const { unitId } = this;
    const { row, column } = this.place();
    const subUnitId = this.workbook.getActiveSheet().getSheetId();
    const place = this.placeOf(unitId, subUnitId, row, column);
    const hasList =
      place !== undefined &&
      this.rulesAt(place).some(({ kind, showsArrow }) => kind === 'list' && showsArrow);
    return hasList ? { unitId, subUnitId, row, col: column } : undefined;
  }

  private showTroubles(): void {
    const sheets = [...this.calculation.troubles.bySheet()].sort(([a], [b]) => a - b);
    this.troubleMarks.show(
      sheets.flatMap(([sheet, cells]) => {
        const name = this.sheetName(sheet);
        return name === '' ? [] : [{ sheet: name, count: cells.length }];
      }),
    );
  }

  private toNextTrouble(name: string): void {
    const here = this.place();
    for (const [sheet, cells] of this.calculation.troubles.bySheet()) {
      if (this.sheetName(sheet) !== name) continue;
      const next = nextOf(cells, here.sheet === name ? here : undefined);
      if (next) this.select(name, next.row, next.column);
    }
  }

  /** Texts as they would be typed, from the selected cell on: one step to undo. */
  private paste(table: readonly (readonly string[])[]): void {
    const { sheet, row, column } = this.place();
    const cells: WrittenCells = {};
    table.forEach((line, down) => {
      cells[row + down] = Object.fromEntries(line.map((text, across) => [column + across, pastedCell(text)]));
    });
    this.write(new Map([[sheet, cells]]));
  }

  /** Writes many cells, by the names of their sheets: one step to undo. */
  write(sheets: ReadonlyMap<string, WrittenCells>): void {
    if (this.refuses?.({ id: SetRangeValuesCommand.id, params: undefined })) return;
    writeCells(
      this.injector,
      this.unitId,
      Array.from(sheets, ([name, cells]) => ({ sheet: this.sheet(name).getSheet(), cells })),
    );
  }

  /** Calculates the workbook as the grid holds it. */
  private rebuild(): void {
    const sheets = this.workbook.getSheets().map((one) => one.getSheet());
    const before = sheets.map((sheet) => this.cellsOf(sheet));
    this.calculatedSheets = sheets.map((sheet) => sheet.getSheetId());
    void this.calculation.load(gridContent(this.opened, sheets, before, (id) => this.isDate(id)));
  }

  /** Shows what was calculated. */
  private put({ places, stopped }: Calculated): void {
    const targets = this.calculatedSheets.map((id): Target | undefined => {
      const sheet = this.workbook.getSheetBySheetId(id)?.getSheet();
      if (!sheet) return undefined;
      const cells = this.cellsOf(sheet);
      return {
        sheetId: id,
        value: (row, column) => cells.read(row, column).value,
        shown: (row, column) => cells.data(row, column),
        formulas: () => cells.formulaPlaces(),
      };
    });
    const placed = <T extends CellPlace>(all: readonly T[]): (T & Place)[] =>
      all.flatMap((one) => {
        const target = targets[one.sheet];
        return target ? [{ ...one, target }] : [];
      });
    const changed = stopped ? everyFormula(targets) : placed(places);
    putSpills(this.injector, this.unitId, placed(this.calculation.spills()));
    putValues(this.injector, this.unitId, changed);
    this.entries?.answer();
    if (this.colors.forget()) this.workbook.getActiveSheet().refreshCanvas();
    this.options.onKept(this.calculation.keptCells());
    this.showTroubles();
    this.held.tell();
    this.drawings.refresh();
    this.look();
  }

  /** The grid's plugins start with the first workbook; before it they have nothing to listen to. */
  private setUp(): void {
    fitNumbers(this.injector);
    addToCellMenu(this.api, () => this.asksForm?.());
    drawRuleColors(this.injector, this.colors, this.placeOf);
    explainErrors(this.injector, (id, row, column) => {
      const sheet = this.workbook.getSheetBySheetId(id)?.getSheet();
      return sheet && this.cellsOf(sheet).read(row, column).value;
    });
    guardEntries(this.injector, ({ unitId, subUnitId, row, col }) =>
      this.held.stays(this.placeOf(unitId, subUnitId, row, col)),
    );
    openLists(this.injector, this.container, {
      listCell: () => this.listCell(),
      focus: () => {
        this.focus();
      },
    });
    readOwnSign(this.injector);
    editWholeNumbers(this.injector);
    formatEntries(this.injector);
    takePastes(this.injector, {
      corner: () => this.place(),
      write: (table) => {
        this.paste(table);
      },
      tell: this.options.onRefusedPaste,
    });
    markNotes(this.injector, (unitId, id, row, column) => {
      return unitId === this.unitId && this.noted.has(`${id} ${row} ${column}`);
    });
    drawFilterArrows(
      this.injector,
      (unitId, id) => (unitId === this.unitId ? this.openedAs(id) : undefined),
      () => {
        // The grid selects the cell by the same click.
        setTimeout(() => this.opensFilter?.());
      },
    );
    moveWhatIsCut(this.injector, ({ unitId, subUnitId, area }) => {
      const sheet = this.workbook.getSheetBySheetId(subUnitId)?.getSheetName();
      if (unitId !== this.unitId || sheet === undefined) return false;
      this.movesCut?.({ sheet, area });
      return true;
    });
    this.injector.get(IUIPartsService).registerComponent(BuiltInUIPart.HEADER, () => this.options.note);
    this.api.addEvent(this.api.Event.SelectionChanged, this.look);
    this.api.addEvent(this.api.Event.ActiveSheetChanged, this.look);
  }

  private readonly look = (): void => {
    this.lookListeners.forEach((heard) => {
      heard();
    });
  };
}
