import type { Sheet } from '../../src/package/model';

/** A sheet with nothing on it, as one that a spreadsheet adds. */
export const EMPTY_SHEET: Omit<Sheet, 'name' | 'cells'> = {
  state: 'visible',
  columns: [],
  rows: [],
  defaultColumnWidth: 8.43,
  defaultRowHeight: 15,
  merges: [],
  frozen: { rows: 0, columns: 0 },
  showsGridlines: true,
  isProtected: false,
  zoom: 100,
  validations: [],
  conditionalFormats: [],
  hyperlinks: [],
  notes: [],
  tables: [],
};
