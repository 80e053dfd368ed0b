import { SEAT_CHART_CASE, seatChart, type SeatChartRow } from '../seatChart';
import { at, Drawing, type Point } from './drawing';

const LEFT = 52;
const RIGHT = 306;
const PANEL = 104;
const degrees = (draft: number): number => (draft * 180) / Math.PI;

interface Curve {
  readonly says: string;
  readonly of: (row: SeatChartRow) => number;
}

const CURVES: readonly Curve[] = [
  { says: 'Sink, µm', of: ({ sink }) => sink * 1e6 },
  { says: 'Release over push', of: ({ releaseRatio }) => releaseRatio },
  { says: 'Height over error in width', of: ({ heightFactor }) => heightFactor },
];

/** A round step above what an axis must hold. */
function roundTop(most: number): number {
  const size = 10 ** Math.floor(Math.log10(most));
  return [1, 2, 2.5, 5, 10].map((step) => step * size).find((top) => top >= most) ?? most;
}

/** What the draft decides, for one seat: three curves over one axis. */
export function seatChartPicture(): string {
  const rows = seatChart();
  const [first, last] = [rows[0], rows.at(-1)].map((row) => degrees(row?.draft ?? 0)) as [number, number];
  const x = (draft: number): number => LEFT + ((degrees(draft) - first) / (last - first)) * (RIGHT - LEFT);
  const height = CURVES.length * (PANEL + 26) + 34;
  const drawing = new Drawing(height);
  CURVES.forEach(({ says, of }, i) => {
    const top = 22 + i * (PANEL + 26);
    const bottom = top + PANEL;
    const high = roundTop(Math.max(...rows.map(of)));
    const y = (value: number): number => bottom - (value / high) * PANEL;
    drawing.polyline([at(LEFT, top), at(LEFT, bottom), at(RIGHT, bottom)], 'thin');
    for (const share of [0, 0.5, 1]) {
      drawing.line(at(LEFT - 4, y(share * high)), at(LEFT, y(share * high)), 'thin');
      drawing.text(at(LEFT - 7, y(share * high) + 4), String(share * high), { anchor: 'end' });
    }
    for (const mark of [2, 5, 10, 15]) {
      const at15 = x((mark * Math.PI) / 180);
      drawing.line(at(at15, bottom), at(at15, bottom + 4), 'thin');
      if (i === CURVES.length - 1) drawing.text(at(at15, bottom + 18), `${mark}°`, { anchor: 'middle' });
    }
    drawing.polyline(
      rows.map((row): Point => at(x(row.draft), y(of(row)))),
      'accent',
    );
    drawing.text(at(RIGHT, top + 6), says, { anchor: 'end' });
  });
  drawing.text(at(LEFT, height - 4), 'Draft per side');
  const {
    push,
    seatFriction,
    releaseFriction,
    seatRadius,
    seatLength,
    blockRadius,
    insertMetal,
    blockMetal,
  } = SEAT_CHART_CASE;
  return drawing.svg(
    'Sink, release and height of a tapered seat against its draft',
    `For a push of ${push}, friction ${seatFriction} going in and ${releaseFriction} coming out, seat radius ${seatRadius}, length ${seatLength}, block radius ${blockRadius}, ${insertMetal} in ${blockMetal}. A steeper draft sinks less, lets go more easily and reacts less to an error in width.`,
  );
}
