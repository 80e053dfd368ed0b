/// <reference types="office-js" />
import { worksheetFunctions } from '../call/functions';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { NAMESPACE } from '../cells/namespace';
import { OWN_WHAT_IF } from '../derive/excelWords';
import type {
  CellInput,
  CellTrace,
  CellView,
  FormInputs,
  FormOutcome,
  Host,
  Place,
  Range,
  Separator,
  WorkbookTrial,
} from '../panel/host';
import type { CellRef } from '../whatif/plan';
import { callLog } from './callLog';
import { formatAsText, offerWords } from './cellRules';
import { cellValue } from './cellValue';
import { typedFormula } from './formulas';
import { ExcelKept } from './keptWhatIfs';
import { messageOf } from '../panel/messageOf';
import { setPanelState } from './panelState';
import { readSeparator } from './separator';
import { settle } from './settle';
import { ExcelVariants } from './variants';

/** Excel's workbook, as the panel sees it. */
export class ExcelHost implements Host {
  readonly ownWhatIf = OWN_WHAT_IF;
  readonly kept: ExcelKept = new ExcelKept(this);
  readonly variants: ExcelVariants = new ExcelVariants(this);

  get address(): string {
    return Office.context.document.url;
  }

  readSelection(): Promise<Range | undefined> {
    return Excel.run(async (context) => {
      const range = context.workbook.getSelectedRange();
      range.load('rowIndex,columnIndex,rowCount,columnCount');
      range.worksheet.load('name');
      try {
        await context.sync();
      } catch (error) {
        // A chart or several areas are selected.
        if (codeOf(error) === 'InvalidSelection') return undefined;
        throw error;
      }
      const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns, worksheet } = range;
      return { sheet: worksheet.name, row, column, rows, columns };
    });
  }

  onSelectionChange(listener: () => void): () => void {
    const call = (): Promise<void> => {
      listener();
      return Promise.resolve();
    };
    const handlers = Excel.run(async (context) => {
      const { workbook } = context;
      const added = [
        workbook.onSelectionChanged.add(call),
        workbook.worksheets.onCalculated.add(call),
        workbook.worksheets.onChanged.add(call),
      ];
      await context.sync();
      return added;
    });
    return () => {
      void handlers.then((added) =>
        Promise.all(
          added.map((handler) =>
            Excel.run(handler.context, async (context) => {
              handler.remove();
              await context.sync();
            }),
          ),
        ),
      );
    };
  }

  read(range: Range): Promise<CellView[][]> {
    return Excel.run(async (context) => {
      const cells = rangeOf(context, range);
      cells.load('formulas,values,valueTypes,hasSpill');
      await context.sync();
      const formulas = cells.formulas.map((row) => row.map(formulaOf));
      // Its type leaves out null: some of the cells belong to a spill and some do not.
      const isSpilled =
        (cells.hasSpill as boolean | null) === false
          ? () => false
          : await blankSpilled(context, cells, range, formulas);
      return formulas.map((row, down) =>
        row.map((formula, across) => ({
          formula,
          value: cellValue(cells.values[down]?.[across], cells.valueTypes[down]?.[across]),
          ...(isSpilled(down, across) && { spilled: true as const }),
        })),
      );
    });
  }

  write(range: Range, cells: readonly (readonly CellInput[])[]): Promise<void> {
    return Excel.run(async (context) => {
      const columns = Math.max(...cells.map((row) => row.length));
      rangeOf(context, { ...range, rows: cells.length, columns }).formulas = cells.map((row) =>
        Array.from({ length: columns }, (_, across) => typedInput(row[across] ?? null)),
      );
      await context.sync();
    });
  }

  async recalculate(): Promise<void> {
    await Excel.run(async (context) => {
      const { application } = context.workbook;
      application.load('calculationMode');
      await context.sync();
      if (application.calculationMode === Excel.CalculationMode.automatic) return;
      application.calculate(Excel.CalculationType.recalculate);
      await context.sync();
    });
    const settled = await settle({
      lastCall: () => callLog.last,
      isDone,
      shown: readAllValues,
    });
    if (!settled)
      throw new Error('Excel is still calculating. Wait until no cell shows #BUSY!, then try again.');
  }

  /** The formula engine is large: it comes with the first run. */
  async copy(inputs: readonly CellRef[], results: readonly CellRef[]): Promise<WorkbookTrial | undefined> {
    const { copyOfOpenWorkbook } = await import('./trial');
    return copyOfOpenWorkbook(inputs, results);
  }

  offerWords(range: Range, words: readonly string[]): Promise<void> {
    return offerWords(range, words);
  }

  formatAsText(range: Range): Promise<void> {
    return formatAsText(range);
  }

  /** Forms are for the few: what writes them is loaded with the first. */
  async writeForm(fn: WorksheetFunction, at?: Place, inputs?: FormInputs): Promise<FormOutcome> {
    const { writeFormInExcel } = await import('./forms');
    return writeFormInExcel(this, fn, at, inputs);
  }

  readSeparator(): Promise<Separator> {
    return readSeparator();
  }

  /** What depends on what is asked for by few: it is loaded with the first look. */
  async trace(cell: Range): Promise<CellTrace | undefined> {
    const { traceInExcel } = await import('./trace');
    return traceInExcel(cell);
  }

  select(range: Range): void {
    void Excel.run(async (context) => {
      context.workbook.worksheets.getItem(range.sheet).activate();
      rangeOf(context, range).select();
      await context.sync();
    });
  }

  /**
   * An add-in cannot start editing a cell, so the call is entered whole, its arguments left empty. The cell then says
   * which argument is missing, and F2 opens it.
   */
  async insertFormula(text: string): Promise<void> {
    try {
      await Excel.run(async (context) => {
        context.workbook.getActiveCell().formulas = [[wholeCall(text)]];
        await context.sync();
      });
      setPanelState({
        notice: {
          intent: 'info',
          text: 'Entered. Click into the sheet and press F2 to fill in the arguments.',
        },
      });
    } catch (error) {
      // Most often the sheet is protected or a cell is being edited.
      setPanelState({ notice: { intent: 'error', text: `Nothing was entered. ${messageOf(error)}` } });
    }
  }
}

/** `=MOLD.SEAT.FORCE(` → `=MOLD.SEAT.FORCE(,,)`: Excel refuses a call with fewer arguments than it knows required. */
export const wholeCall = (text: string): string => {
  const [, id] = new RegExp(`^=${NAMESPACE}\\.([A-Z0-9._]+)\\($`).exec(text) ?? [];
  const fn = worksheetFunctions.find((one) => one.id === id);
  if (!fn) return text;
  return `${text}${','.repeat(Math.max(0, fn.parameters.filter(({ optional }) => !optional).length - 1))})`;
};

const rangeOf = (context: Excel.RequestContext, { sheet, row, column, rows, columns }: Range): Excel.Range =>
  context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);

const formulaOf = (content: unknown): string =>
  typeof content === 'string' && content.startsWith('=') ? typedFormula(content) : '';

/**
 * Takes the formula away from cells that another cell's formula fills, since Excel repeats it in each of them, and
 * tells which they are.
 */
const blankSpilled = async (
  context: Excel.RequestContext,
  cells: Excel.Range,
  range: Range,
  formulas: string[][],
): Promise<(down: number, across: number) => boolean> => {
  const parents = formulas.flatMap((row, down) =>
    row.flatMap((formula, across) => {
      if (formula === '') return [];
      const parent = cells.getCell(down, across).getSpillParentOrNullObject();
      parent.load('rowIndex,columnIndex');
      return [{ down, across, parent }];
    }),
  );
  await context.sync();
  const spilled = new Set<string>();
  for (const { down, across, parent } of parents) {
    if (parent.isNullObject) continue;
    const isParent = parent.rowIndex === range.row + down && parent.columnIndex === range.column + across;
    const row = formulas[down];
    if (!row || isParent) continue;
    row[across] = '';
    spilled.add(`${down} ${across}`);
  }
  return (down, across) => spilled.has(`${down} ${across}`);
};

/** Excel reads what is written as if it were typed: `12 a` would become a time, `1/2` a date. */
const typedInput = (input: CellInput): number | string | boolean => {
  if (typeof input !== 'string') return input ?? '';
  const isPlainWords = /^\p{L}[\p{L} -]*$/u.test(input) && !/^(true|false)$/i.test(input);
  return input.startsWith('=') || isPlainWords ? input : `'${input}`;
};

const isDone = (): Promise<boolean> =>
  Excel.run(async (context) => {
    const { application } = context.workbook;
    application.load('calculationState');
    await context.sync();
    return application.calculationState === Excel.CalculationState.done;
  });

const readAllValues = (): Promise<string> =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load('items/name');
    await context.sync();
    const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true));
    for (const range of used) range.load('values');
    await context.sync();
    return JSON.stringify(used.map((range) => (range.isNullObject ? [] : range.values)));
  });

const codeOf = (error: unknown): unknown =>
  typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;
