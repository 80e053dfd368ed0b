import { beforeEach, describe, expect, it, vi } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { associateCommands, commands } from '../../src/excel/commands';
import { readPanelState, setPanelState } from '../../src/excel/panelState';
import { installStandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

const showAsTaskpane = vi.fn(() => Promise.resolve());
const associated = new Map<string, (event: { completed: () => void }) => void>();

/** Excel with one cell, by the project's stand-in. */
const excelWith = (formula: string, value: CellValue): StandInWorkbook => {
  const workbook = new StandInWorkbook();
  workbook.sheet('Sheet1').put(0, 0, { formula, value });
  const globals: Record<string, unknown> = {};
  installStandIn(globals, (steps) => workbook.execute(steps));
  vi.stubGlobal('Excel', globals['Excel']);
  return workbook;
};

/** A click on the ribbon: comes back when the command says that it is completed. */
const click = (name: string): Promise<void> =>
  new Promise((completed) => {
    associated.get(name)?.({ completed });
  });

beforeEach(() => {
  vi.clearAllMocks();
  setPanelState({ page: 'functions', notice: undefined });
  vi.stubGlobal('Office', {
    actions: {
      associate: (name: string, run: (event: { completed: () => void }) => void) => associated.set(name, run),
    },
    addin: { showAsTaskpane },
  });
  associateCommands();
});

describe('the commands of the ribbon', () => {
  it('are all associated under their names', () => {
    expect([...associated.keys()].sort()).toEqual(Object.keys(commands).sort());
  });

  it('open the panel where their work is done', async () => {
    for (const [command, page] of [
      ['insertDesignSheet', 'sheets'],
      ['showWork', 'work'],
      ['startWhatIf', 'whatif'],
      ['prepareForSharing', 'share'],
    ] as const) {
      await click(command);
      expect(readPanelState().page).toBe(page);
    }
    expect(showAsTaskpane).toHaveBeenCalledTimes(4);
  });

  it('recalculate everything', async () => {
    const workbook = excelWith('MOLD.SEAT.FREEDRAFT(0.15)', 8.53);
    await click('recalculateAll');
    expect(workbook.fullCalculations).toBe(1);
    expect(readPanelState().notice).toBeUndefined();
  });

  it('enter again what shows #NAME? when they recalculate everything, which alone would not heal it', async () => {
    const workbook = excelWith('MOLD.SEAT.FREEDRAFT(0.15)', new CellError('#NAME?'));
    const cell = () => workbook.sheet('Sheet1').getRangeByIndexes(0, 0, 1, 1).values[0]?.[0];
    await workbook.execute([{ op: 'get', from: 0, to: 1, name: 'application' }]);
    await workbook.execute([{ op: 'call', from: 1, to: 2, name: 'calculate', given: ['Full'] }]);
    expect(cell()).toBe('#NAME?');
    await click('recalculateAll');
    // atan 0.15 by hand
    expect(cell()).toBeCloseTo(8.5308, 3);
    expect(readPanelState().notice?.text).toBe('1 formula entered again.');
  });

  it('enter formulas again and say how many', async () => {
    excelWith('_xldudf_MOLD_SEAT_FREEDRAFT(0.15)', new CellError('#NAME?'));
    await click('reenterFormulas');
    expect(readPanelState().notice).toEqual({ intent: 'success', text: '1 formula entered again.' });
    expect(showAsTaskpane).toHaveBeenCalledOnce();
  });

  it('say which sheet is protected', async () => {
    const workbook = excelWith('MOLD.SEAT.FREEDRAFT(0.15)', new CellError('#NAME?'));
    workbook.sheet('Sheet1').protection.protected = true;
    await click('reenterFormulas');
    expect(readPanelState().notice).toMatchObject({
      intent: 'warning',
      text: expect.stringContaining('Unprotect Sheet1') as string,
    });
  });

  it('say that nothing was wrong', async () => {
    excelWith('MOLD.SEAT.FREEDRAFT(0.15)', 8.53);
    await click('reenterFormulas');
    expect(readPanelState().notice?.text).toContain('nothing to enter again');
  });

  it('complete and show the message when Excel refuses', async () => {
    vi.stubGlobal('Excel', { run: () => Promise.reject(new Error('The workbook is being edited.')) });
    await click('reenterFormulas');
    expect(readPanelState().notice).toEqual({ intent: 'error', text: 'The workbook is being edited.' });
  });
});
