/** The workbook on show, calculated: every edit of the grid goes in, what changed comes out in slices. */
import type { Area } from '../cells/address';
import { CellError, type CellValue, type Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { Book, type CellPlace, type Edit, type KeptCell } from '../sheet/book';
import { Stopped } from '../sheet/budget';
import type { BookContent } from '../sheet/content';
import { Troubles } from './troubles';
import { traceOf, type Trace } from '../sheet/trace';

/** Milliseconds that a calculation may take before the page has a moment to paint and to hear a person. */
const SLICE = 40;

/** Milliseconds after which a person wonders what is going on. */
const LONG = 300;

/** Lets the page paint and hear a person, and comes back sooner than a timer, of which browsers make 4 ms. */
function breathe(): Promise<void> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}

/** What a calculation changed. */
export interface Calculated {
  readonly places: readonly CellPlace[];
  /** Ended by a person: cells that were not reached have no value. */
  readonly stopped: boolean;
}

export class GridCalculation {
  readonly troubles = new Troubles();
  private book: Book;
  private readonly edits: Edit[] = [];
  private running: Promise<void> | undefined;
  private isStopped = false;
  /** By sheet, then by the formula's own cell. */
  private spilling: Map<string, CellPlace & { readonly area: Area }> = new Map();

  constructor(
    private readonly functions: readonly WorksheetFunction[],
    private readonly hears: {
      /** Called after every calculation. */
      calculated(what: Calculated): void;
      /** A calculation takes long, or has ended. */
      busy(is: boolean): void;
    },
  ) {
    this.book = new Book({ sheets: [], names: [], date1904: false }, functions);
  }

  /** Calculates another workbook from now on, the whole of it. */
  load(content: BookContent): Promise<void> {
    this.book = new Book(content, this.functions);
    this.edits.length = 0;
    this.spilling = new Map();
    this.troubles.clear();
    return this.start();
  }

  /** Edits of one moment are calculated together. */
  edit(edit: Edit): void {
    this.edits.push(edit);
    void this.start();
  }

  /** Waits until everything is calculated. */
  async settled(): Promise<void> {
    while (this.running) await this.running;
  }

  /** Ends a calculation that takes too long; the next edit goes on with it. */
  stop(): void {
    this.isStopped = true;
  }

  value({ sheet, row, column }: CellPlace): CellValue {
    return this.book.value(sheet, row, column);
  }

  /** Whether a formula was not calculated yet. */
  isUnreached({ sheet, row, column }: CellPlace): boolean {
    return this.book.isUnreached(sheet, row, column);
  }

  spill({ sheet, row, column }: CellPlace): Area | undefined {
    return this.book.spill(sheet, row, column);
  }

  /** What a cell reads, what reads it, and where its error began. */
  trace(place: CellPlace): Trace {
    return traceOf(this.book, place);
  }

  keptReason({ sheet, row, column }: CellPlace): string | undefined {
    return this.book.keptReason(sheet, row, column);
  }

  keptCells(): readonly KeptCell[] {
    return this.book.keptCells();
  }

  /** Every formula whose result fills more than its own cell. */
  spills(): (CellPlace & { readonly area: Area })[] {
    return [...this.spilling.values()];
  }

  /** A formula as it would stand in a cell; an error where it takes longer than a person would wait for. */
  evaluate(text: string, place: CellPlace): Matrix {
    try {
      return this.book.evaluate(text, place, { time: SLICE });
    } catch (error) {
      if (error instanceof Stopped) return [[new CellError('#N/A', error.message)]];
      throw error;
    }
  }

  /** May have come about while the run waited. */
  private stopAsked(): boolean {
    return this.isStopped;
  }

  private start(): Promise<void> {
    this.running ??= Promise.resolve()
      .then(() => this.run())
      .finally(() => {
        this.running = undefined;
      });
    return this.running;
  }

  private async run(): Promise<void> {
    this.isStopped = false;
    let time = SLICE;
    const began = performance.now();
    let isTold = false;
    for (;;) {
      const { finished } = this.book;
      const places = this.slice(time);
      if (places) {
        this.hears.calculated({ places, stopped: false });
        // Showing results may itself lead to edits.
        if (this.edits.length > 0) continue;
        break;
      }
      if (!isTold && performance.now() - began > LONG) {
        isTold = true;
        this.hears.busy(true);
      }
      await breathe();
      if (this.stopAsked()) {
        this.hears.calculated({ places: [], stopped: true });
        break;
      }
      // One formula that takes longer than a slice would never end in slices alike; all others come in short ones.
      time = this.book.finished === finished ? time * 2 : Math.max(SLICE, time / 2);
    }
    if (isTold) this.hears.busy(false);
  }

  /** Undefined where the time did not suffice; what was calculated stands. */
  private slice(time: number): readonly CellPlace[] | undefined {
    const edits = this.edits.splice(0);
    for (const { sheet, row, column } of edits) {
      this.spilling.delete(`${sheet} ${row} ${column}`);
      this.troubles.forget({ sheet, row, column });
    }
    this.book.set(edits);
    try {
      const places = this.book.calculate({ time });
      for (const place of places) this.note(place);
      return places;
    } catch (error) {
      if (error instanceof Stopped) return undefined;
      throw error;
    }
  }

  private note({ sheet, row, column }: CellPlace): void {
    const area = this.book.spill(sheet, row, column);
    const key = `${sheet} ${row} ${column}`;
    if (area) this.spilling.set(key, { sheet, row, column, area });
    else this.spilling.delete(key);
    this.troubles.note({ sheet, row, column }, area, (r, c) => this.book.value(sheet, r, c));
  }
}
