import { later } from '../../panel/later';

/** Not everybody changes rules and names: their controls come when the tab is first shown. */
export const SheetTabLater = later(async () => (await import('./SheetTab')).SheetTab);
