/**
 * Native texts name what is worked out elsewhere by marks, which are put in only when it is known where that stands:
 * in the formula itself, in a LET, in a helper cell, in a table of the data sheet.
 */
const PART = { open: '\uE000', close: '\uE001' } as const;
const COLUMN = { open: '\uE002', close: '\uE003' } as const;

export const partMark = (name: string): string => PART.open + name + PART.close;
export const columnMark = (table: string, column: number): string =>
  `${COLUMN.open}${table}\n${column}${COLUMN.close}`;

const PART_MARK = new RegExp(`${PART.open}([^${PART.close}]*)${PART.close}`, 'g');
const COLUMN_MARK = new RegExp(`${COLUMN.open}([^${COLUMN.close}]*)\n(\\d+)${COLUMN.close}`, 'g');

export const putParts = (text: string, part: (name: string) => string): string =>
  text.replace(PART_MARK, (_, name: string) => part(name));

export const putColumns = (text: string, column: (table: string, at: number) => string): string =>
  text.replace(COLUMN_MARK, (_, table: string, at: string) => column(table, Number(at)));

/** The tables whose columns a text reads. */
export const tablesIn = (text: string): Set<string> =>
  new Set(Array.from(text.matchAll(COLUMN_MARK), (found) => found[1] ?? ''));

/** The parts that a text names itself. */
export const partsIn = (text: string): Set<string> =>
  new Set(Array.from(text.matchAll(PART_MARK), (found) => found[1] ?? ''));

export const isPart = (text: string): boolean => text.startsWith(PART.open);
