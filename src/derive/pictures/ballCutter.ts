import { at, Drawing, type Point } from './drawing';
import { exaggeration, timesText, type Picture } from './subject';

/** The scallops that passes of a ball cutter leave; their height is drawn larger where it is small. */
export const scallopPicture: Picture = (subject) => {
  const [dia, along, scallop] = ['D', 's_b', 'h'].map((symbol) => subject.value(symbol)) as [
    number,
    number,
    number,
  ];
  if (along <= 0 || scallop <= 0) return undefined;
  const radius = dia / 2;
  const passes = 3;
  const scale = 236 / (passes * along);
  const times = exaggeration(scallop * scale, 44);
  const [left, floor] = [42, 170];
  const drawing = new Drawing(250);
  const surface: Point[] = [];
  for (let pass = 0; pass < passes; pass++) {
    for (let i = pass === 0 ? 0 : 1; i <= 24; i++) {
      const x = (i / 24 - 0.5) * along;
      // As in the equation: what stays of R − √(R² − x²) without losing digits.
      const height = (x * x) / (radius + Math.sqrt(Math.max(0, radius * radius - x * x)));
      surface.push(at(left + (pass * along + x + along / 2) * scale, floor - height * scale * times));
    }
  }
  drawing.polyline(surface, 'accent');
  const end = left + passes * along * scale;
  drawing.polyline(
    [
      at(left, (surface[0] as Point).y),
      at(left, floor + 18),
      at(end, floor + 18),
      at(end, (surface[0] as Point).y),
    ],
    'thin',
  );
  const top = floor - scallop * scale * times;
  const centre = left + 1.5 * along * scale;
  // The ball over the middle pass, as much of it as has room.
  const ball: Point[] = [];
  const reach = Math.min(radius * 0.999, 0.62 * along);
  for (let i = 0; i <= 40; i++) {
    const x = (i / 20 - 1) * reach;
    const height = (x * x) / (radius + Math.sqrt(radius * radius - x * x));
    ball.push(at(centre + x * scale, Math.max(34, floor - height * scale * times)));
  }
  drawing.polyline(ball, 'outline');
  drawing.line(at(centre, 30), at(centre, floor + 8), 'axis');
  drawing.text(at(centre + 8, 40), `ball D = ${subject.text(dia, 'length')}`);
  drawing.across(left + along * scale, left + 2 * along * scale, floor + 44, subject.label('s_b'), top);
  drawing.along(top, floor, 22, '', left);
  drawing.text(at(8, top - 22), subject.label('h'));
  drawing.text(at(8, 242), `Heights ${timesText(times)}${times === 1 ? '' : ' against the widths'}`);
  return drawing.svg(
    'Scallops between the passes of a ball cutter',
    `Passes ${subject.text(along, 'length')} apart along the surface leave scallops of ${subject.label('h')}. Heights are ${timesText(times)}.`,
  );
};

/** A ball cutter at its depth, to scale. */
export const ballDepthPicture: Picture = (subject) => {
  const [dia, depth, cut] = ['D', 'a_p', 'D_e'].map((symbol) => subject.value(symbol)) as [
    number,
    number,
    number,
  ];
  const radius = dia / 2;
  if (depth > 1.4 * dia) return undefined;
  const scale = 66 / radius;
  const [axis, tip] = [160, 178];
  const centre = tip - radius * scale;
  const level = tip - depth * scale;
  const drawing = new Drawing(244);
  const r = radius * scale;
  drawing.path(`M${axis - r} 20L${axis - r} ${centre}A${r} ${r} 0 0 0 ${axis + r} ${centre}L${axis + r} 20`);
  drawing.line(at(axis, 14), at(axis, tip + 10), 'axis');
  const half = (cut / 2) * scale;
  drawing
    .line(at(12, level), at(axis - half, level), 'outline')
    .line(at(axis + half, level), at(308, level), 'outline');
  drawing.line(at(axis - half, level), at(axis + half, level), 'accent');
  drawing.across(axis - half, axis + half, tip + 40, subject.label('D_e'), level);
  drawing.along(level, tip, 262, '', axis);
  drawing.text(at(262, tip + 24), subject.label('a_p'), { anchor: 'middle' });
  drawing.across(axis - r, axis + r, 34, '', 40);
  drawing.text(at(axis + 8, 29), subject.label('D'));
  return drawing.svg(
    'A ball cutter at its axial depth',
    `At ${subject.label('a_p')} the ball of ${subject.label('D')} cuts a circle of ${subject.label('D_e')}. To scale.`,
  );
};
