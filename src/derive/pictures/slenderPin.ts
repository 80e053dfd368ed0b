import { at, Drawing } from './drawing';
import { exaggeration, timesText, type Picture } from './subject';

/** A stepped pin between its ends, lengths to one scale, diameters to another. */
export const steppedPinPicture: Picture = (subject) => {
  const [d1, L1, d2, L2] = ['d_1', 'L_1', 'd_2', 'L_2'].map((symbol) => subject.value(symbol)) as [
    number, number, number, number,
  ]; // prettier-ignore
  const along = 200 / (L1 + L2);
  const across = 40 / Math.max(d1, d2);
  const [axis, top] = [170, 44];
  const [step, foot] = [top + L1 * along, top + 200];
  const [a, b] = [Math.max(3, (d1 * across) / 2), Math.max(3, (d2 * across) / 2)];
  const drawing = new Drawing(foot + 66);
  drawing.section([at(axis - a, top), at(axis + a, top), at(axis + a, step), at(axis - a, step)], 'rising');
  drawing.section([at(axis - b, step), at(axis + b, step), at(axis + b, foot), at(axis - b, foot)], 'rising');
  drawing.arrow(at(axis, 8), at(axis, top - 2)).arrow(at(axis, foot + 36), at(axis, foot + 2));
  drawing.text(at(axis + 10, 20), subject.label('P'), { accent: true });
  drawing.along(top, step, axis - 60, subject.label('L_1'), axis - a);
  drawing.along(step, foot, axis - 90, subject.label('L_2'), axis - b);
  drawing.text(at(8, foot + 58), [subject.label('d_1'), subject.label('d_2')].join('   '));
  return drawing.svg(
    'A stepped pin under its buckling load',
    `Shank ${subject.label('d_1')}, ${subject.label('L_1')}; tip ${subject.label('d_2')}, ${subject.label('L_2')}; it buckles at ${subject.label('P')}. Lengths are to scale, diameters to another.`,
  );
};

/** A core pin that the melt bends from one side; its deflection is drawn larger. */
export const corePinPicture: Picture = (subject) => {
  const [d, L, z, moment, load] = ['d', 'L', 'z', 'M', 'w'].map((symbol) => subject.value(symbol)) as [
    number, number, number, number, number,
  ]; // prettier-ignore
  const scale = Math.min(220 / L, 46 / d);
  const [left, middle] = [50, 92];
  const right = left + L * scale;
  const half = Math.max(2, (d * scale) / 2);
  // Its moment tells how the tip is held: an eighth of w L² with a seat, a half without.
  const seated = load > 0 && moment < 0.3 * load * L ** 2;
  const drawing = new Drawing(188);
  drawing.section([at(left - 34, 40), at(left, 40), at(left, 144), at(left - 34, 144)], 'falling');
  if (seated)
    drawing.section([at(right, 60), at(right + 30, 60), at(right + 30, 124), at(right, 124)], 'falling');
  drawing.polygon([
    at(left, middle - half),
    at(right, middle - half),
    at(right, middle + half),
    at(left, middle + half),
  ]);
  for (let i = 1; i <= 5; i++) {
    const x = left + ((right - left) * i) / 5.5;
    drawing.arrow(at(x, middle - half - 24), at(x, middle - half - 2), 'thin');
  }
  const times = exaggeration(z * scale, 24);
  const shape = (u: number): number =>
    seated ? (u ** 2 * (3 - 5 * u + 2 * u ** 2) * 184.634) / 48 : (u ** 2 * (6 - 4 * u + u ** 2)) / 3;
  if (z > 0)
    drawing.polyline(
      Array.from({ length: 31 }, (_, i) =>
        at(left + ((right - left) * i) / 30, middle + Math.min(46, z * scale * times) * shape(i / 30)),
      ),
      'accent',
    );
  drawing.text(at(8, 16), [subject.label('p'), subject.label('d'), subject.label('L')].join('   '));
  drawing.text(at(8, 166), `Deflection ${subject.label('z')}, ${timesText(times)}`);
  drawing.text(at(8, 182), `Bending stress ${subject.label('sigma')}`);
  return drawing.svg(
    'A core pin bent by the melt',
    `The melt presses with ${subject.label('p')} on one side of a pin of ${subject.label('d')}, ${subject.label('L')} long, ${seated ? 'its tip in a seat' : 'its tip free'}: it bends by ${subject.label('z')}, ${timesText(times)}.`,
  );
};
