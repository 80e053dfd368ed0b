import type { CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { Refusal } from '../core/refusal';
import type { CellInput, CellView, WorkbookCells } from '../workbook/cells';
import type { Heading } from './heading';
import { headingOf } from './heading';
import type { CellRef, Plan } from './plan';
import { cellText, checkPlan, combinations, rangeOf, viewOf } from './plan';

/** What an input cell holds: a value or a formula, as it would be typed. */
export interface Held {
  readonly cell: CellRef;
  readonly content: CellInput;
}

/** Keeps what the inputs held, for the case that a run is torn off before it can put them back. */
export interface Journal {
  note(held: readonly Held[]): void;
  clear(): void;
}

/** A workbook, or a copy of it, in which values are tried. */
export interface TrialCells extends WorkbookCells {
  /** Says which cells will be changed and read, so that others need not be calculated. */
  focus?(inputs: readonly CellRef[], read: readonly CellRef[]): void;
}

export interface RunOptions {
  /** Ends the run after the variation under way; what was found until then is kept. */
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
  readonly journal?: Journal;
}

export interface Outcome {
  readonly inputs: readonly (Heading & { readonly now: CellInput; readonly values: readonly CellInput[] })[];
  readonly results: readonly Heading[];
  readonly rows: readonly { readonly inputs: readonly CellInput[]; readonly results: readonly CellValue[] }[];
  /** More than there are rows where the run was cut short. */
  readonly planned: number;
}

export const heldText = (held: readonly Held[]): string =>
  held
    .map(({ cell, content }) => `${cellText(cell)} held ${content === null ? 'nothing' : String(content)}`)
    .join('; ');

/** The inputs could not be put back: says what each one held. */
export class NotPutBack extends Error {
  override readonly name = 'NotPutBack';

  constructor(readonly held: readonly Held[]) {
    super(`The inputs could not be put back. Type them again: ${heldText(held)}.`);
  }
}

/** Puts the values into the inputs one after another, calculates, and collects the results; then puts all back. */
export async function runWhatIf(cells: TrialCells, plan: Plan, options: RunOptions = {}): Promise<Outcome> {
  checkPlan(plan);
  const held = await holdInputs(
    cells,
    plan.vary.map(({ cell }) => cell),
    plan.overFormulas ?? false,
  );
  const inputs = await inOrder(plan.vary, (one) => headingOf(cells, one.cell));
  const results = await inOrder(plan.results, (cell) => headingOf(cells, cell));
  focusOn(
    cells,
    plan.vary.map(({ cell }) => cell),
    results,
  );
  const all = combinations(plan.vary);
  const rows: Outcome['rows'][number][] = [];
  const units = results.map(({ unit }) => new Set([unit]));
  options.onProgress?.(0, all.length);
  await puttingBack(cells, held, options.journal, async () => {
    for (const values of all) {
      if (options.signal?.aborted) return;
      await put(
        cells,
        held.map(({ cell }, index) => ({ cell, content: values[index] ?? null })),
      );
      await cells.recalculate();
      rows.push({
        inputs: values,
        results: await inOrder(results, async ({ cell }) => shown(await viewOf(cells, cell))),
      });
      await inOrder(results, async ({ unitCell }, index) => {
        if (unitCell) units[index]?.add(String(shown(await viewOf(cells, unitCell)) ?? ''));
      });
      options.onProgress?.(rows.length, all.length);
    }
  });
  return {
    inputs: inputs.map((heading, index) => ({
      ...heading,
      now: held[index]?.content ?? null,
      values: plan.vary[index]?.values ?? [],
    })),
    results: results.map((heading, index) =>
      (units[index]?.size ?? 1) > 1 ? { ...heading, unit: 'unit varies' } : heading,
    ),
    rows,
    planned: all.length,
  };
}

export function focusOn(cells: TrialCells, inputs: readonly CellRef[], results: readonly Heading[]): void {
  cells.focus?.(
    inputs,
    results.flatMap(({ cell, unitCell }) => (unitCell ? [cell, unitCell] : [cell])),
  );
}

/** What the inputs hold; refuses what could not be put back exactly, and formulas unless a person has agreed. */
export async function holdInputs(
  cells: WorkbookCells,
  inputs: readonly CellRef[],
  overFormulas: boolean,
): Promise<Held[]> {
  return inOrder(inputs, async (cell) => {
    const view = await viewOf(cells, cell);
    const why = unfit(view, overFormulas);
    if (why !== undefined) throw new Refusal(`${cellText(cell)} ${why}.`);
    return { cell, content: view.formula === '' ? (view.value as CellInput) : view.formula };
  });
}

function unfit({ formula, value, spilled }: CellView, overFormulas: boolean): string | undefined {
  if (spilled) return 'is filled by the formula of another cell; vary the cell that the value is typed into';
  if (formula !== '') {
    return overFormulas
      ? undefined
      : 'holds a formula; vary the cell that it reads, or agree that values stand in for it during the run';
  }
  if (value instanceof CellError) return `holds the error ${value.code}; type a value first`;
  if (typeof value === 'string' && value.startsWith('='))
    return 'holds text that begins with =, which cannot be put back; change it first';
  return undefined;
}

/** Runs a part that changes the inputs, and puts them back whatever becomes of it. */
export async function puttingBack<T>(
  cells: WorkbookCells,
  held: readonly Held[],
  journal: Journal | undefined,
  part: () => Promise<T>,
): Promise<T> {
  journal?.note(held);
  try {
    return await part();
  } finally {
    await putBack(cells, held);
    journal?.clear();
  }
}

/** Writes, looks, and writes once more where the look shows something else. */
export async function putBack(cells: WorkbookCells, held: readonly Held[]): Promise<void> {
  const attempt = async (): Promise<boolean> => {
    try {
      await put(cells, held);
      return await isBack(cells, held);
    } catch {
      return false;
    }
  };
  if (!(await attempt()) && !(await attempt())) throw new NotPutBack(held);
  await cells.recalculate();
}

async function isBack(cells: WorkbookCells, held: readonly Held[]): Promise<boolean> {
  const same = await inOrder(held, async ({ cell, content }) => {
    const { formula, value } = await viewOf(cells, cell);
    return Object.is(formula === '' ? value : formula, content);
  });
  return same.every(Boolean);
}

export async function put(cells: WorkbookCells, inputs: readonly Held[]): Promise<void> {
  await inOrder(inputs, ({ cell, content }) => cells.write(rangeOf(cell), [[content]]));
}

/** A formula that refers to a blank cell shows 0. */
export const shown = ({ formula, value }: CellView): CellValue => (formula === '' ? value : (value ?? 0));

/** One after another: the workbook is one. */
async function inOrder<T, R>(list: readonly T[], part: (one: T, index: number) => Promise<R>): Promise<R[]> {
  const found: R[] = [];
  for (const [index, one] of list.entries()) found.push(await part(one, index));
  return found;
}
