/** What sharing needs of the workbook library, in a part that is loaded when it is first used. */
export { checkWorkbook } from '../../workbook/check';
export { readWorkbook } from '../../package';
export { restoreWorkbook, shareWorkbook } from '../../share';
