import { createStore, del, entries, get, set } from 'idb-keyval';

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
}

/** How long a tab that is reloaded waits for its former self to let go. */
const HANDOVER_MS = 500;
const CURRENT = 'moldsheet.draft';

const store = createStore('moldsheet', 'drafts');

/** The draft of this tab. One tab holds one draft at a time, by a lock that ends with the tab. */
export class DraftKeeper {
  private id = '';
  private release: () => void = () => undefined;

  /** The workbook to go on with: that of this tab before a reload, else the last unsaved one of a closed tab. */
  async resume(): Promise<Draft | undefined> {
    const own = sessionStorage.getItem(CURRENT);
    if (own !== null && (await this.hold(own, HANDOVER_MS))) {
      const draft = await get<Draft>(own, store);
      if (draft) return draft;
    }
    for (const draft of await allDrafts()) {
      if (draft.id === this.id || !(await this.hold(draft.id))) continue;
      if (draft.unsaved) return draft;
      await del(draft.id, store);
    }
    return undefined;
  }

  /** Goes on with a draft that another tab left behind; undefined where it is open elsewhere or gone. */
  async take(id: string): Promise<Draft | undefined> {
    return (await this.hold(id)) ? get<Draft>(id, store) : undefined;
  }

  /** Starts a draft of another workbook; the present one stays behind. */
  async start(): Promise<void> {
    await this.hold(`${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`);
  }

  async keep(content: Omit<Draft, 'id' | 'keptAt'>): Promise<void> {
    if (this.id === '') await this.start();
    await set(this.id, { ...content, id: this.id, keptAt: Date.now() } satisfies Draft, store);
  }

  /** Unsaved work that no open tab has, the latest first. */
  async leftBehind(): Promise<Draft[]> {
    const open = await heldIds();
    return (await allDrafts()).filter(({ id, unsaved }) => unsaved && id !== this.id && !open.has(id));
  }

  async discard(id: string): Promise<void> {
    await del(id, store);
  }

  private async hold(id: string, wait = 0): Promise<boolean> {
    const release = await lock(id, wait);
    if (!release) return false;
    this.release();
    this.release = release;
    this.id = id;
    sessionStorage.setItem(CURRENT, id);
    return true;
  }
}

async function allDrafts(): Promise<Draft[]> {
  const all = await entries<string, Draft>(store);
  return all.map(([, draft]) => draft).sort((a, b) => b.keptAt - a.keptAt);
}

const lockName = (id: string) => `moldsheet draft ${id}`;

/** Locks exist only on a secure address; elsewhere two tabs may meet in one draft. */
const locks: LockManager | undefined = 'locks' in navigator ? navigator.locks : undefined;

/** Gives back how to let go; undefined where another tab has it. */
async function lock(id: string, wait: number): Promise<(() => void) | undefined> {
  if (!locks) return () => undefined;
  const options = wait > 0 ? { signal: AbortSignal.timeout(wait) } : { ifAvailable: true };
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
