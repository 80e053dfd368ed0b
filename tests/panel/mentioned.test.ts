import { describe, expect, it } from 'vitest';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { functionsIn } from '../../src/panel/mentioned';

const functions = ['SEAT.FORCE', 'TAP.DRILL'].map((id): WorksheetFunction => ({
  id,
  family: '',
  summary: '',
  parameters: [],
  call: () => [[0]],
}));
const named = (formula: string) => functionsIn(formula, functions).map(({ id }) => id);

describe('the functions of a formula', () => {
  it('are named once each, in the order they stand, in any case', () => {
    expect(named('=IF(A1>0,mold.tap.drill(A1),MOLD.SEAT.FORCE(1,2,3))+MOLD.TAP.DRILL(B1)')).toEqual([
      'TAP.DRILL',
      'SEAT.FORCE',
    ]);
  });

  it('are not those in quotes, nor those that do not exist', () => {
    expect(named('="MOLD.SEAT.FORCE("&MOLD.NO.SUCH(1)')).toEqual([]);
  });
});
