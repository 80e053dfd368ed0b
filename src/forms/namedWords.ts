import type { Reading } from '../core/define';
import { Refusal } from '../core/refusal';

const known = new WeakMap<object, readonly string[]>();

/** What a list may offer for an input that names something: each row of its table once, by its first name. */
export function namesOffered(reading: Reading): readonly string[] {
  if (reading.as !== 'named' || !reading.names) return [];
  const before = known.get(reading);
  if (before) return before;
  const seen = new Map<unknown, string>();
  for (const name of reading.names()) {
    const meant = meaning(reading, name);
    if (meant === undefined) continue;
    const key = typeof meant === 'object' ? JSON.stringify(meant) : meant;
    if (!seen.has(key)) seen.set(key, name);
  }
  const offered = [...seen.values()];
  known.set(reading, offered);
  return offered;
}

/** A name that several rows share is refused, and not offered. */
function meaning(reading: Extract<Reading, { as: 'named' }>, name: string): unknown {
  try {
    return reading.read(name, 'in', 'text');
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
