import { png } from './png';

/** The sizes that the manifest names: 16, 32 and 80 are required, 64 is the high-resolution icon. */
export const ICON_SIZES = [16, 32, 64, 80] as const;

type Point = readonly [x: number, y: number];

interface Shape {
  readonly ink: 'line' | 'part';
  readonly points: readonly Point[];
  readonly closed?: true;
}

const line = (...points: Point[]): Shape => ({ ink: 'line', points });
const part = (...points: Point[]): Shape => ({ ink: 'part', points });
const outline = (...points: Point[]): Shape => ({ ink: 'line', points, closed: true });
const partOutline = (...points: Point[]): Shape => ({ ink: 'part', points, closed: true });
const box = (left: number, top: number, right: number, bottom: number): Shape =>
  outline([left, top], [right, top], [right, bottom], [left, bottom]);
const arc = (x: number, y: number, radius: number, from: number, to: number): Point[] =>
  Array.from({ length: 33 }, (_, i): Point => {
    const angle = ((from + ((to - from) * i) / 32) * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** Line drawings on a field of 32 × 32. The mark of the add-in is a tapered insert lifted out of its pocket. */
export const ICONS = {
  icon: [
    outline([3, 11], [8, 11], [11.5, 24], [20.5, 24], [24, 11], [29, 11], [29, 29], [3, 29]),
    partOutline([9.5, 3], [22.5, 3], [19, 17], [13, 17]),
  ],
  panel: [
    box(3, 5, 29, 27),
    line([3, 11], [29, 11]),
    part([20, 11], [20, 27]),
    part([23, 16], [26, 16]),
    part([23, 21], [26, 21]),
  ],
  work: [
    box(6, 3, 26, 29),
    line([11, 9], [21, 9]),
    line([11, 14], [21, 14]),
    part([11, 20], [21, 20]),
    part([11, 24.5], [17, 24.5]),
  ],
  whatif: [
    line([5, 3], [5, 28], [29, 28]),
    part([5, 22], [27, 17]),
    part([5, 22], [26, 9]),
    part([5, 22], [20, 4]),
  ],
  insert: [
    box(3, 4, 21, 28),
    line([3, 12], [21, 12]),
    line([3, 20], [21, 20]),
    line([12, 12], [12, 28]),
    part([26, 10], [26, 22]),
    part([20, 16], [32, 16]),
  ],
  share: [
    line([16, 9], [4, 9], [4, 28], [23, 28], [23, 17]),
    part([12, 20], [28, 4]),
    part([19, 4], [28, 4], [28, 13]),
  ],
  reenter: [
    line([9, 5], [6, 21]),
    line([16, 5], [13, 21]),
    line([3, 10], [19, 10]),
    line([2, 16], [18, 16]),
    part([28, 6], [28, 25], [12, 25]),
    part([17, 20], [12, 25], [17, 30]),
  ],
  recalculate: [
    part(...arc(16, 16, 12, -60, 230)),
    part([22.5, 12], [22, 5.6], [28.6, 4.4]),
    line([11, 14], [21, 14]),
    line([11, 19], [21, 19]),
  ],
} satisfies Record<string, readonly Shape[]>;

export type IconName = keyof typeof ICONS;

/** Steel and amber: both keep contrast on a light and on a dark ribbon. */
const COLOURS = { line: [0x3b, 0x7c, 0xb0], part: [0xd9, 0x7a, 0x16] } as const;

/** One icon as a PNG of `size` × `size` pixels. */
export const drawIcon = (name: IconName, size: number): Uint8Array => {
  const rgba = new Uint8Array(size * size * 4);
  const scale = size / 32;
  const halfWidth = Math.max(1.1 * scale, 0.65);
  for (const { ink, points, closed } of ICONS[name] as readonly Shape[]) {
    const corners = closed ? [...points, points[0] as Point] : points;
    for (let y = 0; y < size; y++) {
      for (let x = 0; x < size; x++) {
        const away = distance([(x + 0.5) / scale, (y + 0.5) / scale], corners) * scale;
        const cover = Math.min(1, Math.max(0, halfWidth - away + 0.5));
        const at = (y * size + x) * 4;
        if (cover * 255 <= (rgba[at + 3] ?? 0)) continue;
        rgba.set([...COLOURS[ink], Math.round(cover * 255)], at);
      }
    }
  }
  return png(size, rgba);
};

const distance = (point: Point, corners: readonly Point[]): number =>
  Math.min(...corners.slice(1).map((end, i) => toSegment(point, corners[i] as Point, end)));

const toSegment = ([x, y]: Point, [x1, y1]: Point, [x2, y2]: Point): number => {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const along = Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - x1 - along * dx, y - y1 - along * dy);
};
