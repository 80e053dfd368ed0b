import {
  CanceledError,
  CommandType,
  ICommandService,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  UniverInstanceType,
} from '@univerjs/core';
import type { Injector, IWorkbookData, Workbook as GridWorkbook } from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import {
  BuiltInUIPart,
  CalculationMode,
  CellAlertManagerService,
  IUIPartsService,
  SetFormulaCalculationStartMutation,
  SetSelectionsOperation,
  UniverSheetsCorePreset,
} from '@univerjs/preset-sheets-core';
import enUS from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsConditionalFormattingPlugin } from '@univerjs/sheets-conditional-formatting';
import {
  OpenConditionalFormattingOperator,
  UniverSheetsConditionalFormattingUIPlugin,
} from '@univerjs/sheets-conditional-formatting-ui';
import formattingUIText from '@univerjs/sheets-conditional-formatting-ui/locale/en-US';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import validationText from '@univerjs/sheets-data-validation/locale/en-US';
import { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
import validationUIText from '@univerjs/sheets-data-validation-ui/locale/en-US';
import { UniverSheetsTablePlugin } from '@univerjs/sheets-table';
import type { ComponentType } from 'react';
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/sheets-data-validation-ui/lib/index.css';
import '@univerjs/sheets-conditional-formatting-ui/lib/index.css';
import { CellError } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { engineFunctions } from '../workbook/engine/functions';
import { gridData, sheetId } from '../workbook/engine/gridData';
import { Refusals } from '../workbook/engine/refusals';
import type { Workbook } from '../package/model';
import { functionDescriptions } from './functionDescriptions';
import { GridCells } from './gridCells';
import type { GridCommand } from './limits';
import type { AddedSheet } from './newSheets';
import { fitNumbers } from './numbersFit';
import { ruleResources } from './rules';
import { gridTheme } from './theme';

type FWorkbook = NonNullable<ReturnType<FUniver['getWorkbook']>>;
type FWorksheet = ReturnType<FWorkbook['getActiveSheet']>;

export interface GridOptions {
  readonly functions: readonly WorksheetFunction[];
  /** Stands under the formula bar. */
  readonly note: ComponentType;
  readonly dark: boolean;
}

/** The spreadsheet grid: shows one workbook at a time and calculates it. */
export class Grid {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly refusals = new Refusals();
  private readonly univer: Univer;
  private count = 0;
  private opened = 0;
  /** Asked before every command on sheets; true stops it. */
  refuses: ((command: GridCommand) => boolean) | undefined;
  private readonly editListeners = new Set<(edit: GridCommand) => void>();
  private readonly lookListeners = new Set<() => void>();

  constructor(
    container: HTMLElement,
    private readonly options: GridOptions,
  ) {
    this.univer = new Univer({
      theme: gridTheme,
      darkMode: options.dark,
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: mergeLocales(enUS, validationText, validationUIText, formattingUIText) },
      logLevel: LogLevel.ERROR,
    });
    const preset = UniverSheetsCorePreset({
      container,
      ribbonType: 'simple',
      formula: {
        function: engineFunctions(options.functions, this.refusals),
        description: functionDescriptions(options.functions),
        initialFormulaComputing: CalculationMode.FORCED,
      },
    });
    for (const plugin of preset.plugins) {
      if (Array.isArray(plugin)) this.univer.registerPlugin(plugin[0], plugin[1]);
      else this.univer.registerPlugin(plugin);
    }
    this.univer.registerPlugin(UniverSheetsTablePlugin);
    // Rules are shown and kept; changing them would not reach the file, so their menus stay away.
    this.univer.registerPlugin(UniverSheetsDataValidationPlugin);
    this.univer.registerPlugin(UniverSheetsDataValidationUIPlugin, {
      menu: { 'sheet.menu.data-validation': { hidden: true } },
      showEditOnDropdown: false,
    });
    this.univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
    this.univer.registerPlugin(UniverSheetsConditionalFormattingUIPlugin, {
      menu: { [OpenConditionalFormattingOperator.id]: { hidden: true } },
    });
    this.api = FUniver.newAPI(this.univer);
    this.injector = this.univer.__getInjector();
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

  sheet(name: string): FWorksheet {
    const sheet = this.workbook.getSheetByName(name);
    if (!sheet) throw new Error(`The workbook has no sheet "${name}".`);
    return sheet;
  }

  /** The content of a sheet, by its name. */
  cells(name: string): GridCells {
    return new GridCells(this, this.sheet(name).getSheet(), this.workbook.getWorkbook().getStyles());
  }

  /** The sheet that stood at this place when the workbook was opened, wherever it is and whatever it is called now. */
  openedSheet(index: number): GridCells | undefined {
    const sheet = this.workbook.getSheetBySheetId(sheetId(index));
    return sheet ? this.cells(sheet.getSheetName()) : undefined;
  }

  /** The sheets that were added since the workbook was opened. */
  addedSheets(): AddedSheet[] {
    return this.workbook
      .getSheets()
      .filter((sheet) => this.indexOf(sheet.getSheetId()) === undefined)
      .map((sheet) => ({ sheet: sheet.getSheet(), cells: this.cells(sheet.getSheetName()) }));
  }

  /** Names and their formulas without `=`. */
  definedNames(): [string, string][] {
    return this.workbook
      .getDefinedNames()
      .map((one) => [one.getName(), one.getFormulaOrRefString().replace(/^=/, '')]);
  }

  private dataOf(workbook: Workbook): IWorkbookData {
    const data = gridData(workbook, this.unitId);
    return { ...data, resources: [...(data.resources ?? []), ...ruleResources(workbook)] };
  }

  private indexOf(id: string): number | undefined {
    const found = Array.from({ length: this.opened }, (_, index) => sheetId(index)).indexOf(id);
    return found < 0 ? undefined : found;
  }

  /** A command that names no sheet is for the one in front. */
  private openedIndex(params: object | undefined): number | undefined {
    const { subUnitId } = (params ?? {}) as { subUnitId?: string };
    return this.indexOf(subUnitId ?? this.api.getActiveWorkbook()?.getActiveSheet().getSheetId() ?? '');
  }

  /** What the sheet that stood at this place when the workbook was opened is called now. */
  openedName(index: number): string | undefined {
    return this.workbook.getSheetBySheetId(sheetId(index))?.getSheetName();
  }

  /** Takes over what is being typed into a cell. */
  async finishEditing(): Promise<void> {
    if (this.workbook.isCellEditing()) await this.workbook.endEditingAsync(true);
  }

  /** Replaces the workbook on show, and waits until it is calculated. */
  async show(workbook: Workbook): Promise<void> {
    const before = this.count > 0 ? this.unitId : undefined;
    this.count += 1;
    this.opened = workbook.sheets.length;
    this.univer.createUnit<unknown, GridWorkbook>(UniverInstanceType.UNIVER_SHEET, this.dataOf(workbook));
    if (before === undefined) this.setUp();
    else this.api.disposeUnit(before);
    await this.calculated();
  }

  /** Waits until no calculation is under way. */
  async calculated(): Promise<void> {
    await this.api.getFormula().onCalculationResultApplied();
  }

  setDark(dark: boolean): void {
    this.api.toggleDarkMode(dark);
  }

  /** Calls back after every change a person made to the workbook. */
  onEdit(listener: (edit: GridCommand) => void): () => void {
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
      if (id === SetFormulaCalculationStartMutation.id) this.refusals.begin();
      if (!id.startsWith('sheet.command.')) return;
      // The grid's own way to stop a command is an exception that it knows.
      if (this.refuses?.({ id, openedSheet: this.openedIndex(params) })) throw new CanceledError();
    });
    commands.onCommandExecuted(({ id, type, params }, options) => {
      // The grid's own event leaves out the first selection after a workbook was opened.
      if (id === SetSelectionsOperation.id) this.look();
      // Results of formulas, and what concerns only this screen, are marked local: they are no edits.
      if (type !== CommandType.MUTATION || !id.startsWith('sheet.mutation.') || options?.onlyLocal) return;
      const edit = { id, openedSheet: this.openedIndex(params) };
      this.editListeners.forEach((heard) => {
        heard(edit);
      });
    });
  }

  /** The grid's own words for an error say no more than its code; the function that refused knows better. */
  private explainErrors(): void {
    const alerts = this.injector.get(CellAlertManagerService);
    const show = alerts.showAlert.bind(alerts);
    alerts.showAlert = (alert) => {
      const { row, col, subUnitId } = alert.location;
      const sheet = this.workbook.getSheetBySheetId(subUnitId);
      const value = sheet && this.cells(sheet.getSheetName()).read(row, col).value;
      const why = value instanceof CellError ? value.message : '';
      show(
        value instanceof CellError && why ? { ...alert, title: value.code, message: why, width: 320 } : alert,
      );
    };
  }

  /** The grid's plugins start with the first workbook; before it they have nothing to listen to. */
  private setUp(): void {
    fitNumbers(this.injector);
    this.explainErrors();
    this.injector.get(IUIPartsService).registerComponent(BuiltInUIPart.HEADER, () => this.options.note);
    this.api.addEvent(this.api.Event.SelectionChanged, this.look);
    this.api.addEvent(this.api.Event.ActiveSheetChanged, this.look);
    this.api.getFormula().calculationResultApplied(this.look);
  }

  private readonly look = (): void => {
    this.lookListeners.forEach((heard) => {
      heard();
    });
  };
}
