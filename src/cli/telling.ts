import type { Output } from './command';

/** A short work is over before anybody asks, in ms. */
const AFTER = 500;
const EVERY = 100;

/** Says how far a long work is, where a person watches; `of` is no number where nobody knows. */
export function telling({ progress }: Output, what: string): (done: number, of: number) => void {
  const start = performance.now();
  let told = start;
  return (done, of) => {
    const now = performance.now();
    if (!progress || now - start < AFTER) return;
    if (done === of) progress('');
    else if (now - told >= EVERY) {
      told = now;
      const count = Number.isFinite(of) ? `${done} of ${of}` : String(done);
      progress(`${count} ${what}; Ctrl+C stops, and nothing is written.`);
    }
  };
}
