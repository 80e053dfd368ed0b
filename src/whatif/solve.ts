import type { CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { numberText } from '../core/format';
import { Refusal } from '../core/refusal';
import { NotBracketed, rootSteps } from '../core/solve';
import type { CellInput } from '../workbook/cells';
import type { Heading } from './heading';
import { headingOf } from './heading';
import type { CellRef } from './plan';
import { cellText, sameCell, viewOf } from './plan';
import type { RunOptions, TrialCells } from './run';
import { focusOn, holdInputs, put, puttingBack, shown } from './run';

export interface Goal {
  readonly vary: CellRef;
  readonly low: number;
  readonly high: number;
  readonly result: CellRef;
  readonly target: number;
  readonly overFormulas?: boolean;
}

export interface Solution {
  readonly input: Heading & { readonly now: CellInput };
  readonly result: Heading;
  readonly value: number;
  /** What the result shows at this value. */
  readonly met: number;
  readonly runs: number;
  /** The value is an end of the range, so the target may be met beyond it too, or all the way to it. */
  readonly atEnd: boolean;
  /** The target holds beside the value too, and not at this point alone. */
  readonly stretch: boolean;
}

/** Of the bracket: closer than any shop can set, and few calculations of the workbook. */
const TOLERANCE = 1e-12;
/** Of the results at the ends. Near a jump a bracket closes without the result meeting the target. */
const MET = 1e-6;
/** Of the same: what rounding leaves where the target holds on a stretch. */
const SAME = 1e-12;
/** Of the width looked at: how far beside the value a stretch is looked for. */
const BESIDE = 1e-3;

/** Finds the value of one input, between two ends, at which a result cell shows the target; then puts the input back. */
export async function solveSheet(
  cells: TrialCells,
  goal: Goal,
  options: RunOptions = {},
): Promise<Solution | undefined> {
  const { vary, result, target, low, high } = goal;
  if (sameCell(vary, result)) throw new Refusal(`${cellText(vary)} is varied and the result at once.`);
  const held = await holdInputs(cells, [vary], goal.overFormulas ?? false);
  const input = { ...(await headingOf(cells, vary)), now: held[0]?.content ?? null };
  const heading = await headingOf(cells, result);
  focusOn(cells, [vary], [heading]);
  const seen = new Map<number, number>();
  const measure = async (x: number): Promise<number> => {
    await put(cells, [{ cell: vary, content: x }]);
    await cells.recalculate();
    const y = numberIn(shown(await viewOf(cells, result)), result, `${cellText(vary)} = ${x}`);
    seen.set(x, y);
    options.onProgress?.(seen.size, NaN);
    return y;
  };
  const offAt = (x: number): number => Math.abs((seen.get(x) ?? target) - target);
  const holdsBeside = async (x: number): Promise<boolean> => {
    const same = SAME * Math.max(offAt(low), offAt(high), Math.abs(target));
    if (!(offAt(x) <= same)) return false;
    for (const beside of [x - BESIDE * (high - low), x + BESIDE * (high - low)]) {
      if (beside < low || beside > high) continue;
      try {
        if (Math.abs((await measure(beside)) - target) <= same) return true;
      } catch (error) {
        // No number there: the target does not hold on.
        if (!(error instanceof Refusal)) throw error;
      }
    }
    return false;
  };
  let stretch = false;
  const value = await puttingBack(cells, held, options.journal, async () => {
    const steps = rootSteps(low, high, { tolerance: TOLERANCE * Math.max(Math.abs(low), Math.abs(high)) });
    try {
      let step = steps.next(NaN);
      while (!step.done) {
        if (options.signal?.aborted) return undefined;
        step = steps.next((await measure(step.value)) - target);
      }
      const found = step.value;
      stretch = await holdsBeside(found);
      return found;
    } catch (error) {
      if (!(error instanceof NotBracketed)) throw error;
      throw new Refusal(
        `${target} is not between what the ends give: ${cellText(result)} is ${numberText(error.atLow + target)} at ${low} and ${numberText(error.atHigh + target)} at ${high}.`,
      );
    }
  });
  if (value === undefined) return undefined;
  const met = seen.get(value) ?? NaN;
  const reach = Math.max(...[low, high].map((end) => Math.abs((seen.get(end) ?? target) - target)));
  if (Math.abs(met - target) > MET * reach) {
    throw new Refusal(
      `${cellText(result)} jumps over ${target}, at ${cellText(vary)} = ${value}: there it is ${numberText(met)}.`,
    );
  }
  return {
    input,
    result: heading,
    value,
    met,
    runs: seen.size,
    atEnd: value === low || value === high,
    stretch,
  };
}

function numberIn(value: CellValue, cell: CellRef, when: string): number {
  if (typeof value === 'number') return value;
  const what =
    value instanceof CellError
      ? `${value.code} ${value.message}`.trim()
      : value === null
        ? 'nothing'
        : `"${String(value)}"`;
  throw new Refusal(`${cellText(cell)} shows ${what} at ${when}, and a solution needs numbers.`);
}
