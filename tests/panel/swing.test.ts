import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { callsIn } from '../../src/work/calls';
import { isSwing, swingOf } from '../../src/panel/work/swing';

const around = { sheet: 'Sheet1', read: () => Promise.resolve([[null]]), functions: worksheetFunctions };
async function swing(formula: string) {
  const call = callsIn(formula).find(isSwing);
  if (!call) throw new Error('No TRY.SWING');
  return swingOf(call, around);
}
/** Area times pressure times margin: the bars are arithmetic. */
const CLAMP =
  '=MOLD.TRY.SWING("CLAMP.FORCE",{"projectedArea",900,800,1000;"cavityPressure",25,20,30;"margin",1.2,1.1,1.3},"mm")';

describe('the tornado of a TRY.SWING', () => {
  it('has a bar an argument from its low to its high around the result as it is, the longest on top', async () => {
    const found = await swing(CLAMP);
    const force = (area: number, pressure: number, margin: number) => area * pressure * margin;
    expect(found?.unit).toBe('N');
    expect(found?.base).toBeCloseTo(force(900, 25, 1.2), 6);
    expect(found?.lines.map(({ argument }) => argument)).toEqual([
      'cavityPressure',
      'projectedArea',
      'margin',
    ]);
    const [pressure, area] = found?.lines ?? [];
    expect(pressure?.low).toBeCloseTo(force(900, 20, 1.2), 6);
    expect(pressure?.high).toBeCloseTo(force(900, 30, 1.2), 6);
    expect(area?.low).toBeCloseTo(force(800, 25, 1.2), 6);
  });

  it('is not drawn where the call refuses', async () => {
    expect(await swing(CLAMP.replace('"margin"', '"margarine"'))).toBeUndefined();
    expect(await swing(CLAMP.replace('"mm"', '"furlong"'))).toBeUndefined();
  });
});
