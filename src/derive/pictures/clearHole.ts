import { at, Drawing } from './drawing';
import { exaggeration, timesText, type Picture } from './subject';

/** A fastener through two plates whose holes lie as far apart as their tolerance lets them. */
export const clearHolePicture: Picture = (subject) => {
  const [fastener, zone, hole] = ['F', 'T', 'H'].map((symbol) => subject.value(symbol)) as [
    number, number, number,
  ]; // prettier-ignore
  const scale = Math.min(90 / fastener, 36 / zone);
  const times = exaggeration(zone * scale, 18);
  const off = zone * scale * times;
  const width = fastener * scale;
  const isHeld = hole - fastener > 1.5 * zone;
  const [axis, top, joint, bottom] = [160, 48, 92, 136];
  // The holes lie off their true place by half a zone to either side; the fastener goes with the plate that holds it.
  const upper = { at: axis - off / 2, width: width + (isHeld ? 2 : 1) * off };
  const lower = { at: axis + off / 2, width: width + (isHeld ? 0 : off) };
  const shank = isHeld ? lower.at : axis;
  const drawing = new Drawing(bottom + 84);
  for (const [one, from, to, direction] of [
    [upper, top, joint, 'falling'],
    [lower, joint, bottom, 'rising'],
  ] as const) {
    for (const side of [-1, 1] as const) {
      const [wall, end] = [one.at + (side * one.width) / 2, axis + side * 140];
      drawing.section([at(wall, from), at(end, from), at(end, to), at(wall, to)], direction);
    }
  }
  drawing.polygon(
    [
      at(shank - width / 2, top - 14),
      at(shank + width / 2, top - 14),
      at(shank + width / 2, bottom + 14),
      at(shank - width / 2, bottom + 14),
    ],
    'accent',
  );
  drawing.line(at(axis, top - 20), at(axis, bottom + 20), 'axis');
  drawing.across(upper.at - upper.width / 2, upper.at + upper.width / 2, 20, subject.label('H'), top);
  drawing.across(shank - width / 2, shank + width / 2, bottom + 42, subject.label('F'), bottom + 14);
  drawing.text(at(8, bottom + 74), `${subject.label('T')}, ${timesText(times)}`);
  return drawing.svg(
    'A fastener in holes that lie off their place',
    `A fastener of ${subject.label('F')} ${isHeld ? 'held in the lower plate' : 'loose in both plates'}, the holes off by half of ${subject.label('T')} to either side: it just goes through ${subject.label('H')}.`,
  );
};
