import { at, Drawing } from './drawing';
import type { Picture, Subject } from './subject';

/** Draws one flank of a taper at its true angle. */
function flank(subject: Subject, height: number): { drawing: Drawing; on: (y: number) => number } {
  const alpha = subject.value('alpha');
  const slope = Math.tan(alpha);
  const drawing = new Drawing(height);
  const on = (y: number): number => 200 - (y - 20) * slope;
  return { drawing, on };
}

/** The forces on an insert that is pushed into its seat. */
export const seatForcesPicture: Picture = (subject) => {
  const alpha = subject.value('alpha');
  const [top, bottom] = [52, 190];
  const middle = (top + bottom) / 2;
  const half = (y: number): number => 64 - (y - middle) * Math.tan(alpha);
  if (half(bottom) < 8) return undefined;
  const axis = 150;
  const drawing = new Drawing(250);
  drawing.section(
    [
      at(axis - half(top), top),
      at(axis + half(top), top),
      at(axis + half(bottom), bottom),
      at(axis - half(bottom), bottom),
    ],
    'rising',
  );
  drawing.line(at(axis, top - 34), at(axis, bottom + 12), 'axis');
  drawing.arrow(at(axis, top - 46), at(axis, top - 3));
  drawing.text(at(axis + 8, top - 32), subject.label('F'), { accent: true });
  for (const side of [-1, 1]) {
    const foot = at(axis + side * half(middle), middle);
    const out = at(foot.x + side * 52 * Math.cos(alpha), foot.y + 52 * Math.sin(alpha));
    drawing.arrow(out, foot);
    drawing.text(at(out.x + side * 2, out.y + 18), 'N/2', { anchor: 'middle', accent: true });
    // Friction acts up the flank while the insert slides in.
    const mu = subject.find('mu') ?? 0;
    const reach = Math.max(14, Math.min(60, 52 * mu * 2));
    if (mu > 0) {
      const end = at(foot.x + side * reach * Math.sin(alpha), foot.y - reach * Math.cos(alpha));
      drawing.arrow(foot, end);
      drawing.text(at(end.x + side * 6, end.y + 2), 'µN/2', {
        anchor: side < 0 ? 'end' : 'start',
        accent: true,
      });
    }
  }
  const found = ['N', 'S', 'R', 'p'].filter((symbol) => subject.find(symbol) !== undefined);
  drawing.text(
    at(8, 240),
    [subject.label('alpha'), subject.label('mu'), ...found.map((symbol) => subject.label(symbol))].join(
      '   ',
    ),
  );
  return drawing.svg(
    'Forces on the tapered insert while it slides in',
    `The push ${subject.label('F')} from above is carried by the normal forces N on both flanks and by friction along them, at ${subject.label('alpha')} per side, drawn at its true angle. Arrows are not to scale.`,
  );
};

/** What a lift opens along a flank, or a lift that opens so much. */
const liftPicture: Picture = (subject) => {
  const { drawing, on } = flank(subject, 220);
  const [low, lift] = [200, 70];
  drawing.line(at(on(20), 20), at(on(low), low));
  drawing.text(at(on(low) + 8, low - 4), 'pocket');
  const up = (y: number): number => on(y + lift);
  drawing.line(at(up(20), 20), at(up(low - lift), low - lift), 'accent');
  drawing.text(at(up(70) - 8, 74), 'insert, lifted', { anchor: 'end', accent: true });
  drawing.along(low - lift, low, 40, subject.label('z'), on(low));
  drawing.across(up(96), on(96), 100, subject.label('c'), 96);
  drawing.text(at(on(20) + 12, 30), subject.label('alpha'));
  return drawing.svg(
    'Gap beside a tapered insert that is lifted',
    `Lifted by ${subject.label('z')}, the flank at ${subject.label('alpha')} stands off by ${subject.label('c')} on each side. The angle is true, the lift is drawn to any scale.`,
  );
};
export const seatClearPicture = liftPicture;

/** How a wide insert stands higher in its pocket. */
export const seatHeightPicture: Picture = (subject) => {
  const h = subject.value('h');
  const { drawing, on } = flank(subject, 230);
  const raised = h >= 0 ? -50 : 50;
  drawing.line(at(on(20), 20), at(on(200), 200));
  drawing.line(at(20, 90), at(on(90), 90), 'dashed');
  drawing.line(at(20, 90 + raised), at(on(90 + raised), 90 + raised), 'accent');
  drawing.text(at(24, h >= 0 ? 106 : 84), 'as designed');
  drawing.text(at(24, 90 + raised + (h >= 0 ? -6 : 16)), h >= 0 ? 'stands higher' : 'sits lower', {
    accent: true,
  });
  drawing.along(Math.min(90, 90 + raised), Math.max(90, 90 + raised), 60, '', 60);
  drawing.text(at(68, 90 + raised / 2 + 4), subject.label('h'));
  drawing.text(at(on(180) + 10, 180), subject.label('alpha'));
  drawing.text(
    at(8, 224),
    `${subject.find('dw') === undefined ? subject.label('w') : subject.label('dw')} in width, half of it on each side`,
  );
  return drawing.svg(
    'Seated height of a tapered insert whose width is off',
    `Half the error in width on each side moves the insert along the taper of ${subject.label('alpha')}, by ${subject.label('h')} in height. The angle is true, the heights are drawn to any scale.`,
  );
};
