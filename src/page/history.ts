/**
 * Undo and redo of acts that replace the workbook on show. The grid's own steps belong to one workbook: they are put away
 * with it and are there again when it comes back, so that all is taken back in the order in which it was done.
 */
import { CommandType, ICommandService, IUndoRedoService } from '@univerjs/core';
import type { IMutationInfo, Injector, IUndoRedoItem } from '@univerjs/core';
import type { Workbook } from '../package/model';

/** A workbook as it stood, and where a person was in it. */
export interface Snapshot {
  readonly workbook: Workbook;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The grid's own steps in a workbook, the last one at the end: what can be taken back, and what can be done again. */
export interface Steps {
  readonly undos: readonly IUndoRedoItem[];
  readonly redos: readonly IUndoRedoItem[];
}

export const NO_STEPS: Steps = { undos: [], redos: [] };

type Kept = Snapshot & Steps;

/** Whole workbooks are kept. */
const MOST = 30;
const STEP = 'moldsheet.mutation.step';

export class History {
  private past: Kept[] = [];
  private future: Kept[] = [];

  clear(): void {
    this.past = [];
    this.future = [];
  }

  /** An act was carried out; `before` is the workbook without it. */
  acted(before: Kept): void {
    this.past = [...this.past, { ...before, redos: [] }].slice(-MOST);
    this.future = [];
  }

  /** The workbook to show instead of the present one, with its steps. */
  back(present: Kept): Kept | undefined {
    const target = this.past.pop();
    if (target) this.future.push(present);
    return target;
  }

  forth(present: Kept): Kept | undefined {
    const target = this.future.pop();
    if (target) this.past.push(present);
    return target;
  }

  /** The grid's list for the workbook on show: its own steps, between those to the neighbouring workbooks. */
  steps(unitID: string, { undos, redos }: Steps): Steps {
    const step = (to: 'back' | 'forth' | 'here') => [{ id: STEP, params: { unitId: unitID, to } }];
    const back = { unitID, undoMutations: step('back'), redoMutations: step('here') };
    const forth = { unitID, undoMutations: step('here'), redoMutations: step('forth') };
    return {
      undos: [...(this.past.length > 0 ? [back] : []), ...inWorkbook(undos, unitID)],
      redos: [...(this.future.length > 0 ? [forth] : []), ...inWorkbook(redos, unitID)],
    };
  }
}

/** The steps as the grid lists them for one of its workbooks. */
interface Lists {
  readonly _undoStacks: Map<string, IUndoRedoItem[]>;
  readonly _redoStacks: Map<string, IUndoRedoItem[]>;
  _updateStatus(): void;
}

const listsOf = (injector: Injector): Lists => injector.get(IUndoRedoService) as unknown as Lists;

const isOurs = ({ undoMutations }: IUndoRedoItem): boolean => undoMutations.some(({ id }) => id === STEP);

/** The grid's own steps in a workbook, without ours. */
export function ownSteps(injector: Injector, unitID: string): Steps {
  const { _undoStacks, _redoStacks } = listsOf(injector);
  const own = (stacks: Lists['_undoStacks']) => (stacks.get(unitID) ?? []).filter((item) => !isOurs(item));
  return { undos: own(_undoStacks), redos: own(_redoStacks) };
}

export function offerSteps(injector: Injector, unitID: string, { undos, redos }: Steps): void {
  const lists = listsOf(injector);
  lists._undoStacks.set(unitID, [...undos]);
  lists._redoStacks.set(unitID, [...redos]);
  lists._updateStatus();
}

/**
 * Steps that were done in a workbook which the grid showed by another id. A copied formula is kept by the id of the
 * first one, which means nothing in a workbook that was read anew: what lies behind such a step is left out.
 */
function inWorkbook(steps: readonly IUndoRedoItem[], unitID: string): IUndoRedoItem[] {
  const isShared = ({ undoMutations, redoMutations }: IUndoRedoItem) =>
    [...undoMutations, ...redoMutations].some(({ params }) => namesShared(params));
  const from = steps.reduce((last, item, at) => (isShared(item) ? at + 1 : last), 0);
  return steps.slice(from).map((item) => {
    const moved = (all: readonly IMutationInfo[]) =>
      all.map((one) => ({ ...one, params: renamed(one.params, item.unitID, unitID) as object }));
    return {
      ...item,
      unitID,
      undoMutations: moved(item.undoMutations),
      redoMutations: moved(item.redoMutations),
    };
  });
}

function namesShared(params: unknown): boolean {
  if (typeof params !== 'object' || params === null) return false;
  return Object.entries(params).some(
    ([key, value]) => (key === 'si' && typeof value === 'string') || namesShared(value),
  );
}

function renamed(params: unknown, from: string, to: string): unknown {
  if (params === from) return to;
  if (Array.isArray(params)) return params.map((one) => renamed(one, from, to));
  if (typeof params !== 'object' || params === null) return params;
  return Object.fromEntries(Object.entries(params).map(([key, value]) => [key, renamed(value, from, to)]));
}

/** Calls back when a person undoes or redoes an act, before the grid has finished its own step. */
export function onStep(injector: Injector, listener: (to: 'back' | 'forth') => void): void {
  injector.get(ICommandService).registerCommand({
    id: STEP,
    type: CommandType.MUTATION,
    handler: (_, params?: { readonly to: 'back' | 'forth' | 'here' }) => {
      const to = params?.to;
      if (to === 'back' || to === 'forth') listener(to);
      return true;
    },
  });
}
