import type { WorksheetFunction } from '../call/worksheetFunction';
import type { System } from '../core/quantity';
import type { Section } from '../forms/sections/section';
import { checkDeskOf } from '../panel/share/checkDesk';
import type { WorkbookFiles } from '../panel/share/files';
import { Store } from '../panel/store';
import type { Workbook } from '../package/model';
import type { KeptCell } from '../sheet/book';
import { newWorkbook, readWorkbook, UnreadableWorkbook } from '../package';
import { addSheets } from '../package/author';
import { knownFunctions } from '../package/spelling';
import { editWorkbook, type WorkbookEdit } from '../package/edits';
import { CannotChange, changeStructure, type StructureAct } from '../package/structure';
import { saveCalculated } from '../workbook/basis';
import { precisionWarning } from '../workbook/precision';
import { cellAddress } from '../cells/address';
import { DraftKeeper, type Draft } from './drafts';
import type { EntryAnswer, EntryQuestion } from './EntryDialog';
import type { Refusal } from '../workbook/entryRules';
import { editCell } from './editCell';
import { fileMark } from './fileMark';
import { fileOf } from './fileOf';
import { download } from './files';
import type { Grid } from './grid';
import type { SheetPlace } from './heldEntries';
import type { GridFocus } from './gridFocus';
import { History, NO_STEPS, offerSteps, onStep, ownSteps, type Snapshot, type Steps } from './history';
import type { PrintPart, PrintWish } from './printed';
import { onlyLooks, READ_ONLY } from './readOnly';
import { fetchSample } from './samples';
import { actsOf, type PageAct } from './structureActs';

export interface Notice {
  readonly kind: 'info' | 'warning' | 'error';
  readonly text: string;
}

/** What the page shows of the session; replaced whole at every change. */
export interface SessionState {
  readonly fileName: string;
  /** Holds changes that no file has. */
  readonly unsaved: boolean;
  /** The browser has all of it: a closed tab loses nothing. */
  readonly inBrowser: boolean;
  readonly busy: boolean;
  /** A workbook is on the screen, calculated or not. */
  readonly stands: boolean;
  /** The file that is being opened. */
  readonly opening: string | null;
  readonly notice: Notice | null;
  /** Unsaved workbooks that closed tabs left behind. */
  readonly leftBehind: readonly Draft[];
  /** A calculation takes long. */
  readonly calculating: boolean;
  /** Cells that show the value of the file, since their formula cannot be calculated here. */
  readonly kept: readonly KeptPlace[];
  /** About an entry that its cell's rule does not take. */
  readonly question: EntryQuestion | null;
  /** Another tab has the workbook open. */
  readonly readOnly: boolean;
}

export interface KeptPlace extends SheetPlace {
  readonly reason: string;
}

const NEW_FILE = 'design-sheet.xlsx';

const MOST_MARKS = 20;

/** How long the page waits for further changes before it keeps them. */
const QUIET_MS = 400;

/** The workbook on the desk: opened, changed, kept in the browser and saved to a file. */
export class Session extends Store<SessionState> {
  /** For copies of the workbook. */
  readonly files: WorkbookFiles = {
    name: () => this.state.fileName,
    read: () => this.present(),
    open: {
      label: 'Open it here',
      run: async (fileName, bytes) => {
        await this.open(fileName, () => Promise.resolve(bytes));
      },
    },
  };
  private opened = newWorkbook();
  private readonly drafts = new DraftKeeper();
  private readonly ids: readonly string[];
  /** What is kept in the browser is behind what the grid shows. */
  private stale = false;
  /** The grid does not show the workbook yet that it is asked to show. */
  private isOpening = true;
  /** Goes on where a tab was, before anything else is opened. */
  private starting: Promise<void> = Promise.resolve();
  private readonly history = new History();
  /** Of the files that the workbook was opened from and saved to. */
  private marks: readonly string[] = [];
  /** Waits for another tab to let go of the workbook. */
  private waiting: AbortController | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  /** Acts come one after the other, each on the workbook that the last one left. */
  private acting: Promise<unknown> = Promise.resolve();
  /** How often a workbook was put on the desk: what was meant for one does not meet the next. */
  private openings = 0;
  /** The workbook on show is about to be another one: it takes no edits any more. */
  private leaves = false;
  private shown: () => void = () => undefined;

  constructor(
    private readonly grid: Grid,
    private readonly functions: readonly WorksheetFunction[],
    private readonly focus: GridFocus,
  ) {
    super({
      fileName: NEW_FILE,
      unsaved: false,
      inBrowser: false,
      busy: true,
      stands: false,
      opening: null,
      notice: null,
      leftBehind: [],
      calculating: false,
      kept: [],
      question: null,
      readOnly: false,
    });
    this.ids = functions.map(({ id }) => id);
    grid.refuses = (command) => {
      if (this.state.readOnly && !this.isOpening && !onlyLooks(command)) {
        this.notify('warning', READ_ONLY);
        return true;
      }
      if (this.leaves && !this.isOpening && !onlyLooks(command)) return true;
      const acts = actsOf(command.id, command.params, grid.actContext(command.params));
      if (!acts) return false;
      void this.change(acts);
      return true;
    };
    grid.movesCut = ({ sheet, area }) => {
      const to = grid.selected();
      void this.change([
        { do: 'moveCells', sheet, area, to: { sheet: to.sheet, row: to.area.top, column: to.area.left } },
      ]);
    };
    onStep(grid.injector, (to) => void this.step(to));
    grid.onEdit(() => {
      if (this.isOpening) return;
      this.stale = true;
      if (!this.state.unsaved || this.state.inBrowser) this.set({ unsaved: true, inBrowser: false });
      clearTimeout(this.timer);
      this.timer = setTimeout(() => void this.keep(), QUIET_MS);
    });
    grid.heardTyping = (cells) => {
      if (!this.isOpening && !this.drafts.typed(cells)) void this.keep();
    };
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') void this.keep();
    });
  }

  start(sample: string | undefined): Promise<void> {
    this.starting = this.goOn(sample);
    return this.starting;
  }

  /** Where this tab or a closed one was, else with a sample, else with an empty workbook. */
  private async goOn(sample: string | undefined): Promise<void> {
    const draft = await this.drafts.resume().catch(() => undefined);
    if (draft && (await this.showDraft(draft, draft.isHeldElsewhere))) {
      if (draft.isHeldElsewhere) this.waitForOther(draft.id);
      return;
    }
    if (sample === undefined) await this.openNew();
    else await this.openSample(sample);
    if (this.state.busy) await this.openNew();
  }

  async openFile(file: File): Promise<void> {
    await this.starting;
    let mark: string | undefined;
    const isOpened = await this.open(file.name, async () => {
      const bytes = new Uint8Array(await file.arrayBuffer());
      mark = await fileMark(file.name, bytes);
      return bytes;
    });
    if (!isOpened || mark === undefined) return;
    const warning = precisionWarning(this.opened);
    if (warning !== undefined) this.warn(warning);
    const elsewhere = await this.drafts.heldElsewhere(mark).catch(() => undefined);
    // Changed in two tabs, a file would be saved without what the other one did.
    if (elsewhere && (await this.showDraft(elsewhere, true))) {
      this.waitForOther(elsewhere.id);
      return;
    }
    this.marks = [mark];
    await this.keepNow();
  }

  async openSample(fileName: string): Promise<void> {
    await this.open(fileName, () => fetchSample(fileName));
  }

  /** A new workbook of sections, in the order of the job. */
  async openDesign(sections: readonly Section[], system: System): Promise<void> {
    const { newDesign } = await import('../forms/newDesign');
    await this.replace(await newDesign({ sections, system }, this.functions), NEW_FILE);
  }

  async openNew(): Promise<void> {
    await this.replace(newWorkbook(), NEW_FILE);
  }

  /** Goes on with unsaved work of a closed tab. */
  async openLeftBehind(id: string): Promise<void> {
    const { fileName = '' } = this.state.leftBehind.find((one) => one.id === id) ?? {};
    await this.grid.finishEditing();
    await this.opening(fileName, async () => {
      await this.keep();
      const { current } = this.drafts;
      const draft = await this.drafts.take(id);
      if (!draft) this.notify('warning', 'That workbook is open in another tab by now.');
      else if (!(await this.putDraft(draft))) {
        await this.goBack(current);
        this.notify('error', `${fileName} cannot be read any more.`);
      }
    });
  }

  async discardLeftBehind(id: string): Promise<void> {
    await this.drafts.discard(id);
    this.set({ leftBehind: await this.drafts.leftBehind() });
  }

  /** The workbook as it was last opened or changed; cells that were typed since stand in the grid. */
  get workbook(): Workbook {
    return this.opened;
  }

  /** The workbook as it stands, calculated. */
  async present(): Promise<Workbook> {
    await this.grid.finishEditing();
    await this.grid.calculated();
    return readWorkbook(fileOf(this.opened, this.grid, this.ids), this.ids);
  }

  /** Saves the workbook as it stands to a file, once the acts that were asked for are done. */
  async save(): Promise<void> {
    await this.acting;
    await this.grid.finishEditing();
    await this.grid.calculated();
    const bytes = fileOf(this.opened, this.grid, this.ids);
    if (this.state.readOnly) {
      download(this.state.fileName, bytes);
      return;
    }
    this.drafts.savedToFile();
    download(this.state.fileName, bytes);
    this.set({ unsaved: false, inBrowser: false });
    this.stale = true;
    const mark = await fileMark(this.state.fileName, bytes);
    if (mark !== undefined) this.marks = [...this.marks, mark].slice(-MOST_MARKS);
    await this.keep();
  }

  /** The workbook as it stands as a page to print. */
  async print(
    part: PrintPart,
    {
      showsWork,
      ...wish
    }: Pick<PrintWish, 'paper' | 'gridlines' | 'revision'> & { readonly showsWork: boolean },
  ): Promise<string> {
    await this.acting;
    const [workbook, { printed }] = await Promise.all([this.present(), import('./printed')]);
    const { sheet, area } = this.grid.selected();
    return printed(workbook, this.functions, {
      ...wish,
      file: this.state.fileName,
      ...(part !== 'all' && { sheet }),
      ...(part === 'selection' && { area }),
      ...(showsWork && { work: { sheet, area } }),
    });
  }

  setCalculating(calculating: boolean): void {
    this.set({ calculating });
  }

  setKept(cells: readonly KeptCell[]): void {
    if (cells.length + this.state.kept.length === 0) return;
    this.set({ kept: cells.map(({ sheet, ...cell }) => ({ ...cell, sheet: this.grid.sheetName(sheet) })) });
  }

  /** Says whether an entry stays that its cell's rule does not take. */
  async askAboutEntry(place: SheetPlace, typed: string, refusal: Refusal): Promise<boolean> {
    const cell = placeText(place);
    let then = (): void => undefined;
    const answer = await new Promise<EntryAnswer>((done) => {
      this.set({
        question: {
          ...refusal,
          cell,
          answer: done,
          onGone: () => {
            then();
          },
        },
      });
    });
    // What was typed on meanwhile was meant for the next cell.
    if (answer !== 'keep') this.focus.drop();
    if (answer === 'again')
      then = () => {
        this.grid.select(place.sheet, place.row, place.column);
        editCell(this.grid, typed);
      };
    // The grid takes the entry back before the dialog goes.
    setTimeout(() => {
      this.set({ question: null });
    });
    return answer === 'keep';
  }

  tellOutside(cells: readonly SheetPlace[]): void {
    const some = cells.slice(0, 5).map(placeText).join(', ');
    this.notify(
      'warning',
      cells.length === 1
        ? `What now stands in ${some} is outside the list or bounds of its cell.`
        : `${cells.length} cells now hold what is outside their lists or bounds: ${some}${cells.length > 5 ? ' …' : ''}.`,
    );
  }

  warn(text: string): void {
    this.notify('warning', text);
  }

  stopCalculating(): void {
    this.grid.calculation.stop();
  }

  dismissNotice(): void {
    this.set({ notice: null });
  }

  select({ sheet, row, column }: SheetPlace): void {
    this.grid.select(sheet, row, column);
  }

  /** Goes on with a copy of a workbook that another tab has open. */
  async takeCopy(): Promise<void> {
    await this.drafts.start();
    this.marks = [];
    this.waiting?.abort();
    this.set({ readOnly: false, unsaved: true, inBrowser: false, notice: null });
    await this.keepNow();
  }

  /** Keeps the workbook in the browser as it stands, before the page goes. */
  async keepNow(): Promise<void> {
    this.stale = !this.state.readOnly;
    await this.keep();
  }

  /** What another tab has open is only read, until that tab is closed. */
  private waitForOther(id: string): void {
    this.waiting = new AbortController();
    void this.drafts.takeOver(id, this.waiting.signal).then(async (draft) => {
      if (!draft || !(await this.showDraft(draft))) return;
      this.notify('info', `The other tab was closed: ${draft.fileName} goes on here as it was left there.`);
    });
  }

  /** Changes the structure of the workbook as it stands: all of its parts follow, or nothing is changed. */
  async change(acts: readonly PageAct[]): Promise<void> {
    if (acts.length === 0 || this.state.readOnly) return;
    await this.act(async () => {
      const place = this.grid.place();
      const before = await this.present();
      let after: Workbook;
      try {
        after = acts.reduce((workbook, act) => changed(workbook, act, this.ids), before);
      } catch (error) {
        if (!(error instanceof CannotChange)) throw error;
        this.notify('warning', error.message);
        return;
      }
      this.history.acted({ ...place, ...this.ownSteps(), workbook: before });
      const { sheet, area } = this.grid.selected();
      await this.showChanged({ ...place, ...placeAfter(acts), workbook: after });
      // Nothing moved: the same cells may be set further.
      if (acts.every((act) => act.do !== 'addSheet' && isEdit(act))) this.grid.selectArea(sheet, area);
    });
  }

  /** Puts another form of the workbook in place of the present one, as one act that can be taken back. */
  async rework(part: (workbook: Workbook) => Promise<Workbook>): Promise<void> {
    await this.act(async () => {
      const place = this.grid.place();
      const before = await this.present();
      // What would be typed or pasted by now is in neither.
      this.leaves = true;
      const after = await part(before).finally(() => {
        this.leaves = false;
      });
      this.history.acted({ ...place, ...this.ownSteps(), workbook: before });
      await this.showChanged({ ...place, workbook: after });
    });
  }

  /** Takes back an act, or does it again. */
  private async step(to: 'back' | 'forth'): Promise<void> {
    await this.act(async () => {
      const workbook = await this.present();
      const present = { ...this.grid.place(), ...this.ownSteps(), workbook };
      const target = to === 'back' ? this.history.back(present) : this.history.forth(present);
      if (target) await this.showChanged(target, target);
    });
  }

  /** Keys that are pressed meanwhile go into the cells that the act leaves. */
  private async act(work: () => Promise<void>): Promise<void> {
    const { openings } = this;
    const { fileName } = this.state;
    await this.inTurn(async () => {
      if (openings === this.openings) await work();
      else
        this.notify(
          'warning',
          `What was asked for was meant for ${fileName}, which is no longer on show. Nothing was changed.`,
        );
    });
  }

  /**
   * Puts another workbook on the desk. Keys that are pressed until it is there are dropped: they were meant for what stood
   * there before.
   */
  private async opening(fileName: string, work: () => Promise<void>): Promise<void> {
    await this.inTurn(async (release) => {
      this.leaves = true;
      let told = '';
      this.shown = () => {
        this.leaves = false;
        if (this.focus.drop()) told = `What was typed while ${fileName} was being opened was not taken.`;
        release();
      };
      await work().finally(() => {
        this.shown();
        this.shown = () => undefined;
      });
      if (told !== '') this.notify('info', told);
    });
  }

  private async inTurn(work: (release: () => void) => Promise<void>): Promise<void> {
    const release = this.focus.hold();
    const before = this.acting;
    const done = (async () => {
      await before;
      // The grid has to finish its own step first.
      await new Promise((resolve) => setTimeout(resolve));
      await work(release);
    })();
    this.acting = done.catch(() => undefined);
    await done.finally(release);
  }

  private ownSteps(): Steps {
    return ownSteps(this.grid.injector, this.grid.unitId);
  }

  private async showChanged(
    { workbook, sheet, row, column }: Snapshot,
    steps: Steps = NO_STEPS,
  ): Promise<void> {
    const { fileName } = this.state;
    await this.put(workbook);
    this.set({ busy: false, fileName, unsaved: true, inBrowser: false });
    if (workbook.sheets.some(({ name, state }) => name === sheet && state === 'visible'))
      this.grid.select(sheet, row, column);
    const { injector, unitId } = this.grid;
    offerSteps(injector, unitId, this.history.steps(unitId, steps));
    this.stale = true;
    await this.keep();
  }

  /** Opens a workbook, or says why it cannot be opened and leaves the present one alone. */
  private async open(fileName: string, fetched: () => Promise<Uint8Array>): Promise<boolean> {
    this.set({ opening: fileName });
    try {
      const bytes = await fetched();
      return await this.replace(readWorkbook(bytes, this.ids), fileName, bytes);
    } catch (error) {
      const why = error instanceof UnreadableWorkbook ? error.message : 'The file cannot be reached.';
      this.notify('error', `${fileName} was not opened. ${why}`);
      return false;
    } finally {
      this.set({ opening: null });
    }
  }

  /** Puts another workbook on the desk; unsaved work of the present one stays in the browser. */
  private async replace(workbook: Workbook, fileName: string, bytes?: Uint8Array): Promise<boolean> {
    let isShown = false;
    // What is being typed belongs to the present one.
    if (this.state.stands) await this.grid.finishEditing();
    await this.opening(fileName, async () => {
      const { readOnly, unsaved, fileName: present } = this.state;
      const left = unsaved && !readOnly ? present : undefined;
      await this.keep();
      const { current } = this.drafts;
      await this.drafts.start();
      // As it came: it need not be written, and what is typed while it is calculated comes on top.
      const kept =
        bytes &&
        this.drafts.keep({ fileName, unsaved: false, bytes }).then(
          () => true,
          () => false,
        );
      this.marks = [];
      try {
        await this.show(workbook, fileName, { unsaved: false, readOnly: false });
      } catch (error) {
        await this.goBack(current);
        const why = error instanceof Error ? error.message : String(error);
        this.notify('error', `${fileName} was not opened: it cannot be shown here (${why}).`);
        return;
      }
      isShown = true;
      if (await kept) this.set({ inBrowser: !this.stale });
      else {
        this.stale = true;
        await this.keep();
      }
      if (left !== undefined)
        this.notify('info', `The unsaved changes of ${left} are kept: see Unsaved work.`);
    });
    return isShown;
  }

  /** To the workbook that stood here before, as it was kept. */
  private async goBack(id: string): Promise<void> {
    const draft = await this.drafts.take(id);
    if (!draft || !(await this.putDraft(draft)))
      await this.show(newWorkbook(), NEW_FILE, { unsaved: false, readOnly: false });
  }

  private async showDraft(draft: Draft, readOnly = false): Promise<boolean> {
    let isShown = false;
    await this.opening(draft.fileName, async () => {
      isShown = await this.putDraft(draft, readOnly);
    });
    return isShown;
  }

  private async putDraft(draft: Draft, readOnly = false): Promise<boolean> {
    const { bytes, fileName, unsaved, typed, marks = [] } = draft;
    let workbook: Workbook;
    try {
      workbook = readWorkbook(bytes, this.ids);
      const known = new Set(workbook.sheets.map(({ name }) => name));
      const onTop = typed.filter(({ sheet }) => known.has(sheet));
      if (onTop.length > 0) workbook = readWorkbook(saveCalculated(workbook, onTop), this.ids);
    } catch {
      return false;
    }
    this.marks = marks;
    await this.show(workbook, fileName, { unsaved, readOnly });
    if (unsaved && !readOnly)
      this.notify('info', `${fileName} is as you left it. Its changes are not saved to a file yet.`);
    return true;
  }

  private async show(
    workbook: Workbook,
    fileName: string,
    { unsaved, readOnly }: Pick<SessionState, 'unsaved' | 'readOnly'>,
  ): Promise<void> {
    this.history.clear();
    this.waiting?.abort();
    this.openings++;
    this.set({ notice: null, fileName, unsaved, inBrowser: false, readOnly });
    const others = this.drafts.leftBehind().catch(() => []);
    await this.put(workbook);
    this.set({ busy: false, leftBehind: await others });
    await this.keep();
    void checkDeskOf(this.files).look(workbook);
  }

  private async put(workbook: Workbook): Promise<void> {
    clearTimeout(this.timer);
    this.stale = false;
    this.isOpening = true;
    this.set({ busy: true });
    this.opened = workbook;
    await this.grid.show(workbook, () => {
      this.isOpening = false;
      this.set({ stands: true });
      this.focus.stand();
      this.shown();
      performance.mark('moldsheet shown');
    });
  }

  private async keep(): Promise<void> {
    clearTimeout(this.timer);
    const { busy, fileName, unsaved } = this.state;
    if (busy || !this.stale) return;
    this.stale = false;
    try {
      await this.drafts.keep({
        fileName,
        unsaved,
        bytes: fileOf(this.opened, this.grid, this.ids, { isDraft: true }),
        marks: this.marks,
      });
      this.set({ inBrowser: !this.changedMeanwhile() });
    } catch {
      this.stale = true;
      this.notify(
        'warning',
        'The browser could not keep this work: save it to a file before you close the tab.',
      );
    }
  }

  /** May have come about while the draft was written. */
  private changedMeanwhile(): boolean {
    return this.stale;
  }

  private notify(kind: Notice['kind'], text: string): void {
    this.set({ notice: { kind, text } });
  }
}

function changed(workbook: Workbook, act: PageAct, ids: readonly string[]): Workbook {
  if (act.do === 'addSheet') return addSheets(workbook, { sheets: [{ name: act.name, cells: {} }] });
  const known = knownFunctions(ids);
  return isEdit(act) ? editWorkbook(workbook, act, known) : changeStructure(workbook, act, known);
}

const isEdit = (act: StructureAct | WorkbookEdit): act is WorkbookEdit =>
  /^(set|delete)Name$|Note$|Rule$|Filter$/.test(act.do);

const placeText = ({ sheet, row, column }: SheetPlace): string => `${sheet}!${cellAddress(row, column)}`;

/** Where a person looks after an act on sheets; else where they were. */
function placeAfter(acts: readonly PageAct[]): Partial<Snapshot> {
  const act = acts.at(-1);
  if (act?.do === 'renameSheet') return { sheet: act.name };
  if (act?.do === 'copySheet' || act?.do === 'addSheet') return { sheet: act.name, row: 0, column: 0 };
  return {};
}
