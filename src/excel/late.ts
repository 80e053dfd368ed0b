import { CellError } from '../cells/value';
import { writeAnswer, type ExcelAnswer } from './cells';

/** Excel shows #BUSY! for good while a promise does not settle. */
const LIMIT_MS = 5000;

const WORDS =
  'The texts of the functions could not be loaded within 5 s. See whether the add-in’s server can be reached, then enter this formula again.';

/** The answer of a function whose code comes when it is first asked for; says so in words where it does not come. */
export async function lateAnswer(id: string, given: readonly unknown[]): Promise<ExcelAnswer> {
  const loaded = await inTime(import('./whole'));
  return loaded ? loaded.answerOf(id, given) : writeAnswer([[new CellError('#N/A', WORDS)]]);
}

/** What a promise gives; nothing where it fails or takes too long. */
function inTime<T>(promise: Promise<T>): Promise<T | undefined> {
  return new Promise((resolve) => {
    const timer = setTimeout(() => {
      resolve(undefined);
    }, LIMIT_MS);
    promise
      .then(resolve, () => {
        resolve(undefined);
      })
      .finally(() => {
        clearTimeout(timer);
      });
  });
}
