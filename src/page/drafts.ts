import { createStore, del, entries, get, set } from 'idb-keyval';
import { Journal, type TypedCell } from './journal';

/** A workbook as it was last seen in a tab, kept in the browser so that a closed tab loses nothing. */
export interface Draft {
  readonly id: string;
  readonly fileName: string;
  /** Milliseconds since 1970. */
  readonly keptAt: number;
  /** Holds changes that no file has. */
  readonly unsaved: boolean;
  /** An .xlsx file. */
  readonly bytes: Uint8Array;
  /** The files that it was opened from and saved to; drafts of earlier versions tell none. */
  readonly marks?: readonly string[];
  /** What was typed after the file was made. */
  readonly typed: readonly TypedCell[];
}

/** A workbook to go on with. */
export interface Resumed extends Draft {
  /** Another tab has it open: here it is only read. */
  readonly isHeldElsewhere: boolean;
}

/** A draft as it is stored: what the journal says after its number comes on top. */
interface StoredDraft extends Omit<Draft, 'typed'> {
  readonly notes: number;
}

/** How long a tab waits for its former self to let go: one that was reloaded has surely gone, one duplicated stays. */
const HANDOVER_MS = { reload: 10_000, other: 500 };
const CURRENT = 'moldsheet.draft';

const store = createStore('moldsheet', 'drafts');

/** The draft of this tab. One tab holds one draft at a time, by a lock that ends with the tab. */
export class DraftKeeper {
  private id = '';
  /** The number of the last note in the journal. */
  private notes = 0;
  private readonly journal = new Journal(localStorage);
  private release: () => void = () => undefined;

  get current(): string {
    return this.id;
  }

  /**
   * The workbook to go on with: that of this tab before a reload, else the last unsaved one of a closed tab. A tab that
   * was made as the double of another finds its workbook held there.
   */
  async resume(): Promise<Resumed | undefined> {
    const own = sessionStorage.getItem(CURRENT);
    if (own !== null) {
      const patience = AbortSignal.timeout(HANDOVER_MS[wasReloaded() ? 'reload' : 'other']);
      const held = await this.hold(own, patience);
      const draft = await this.read(own);
      if (draft) return { ...draft, isHeldElsewhere: !held };
    }
    for (const { id } of await this.all()) {
      if (id === this.id || !(await this.hold(id))) continue;
      // The tab that had it may have kept more meanwhile.
      const draft = await this.read(id);
      if (draft?.unsaved) return { ...draft, isHeldElsewhere: false };
      await this.discard(id);
    }
    return undefined;
  }

  /** Goes on with a draft as soon as the tab that has it lets go. */
  async takeOver(id: string, signal: AbortSignal): Promise<Draft | undefined> {
    return (await this.hold(id, signal)) ? this.read(id) : undefined;
  }

  /** What another tab, open now, has of a file. */
  async heldElsewhere(mark: string): Promise<Draft | undefined> {
    const held = await heldIds();
    return (await this.all()).find(
      ({ id, marks }) => id !== this.id && held.has(id) && marks?.includes(mark),
    );
  }

  /** Goes on with a draft that another tab left behind; undefined where it is open elsewhere or gone. */
  async take(id: string): Promise<Draft | undefined> {
    return (await this.hold(id)) ? this.read(id) : undefined;
  }

  /** Starts a draft of another workbook; the present one stays behind. */
  async start(): Promise<void> {
    await this.hold(`${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`);
  }

  async keep(content: Omit<Draft, 'id' | 'keptAt' | 'typed'>): Promise<void> {
    const { notes } = this;
    if (this.id === '') await this.start();
    const { id } = this;
    await set(id, { ...content, id, keptAt: Date.now(), notes } satisfies StoredDraft, store);
    this.journal.forget(id, notes);
  }

  /** Notes at once what was typed, until it is kept; false where there is no room for it. */
  typed(cells: readonly TypedCell[]): boolean {
    return this.journal.add(this.id, ++this.notes, { typed: cells });
  }

  /** Notes at once that a file has all of it. */
  savedToFile(): void {
    this.journal.add(this.id, ++this.notes, { savedToFile: true });
  }

  /** Unsaved work that no open tab has, the latest first. */
  async leftBehind(): Promise<Draft[]> {
    const open = await heldIds();
    return (await this.all()).filter(({ id, unsaved }) => unsaved && id !== this.id && !open.has(id));
  }

  async discard(id: string): Promise<void> {
    await del(id, store);
    this.journal.forget(id);
  }

  private async read(id: string): Promise<Draft | undefined> {
    const stored = await get<StoredDraft>(id, store);
    return stored && this.withNotes(stored);
  }

  private async all(): Promise<Draft[]> {
    const all = await entries<string, StoredDraft>(store);
    return all.map(([, stored]) => this.withNotes(stored)).sort((a, b) => b.keptAt - a.keptAt);
  }

  private withNotes({ notes, ...draft }: StoredDraft): Draft {
    return { ...draft, ...this.journal.since(draft.id, notes) };
  }

  private async hold(id: string, wait?: AbortSignal): Promise<boolean> {
    const release = await lock(id, wait);
    if (!release) return false;
    this.release();
    this.release = release;
    const stored = await get<StoredDraft>(id, store).catch(() => undefined);
    this.id = id;
    this.notes = Math.max(this.journal.newest(id), stored?.notes ?? 0);
    sessionStorage.setItem(CURRENT, id);
    return true;
  }
}

function wasReloaded(): boolean {
  const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  return entry?.type === 'reload';
}

const lockName = (id: string) => `moldsheet draft ${id}`;

/** Locks exist only on a secure address; elsewhere two tabs may meet in one draft. */
const locks: LockManager | undefined = 'locks' in navigator ? navigator.locks : undefined;

/** Gives back how to let go; undefined where another tab has it, as long as `wait` lasts. */
async function lock(id: string, wait: AbortSignal | undefined): Promise<(() => void) | undefined> {
  if (!locks) return () => undefined;
  const options = wait ? { signal: wait } : { ifAvailable: true };
  const manager = locks;
  return new Promise((resolve) => {
    const granted = async (held: Lock | null) => {
      if (held === null) resolve(undefined);
      else
        await new Promise<void>((release) => {
          resolve(release);
        });
    };
    manager.request(lockName(id), options, granted).catch(() => {
      resolve(undefined);
    });
  });
}

async function heldIds(): Promise<Set<string>> {
  const held = (await locks?.query())?.held ?? [];
  return new Set(held.map(({ name = '' }) => name.replace(lockName(''), '')));
}
