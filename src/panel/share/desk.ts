import { worksheetFunctions } from '../../call/functions';
import type { RestoreReport, ShareOptions, ShareResult } from '../../share';
import { Store } from '../store';
import { renamed, type WorkbookFiles } from './files';
import { pageCopy, type PageCopy } from './pageCopy';
import { messageOf } from '../messageOf';

/** How a copy is to be made. */
export interface ShareChoice extends Required<Pick<ShareOptions, 'basis' | 'oneCell' | 'let'>> {
  readonly as: ShareOptions['as'] | 'page';
}

export interface Shared extends ShareResult {
  readonly fileName: string;
}

export interface Returned extends RestoreReport {
  readonly fileName: string;
}

export interface ShareState {
  readonly choice: ShareChoice;
  readonly busy?: 'sharing' | 'restoring' | undefined;
  readonly shared?: Shared | undefined;
  readonly page?: PageCopy | undefined;
  readonly returned?: Returned | undefined;
  readonly problem?: string | undefined;
}

const WORD: Readonly<Record<ShareOptions['as'], string>> = {
  native: 'native',
  values: 'values',
  both: 'native with notes',
};

/** Copies of one workbook for people without the functions: it lasts while the panel shows other pages. */
export class ShareDesk extends Store<ShareState> {
  constructor(private readonly files: WorkbookFiles) {
    super({ choice: { as: 'native', basis: true, oneCell: false, let: false } });
  }

  /** What was shared before no longer answers the choice. */
  choose(change: Partial<ShareChoice>): void {
    this.set({
      choice: { ...this.state.choice, ...change },
      shared: undefined,
      page: undefined,
      problem: undefined,
    });
  }

  /** Makes the copy; the person takes it when the report has been read. */
  async share(): Promise<void> {
    await this.working('sharing', async () => {
      const { choice } = this.state;
      const { as } = choice;
      if (as === 'page') {
        this.set({ page: await pageCopy(this.files) });
        return;
      }
      const [{ shareWorkbook }, workbook] = await Promise.all([library(), this.files.read()]);
      const result = await shareWorkbook(workbook, worksheetFunctions, { ...choice, as });
      if (result.cells.length === 0 && result.left.length === 0) {
        throw new Error('No cell of this workbook has a MOLD formula: it can be sent as it is.');
      }
      this.set({ shared: { ...result, fileName: renamed(this.files.name(), WORD[as]) } });
    });
  }

  /** Turns a copy that came back into a sheet with our functions; without a file, the open workbook is the copy. */
  async restore(file?: File): Promise<void> {
    await this.working('restoring', async () => {
      const [{ restoreWorkbook, readWorkbook }, bytes] = await Promise.all([library(), file?.arrayBuffer()]);
      const ids = worksheetFunctions.map(({ id }) => id);
      const copy = bytes ? readWorkbook(new Uint8Array(bytes), ids) : await this.files.read();
      const report = await restoreWorkbook(copy, worksheetFunctions);
      const name = file?.name ?? this.files.name();
      if (!report) {
        throw new Error(`${name} carries no MOLD formulas to bring back: it is not a copy that was shared.`);
      }
      this.set({ returned: { ...report, fileName: renamed(name, 'back') } });
    });
  }

  /** Shows a copy as a workbook of its own. */
  async open({ fileName, bytes }: Shared | Returned): Promise<void> {
    try {
      await this.files.open?.run(fileName, bytes);
    } catch (error) {
      this.set({ problem: messageOf(error) });
    }
  }

  private async working(busy: ShareState['busy'], part: () => Promise<void>): Promise<void> {
    if (this.state.busy) return;
    this.set({
      busy,
      problem: undefined,
      ...(busy === 'sharing' ? { shared: undefined, page: undefined } : { returned: undefined }),
    });
    try {
      await part();
    } catch (error) {
      this.set({ problem: messageOf(error) });
    } finally {
      this.set({ busy: undefined });
    }
  }
}

/** The formula engine is large: it comes with the first copy. */
const library = () => import('./library');

const desks = new WeakMap<WorkbookFiles, ShareDesk>();

export function deskOf(files: WorkbookFiles): ShareDesk {
  const desk = desks.get(files) ?? new ShareDesk(files);
  desks.set(files, desk);
  return desk;
}
