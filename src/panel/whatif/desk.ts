import { CellError } from '../../cells/value';
import { withUnit, numberText } from '../../core/format';
import { Refusal } from '../../core/refusal';
import type { CellView } from '../../workbook/cells';
import { areaAddress } from '../../cells/address';
import type { Heading } from '../../whatif/heading';
import { headingOf } from '../../whatif/heading';
import type { CellRef } from '../../whatif/plan';
import { cellText, readCell, readCells, viewOf } from '../../whatif/plan';
import type { Held, Outcome, RunOptions, TrialCells } from '../../whatif/run';
import { putBack, runWhatIf } from '../../whatif/run';
import type { Solution } from '../../whatif/solve';
import { solveSheet } from '../../whatif/solve';
import { clipboardOf } from '../../whatif/table';
import { readBracket, readValues } from '../../whatif/values';
import type { Host, KeptState, Range } from '../host';
import { latest } from '../latest';
import { Store } from '../store';
import { journalOf, type KeptJournal } from './journal';
import { messageOf } from '../messageOf';

export type Mode = 'table' | 'solve' | 'variants';

/** A cell to vary, as far as it is filled in. */
export interface InputDraft {
  readonly address: string;
  readonly values: string;
  /** What the sheet says of the cell; undefined until it is a cell. */
  readonly heading?: Heading;
  readonly view?: CellView;
}

export interface DeskState {
  readonly mode: Mode;
  readonly inputs: readonly InputDraft[];
  readonly overFormulas: boolean;
  /** Addresses of result cells, by comma. */
  readonly read: string;
  readonly results: readonly Heading[];
  readonly target: string;
  readonly progress?: { readonly done: number; readonly of: number } | undefined;
  readonly outcome?: Outcome | undefined;
  readonly solution?: Solution | undefined;
  readonly problem?: string | undefined;
  readonly notice?: string | undefined;
  /** What a run that was torn off had not put back. */
  readonly torn?: readonly Held[] | undefined;
  /** What-ifs that stay in the workbook. */
  readonly kept: readonly KeptState[];
}

const EMPTY: InputDraft = { address: '', values: '' };
const CANCELLED = 'Cancelled. Nothing has changed.';

/** How long a person pauses in typing before the cells named are looked up, in ms. */
const QUIET = 250;

/** Progress is told at most so often, in ms. */
const TELL = 60;

/** The what-if of one workbook: it lasts while the panel shows other pages, and a run goes on meanwhile. */
export class WhatIfDesk extends Store<DeskState> {
  private readonly journal: KeptJournal;
  private stop: AbortController | undefined;
  private looking: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly host: Host) {
    const journal = journalOf(host.address ?? '');
    super({
      mode: 'table',
      inputs: [EMPTY],
      overFormulas: false,
      read: '',
      results: [],
      target: '',
      torn: journal.tornOff(),
      kept: [],
    });
    this.journal = journal;
    const look = () => void this.lookAtKept();
    host.onSelectionChange(look);
    look();
  }

  setMode(mode: Mode): void {
    this.set({ mode, problem: undefined, notice: undefined });
  }

  setAddress(index: number, address: string): void {
    const { values } = this.state.inputs[index] ?? EMPTY;
    this.setInput(index, { address, values });
    this.lookSoon();
  }

  setValues(index: number, values: string): void {
    this.setInput(index, { ...(this.state.inputs[index] ?? EMPTY), values });
  }

  setRead(read: string): void {
    this.set({ read, results: [], problem: undefined });
    this.lookSoon();
  }

  setTarget(target: string): void {
    this.set({ target, problem: undefined });
  }

  setOverFormulas(overFormulas: boolean): void {
    this.set({ overFormulas, problem: undefined });
  }

  addInput(): void {
    this.set({ inputs: [...this.state.inputs, EMPTY] });
  }

  removeInput(index: number): void {
    this.set({ inputs: this.state.inputs.filter((_, other) => other !== index), problem: undefined });
  }

  /** Varies the cell that is selected. */
  async takeInput(index: number): Promise<void> {
    const selected = await this.host.readSelection();
    if (!selected) return;
    this.setAddress(index, cellText(selected));
    await this.look();
  }

  /** Reads the cells that are selected as well. */
  async takeResults(): Promise<void> {
    const selected = await this.host.readSelection();
    if (!selected) return;
    const { read } = this.state;
    this.setRead(
      read.trim() === '' || this.state.mode === 'solve'
        ? rangeText(selected)
        : `${read}, ${rangeText(selected)}`,
    );
    await this.look();
  }

  /** Finds out what the sheet says of the cells named so far; what is no cell yet stays without. */
  async look(): Promise<void> {
    clearTimeout(this.looking);
    const sheet = await this.sheetInFront();
    const { inputs, read } = this.state;
    const inputsNow = await Promise.all(
      inputs.map(async ({ address, values }): Promise<InputDraft> => {
        const found = await this.describe(address, sheet);
        return { address, values, ...found };
      }),
    );
    const results = await Promise.all(
      cellsIn(read, sheet).map((cell) => headingOf(this.host, cell).catch(() => undefined)),
    );
    // Typing goes on while the sheet is read.
    if (read === this.state.read) this.set({ results: results.filter((one) => one !== undefined) });
    if (inputs === this.state.inputs) this.set({ inputs: inputsNow });
  }

  async run(): Promise<void> {
    await this.progressing(async (options) => {
      const sheet = await this.sheetInFront();
      if (this.state.mode === 'table') await this.runTable(sheet, options);
      else await this.runSolve(sheet, options);
    });
  }

  private async progressing(part: (options: RunOptions) => Promise<void>): Promise<void> {
    const stop = new AbortController();
    this.stop = stop;
    this.set({
      problem: undefined,
      notice: undefined,
      outcome: undefined,
      solution: undefined,
      progress: { done: 0, of: NaN },
    });
    let told = 0;
    try {
      await part({
        signal: stop.signal,
        onProgress: (done, of) => {
          const now = performance.now();
          if (now - told < TELL && done !== of) return;
          told = now;
          this.set({ progress: { done, of } });
        },
      });
    } catch (error) {
      this.set({ problem: messageOf(error) });
    } finally {
      this.stop = undefined;
      this.set({ progress: undefined });
    }
  }

  /** Runs a what-if that stays in the workbook again. */
  async again({ kept }: KeptState): Promise<void> {
    await this.progressing(async (options) => {
      const outcome = await this.host.kept.again(kept, options);
      this.set(
        outcome
          ? { notice: `${kept.made.sheet}: ${outcome.rows.length} variations run again.` }
          : { notice: 'Stopped. The table is as it was.' },
      );
    });
  }

  cancel(): void {
    this.stop?.abort();
  }

  /** Puts the table on a sheet of its own. */
  async write(): Promise<void> {
    const { outcome } = this.state;
    if (!outcome) return;
    await this.telling(async () => {
      const sheet = await this.host.kept.keep(outcome);
      await this.lookAtKept();
      return `Written to the sheet ${sheet}, with a chart. It says when to run it again.`;
    });
  }

  async copy(): Promise<void> {
    const { outcome } = this.state;
    if (!outcome) return;
    await this.telling(async () => {
      await navigator.clipboard.writeText(clipboardOf(outcome));
      return `Copied: ${outcome.rows.length} lines, to be pasted into a worksheet.`;
    });
  }

  /** Types the solution into the workbook. */
  async enter(): Promise<void> {
    const { solution } = this.state;
    if (!solution) return;
    await this.telling(async () => {
      const { cell } = solution.input;
      await this.host.write({ ...cell, rows: 1, columns: 1 }, [[solution.value]]);
      return `${cellText(cell)} is ${withUnit(numberText(solution.value), solution.input.unit)} now.`;
    });
  }

  /** Puts back what a run that was torn off had changed. */
  async restore(): Promise<void> {
    const { torn } = this.state;
    if (!torn) return;
    await this.telling(async () => {
      await putBack(this.host, torn);
      this.forget();
      return 'The inputs are as they were.';
    });
  }

  forget(): void {
    this.journal.clear();
    this.set({ torn: undefined });
  }

  private readonly lookAtKept = latest(async () => {
    const kept = await this.host.kept.list();
    if (JSON.stringify(kept) !== JSON.stringify(this.state.kept)) this.set({ kept });
  });

  private lookSoon(): void {
    clearTimeout(this.looking);
    this.looking = setTimeout(() => void this.look(), QUIET);
  }

  private async runTable(sheet: string, options: RunOptions): Promise<void> {
    const { inputs, read, overFormulas } = this.state;
    const plan = {
      vary: inputs.map(({ address, values }) => ({
        cell: readCell(address, sheet),
        values: readValues(values),
      })),
      results: readCells(read, sheet),
      overFormulas,
    };
    const inputCells = plan.vary.map(({ cell }) => cell);
    const outcome = await this.trying(inputCells, plan.results, (cells, journaled) =>
      runWhatIf(cells, plan, { ...options, ...journaled }),
    );
    this.set(outcome.rows.length > 0 ? { outcome } : { notice: CANCELLED });
  }

  private async runSolve(sheet: string, options: RunOptions): Promise<void> {
    const { inputs, read, target, overFormulas } = this.state;
    const [{ address, values } = EMPTY] = inputs;
    const [result, ...more] = readCells(read, sheet);
    if (!result || more.length > 0) throw new Refusal('Choose one cell to bring to the target.');
    const wanted = Number(target);
    if (target.trim() === '' || !Number.isFinite(wanted)) throw new Refusal('Give the target as a number.');
    const goal = {
      vary: readCell(address, sheet),
      ...readBracket(values),
      result,
      target: wanted,
      overFormulas,
    };
    const solution = await this.trying([goal.vary], [result], (cells, journaled) =>
      solveSheet(cells, goal, { ...options, ...journaled }),
    );
    this.set(solution ? { solution } : { notice: CANCELLED });
  }

  /** Tries on a copy, else in the workbook itself, with a journal of what it held. */
  private async trying<T>(
    inputs: readonly CellRef[],
    results: readonly CellRef[],
    part: (cells: TrialCells, journaled: Pick<RunOptions, 'journal'>) => Promise<T>,
  ): Promise<T> {
    const copy = await this.host.copy?.(inputs, results);
    try {
      return await part(copy ?? this.host, copy ? {} : { journal: this.journal });
    } finally {
      copy?.dispose();
    }
  }

  private async describe(address: string, sheet: string): Promise<Pick<InputDraft, 'heading' | 'view'>> {
    try {
      const cell = readCell(address, sheet);
      const view = await viewOf(this.host, cell);
      return { heading: await headingOf(this.host, cell), view };
    } catch {
      return {};
    }
  }

  private async sheetInFront(): Promise<string> {
    return (await this.host.readSelection())?.sheet ?? '';
  }

  private async telling(part: () => Promise<string>): Promise<void> {
    this.set({ problem: undefined, notice: undefined });
    try {
      this.set({ notice: await part() });
    } catch (error) {
      this.set({ problem: messageOf(error) });
    }
  }

  private setInput(index: number, input: InputDraft): void {
    this.set({
      inputs: this.state.inputs.map((one, other) => (other === index ? input : one)),
      problem: undefined,
    });
  }
}

const desks = new WeakMap<Host, WhatIfDesk>();

export function deskOf(host: Host): WhatIfDesk {
  const desk = desks.get(host) ?? new WhatIfDesk(host);
  desks.set(host, desk);
  return desk;
}

function cellsIn(read: string, sheet: string): CellRef[] {
  try {
    return readCells(read, sheet);
  } catch {
    return [];
  }
}

export const rangeText = ({ sheet, row, column, rows, columns }: Range): string => {
  const area = areaAddress({ top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 });
  const [, end] = area.split(':');
  return `${cellText({ sheet, row, column })}${end === undefined ? '' : `:${end}`}`;
};

/** What an input holds now, for a person to read. */
export function nowText({ view, heading }: InputDraft): string {
  if (!view || !heading) return '';
  const { value } = view;
  if (value === null) return 'blank now';
  if (value instanceof CellError) return `${value.code} now`;
  return `${typeof value === 'number' ? withUnit(numberText(value), heading.unit) : String(value)} now`;
}
