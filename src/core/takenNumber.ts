import type { Kind } from './quantity';
import type { Limits, Reading } from './define';

export interface TakenNumber {
  readonly kind: Kind;
  readonly limits: Limits;
  /** What the number, in SI, is to the function. */
  readonly means: (si: number) => unknown;
}

/** The number that an argument takes: its amount, or the one that may stand for a name, such as the diffusivity for a resin. */
export function takenNumber(reading: Reading): TakenNumber | undefined {
  if (reading.as === 'quantity') return { kind: reading.kind, limits: reading, means: (si) => si };
  if (reading.as !== 'named' || !reading.number) return undefined;
  const { kind, means } = reading.number;
  return { kind, limits: reading.number, means };
}
