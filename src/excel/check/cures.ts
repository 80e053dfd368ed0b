/// <reference types="office-js" />
import { cellAddress } from '../../cells/address';
import type { CellRef } from '../../whatif/plan';
import { reenterFormulas } from '../reenter';
import type { Cure } from './examine';

/** Set in a workbook, it makes Excel ask for the list of functions anew when the workbook is opened again. */
const FETCH_LIST = 'Office.ForceRefreshCustomFunctionsCache';

/** What stands on the button. */
export function labelOf(cure: Cure): string {
  switch (cure.does) {
    case 'go':
      return `Go to ${cellAddress(cure.to.row, cure.to.column)}`;
    case 'enter text':
      return `Write ${cure.text} as text into ${cellAddress(cure.into.row, cure.into.column)}`;
    case 're-enter':
      return 'Enter them again';
    case 'fetch the list':
      return 'Fetch the new list';
    case 'calculate automatically':
      return 'Calculate automatically';
    case 'stop iterating':
      return 'Turn iteration off';
    case 'unprotect':
      return `Unprotect ${cure.sheet}`;
  }
}

/** Does it, and gives what there is to say of it; the sentence is empty where the sheet itself shows it. */
export async function carryOut(cure: Cure): Promise<string> {
  switch (cure.does) {
    case 'go':
      await goTo(cure.to);
      return '';
    case 'enter text':
      await enterText(cure.into, cure.text);
      return `${cellAddress(cure.into.row, cure.into.column)} holds ${cure.text} as text now.`;
    case 're-enter': {
      const { count, locked } = await reenterFormulas();
      const entered = `${count} ${count === 1 ? 'formula' : 'formulas'} entered again.`;
      return locked.length > 0 ? `${entered} Still protected: ${locked.join(', ')}.` : entered;
    }
    case 'fetch the list':
      await fetchList();
      return 'Save this workbook, close it and open it again: Excel then fetches the list of functions anew.';
    case 'calculate automatically':
      await inWorkbook(({ application }) => {
        application.calculationMode = Excel.CalculationMode.automatic;
      });
      return 'Excel calculates automatically now.';
    case 'stop iterating':
      await inWorkbook(({ application }) => {
        application.iterativeCalculation.enabled = false;
      });
      return 'Iterative calculation is off now.';
    case 'unprotect':
      await unprotect(cure.sheet);
      return `${cure.sheet} is not protected any more.`;
  }
}

const inWorkbook = (act: (workbook: Excel.Workbook) => void): Promise<void> =>
  Excel.run(async (context) => {
    act(context.workbook);
    await context.sync();
  });

const rangeAt = ({ worksheets }: Excel.Workbook, { sheet, row, column }: CellRef): Excel.Range =>
  worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1);

const goTo = (cell: CellRef): Promise<void> =>
  inWorkbook((workbook) => {
    workbook.worksheets.getItem(cell.sheet).activate();
    rangeAt(workbook, cell).select();
  });

/** The format comes first: in a cell that is not of text, Excel would make a date of it again. */
const enterText = (cell: CellRef, text: string): Promise<void> =>
  inWorkbook((workbook) => {
    const range = rangeAt(workbook, cell);
    range.numberFormat = [['@']];
    range.values = [[text]];
  });

async function unprotect(sheet: string): Promise<void> {
  try {
    await inWorkbook(({ worksheets }) => {
      worksheets.getItem(sheet).protection.unprotect();
    });
  } catch {
    throw new Error(`${sheet} has a password, which only you can give: Review, Unprotect Sheet.`);
  }
}

const fetchList = (): Promise<void> =>
  new Promise((resolve, reject) => {
    const { settings } = Office.context.document;
    settings.set(FETCH_LIST, true);
    settings.saveAsync(({ status, error }) => {
      if (status === Office.AsyncResultStatus.Succeeded) resolve();
      else reject(new Error(error.message));
    });
  });
