/** Undo and redo of acts that replace the workbook on show: the grid's own steps end there, and ours stand between. */
import { CommandType, ICommandService, IUndoRedoService } from '@univerjs/core';
import type { Injector } from '@univerjs/core';
import type { Workbook } from '../package/model';

/** A workbook as it stood, and where a person was in it. */
export interface Snapshot {
  readonly workbook: Workbook;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Whole workbooks are kept. */
const MOST = 30;
const STEP = 'moldsheet.mutation.step';

export class History {
  private past: Snapshot[] = [];
  private future: Snapshot[] = [];

  clear(): void {
    this.past = [];
    this.future = [];
  }

  /** An act was carried out; `before` is the workbook without it. */
  acted(before: Snapshot): void {
    this.past = [...this.past, before].slice(-MOST);
    this.future = [];
  }

  /** The workbook to show instead of the present one. */
  back(present: Snapshot): Snapshot | undefined {
    const target = this.past.pop();
    if (target) this.future.push(present);
    return target;
  }

  forth(present: Snapshot): Snapshot | undefined {
    const target = this.future.pop();
    if (target) this.past.push(present);
    return target;
  }

  /** Puts the steps to the neighbouring workbooks into the grid's lists, once another workbook is on show. */
  offer(injector: Injector, unitID: string): void {
    const steps = injector.get(IUndoRedoService);
    const step = (to: 'back' | 'forth' | 'here') => [{ id: STEP, params: { unitId: unitID, to } }];
    if (this.past.length > 0)
      steps.pushUndoRedo({ unitID, undoMutations: step('back'), redoMutations: step('here') });
    if (this.future.length === 0) return;
    steps.pushUndoRedo({ unitID, undoMutations: step('here'), redoMutations: step('forth') });
    steps.popUndoToRedo();
  }
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
