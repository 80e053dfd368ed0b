/** Reads, recalculates and scores one workbook at a time, apart from the rest: it may crash or never end. */
import { readFileSync } from 'node:fs';
import { parentPort } from 'node:worker_threads';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook } from '../../src/package/read';
import { cellFinder, type Workbook } from '../../src/package/model';
import { recalculated } from './recalculated';
import { score, type Recalculated, type Scored } from './score';
import { secondOpinion } from './secondOpinion';

export interface Result {
  readonly file: string;
  readonly scored: readonly Scored[];
  readonly milliseconds: number;
  /** Why there is nothing to score. */
  readonly refused?: string;
}

const ids = worksheetFunctions.map(({ id }) => id);

function stored(book: Workbook): Recalculated {
  const finders = book.sheets.map(cellFinder);
  return (sheet, row, column) => ({ value: finders[sheet]?.(row, column)?.value ?? null });
}

function opinionOn(bytes: Uint8Array, book: Workbook): Recalculated | undefined {
  const file = secondOpinion(bytes);
  if (file === undefined) return undefined;
  try {
    const other = readWorkbook(readFileSync(file), ids);
    const values = stored(other);
    const places = book.sheets.map(({ name }) => other.sheets.findIndex((sheet) => sheet.name === name));
    return (sheet, row, column) => values(places[sheet] ?? -1, row, column);
  } catch {
    return undefined;
  }
}

function result(file: string, asksSecond: boolean): Result {
  const start = performance.now();
  const bytes = readFileSync(file);
  let book: Workbook;
  try {
    book = readWorkbook(bytes, ids);
  } catch (error) {
    return { file, scored: [], milliseconds: 0, refused: (error as Error).message };
  }
  if (book.sheets.every((sheet) => sheet.cells.every((cell) => cell.formula === undefined)))
    return { file, scored: [], milliseconds: 0 };
  const now = recalculated(book);
  const milliseconds = performance.now() - start;
  return { file, scored: score(book, now, asksSecond ? opinionOn(bytes, book) : undefined), milliseconds };
}

parentPort?.on('message', ({ file, asksSecond }: { file: string; asksSecond: boolean }) => {
  try {
    parentPort?.postMessage(result(file, asksSecond));
  } catch (error) {
    const failed = String(error instanceof Error ? error.stack : error);
    parentPort?.postMessage({ file, scored: [], milliseconds: 0, failed });
  }
});
