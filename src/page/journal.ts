import { CellError, type CellValue } from '../cells/value';

/** What a person typed into one cell. */
export interface TypedCell {
  /** Name of the sheet. */
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** Without leading `=`; then the value counts for nothing. */
  readonly formula?: string;
}

/** What happened to a workbook since its draft was last kept. */
type Note = { readonly typed: readonly TypedCell[] } | { readonly savedToFile: true };

export interface Since {
  readonly typed: readonly TypedCell[];
  /** By the last note; undefined where none says it. */
  readonly unsaved?: boolean;
}

const prefix = (draft: string) => `moldsheet.since.${draft}.`;

/**
 * Keeping a draft takes a moment, in which a tab may close. What happens is noted here first, in a storage that has it
 * before the next event: nothing typed is lost, and nothing saved comes back as unsaved.
 */
export class Journal {
  constructor(private readonly storage: Storage) {}

  /** The number of the newest note on a draft. */
  newest(draft: string): number {
    return Math.max(0, ...this.numbers(draft));
  }

  /** False where the storage is full. */
  add(draft: string, number: number, note: Note): boolean {
    try {
      this.storage.setItem(prefix(draft) + number.toString(), JSON.stringify(note));
      return true;
    } catch {
      return false;
    }
  }

  /** What was noted after a number, the oldest first. */
  since(draft: string, number: number): Since {
    const typed: TypedCell[] = [];
    let unsaved: boolean | undefined;
    for (const at of this.numbers(draft)) {
      if (at <= number) continue;
      const note = this.read(prefix(draft) + at.toString());
      if (!note) continue;
      unsaved = 'typed' in note;
      if ('typed' in note) typed.push(...note.typed);
    }
    return { typed, ...(unsaved !== undefined && { unsaved }) };
  }

  forget(draft: string, upTo = Infinity): void {
    for (const at of this.numbers(draft)) {
      if (at <= upTo) this.storage.removeItem(prefix(draft) + at.toString());
    }
  }

  private numbers(draft: string): number[] {
    const start = prefix(draft);
    return Object.keys(this.storage)
      .flatMap((key) => (key.startsWith(start) ? [Number(key.slice(start.length))] : []))
      .sort((a, b) => a - b);
  }

  private read(key: string): Note | undefined {
    try {
      return JSON.parse(this.storage.getItem(key) ?? '', revived) as Note;
    } catch {
      return undefined;
    }
  }
}

/** An error typed into a cell is an object again only by its class. */
const revived = (_: string, value: unknown): unknown => {
  const { code, message = '' } = (value ?? {}) as Partial<CellError>;
  return code === undefined ? value : new CellError(code, message);
};
