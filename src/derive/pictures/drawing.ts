/**
 * Line drawings as SVG text: outlines in the color of the text around them, so that they suit light and dark; thin
 * dimension lines with arrows between extension lines, the figure above the line (after ISO 129-1); sections hatched
 * at 45° (after ISO 128-3). Lengths are in units of the picture, 320 wide.
 */
export const WIDTH = 320;

export interface Point {
  readonly x: number;
  readonly y: number;
}

export const at = (x: number, y: number): Point => ({ x, y });

/** How a line is drawn: an outline, a thin line, hidden or elsewhere, an axis, or what the picture is about. */
export type Stroke = 'outline' | 'thin' | 'dashed' | 'axis' | 'accent';

const STROKES: Readonly<Record<Stroke, string>> = {
  outline: 'stroke="currentColor" stroke-width="1.6" stroke-linejoin="round"',
  thin: 'stroke="currentColor" stroke-width="0.8"',
  dashed: 'stroke="currentColor" stroke-width="1" stroke-dasharray="5 3"',
  axis: 'stroke="currentColor" stroke-width="0.8" stroke-dasharray="10 3 2 3"',
  accent: 'class="picture-accent" stroke="currentColor" stroke-width="2"',
};

const ARROW = 7;
const HATCH_SPACING = 7;
const TEXT_SIZE = 12;
/** Of the usual sans-serif faces, for what must not overlap. */
const LETTER_WIDTH = 0.52 * TEXT_SIZE;

export const textWidth = (text: string): number => text.length * LETTER_WIDTH;

const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** `L_0` with its index set lower and smaller. */
const withIndices = (text: string): string =>
  escape(text).replace(
    /_(\w+)/g,
    (_, index: string) => `<tspan dy="3" font-size="9">${index}</tspan><tspan dy="-3">&#8203;</tspan>`,
  );

const figure = (x: number): string => String(Math.round(x * 100) / 100);

const pathOf = (points: readonly Point[], close: boolean): string =>
  `${points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${figure(x)} ${figure(y)}`).join('')}${close ? 'Z' : ''}`;

/** Neighbouring parts of a section are told apart by the direction of their lines. */
export type Direction = 'rising' | 'falling';

export interface TextOptions {
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Read from the right, as on a dimension that stands upright. */
  readonly upright?: boolean;
  readonly accent?: boolean;
}

export class Drawing {
  private readonly parts: string[] = [];

  constructor(private readonly height: number) {}

  path(d: string, stroke: Stroke = 'outline'): this {
    this.parts.push(`<path d="${d}" fill="none" ${STROKES[stroke]}/>`);
    return this;
  }

  line(from: Point, to: Point, stroke: Stroke = 'outline'): this {
    return this.path(pathOf([from, to], false), stroke);
  }

  polyline(points: readonly Point[], stroke: Stroke = 'outline'): this {
    return this.path(pathOf(points, false), stroke);
  }

  polygon(points: readonly Point[], stroke: Stroke = 'outline'): this {
    return this.path(pathOf(points, true), stroke);
  }

  circle(centre: Point, radius: number, stroke: Stroke = 'outline'): this {
    const [x, y, r] = [centre.x, centre.y, radius].map(figure);
    this.parts.push(`<circle cx="${x}" cy="${y}" r="${r}" fill="none" ${STROKES[stroke]}/>`);
    return this;
  }

  /** A cut part: its outline, filled with lines at 45° that fall or rise. */
  section(points: readonly Point[], direction: Direction): this {
    return this.hatch(points, direction).polygon(points);
  }

  /** The lines alone, for a part that is made of several convex ones. */
  hatch(points: readonly Point[], direction: Direction): this {
    const strokes = hatchLines(points, direction === 'rising' ? -1 : 1).map((pair) => pathOf(pair, false));
    if (strokes.length > 0)
      this.parts.push(
        `<path d="${strokes.join('')}" fill="none" stroke="currentColor" stroke-width="0.7" opacity="0.55"/>`,
      );
    return this;
  }

  text(
    where: Point,
    text: string,
    { anchor = 'start', upright = false, accent = false }: TextOptions = {},
  ): this {
    const turn = upright ? ` transform="rotate(-90 ${figure(where.x)} ${figure(where.y)})"` : '';
    this.parts.push(
      `<text x="${figure(where.x)}" y="${figure(where.y)}" text-anchor="${anchor}" font-size="${TEXT_SIZE}"${accent ? ' class="picture-accent"' : ''} fill="currentColor"${turn}>${withIndices(text)}</text>`,
    );
    return this;
  }

  /** An arrow with its head at the end. */
  arrow(from: Point, to: Point, stroke: Stroke = 'accent'): this {
    this.line(from, to, stroke);
    return this.head(to, Math.atan2(to.y - from.y, to.x - from.x), stroke === 'accent');
  }

  /** A length across, measured at `y`, with extension lines from the feature at `from`. */
  across(x1: number, x2: number, y: number, text: string, from: number): this {
    this.extension(at(x1, from), at(x1, y)).extension(at(x2, from), at(x2, y));
    const fits = x2 - x1 >= 3 * ARROW;
    const inside = textWidth(text) <= x2 - x1;
    const beyond = fits && inside ? 0 : fits ? ARROW : 2 * ARROW;
    this.line(at(x1 - beyond, y), at(x2 + beyond, y), 'thin');
    this.head(at(x1, y), fits ? Math.PI : 0).head(at(x2, y), fits ? 0 : Math.PI);
    if (inside) return this.text(at((x1 + x2) / 2, y - 4), text, { anchor: 'middle' });
    const right = x2 + beyond + 5;
    return right + textWidth(text) <= WIDTH
      ? this.text(at(right, y + 4), text)
      : this.text(at(x1 - beyond - 5, y + 4), text, { anchor: 'end' });
  }

  /** A length up and down, measured at `x`. */
  along(y1: number, y2: number, x: number, text: string, from: number): this {
    this.extension(at(from, y1), at(x, y1)).extension(at(from, y2), at(x, y2));
    const fits = y2 - y1 >= 3 * ARROW;
    const beyond = fits ? 0 : 2 * ARROW;
    this.line(at(x, y1 - beyond), at(x, y2 + beyond), 'thin');
    this.head(at(x, y1), fits ? -Math.PI / 2 : Math.PI / 2).head(
      at(x, y2),
      fits ? Math.PI / 2 : -Math.PI / 2,
    );
    if (fits && textWidth(text) <= y2 - y1 + 4 * ARROW)
      return this.text(at(x - 4, (y1 + y2) / 2), text, { anchor: 'middle', upright: true });
    return x + 6 + textWidth(text) <= WIDTH
      ? this.text(at(x + 6, (y1 + y2) / 2 + 4), text)
      : this.text(at(x - 6, (y1 + y2) / 2 + 4), text, { anchor: 'end' });
  }

  /** An angle at a corner between two directions in degrees, clockwise from the right. */
  angle(corner: Point, radius: number, from: number, to: number, text: string, side: 'start' | 'end'): this {
    const [a, b] = [from, to].map((degrees) => (degrees * Math.PI) / 180) as [number, number];
    const on = (angle: number): Point =>
      at(corner.x + radius * Math.cos(angle), corner.y + radius * Math.sin(angle));
    const [start, end] = [on(a), on(b)];
    const [r, x, y] = [radius, end.x, end.y].map(figure);
    this.path(`M${figure(start.x)} ${figure(start.y)}A${r} ${r} 0 0 ${b > a ? 1 : 0} ${x} ${y}`, 'thin');
    const middle = on((a + b) / 2);
    return this.text(at(middle.x + (side === 'start' ? 8 : -8), middle.y + 4), text, { anchor: side });
  }

  svg(title: string, description: string): string {
    const [name, says] = [title, description].map((text) => escape(text.replaceAll('_', ' ')));
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${figure(this.height)}" role="img" aria-label="${name}" font-family="inherit">` +
      `<title>${name}</title><desc>${says}</desc>${this.parts.join('')}</svg>`
    );
  }

  private extension(from: Point, to: Point): this {
    const gap = 2;
    const overshoot = 3;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length < gap) return this;
    const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
    return this.line(
      at(from.x + gap * ux, from.y + gap * uy),
      at(to.x + overshoot * ux, to.y + overshoot * uy),
      'thin',
    );
  }

  private head(tip: Point, angle: number, accent = false): this {
    const side = (turn: number): Point =>
      at(tip.x - ARROW * Math.cos(angle + turn), tip.y - ARROW * Math.sin(angle + turn));
    this.parts.push(
      `<path d="${pathOf([tip, side(0.26), side(-0.26)], true)}"${accent ? ' class="picture-accent"' : ''} fill="currentColor" stroke="none"/>`,
    );
    return this;
  }
}

/** Lines at 45° inside a convex outline. */
function hatchLines(points: readonly Point[], slope: 1 | -1): (readonly [Point, Point])[] {
  // Along such a line y − slope·x is the same everywhere.
  const offsets = points.map(({ x, y }) => y - slope * x);
  const [low, high] = [Math.min(...offsets), Math.max(...offsets)];
  const step = HATCH_SPACING * Math.SQRT2;
  const lines: (readonly [Point, Point])[] = [];
  // Counted from the picture’s corner, so that the lines of neighbouring parts meet.
  for (let offset = Math.ceil(low / step) * step; offset < high; offset += step) {
    const hits = points.flatMap((a, i): Point[] => {
      const b = points[(i + 1) % points.length] as Point;
      const [da, db] = [a.y - slope * a.x - offset, b.y - slope * b.x - offset];
      if (da * db >= 0) return [];
      const t = da / (da - db);
      return [at(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y))];
    });
    const [first, last] = [hits[0], hits[1]];
    if (first && last) lines.push([first, last]);
  }
  return lines;
}
