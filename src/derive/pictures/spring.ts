import { at, Drawing } from './drawing';
import type { Picture, Subject } from './subject';

interface State {
  readonly says: string;
  readonly symbol: string;
  readonly length: number;
}

interface Coil {
  /** Wire and mean diameter; where the equation does not ask for them the coils only stand for a spring. */
  readonly wire: number;
  readonly meanDia: number;
  readonly coils: number;
  readonly isTrue: boolean;
}

const BASE = 236;
const TALLEST = 190;

function coilOf(subject: Subject, tallest: number): Coil {
  const wire = subject.find('d');
  const meanDia = subject.find('D');
  const coils = subject.find('N_t') ?? subject.find('N_a');
  return {
    wire: wire ?? (meanDia ?? 0.3 * tallest) / 9,
    meanDia: meanDia ?? (wire === undefined ? 0.3 * tallest : 8 * wire),
    coils: coils ?? 8,
    isTrue: wire !== undefined && meanDia !== undefined && coils !== undefined,
  };
}

/** A spring at several lengths, side by side on one base and to one scale. */
function springs(
  subject: Subject,
  states: readonly State[],
  coil = coilOf(subject, largest(states)),
): string {
  const places = 300 / states.length;
  const scale = Math.min(TALLEST / largest(states), (places - 74) / (coil.meanDia + coil.wire));
  const drawing = new Drawing(BASE + 46);
  states.forEach(({ says, symbol, length }, i) => {
    const middle = 30 + places * (i + 0.5);
    const [radius, wire, height] = [
      (coil.meanDia / 2) * scale,
      Math.max(1.2, coil.wire * scale),
      length * scale,
    ];
    helix(drawing, middle, BASE - height, height, radius, wire, coil.coils);
    const edge = middle - radius - wire / 2;
    drawing.line(at(edge - 4, BASE), at(middle + radius + wire / 2 + 4, BASE), 'thin');
    drawing.along(BASE - height, BASE, edge - 16, subject.label(symbol), edge);
    drawing.text(at(middle - 8, BASE + 18), says, { anchor: 'middle' });
  });
  drawing.text(
    at(8, BASE + 40),
    `Lengths to scale${coil.isTrue ? ', wire and coils too' : '; coils only stand for a spring'}`,
  );
  return drawing.svg(
    'The spring at its lengths',
    `${states.map(({ says, symbol }) => `${says}: ${subject.label(symbol)}`).join('; ')}. Lengths are to scale.`,
  );
}

const largest = (states: readonly State[]): number => Math.max(...states.map(({ length }) => length));

/** The front half of the coils, wire by wire, and where the wire runs behind. */
function helix(
  drawing: Drawing,
  middle: number,
  top: number,
  height: number,
  radius: number,
  wire: number,
  coils: number,
): void {
  const count = Math.max(2, Math.min(40, Math.round(coils)));
  const pitch = Math.max(0, (height - wire) / (count - 1));
  const isSolid = pitch < 1.3 * wire;
  const riseOf = (i: number): number =>
    isSolid || i === 0 || i === count - 1 ? 0 : Math.min(pitch / 2, radius / 2);
  for (let i = 0; i < count; i++) {
    const y = top + wire / 2 + i * pitch;
    const rise = riseOf(i);
    // Behind the axis the wire goes on from the right end of a coil to the left end of the next.
    if (!isSolid && i < count - 1) {
      const next = y + pitch + riseOf(i + 1) / 2;
      drawing.line(
        at(middle + radius - wire / 2, y - rise / 2 + wire / 2),
        at(middle - radius + wire / 2, next - wire / 2),
        'thin',
      );
    }
    capsule(drawing, middle - radius, y + rise / 2, middle + radius, y - rise / 2, wire * 0.92);
  }
}

/** The outline of a straight wire with round ends. */
function capsule(drawing: Drawing, x1: number, y1: number, x2: number, y2: number, thickness: number): void {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [nx, ny] = [((y2 - y1) / length) * (thickness / 2), ((x1 - x2) / length) * (thickness / 2)];
  const r = thickness / 2;
  const point = (x: number, y: number): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
  drawing.path(
    `M${point(x1 + nx, y1 + ny)}L${point(x2 + nx, y2 + ny)}A${r.toFixed(2)} ${r.toFixed(2)} 0 0 1 ${point(x2 - nx, y2 - ny)}L${point(x1 - nx, y1 - ny)}A${r.toFixed(2)} ${r.toFixed(2)} 0 0 1 ${point(x1 + nx, y1 + ny)}Z`,
    thickness > 3 ? 'outline' : 'thin',
  );
}

const lengths =
  (...wanted: readonly (readonly [says: string, symbol: string])[]): Picture =>
  (subject) => {
    const states = wanted.flatMap(([says, symbol]): State[] => {
      const length = subject.find(symbol);
      return length === undefined || length <= 0 ? [] : [{ says, symbol, length }];
    });
    return states.length === 0 ? undefined : springs(subject, states);
  };

export const springLengthPicture = lengths(['Free', 'L_0'], ['Pressed', 'L']);
export const springPocketPicture = lengths(['Free', 'L_0'], ['Pocket', 'L_p']);
export const springTravelPicture = lengths(['In the pocket', 'L_p'], ['Solid', 'L_s']);
export const springSolidPicture = lengths(['Solid', 'L_s']);
export const springFreePicture = lengths(['Free', 'L_0']);
