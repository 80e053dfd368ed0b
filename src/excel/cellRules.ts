/// <reference types="office-js" />
import { areaAddress } from '../cells/address';
import type { Range } from '../panel/host';

const rangeIn = ({ workbook }: Excel.RequestContext, { sheet, row, column, rows, columns }: Range) =>
  workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);

const addressOf = ({ row, column, rows, columns }: Range): string =>
  areaAddress({ top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 });

/**
 * Puts a list of words on cells. Typing another spelling of them is allowed, as the functions take it: only the arrow
 * is wanted. Excel reads the words between commas in every country.
 * @throws Error with a message for the person where the cells have a rule already.
 */
export const offerWords = (range: Range, words: readonly string[]): Promise<void> =>
  Excel.run(async (context) => {
    const { dataValidation } = rangeIn(context, range);
    dataValidation.load('type');
    await context.sync();
    // Several cells with different rules have a type of their own, too.
    if (dataValidation.type !== Excel.DataValidationType.none)
      throw new Error(
        `${addressOf(range)} has a rule for its entries already. Take it away first (Data, Data Validation).`,
      );
    dataValidation.rule = { list: { inCellDropDown: true, source: words.join(',') } };
    dataValidation.errorAlert = {
      showAlert: false,
      style: Excel.DataValidationAlertStyle.information,
      title: '',
      message: '',
    };
    await context.sync();
  });

/** Makes cells of text: what is typed there stays as it is. What they hold already stays as well. */
export const formatAsText = (range: Range): Promise<void> =>
  Excel.run(async (context) => {
    rangeIn(context, range).numberFormat = Array.from({ length: range.rows }, () =>
      Array.from({ length: range.columns }, () => '@'),
    );
    await context.sync();
  });
