import { seatHeight } from '../catalogue/seat/height';
import { seatRelease } from '../catalogue/seat/release';
import { seatSink } from '../catalogue/seat/sink';
import { amountSI } from '../core/amount';
import type { Definition } from '../core/define';
import { answer } from '../core/answer';
import { findMetal } from '../tables/metals';

/** What the choice of a draft decides, for the chart in the help of the tapered seat. Values in SI. */
export interface SeatChartRow {
  readonly draft: number;
  readonly sink: number;
  /** Push that frees the seat over the push that seated it. */
  readonly releaseRatio: number;
  /** Change of seated height over the error in width. */
  readonly heightFactor: number;
}

/** The seat that the chart is drawn for. */
export const SEAT_CHART_CASE = {
  push: '3 kN',
  seatFriction: 0.15,
  releaseFriction: 0.2,
  seatRadius: '10 mm',
  seatLength: '12 mm',
  blockRadius: '25 mm',
  insertMetal: 'P20',
  blockMetal: '7075-T6',
} as const;

const FIRST_DRAFT = 2;
const LAST_DRAFT = 15;
const PER_DEGREE = 2;

const value = (definition: Definition, ...values: unknown[]): number =>
  answer(definition, values, 'mm') as number;

/** Sink, release and height against draft, from 2° to 15° in half degrees. */
export function seatChart(): SeatChartRow[] {
  const { seatFriction, releaseFriction, insertMetal, blockMetal, ...sizes } = SEAT_CHART_CASE;
  const push = amountSI(sizes.push, 'force');
  const seat = [sizes.seatRadius, sizes.seatLength, sizes.blockRadius].map((size) =>
    amountSI(size, 'length'),
  );
  const metals = [findMetal(insertMetal), findMetal(blockMetal)];
  const count = (LAST_DRAFT - FIRST_DRAFT) * PER_DEGREE + 1;
  return Array.from({ length: count }, (_, i): SeatChartRow => {
    const draft = amountSI(`${FIRST_DRAFT + i / PER_DEGREE} deg`, 'angle');
    return {
      draft,
      sink: value(seatSink, push, draft, seatFriction, ...seat, ...metals, undefined, undefined),
      releaseRatio: value(seatRelease, push, draft, seatFriction, releaseFriction) / push,
      heightFactor: value(seatHeight, 1, draft),
    };
  });
}
