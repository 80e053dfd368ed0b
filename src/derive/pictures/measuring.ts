import { at, Drawing } from './drawing';
import type { Picture } from './subject';

/** A ball that rests in a round taper, to scale. */
export const ballInTaperPicture: Picture = (subject) => {
  const [ball, depth, width, alpha] = ['d', 'h', 'w', 'alpha'].map((symbol) => subject.value(symbol)) as [
    number, number, number, number,
  ]; // prettier-ignore
  const bottom = Math.max(depth + ball, ball / 2) * 1.1;
  const scale = Math.min(170 / width, 140 / (bottom - Math.min(depth, 0)));
  const axis = 160;
  const face = 40 - Math.min(depth, 0) * scale;
  const low = face + bottom * scale;
  const half = (y: number): number => Math.max(0, (width / 2) * scale - (y - face) * Math.tan(alpha));
  const drawing = new Drawing(low + 64);
  for (const side of [-1, 1] as const) {
    drawing.section(
      [
        at(axis + side * half(face), face),
        at(axis + side * 132, face),
        at(axis + side * 132, low),
        at(axis + side * half(low), low),
      ],
      side < 0 ? 'falling' : 'rising',
    );
  }
  drawing.circle(at(axis, face + (depth + ball / 2) * scale), (ball / 2) * scale, 'accent');
  drawing.line(at(axis, face - 24), at(axis, low + 8), 'axis');
  drawing.across(axis - half(face), axis + half(face), low + 26, subject.label('w'), face);
  drawing.text(at(8, low + 56), [subject.label('d'), subject.label('h'), subject.label('alpha')].join('   '));
  return drawing.svg(
    'A ball that rests in a round taper',
    `A ball of ${subject.label('d')} in a taper of ${subject.label('alpha')} per side; its top lies ${subject.label('h')} below the face, so the pocket is ${subject.label('w')} wide there. To scale.`,
  );
};

/** An insert on a plate between two gauge pins, to scale. */
export const overPinsPicture: Picture = (subject) => {
  const [over, pin, width, alpha, reach] = ['M', 'd', 'w', 'alpha', 'c'].map((symbol) => subject.value(symbol)) as [
    number, number, number, number, number,
  ]; // prettier-ignore
  const scale = Math.min(250 / over, 70 / pin);
  const [axis, plate] = [160, 150];
  // The wide end stands on the plate where the pins come nearer to its corner than a right angle would let them.
  const widens = reach > (pin / 2) * (1 + 1 / Math.cos(alpha)) ? 1 : -1;
  const top = plate - Math.min(120, 1.5 * pin * scale);
  const base = (width / 2) * scale;
  const head = Math.max(2, base + widens * (plate - top) * Math.tan(alpha));
  const drawing = new Drawing(plate + 72);
  drawing.section(
    [at(axis - head, top), at(axis + head, top), at(axis + base, plate), at(axis - base, plate)],
    'rising',
  );
  drawing.line(at(12, plate), at(308, plate));
  const radius = (pin / 2) * scale;
  for (const side of [-1, 1] as const)
    drawing.circle(at(axis + side * ((over / 2) * scale - radius), plate - radius), radius, 'accent');
  drawing.across(
    axis - (over / 2) * scale,
    axis + (over / 2) * scale,
    plate + 28,
    subject.label('M'),
    plate - radius,
  );
  drawing.text(
    at(8, plate + 64),
    [subject.label('w'), subject.label('d'), subject.label('alpha')].join('   '),
  );
  return drawing.svg(
    'A tapered insert measured over two gauge pins',
    `The insert stands on a plate between two pins of ${subject.label('d')}: ${subject.label('M')} over them, ${subject.label('w')} at the plate. To scale.`,
  );
};

/** Where an axis lies in the zone that it just reaches. */
export const positionPicture: Picture = (subject) => {
  const [x, y, zone] = ['x', 'y', 'T'].map((symbol) => subject.value(symbol)) as [number, number, number];
  if (zone === 0) return undefined;
  const scale = 140 / zone;
  const middle = at(160, 96);
  const drawing = new Drawing(210);
  drawing.circle(middle, 70);
  drawing.line(at(70, middle.y), at(250, middle.y), 'axis').line(at(middle.x, 8), at(middle.x, 184), 'axis');
  const found = at(middle.x + x * scale, middle.y - y * scale);
  drawing.line(middle, found, 'accent').circle(found, 3, 'accent');
  drawing.text(at(8, 204), [subject.label('x'), subject.label('y'), subject.label('T')].join('   '));
  return drawing.svg(
    'An axis off its true position',
    `Off by ${subject.label('x')} and ${subject.label('y')}, the axis just reaches a zone of diameter ${subject.label('T')} about its true position.`,
  );
};
