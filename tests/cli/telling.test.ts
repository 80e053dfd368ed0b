import { afterEach, expect, it, vi } from 'vitest';
import { telling } from '../../src/cli/telling';

afterEach(() => {
  vi.restoreAllMocks();
});

it('tells how far a work is after half a second, ten times a second at most, and wipes it at the end', () => {
  let now = 1000;
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  const told: string[] = [];
  const output = { out: vi.fn(), err: vi.fn(), checks: vi.fn(), progress: (text: string) => told.push(text) };
  const tell = telling(output, 'variations');
  for (let done = 0; done < 100; done++) {
    tell(done, 100);
    now += 20;
  }
  tell(100, 100);
  expect(told[0]).toBe('25 of 100 variations; Ctrl+C stops, and nothing is written.');
  expect(told.length).toBeLessThan(18);
  expect(told.at(-1)).toBe('');
  tell(7, NaN);
  expect(told.at(-1)).toMatch(/^7 variations;/);
});

it('is silent where nobody watches', () => {
  const tell = telling({ out: vi.fn(), err: vi.fn(), checks: vi.fn() }, 'variations');
  expect(() => {
    tell(1, 2);
  }).not.toThrow();
});
