import type { WorksheetFunction } from '../call/worksheetFunction';
import { checkDeskOf } from '../panel/share/checkDesk';
import type { WorkbookFiles } from '../panel/share/files';
import type { Workbook } from '../package/model';
import type { KeptCell } from '../sheet/book';
import { newWorkbook, readWorkbook, UnreadableWorkbook } from '../package';
import { DraftKeeper, type Draft } from './drafts';
import { fileOf } from './fileOf';
import { download } from './files';
import type { Grid } from './grid';
import { refusalOf, unkeptBy } from './limits';
import { fetchSample } from './samples';

export interface Notice {
  readonly kind: 'info' | 'warning' | 'error';
  readonly text: string;
}

/** What the page shows of the session; replaced whole at every change. */
export interface SessionState {
  readonly fileName: string;
  /** Holds changes that no file has. */
  readonly unsaved: boolean;
  readonly busy: boolean;
  readonly notice: Notice | null;
  /** Unsaved workbooks that closed tabs left behind. */
  readonly leftBehind: readonly Draft[];
  /** A calculation takes long. */
  readonly calculating: boolean;
  /** Cells that show the value of the file, since their formula cannot be calculated here. */
  readonly kept: readonly KeptPlace[];
}

export interface KeptPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly reason: string;
}

const NEW_FILE = 'design-sheet.xlsx';

/** How long the page waits for further changes before it keeps them. */
const QUIET_MS = 400;

/** The workbook on the desk: opened, changed, kept in the browser and saved to a file. */
export class Session {
  state: SessionState = {
    fileName: NEW_FILE,
    unsaved: false,
    busy: true,
    notice: null,
    leftBehind: [],
    calculating: false,
    kept: [],
  };
  /** For copies of the workbook. */
  readonly files: WorkbookFiles = {
    name: () => this.state.fileName,
    read: () => this.present(),
    open: {
      label: 'Open it here',
      run: (fileName, bytes) => this.open(fileName, () => Promise.resolve(bytes)),
    },
  };
  private opened = newWorkbook();
  private readonly drafts = new DraftKeeper();
  private readonly listeners = new Set<() => void>();
  private readonly ids: readonly string[];
  /** What is kept in the browser is behind what the grid shows. */
  private stale = false;
  /** What was changed that saving leaves as it was. */
  private readonly unkept = new Set<string>();
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly grid: Grid,
    functions: readonly WorksheetFunction[],
  ) {
    this.ids = functions.map(({ id }) => id);
    grid.refuses = (command) => {
      const why = this.state.busy ? undefined : refusalOf(command, this.opened);
      if (why !== undefined) this.notify('warning', why);
      return why !== undefined;
    };
    grid.onEdit((edit) => {
      if (this.state.busy) return;
      const unkept = unkeptBy(edit);
      if (unkept !== undefined) this.unkept.add(unkept);
      this.stale = true;
      if (!this.state.unsaved) this.set({ unsaved: true });
      clearTimeout(this.timer);
      this.timer = setTimeout(() => void this.keep(), QUIET_MS);
    });
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') void this.keep();
    });
  }

  subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Goes on where this tab or a closed one was, else with a sample, else with an empty workbook. */
  async start(sample: string | undefined): Promise<void> {
    const draft = await this.drafts.resume().catch(() => undefined);
    if (draft && (await this.showDraft(draft))) return;
    if (sample === undefined) await this.openNew();
    else await this.openSample(sample);
    if (this.state.busy) await this.openNew();
  }

  async openFile(file: File): Promise<void> {
    await this.open(file.name, async () => new Uint8Array(await file.arrayBuffer()));
  }

  async openSample(fileName: string): Promise<void> {
    await this.open(fileName, () => fetchSample(fileName));
  }

  async openNew(): Promise<void> {
    await this.replace(newWorkbook(), NEW_FILE);
  }

  /** Goes on with unsaved work of a closed tab. */
  async openLeftBehind(id: string): Promise<void> {
    await this.keep();
    const draft = await this.drafts.take(id);
    if (!draft) this.notify('warning', 'That workbook is open in another tab by now.');
    else if (!(await this.showDraft(draft))) this.notify('error', 'That workbook cannot be read any more.');
  }

  async discardLeftBehind(id: string): Promise<void> {
    await this.drafts.discard(id);
    this.set({ leftBehind: await this.drafts.leftBehind() });
  }

  /** The workbook as it stands, calculated. */
  async present(): Promise<Workbook> {
    await this.grid.finishEditing();
    await this.grid.calculated();
    return readWorkbook(fileOf(this.opened, this.grid, this.ids), this.ids);
  }

  /** Saves the workbook as it stands to a file. */
  async save(): Promise<void> {
    await this.grid.finishEditing();
    await this.grid.calculated();
    download(this.state.fileName, fileOf(this.opened, this.grid, this.ids));
    this.set({ unsaved: false });
    this.stale = true;
    await this.keep();
    if (this.unkept.size > 0) {
      const which = [...this.unkept].join(', ');
      this.notify(
        'warning',
        `Saved. Changed ${which} are not in the file: it keeps those that it came with.`,
      );
    }
  }

  setCalculating(calculating: boolean): void {
    this.set({ calculating });
  }

  setKept(cells: readonly KeptCell[]): void {
    if (cells.length + this.state.kept.length === 0) return;
    this.set({ kept: cells.map(({ sheet, ...cell }) => ({ ...cell, sheet: this.grid.sheetName(sheet) })) });
  }

  stopCalculating(): void {
    this.grid.calculation.stop();
  }

  dismissNotice(): void {
    this.set({ notice: null });
  }

  select({ sheet, row, column }: KeptPlace): void {
    this.grid.select(sheet, row, column);
  }

  /** Opens a workbook, or says why it cannot be opened and leaves the present one alone. */
  private async open(fileName: string, fetched: () => Promise<Uint8Array>): Promise<void> {
    let workbook: Workbook;
    try {
      workbook = readWorkbook(await fetched(), this.ids);
    } catch (error) {
      const why = error instanceof UnreadableWorkbook ? error.message : 'The file cannot be reached.';
      this.notify('error', `${fileName} was not opened. ${why}`);
      return;
    }
    await this.replace(workbook, fileName);
  }

  /** Puts another workbook on the desk; unsaved work of the present one stays in the browser. */
  private async replace(workbook: Workbook, fileName: string): Promise<void> {
    const left = this.state.unsaved ? this.state.fileName : undefined;
    await this.keep();
    await this.drafts.start();
    await this.show(workbook, fileName, false);
    this.stale = true;
    await this.keep();
    if (left !== undefined) this.notify('info', `The unsaved changes of ${left} are kept: see Unsaved work.`);
  }

  private async showDraft({ bytes, fileName, unsaved }: Draft): Promise<boolean> {
    let workbook: Workbook;
    try {
      workbook = readWorkbook(bytes, this.ids);
    } catch {
      return false;
    }
    await this.show(workbook, fileName, unsaved);
    if (unsaved)
      this.notify('info', `${fileName} is as you left it. Its changes are not saved to a file yet.`);
    return true;
  }

  private async show(workbook: Workbook, fileName: string, unsaved: boolean): Promise<void> {
    clearTimeout(this.timer);
    this.stale = false;
    this.unkept.clear();
    this.set({ busy: true });
    await this.grid.show(workbook);
    this.opened = workbook;
    const leftBehind = await this.drafts.leftBehind().catch(() => []);
    this.set({ notice: null, busy: false, fileName, unsaved, leftBehind });
    void checkDeskOf(this.files).look(workbook);
  }

  private async keep(): Promise<void> {
    clearTimeout(this.timer);
    const { busy, fileName, unsaved } = this.state;
    if (busy || !this.stale) return;
    this.stale = false;
    try {
      await this.drafts.keep({ fileName, unsaved, bytes: fileOf(this.opened, this.grid, this.ids) });
    } catch {
      this.stale = true;
      this.notify(
        'warning',
        'The browser could not keep this work: save it to a file before you close the tab.',
      );
    }
  }

  private notify(kind: Notice['kind'], text: string): void {
    this.set({ notice: { kind, text } });
  }

  private set(change: Partial<SessionState>): void {
    this.state = { ...this.state, ...change };
    this.tell();
  }

  private tell(): void {
    this.listeners.forEach((heard) => {
      heard();
    });
  }
}
