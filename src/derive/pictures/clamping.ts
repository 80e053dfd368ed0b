import { at, Drawing, type Point } from './drawing';
import type { Picture } from './subject';

/** Two halves of a mold between the plates of an elastic clamp, not to scale. */
export const clampGapPicture: Picture = (subject) => {
  const isOpen = subject.value('g') > 0;
  const gap = isOpen ? 14 : 0;
  const [top, bottom, middle] = [28, 172, 100];
  const drawing = new Drawing(264);
  drawing.section(box(36, 284, top - 16, top), 'rising').section(box(36, 284, bottom, bottom + 16), 'rising');
  drawing.section(box(92, 228, top, middle - gap / 2), 'falling');
  drawing.section(box(92, 228, middle + gap / 2, bottom), 'rising');
  for (const x of [58, 262]) drawing.polyline(spring(x, top, bottom));
  drawing.arrow(at(160, middle - 4), at(160, middle - 52)).arrow(at(160, middle + 4), at(160, middle + 52));
  const stiffness = ['k_c', ...(subject.find('k_m') === undefined ? [] : ['k_m'])];
  const rows = [['F', 'F_o'], stiffness, ['F_s', 'g']];
  rows.forEach((symbols, i) =>
    drawing.text(at(8, bottom + 40 + 18 * i), symbols.map((symbol) => subject.label(symbol)).join('   ')),
  );
  return drawing.svg(
    'A mold in an elastic clamp',
    `The melt pushes the halves apart with ${subject.label('F_o')}; the faces part at ${subject.label('F_s')}, so ${isOpen ? `a gap of ${subject.label('g')} opens` : 'they stay shut'}. Not to scale.`,
  );
};

const box = (left: number, right: number, top: number, bottom: number): Point[] => [
  at(left, top),
  at(right, top),
  at(right, bottom),
  at(left, bottom),
];

/** A bar that gives, drawn as a spring. */
function spring(x: number, top: number, bottom: number): Point[] {
  const turns = 8;
  const pitch = (bottom - top - 24) / turns;
  const coils = Array.from({ length: turns }, (_, i) =>
    at(x + (i % 2 === 0 ? 9 : -9), top + 12 + (i + 0.5) * pitch),
  );
  return [at(x, top), at(x, top + 12), ...coils, at(x, bottom - 12), at(x, bottom)];
}
