import { describe, expect, it } from 'vitest';
import { settle, type Clock } from '../../src/excel/settle';

/** A clock that runs only while somebody waits, and what happens at which time. */
const world = (shownAt: (ms: number) => string, lastCallAt: (ms: number) => number, doneFrom: number) => {
  let now = 1_000_000;
  const start = now;
  const clock: Clock = {
    now: () => now,
    wait: (ms) => {
      now += ms;
      return Promise.resolve();
    },
  };
  const signs = {
    lastCall: () => start + lastCallAt(now - start),
    isDone: () => Promise.resolve(now - start >= doneFrom),
    shown: () => Promise.resolve(shownAt(now - start)),
  };
  return { settled: () => settle(signs, clock), elapsed: () => now - start };
};

const still = (): string => '[[1]]';
const noCall = (): number => -Infinity;

describe('settling', () => {
  it('takes one quiet round where nothing calls us', async () => {
    const { settled, elapsed } = world(still, noCall, 0);
    expect(await settled()).toBe(true);
    expect(elapsed()).toBe(1500);
  });

  it('starts anew at every call, since one cell is called only after the cell before it has answered', async () => {
    const calls = (ms: number): number => Math.min(4000, Math.floor(ms / 600) * 600);
    const { settled, elapsed } = world(still, calls, 0);
    expect(await settled()).toBe(true);
    expect(elapsed()).toBeGreaterThanOrEqual(3600 + 1500);
  });

  it('waits for busy cells', async () => {
    const { settled, elapsed } = world((ms) => (ms < 5000 ? '[["#BUSY!"]]' : '[[2]]'), noCall, 0);
    expect(await settled()).toBe(true);
    expect(elapsed()).toBeGreaterThanOrEqual(5000);
  });

  it('waits for cells that still change', async () => {
    const { settled, elapsed } = world((ms) => String(Math.min(ms, 6000)), noCall, 0);
    expect(await settled()).toBe(true);
    expect(elapsed()).toBeGreaterThanOrEqual(6000);
  });

  it('waits for Excel, but overrules it after 3 s in which all else is still', async () => {
    const late = world(still, noCall, 2500);
    expect(await late.settled()).toBe(true);
    expect(late.elapsed()).toBe(2700);
    const stuck = world(still, noCall, Infinity);
    expect(await stuck.settled()).toBe(true);
    expect(stuck.elapsed()).toBe(4500);
  });

  it('gives up after 15 s', async () => {
    const { settled, elapsed } = world((ms) => String(ms), noCall, 0);
    expect(await settled()).toBe(false);
    expect(elapsed()).toBeGreaterThan(15_000);
    expect(elapsed()).toBeLessThan(15_700);
  });
});
