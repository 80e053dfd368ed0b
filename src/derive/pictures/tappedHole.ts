import { at, Drawing, WIDTH } from './drawing';
import type { Picture } from './subject';

/** A blind hole, drilled and tapped, to scale. */
export const tappedHolePicture: Picture = (subject) => {
  const [full, chamfer, point, depth, hole, pitch] = ['L', 'l_c', 'h', 'z', 'd_p', 'P'].map((symbol) =>
    subject.value(symbol),
  ) as [number, number, number, number, number, number];
  const outer = hole / 2 + 0.54 * pitch;
  const scale = Math.min(170 / depth, 46 / outer);
  const [axis, top] = [150, 24];
  const [r, major] = [(hole / 2) * scale, outer * scale];
  const y = (length: number): number => top + length * scale;
  const block = Math.max(74, major + 26);
  const bottom = y(depth) + 24;
  const drawing = new Drawing(bottom + 24);
  const [shoulder, tip] = [y(full + chamfer), y(full + chamfer + point)];
  for (const side of [-1, 1] as const) {
    const x = (from: number): number => axis + side * from;
    drawing.hatch([at(x(r), top), at(x(block), top), at(x(block), shoulder), at(x(r), shoulder)], 'falling');
    drawing.hatch(
      [at(x(block), shoulder), at(x(r), shoulder), at(axis, tip), at(axis, bottom), at(x(block), bottom)],
      'falling',
    );
    drawing.polyline([
      at(axis, tip),
      at(x(r), shoulder),
      at(x(r), top),
      at(x(block), top),
      at(x(block), bottom),
      at(axis, bottom),
    ]);
    // After ISO 6410 the thread is a thin line at its major diameter.
    drawing.line(at(x(major), top), at(x(major), y(full)), 'thin');
    drawing.line(at(x(major), y(full)), at(x(r), shoulder), 'dashed');
  }
  drawing.line(at(axis - r, shoulder), at(axis + r, shoulder));
  drawing.line(at(axis - major, y(full)), at(axis + major, y(full)), 'outline');
  drawing.line(at(axis, top - 10), at(axis, bottom + 6), 'axis');
  const right = axis + block;
  drawing.along(top, y(full), right + 22, subject.label('L'), right);
  drawing.along(y(full), y(full + chamfer), right + 22, subject.label('l_c'), axis + r);
  drawing.along(top, y(depth), axis - block - 26, subject.label('z'), axis);
  drawing.text(
    at(WIDTH - 4, bottom + 18),
    `drill ${subject.text(hole, 'length')}, its point ${subject.text(point, 'length')} long`,
    {
      anchor: 'end',
    },
  );
  return drawing.svg(
    'Section of the blind tapped hole',
    `Full thread ${subject.label('L')}, below it the tap’s chamfer ${subject.label('l_c')} and the drill’s point; the hole is ${subject.label('z')} deep to its tip. To scale.`,
  );
};

/** A plate tapped all the way through, and how far the tap must go. */
export const tapTravelPicture: Picture = (subject) => {
  const [plate, chamfer, clear, travel, pitch] = ['t', 'l_c', 'l_s', 'z', 'P'].map((symbol) =>
    subject.value(symbol),
  ) as [number, number, number, number, number];
  // The equation asks for the pitch alone: a coarse thread is some seven pitches thick.
  const radius = 3.5 * pitch;
  const scale = Math.min(180 / travel, 44 / radius);
  const [axis, top] = [150, 34];
  const r = radius * scale;
  const y = (length: number): number => top + length * scale;
  const drawing = new Drawing(y(travel) + 44);
  for (const side of [-1, 1] as const) {
    drawing.section(
      [
        at(axis + side * r, top),
        at(axis + side * 82, top),
        at(axis + side * 82, y(plate)),
        at(axis + side * r, y(plate)),
      ],
      'falling',
    );
  }
  const tip = 0.72 * r;
  const teeth = y(travel - chamfer);
  drawing.polyline(
    [
      at(axis - r, top - 20),
      at(axis - r, teeth),
      at(axis - tip, y(travel)),
      at(axis + tip, y(travel)),
      at(axis + r, teeth),
      at(axis + r, top - 20),
    ],
    'accent',
  );
  drawing.line(at(axis, top - 26), at(axis, y(travel) + 8), 'axis');
  drawing.along(top, y(plate), axis + 104, subject.label('t'), axis + 82);
  drawing.along(teeth, y(travel), axis + 104, subject.label('l_c'), axis + tip);
  drawing.along(top, y(travel), axis - 108, subject.label('z'), axis - 82);
  drawing.text(
    at(8, y(travel) + 34),
    `${subject.text(clear, 'length')} past the lower face; diameter to any scale`,
  );
  return drawing.svg(
    'Travel of the tap through the plate',
    `From its end at the top face the tap goes ${subject.label('z')}: through the plate, ${subject.label('t')}, its chamfer, ${subject.label('l_c')}, and ${subject.text(clear, 'length')} more. Lengths are to scale.`,
  );
};
