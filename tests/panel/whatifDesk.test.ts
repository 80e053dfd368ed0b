import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { CellInput, Host, KeptHost, Range, VariantsHost } from '../../src/panel/host';
import { WhatIfDesk } from '../../src/panel/whatif/desk';
import { cellText } from '../../src/whatif/plan';
import type { Outcome } from '../../src/whatif/run';

const kept = new Map<string, string>();
vi.stubGlobal('localStorage', {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, value: string) => kept.set(key, value),
  removeItem: (key: string) => kept.delete(key),
});

/** A workbook without copies: B1 is typed, C1 is twice that. */
class Bare implements Host {
  typed: CellInput = 5;
  onCalculate: () => void = () => undefined;

  readSelection = () => Promise.resolve({ sheet: 'Insert', row: 0, column: 1, rows: 1, columns: 1 });
  onSelectionChange = () => () => undefined;
  readonly keptOutcomes: Outcome[] = [];
  readonly kept: KeptHost = {
    list: () => Promise.resolve([]),
    keep: (outcome) => {
      this.keptOutcomes.push(outcome);
      return Promise.resolve('What if');
    },
    again: () => Promise.resolve(undefined),
  };
  readonly variants = {} as VariantsHost;
  insertFormula = () => Promise.resolve();

  read({ sheet, row, column, rows, columns }: Range) {
    const view = (address: string) => {
      if (address === 'Insert!B1') return { formula: '', value: this.typed };
      if (address === 'Insert!C1') return { formula: '=B1*2', value: Number(this.typed) * 2 };
      return { formula: '', value: address === 'Insert!A1' ? 'Draft' : null };
    };
    return Promise.resolve(
      Array.from({ length: rows }, (_, down) =>
        Array.from({ length: columns }, (__, right) =>
          view(cellText({ sheet, row: row + down, column: column + right })),
        ),
      ),
    );
  }

  write({ sheet }: Range, cells: readonly (readonly CellInput[])[]) {
    if (sheet === 'Insert') this.typed = cells[0]?.[0] ?? null;
    return Promise.resolve();
  }

  recalculate() {
    this.onCalculate();
    return Promise.resolve();
  }
}

let host: Bare;
let desk: WhatIfDesk;

beforeEach(() => {
  kept.clear();
  host = new Bare();
  desk = new WhatIfDesk(host);
});

async function fillIn(): Promise<void> {
  await desk.takeInput(0);
  desk.setValues(0, '1:3:1');
  desk.setRead('C1');
}

describe('a workbook without copies', () => {
  it('is varied itself, and as before afterwards', async () => {
    await fillIn();
    expect(desk.state.inputs[0]?.heading?.label).toBe('Draft');
    let during = false;
    host.onCalculate = () => {
      during ||= host.typed !== 5 && kept.size === 1;
    };
    await desk.run();
    expect(desk.state.outcome?.rows.map(({ results }) => results)).toEqual([[2], [4], [6]]);
    expect([during, host.typed, kept.size]).toEqual([true, 5, 0]);
  });

  it('is as before after an error, which is said', async () => {
    await fillIn();
    host.onCalculate = () => {
      if (host.typed === 2) throw new Error('Excel is still calculating.');
    };
    await desk.run();
    expect(desk.state.problem).toBe('Excel is still calculating.');
    expect([desk.state.outcome, desk.state.progress, host.typed, kept.size]).toEqual([
      undefined,
      undefined,
      5,
      0,
    ]);
  });

  it('is as before after a cancel, which keeps what was found', async () => {
    await fillIn();
    host.onCalculate = () => {
      if (host.typed === 2) desk.cancel();
    };
    await desk.run();
    expect(desk.state.outcome).toMatchObject({ rows: [{ results: [2] }, { results: [4] }], planned: 3 });
    expect(host.typed).toBe(5);
  });

  it('can be put right by the next panel where a run was torn off', async () => {
    await fillIn();
    const torn = new Promise<void>((resolve) => {
      host.onCalculate = () => {
        if (host.typed === 2) resolve();
      };
    });
    // The panel is gone before this calculation ends.
    host.recalculate = () => {
      host.onCalculate();
      return host.typed === 2 ? new Promise(() => undefined) : Promise.resolve();
    };
    void desk.run();
    await torn;
    const next = new WhatIfDesk(host);
    expect(next.state.torn).toEqual([{ cell: { sheet: 'Insert', row: 0, column: 1 }, content: 5 }]);
    await next.restore();
    expect([host.typed, next.state.torn, kept.size]).toEqual([5, undefined, 0]);
  });

  it('gets the outcome on a sheet of its own', async () => {
    await fillIn();
    await desk.run();
    await desk.write();
    expect(desk.state.notice).toBe(
      'Written to the sheet What if, with a chart. It says when to run it again.',
    );
    expect(host.keptOutcomes).toEqual([desk.state.outcome]);
  });

  it('says what is missing before anything is tried', async () => {
    await desk.run();
    expect(desk.state.problem).toMatch(/is no cell; write it as Insert!C6\.$/);
    expect(host.typed).toBe(5);
  });
});
