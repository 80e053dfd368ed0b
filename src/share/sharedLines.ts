import { putParts, type NativeRow } from '../derive/native';
import type { LineText } from './working';

/** Where a line stands: the lines that it was placed with, and which of them it is. */
export interface PlacedLine {
  readonly at: LineText;
  readonly line: number;
}

export interface KnownLine extends PlacedLine {
  /** What was placed before it. */
  readonly count: number;
  /** The cell whose part of the working has it. */
  readonly where: string;
}

/**
 * Lines of calls of one function with the same arguments: they stand once. A verdict on a result rests on the lines of
 * that result, and two cells that ask for the same have one working.
 */
export class SharedLines {
  private readonly known = new Map<string, Map<number, KnownLine>>();
  private readonly identities = new Map<string, number>();

  /** By name of a line, a number that lines have in common which say and calculate the same. */
  identify(rows: readonly NativeRow[]): ReadonlyMap<string, number> {
    const found = new Map<string, number>();
    const byName = new Map(rows.map((row) => [row.name, row]));
    const identify = (name: string): number => {
      const known = found.get(name);
      if (known !== undefined) return known;
      const row = byName.get(name);
      if (!row) throw new Error(`there is no line ${name}`);
      const { role, says, symbol, equation, unit, text, asks = [] } = row;
      const own = putParts(text, (part) => (byName.has(part) ? `\n${identify(part)}\n` : part));
      const all = [role, says, symbol, equation, unit, own, asks.map(identify)];
      const key = JSON.stringify(all);
      const identity = this.identities.get(key) ?? this.identities.size;
      this.identities.set(key, identity);
      found.set(name, identity);
      return identity;
    };
    for (const { name } of rows) identify(name);
    return found;
  }

  of(subject: string): ReadonlyMap<number, KnownLine> {
    return this.known.get(subject) ?? new Map<number, KnownLine>();
  }

  add(subject: string, identity: number, known: KnownLine): void {
    this.known.set(subject, (this.known.get(subject) ?? new Map<number, KnownLine>()).set(identity, known));
  }

  /** Forgets what was placed as the so many-th, and after it. */
  keep(count: number): void {
    for (const own of this.known.values())
      for (const [identity, known] of own) if (known.count >= count) own.delete(identity);
  }
}
