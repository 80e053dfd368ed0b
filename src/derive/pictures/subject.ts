import type { Kind, System } from '../../core/quantity';
import { quantityText } from '../../core/format';
import { inLetters } from '../typeset';
import type { WorkLine } from '../work';

/** What is drawn: the values of one calculation, in SI, by the symbols of its equations. */
export class Subject {
  private readonly lines: ReadonlyMap<string, WorkLine>;

  constructor(
    lines: readonly WorkLine[],
    private readonly system: System,
  ) {
    this.lines = new Map(lines.map((line) => [line.symbol, line]));
  }

  /** The value of a symbol; undefined where it was left out. */
  find(symbol: string): number | undefined {
    const value = this.lines.get(symbol)?.value;
    return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
  }

  value(symbol: string): number {
    const value = this.find(symbol);
    if (value === undefined) throw new NothingToDraw(symbol);
    return value;
  }

  /** `L = 12 mm`. */
  label(symbol: string, shown = symbol): string {
    const gives = this.lines.get(symbol)?.gives ?? 'ratio';
    return `${inLetters(shown)} = ${this.text(this.value(symbol), gives === 'text' ? 'ratio' : gives)}`;
  }

  text(si: number, kind: Kind): string {
    return quantityText(si, kind, this.system).replace(/ deg$/, '°');
  }
}

/** A value that a picture needs is not there: an input left out, or an answer in words. */
export class NothingToDraw extends Error {
  override readonly name = 'NothingToDraw';
}

/** Draws a calculation, or gives nothing where it cannot be drawn sensibly. */
export type Picture = (subject: Subject) => string | undefined;

/** How many times larger a small length is drawn, a round number that makes it about `wanted` long. */
export function exaggeration(drawn: number, wanted: number): number {
  if (drawn <= 0) return 1;
  const factor = wanted / drawn;
  if (factor <= 1) return 1;
  const size = 10 ** Math.floor(Math.log10(factor));
  return [5, 2, 1].map((step) => step * size).find((round) => round <= factor) ?? 1;
}

export const timesText = (factor: number): string => (factor === 1 ? 'to scale' : `drawn × ${factor}`);
