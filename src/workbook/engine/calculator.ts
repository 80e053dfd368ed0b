import { ICommandService, LocaleType, LogLevel, Univer, UniverInstanceType } from '@univerjs/core';
import type {
  ICellData,
  Injector,
  IUnitRange,
  Nullable,
  Workbook as GridWorkbook,
  Worksheet,
} from '@univerjs/core';
import {
  FormulaDataModel,
  ICalculateFormulaService,
  IDefinedNamesService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  ISuperTableService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  UniverFormulaEnginePlugin,
} from '@univerjs/engine-formula';
import type {
  BaseReferenceObject,
  BaseValueObject,
  FunctionVariantType,
  ISetFormulaCalculationNotificationMutation,
  ISetFormulaCalculationResultMutation,
  ISetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import type { CellValue, Matrix } from '../../cells/value';
import { CellError } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import type { Area } from '../../cells/address';
import type { Workbook } from '../../package/model';
import { circular } from './circles';
import { engineFunctions } from './functions';
import { gridData, gridNames, gridScalar, sheetId, tableRange } from './gridData';
import { Refusals } from './refusals';
import { Spills } from './spills';
import { gridValue, matrixOf } from './values';

/** The engine's look-up caches are shared by all calculators of the process, by the name of their workbook. */
let calculators = 0;

const CIRCLE = new CellError('#REF!', 'The formula depends on its own result: break the circle.');
const BEHIND_CIRCLE = new CellError('#REF!', 'Passed on from a formula that depends on its own result.');

/** What the service does; its own declaration says that it gives nothing. */
interface FormulaEvaluation {
  calculate(formula: string): Promise<FunctionVariantType | undefined>;
}

/** A cell to change: of a formula by what it says, of anything else by its value. */
export interface Edit {
  /** Index in the workbook's sheets. */
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
}

/**
 * The formula engine without a grid: one workbook, recalculated as often as wanted. Dispose of it when done, since
 * it keeps the process alive.
 */
export class Calculator {
  private readonly unit = `workbook ${++calculators}`;
  private readonly univer: Univer;
  private readonly injector: Injector;
  private readonly commands: ICommandService;
  private readonly grid: GridWorkbook;
  private readonly formulas: FormulaDataModel;
  private readonly refusals = new Refusals();
  /** Cells whose number means nothing, since it goes into itself. */
  private readonly circles = new Map<string, CellError>();
  private isCircular = false;
  /** Cells set since the last calculation; null before the first one. */
  private dirty: IUnitRange[] | null = null;

  constructor(workbook: Workbook, functions: readonly WorksheetFunction[]) {
    this.univer = new Univer({
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: {} },
      logLevel: LogLevel.SILENT,
    });
    this.univer.registerPlugin(UniverFormulaEnginePlugin, {
      function: engineFunctions(functions, this.refusals),
    });
    this.grid = this.univer.createUnit(UniverInstanceType.UNIVER_SHEET, gridData(workbook, this.unit));
    this.injector = this.univer.__getInjector();
    this.commands = this.injector.get(ICommandService);
    this.formulas = this.injector.get(FormulaDataModel);
    this.injector.get(IDefinedNamesService).registerDefinedNames(this.unit, gridNames(workbook));
    const tables = this.injector.get(ISuperTableService);
    workbook.sheets.forEach((sheet, index) => {
      for (const table of sheet.tables) {
        tables.registerTable(this.unit, table.name, {
          sheetId: sheetId(index),
          titleMap: new Map(table.columns.map((name, column) => [name, column])),
          range: tableRange(table),
        });
      }
    });
    const runtime = this.injector.get(IFormulaRuntimeService);
    this.injector.get(ICalculateFormulaService).executionCompleteListener$.subscribe(() => {
      this.isCircular = runtime.isCycleDependency();
    });
    this.commands.onCommandExecuted(({ id, params }) => {
      if (id === SetFormulaCalculationResultMutation.id) {
        this.apply(params as ISetFormulaCalculationResultMutation);
      }
    });
  }

  /** Calculates the whole workbook the first time, then whatever depends on the cells set since. */
  async calculate(): Promise<void> {
    this.refusals.begin();
    // A result that shrinks would leave its old cells to the formulas that read them, and a circle that is not run
    // again would not be noticed: with either, all is done anew.
    const whole = this.forgetSpills() || this.circles.size > 0 || this.dirty === null;
    const start: ISetFormulaCalculationStartMutation = {
      options: null,
      forceCalculation: whole,
      dirtyRanges: this.dirty ?? [],
      dirtyNameMap: {},
      dirtyDefinedNameMap: {},
      dirtyUnitFeatureMap: {},
      dirtyUnitOtherFormulaMap: {},
      clearDependencyTreeCache: {},
    };
    this.dirty = [];
    this.circles.clear();
    await new Promise<void>((resolve) => {
      const listening = this.commands.onCommandExecuted(({ id, params }) => {
        if (id !== SetFormulaCalculationNotificationMutation.id) return;
        if ((params as ISetFormulaCalculationNotificationMutation).functionsExecutedState === undefined)
          return;
        listening.dispose();
        resolve();
      });
      void this.commands.executeCommand(SetFormulaCalculationStartMutation.id, start, { onlyLocal: true });
    });
    if (this.isCircular) await this.findCircles();
  }

  /** Puts values into cells; `calculate` then brings what depends on them up to date. */
  set(edits: readonly Edit[]): void {
    for (const { sheet, row, column, value } of edits) {
      const cells = this.sheet(sheet).getCellMatrix();
      const style = cells.getValue(row, column)?.s;
      cells.setValue(row, column, {
        ...gridScalar(value),
        ...(style !== null && style !== undefined && { s: style }),
      });
      this.dirty?.push({
        unitId: this.unit,
        sheetId: sheetId(sheet),
        range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
      });
    }
  }

  /** The value of a cell, typed, calculated or spilled; an error carries why. */
  value(sheet: number, row: number, column: number): CellValue {
    const circle = this.circles.get(place(sheet, row, column));
    if (circle) return circle;
    const spilled = this.formulas.getArrayFormulaCellData()[this.unit]?.[sheetId(sheet)]?.[row]?.[column];
    const own = this.sheet(sheet).getCellMatrix().getValue(row, column);
    const value = gridValue(own?.f ? own : (spilled ?? own));
    if (!(value instanceof CellError) || value.message) return value;
    return new CellError(value.code, this.why(sheet, row, column, value));
  }

  /** The cells that a formula's result fills, when more than its own. */
  spill(sheet: number, row: number, column: number): Area | undefined {
    const value = gridValue(this.sheet(sheet).getCellMatrix().getValue(row, column));
    const isBlocked = value instanceof CellError && value.code === '#SPILL!';
    return isBlocked ? undefined : this.spillsOf(sheet).from(row, column);
  }

  /** Works out a formula that stands in no cell; what it refers to are the workbook's cells. */
  async evaluate(formula: string): Promise<Matrix> {
    this.refusals.begin();
    this.injector.get(IFormulaCurrentConfigService).loadDataLite();
    // As if it stood in the first cell: some functions ask how large the sheet is.
    const [sheet] = this.grid.getSheets();
    const [rows, columns] = [sheet?.getRowCount() ?? 0, sheet?.getColumnCount() ?? 0];
    this.injector
      .get(IFormulaRuntimeService)
      .setCurrent(0, 0, rows, columns, sheet?.getSheetId() ?? '', this.unit);
    const service = this.injector.get(ICalculateFormulaService) as unknown as FormulaEvaluation;
    const result = await service.calculate(formula);
    if (!result) return [[new CellError('#VALUE!', 'This is not a formula the worksheet can read.')]];
    const value = result.isReferenceObject()
      ? (result as BaseReferenceObject).toArrayValueObject()
      : (result as BaseValueObject);
    return matrixOf(value);
  }

  hasFunction(name: string): boolean {
    return this.injector.get(IFunctionService).hasExecutor(name.toUpperCase());
  }

  dispose(): void {
    this.univer.dispose();
  }

  /** Whether there were any. */
  private forgetSpills(): boolean {
    const any = Object.values(this.formulas.getArrayFormulaRange()[this.unit] ?? {}).some(
      (rows) => Object.keys(rows).length > 0,
    );
    if (any) {
      this.formulas.setArrayFormulaRange({});
      this.formulas.setArrayFormulaCellData({});
    }
    return any;
  }

  private async findCircles(): Promise<void> {
    const all = await this.injector.get(ICalculateFormulaService).getAllDependencyJson();
    const { inCircle, behind } = circular(all.map(({ treeId, parents }) => ({ id: treeId, into: parents })));
    for (const { treeId, subUnitId, row, column } of all) {
      const error = inCircle.has(treeId) ? CIRCLE : behind.has(treeId) ? BEHIND_CIRCLE : undefined;
      if (error) this.circles.set(`${subUnitId} ${row} ${column}`, error);
    }
  }

  private sheet(index: number): Worksheet {
    const found = this.grid.getSheetBySheetId(sheetId(index));
    if (!found) throw new RangeError(`There is no sheet number ${index + 1}.`);
    return found;
  }

  /** Results go into the cells, where the next partial calculation reads them. */
  private apply({ unitData }: ISetFormulaCalculationResultMutation): void {
    for (const [id, rows] of Object.entries(unitData[this.unit] ?? {})) {
      const cells = this.grid.getSheetBySheetId(id)?.getCellMatrix();
      for (const [row, columns] of Object.entries(
        rows as Record<string, Record<string, Nullable<ICellData>>>,
      )) {
        for (const [column, result] of Object.entries(columns)) {
          const cell = cells?.getValue(Number(row), Number(column));
          if (cell?.f) Object.assign(cell, { v: result?.v, t: result?.t });
        }
      }
    }
  }

  private why(sheet: number, row: number, column: number, error: CellError): string {
    const anchor = this.spillsOf(sheet).anchorOf(row, column) ?? { row, column };
    const cell = { unitId: this.unit, sheetId: sheetId(sheet), ...anchor };
    return this.refusals.why(cell, error, row - anchor.row, column - anchor.column);
  }

  private spillsOf(sheet: number): Spills {
    return new Spills(this.formulas, this.unit, sheetId(sheet));
  }
}

function place(sheet: number, row: number, column: number): string {
  return `${sheetId(sheet)} ${row} ${column}`;
}
