import type { Injector, IUndoRedoItem } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { History, NO_STEPS, offerSteps, ownSteps, type Snapshot, type Steps } from '../../src/page/history';
import type { Workbook } from '../../src/package/model';

/** The grid as far as its steps go: `did` is one of its own, as a person's entry is. */
class Desk {
  readonly history = new History();
  private readonly lists = {
    _undoStacks: new Map<string, IUndoRedoItem[]>(),
    _redoStacks: new Map<string, IUndoRedoItem[]>(),
    _updateStatus: () => undefined,
  };
  private readonly injector = { get: () => this.lists } as unknown as Injector;
  private count = 1;
  private shown = 'opened';

  get unit() {
    return `workbook-${this.count}`;
  }

  did(text: string, extra: object = {}): void {
    const mutation = (to: string) => [{ id: 'set', params: { unitId: this.unit, to, ...extra } }];
    const item = { unitID: this.unit, undoMutations: mutation(`not ${text}`), redoMutations: mutation(text) };
    const { undos } = ownSteps(this.injector, this.unit);
    const ours = this.undoes().length > undos.length ? this.list('_undoStacks').slice(0, 1) : [];
    this.lists._undoStacks.set(this.unit, [...ours, ...undos, item]);
    this.lists._redoStacks.set(this.unit, []);
  }

  act(after: string): void {
    this.history.acted(this.present());
    this.show(after, NO_STEPS);
  }

  /** One step back or forth; says what it was. */
  step(to: 'undo' | 'redo'): string {
    const [from, other] =
      to === 'undo' ? (['_undoStacks', '_redoStacks'] as const) : (['_redoStacks', '_undoStacks'] as const);
    const item = this.list(from).at(-1);
    if (!item) return 'nothing';
    const [mutation] = to === 'undo' ? item.undoMutations : item.redoMutations;
    const params = mutation?.params as { unitId: string; to: string };
    expect(params.unitId).toBe(this.unit);
    const target =
      params.to === 'back'
        ? this.history.back(this.present())
        : params.to === 'forth'
          ? this.history.forth(this.present())
          : undefined;
    if (target) {
      this.show(target.sheet, target);
      return this.shown;
    }
    this.lists[from].set(this.unit, this.list(from).slice(0, -1));
    this.lists[other].set(this.unit, [...this.list(other), item]);
    return params.to;
  }

  undoes(): IUndoRedoItem[] {
    return this.list('_undoStacks');
  }

  private list(which: '_undoStacks' | '_redoStacks'): IUndoRedoItem[] {
    return this.lists[which].get(this.unit) ?? [];
  }

  private present(): Snapshot & Steps {
    const place = { workbook: {} as Workbook, sheet: this.shown, row: 0, column: 0 };
    return { ...place, ...ownSteps(this.injector, this.unit) };
  }

  private show(what: string, steps: Steps): void {
    this.count++;
    this.shown = what;
    offerSteps(this.injector, this.unit, this.history.steps(this.unit, steps));
  }
}

const times = (count: number, step: () => string) => Array.from({ length: count }, step);

describe('the history of acts and entries', () => {
  it('takes back all in the order in which it was done, and does it again', () => {
    const desk = new Desk();
    desk.did('A1');
    desk.did('A2');
    desk.act('row inserted');
    desk.did('A3');
    desk.act('sheet deleted');
    desk.did('A4');
    const undone = ['not A4', 'row inserted', 'not A3', 'opened', 'not A2', 'not A1', 'nothing'];
    expect(times(7, () => desk.step('undo'))).toEqual(undone);
    const redone = ['A1', 'A2', 'row inserted', 'A3', 'sheet deleted', 'A4', 'nothing'];
    expect(times(7, () => desk.step('redo'))).toEqual(redone);
    expect(times(7, () => desk.step('undo'))).toEqual(undone);
  });

  it('forgets what was taken back once something else is done', () => {
    const desk = new Desk();
    desk.did('A1');
    desk.act('row inserted');
    desk.did('A2');
    times(2, () => desk.step('undo'));
    desk.act('column inserted');
    expect(desk.step('redo')).toBe('nothing');
    expect(times(3, () => desk.step('undo'))).toEqual(['opened', 'not A1', 'nothing']);
  });

  it('ends before a copied formula, whose id means nothing in a workbook that was read anew', () => {
    const desk = new Desk();
    desk.did('A1');
    desk.did('fill', { cellValue: { 1: { 0: { si: 'a1b2' } } } });
    desk.did('A2');
    desk.act('row inserted');
    expect(times(3, () => desk.step('undo'))).toEqual(['opened', 'not A2', 'nothing']);
  });
});
