import { worksheetFunctions } from '../call/functions';
import { readArguments, writeAnswer, type ExcelAnswer } from './cells';

/** Every function with all its texts, apart from the functions of numbers and loaded after them. */
const byId = new Map(worksheetFunctions.map((fn) => [fn.id, fn]));

export function answerOf(id: string, given: readonly unknown[]): ExcelAnswer {
  const fn = byId.get(id);
  if (!fn) throw new Error(`There is no function ${id}.`);
  return writeAnswer(fn.call(readArguments(fn.parameters, given)));
}
