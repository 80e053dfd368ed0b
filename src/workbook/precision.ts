/** What is to be said of workbooks whose rounded numbers a spreadsheet program calculates on with. */
import type { Workbook } from '../package/model';

export const precisionWarning = ({ countsAsShown }: Workbook): string | undefined =>
  countsAsShown &&
  'This workbook is set to calculate with its numbers as they are shown, rounded ("Set precision as displayed" in Excel). Here all digits count, so that results may differ: take the setting off in Excel, or round by formulas.';
