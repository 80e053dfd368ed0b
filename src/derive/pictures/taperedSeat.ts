import { at, Drawing, WIDTH } from './drawing';
import { exaggeration, timesText, type Picture, type Subject } from './subject';

/** Half sizes of the seat in SI, and what of the sink is shown. */
interface Seat {
  /** Half the width at the middle of the contact, and its label. */
  readonly half: number;
  readonly width: string;
  readonly length: number;
  /** Half the width of the block; undefined where the equation does not ask for it. */
  readonly block: number | undefined;
  readonly sink: readonly { readonly symbol: string; readonly says: string }[];
  readonly push: string | undefined;
}

/** The section of an insert in its pocket, to scale but for the sink. */
function drawSeat(subject: Subject, seat: Seat): string {
  const alpha = subject.value('alpha');
  const rise = (seat.length / 2) * Math.tan(alpha);
  const block = seat.block ?? 1.8 * (seat.half + rise);
  const scale = Math.min(104 / block, 150 / seat.length);
  const height = seat.length * scale;
  const top = 78;
  const bottom = top + height;
  const axis = 158;
  const [wide, narrow, outer] = [seat.half + rise, Math.max(0, seat.half - rise), block].map(
    (size) => size * scale,
  ) as [number, number, number];

  const drawing = new Drawing(bottom + (seat.sink.length > 0 ? 98 : 62));
  for (const side of [-1, 1] as const) {
    drawing.section(
      [
        at(axis + side * wide, top),
        at(axis + side * outer, top),
        at(axis + side * outer, bottom),
        at(axis + side * narrow, bottom),
      ],
      side < 0 ? 'falling' : 'rising',
    );
  }
  const insert = [
    at(axis - wide, top),
    at(axis + wide, top),
    at(axis + narrow, bottom),
    at(axis - narrow, bottom),
  ];
  drawing.section(insert, 'rising');
  drawing.line(at(axis, top - 34), at(axis, bottom + 12), 'axis');
  if (seat.push !== undefined) {
    drawing.arrow(at(axis, top - 46), at(axis, top - 3));
    drawing.text(at(axis + 8, top - 36), seat.push, { accent: true });
  }

  const [first] = seat.sink;
  const lines = seat.sink.map(({ symbol, says }) => `${says} ${subject.label(symbol)}`);
  if (first) {
    const sink = subject.value(first.symbol);
    const times = exaggeration(Math.abs(sink) * scale, 12);
    const shift = sink * scale * times;
    const drawsSink = Math.abs(shift) > 1;
    if (drawsSink)
      drawing.polygon(
        insert.map(({ x, y }) => at(x, y - shift)),
        'dashed',
      );
    lines[0] = `${lines[0] ?? ''}, ${timesText(times)}`;
    if (drawsSink) lines.push('Dashed: where it stands without the push');
  }

  drawing.along(top, bottom, axis - outer - 22, subject.label('L'), axis - outer);
  drawing.across(
    axis - seat.half * scale,
    axis + seat.half * scale,
    bottom + 28,
    seat.width,
    (top + bottom) / 2,
  );
  if (seat.block !== undefined)
    drawing.across(axis, axis + outer, bottom + 50, subject.label('b'), bottom + 12);
  drawing.text(at(WIDTH - 6, top - 12), subject.label('alpha'), { anchor: 'end' });
  drawing.line(at(WIDTH - 40, top - 8), at(axis + wide - 1, top + 6), 'thin');
  lines.forEach((line, i) => drawing.text(at(8, bottom + 74 + 16 * i), line));
  return drawing.svg(
    'Section of the tapered insert in its pocket',
    `The insert stands in the block on a taper of ${subject.label('alpha')} per side. Sizes are to scale. ${lines.join('. ')}`,
  );
}

const round =
  (push: string | undefined, sink: Seat['sink']): Picture =>
  (subject) =>
    drawSeat(subject, {
      half: subject.value('r'),
      width: `2r = ${subject.text(2 * subject.value('r'), 'length')}`,
      length: subject.value('L'),
      block: subject.value('b'),
      sink,
      push: push === undefined ? undefined : subject.label(push),
    });

export const seatStiffnessPicture = round(undefined, []);
export const seatSinkPicture = round('F', [{ symbol: 'z', says: 'Sink' }]);
export const seatStepPicture = round('F_i', [{ symbol: 's', says: 'Step' }]);
export const seatMillPushPicture = round('F_i', [{ symbol: 'z_i', says: 'Sink' }]);

export const wedgeSinkPicture: Picture = (subject) =>
  drawSeat(subject, {
    half: subject.value('w') / 2,
    width: subject.label('w'),
    length: subject.value('L'),
    block: undefined,
    sink: [{ symbol: 'z', says: 'Sink' }],
    push: subject.label('F'),
  });

export const seatHoopPicture = round('F', []);
