import { at, Drawing } from './drawing';
import { exaggeration, timesText, type Picture } from './subject';

/** An ejector pin through its stack of plates; how far it stands proud is drawn larger. */
export const pinInStackPicture: Picture = (subject) => {
  const [stack, proud] = ['S', 'e'].map((symbol) => subject.value(symbol)) as [number, number];
  const [axis, face, foot] = [160, 58, 214];
  const scale = (foot - face) / stack;
  const times = exaggeration(Math.abs(proud) * scale, 18);
  const tip = face - Math.max(-40, Math.min(40, proud * scale * times));
  const drawing = new Drawing(284);
  const radius = 9;
  const plates = [face, face + 74, face + 116, foot];
  for (const side of [-1, 1] as const) {
    plates.slice(1).forEach((bottom, i) => {
      const top = plates[i] as number;
      drawing.section(
        [
          at(axis + side * radius, top),
          at(axis + side * 84, top),
          at(axis + side * 84, bottom),
          at(axis + side * radius, bottom),
        ],
        i % 2 === 0 ? 'falling' : 'rising',
      );
    });
  }
  drawing.polyline(
    [
      at(axis - radius, foot),
      at(axis - radius, tip),
      at(axis + radius, tip),
      at(axis + radius, foot),
      at(axis + radius + 8, foot),
      at(axis + radius + 8, foot + 12),
      at(axis - radius - 8, foot + 12),
      at(axis - radius - 8, foot),
      at(axis - radius, foot),
    ],
    'accent',
  );
  drawing.line(at(axis, face - 46), at(axis, foot + 22), 'axis');
  drawing.along(face, foot, axis + 104, subject.label('S'), axis + 84);
  drawing.along(tip, foot, axis - 104, subject.label('L'), axis - radius - 8);
  if (proud !== 0) {
    drawing.line(at(axis + radius + 2, tip), at(axis + 60, tip), 'thin');
    drawing.text(at(axis + 20, Math.min(tip, face) - 6), `e = ${subject.text(proud, 'length')}`);
  }
  const where = proud > 0 ? 'proud of the face' : proud < 0 ? 'below the face' : 'flush with the face';
  drawing.text(
    at(8, 256),
    `Stands ${where}${proud === 0 ? '' : `, ${timesText(times)}`}; stack to any width`,
  );
  drawing.text(at(8, 274), `L cold; S cold; e in the warm mold`);
  return drawing.svg(
    'An ejector pin through its stack of plates',
    `The pin, ${subject.label('L')} long when cold, stands ${where} of a stack ${subject.label('S')} thick: ${subject.label('e')} when warm, ${timesText(times)}.`,
  );
};
