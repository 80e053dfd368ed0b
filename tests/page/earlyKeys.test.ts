import { describe, expect, it } from 'vitest';
import { EarlyKeys } from '../../src/page/earlyKeys';

describe('keys before the sheet stands', () => {
  it('are dropped by when they were pressed, however late they are heard of', () => {
    const early = new EarlyKeys();
    expect(early.has(100)).toBe(true);
    early.stand(3000);
    expect(early.has(1500)).toBe(true);
    expect(early.has(3000)).toBe(false);
  });

  it('take the rest of their run with them, so that no half of an entry stays', () => {
    const early = new EarlyKeys();
    expect(early.has(2900)).toBe(true);
    early.stand(3000);
    expect(early.has(3300)).toBe(true);
    expect(early.has(4200)).toBe(true);
    expect(early.has(5300)).toBe(false);
    expect(early.has(5400)).toBe(false);
  });

  it('are none once the sheet has stood, whatever workbook comes after the first', () => {
    const early = new EarlyKeys();
    early.stand(3000);
    early.stand(9000);
    expect(early.has(8000)).toBe(false);
  });
});
