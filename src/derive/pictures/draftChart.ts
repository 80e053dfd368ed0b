import { seatRelease } from '../../catalogue/seat/release';
import { seatSink } from '../../catalogue/seat/sink';
import { seatSlideBack } from '../../catalogue/seat/slideBack';
import { seatStep } from '../../catalogue/seat/step';
import { friction } from '../../catalogue/seat/inputs';
import { amountSI } from '../../core/amount';
import type { Definition } from '../../core/define';
import { answer } from '../../core/answer';
import { numberText } from '../../core/format';
import { fromSI, systemUnit, type System } from '../../core/quantity';
import { at, Drawing, type Point } from './drawing';
import type { Subject } from './subject';

/** What a draft decides of the seat that is shown: how far it moves, whether it lets go, when it slides back. */

const LEFT = 58;
const RIGHT = 306;
const PANEL = 92;
const POINTS = 60;
const DEGREE = Math.PI / 180;

const valueOf = (definition: Definition, ...values: unknown[]): number =>
  answer(definition, values, 'mm') as number;

/** Of a calculation with its draft and friction changed. */
type Curve = (draft: number, mu: number, release: number) => number;

interface Panel {
  readonly says: string;
  readonly of: Curve;
}

/** The seat's metals as its equations know them. */
const metals = (subject: Subject): readonly unknown[] =>
  ['i', 'o'].map((index) => ({
    modulus: subject.value(`E_${index}`),
    poisson: subject.value(`nu_${index}`),
  }));

/** In the system's unit of length. */
const length =
  (system: System, of: Curve): Curve =>
  (...values) =>
    fromSI(of(...values), systemUnit('length', system));

function panelsOf(name: string, subject: Subject, system: System): Panel[] {
  const push = subject.find('F') ?? subject.value('F_i');
  const unit = systemUnit('length', system).symbol;
  const sizes = (): number[] => ['r', 'L', 'b'].map((symbol) => subject.value(symbol));
  const moves: Panel[] =
    name === 'SEAT.SINK'
      ? [
          {
            says: `Sink, ${unit}`,
            of: length(system, (draft, mu) =>
              valueOf(seatSink, push, draft, mu, ...sizes(), ...metals(subject)),
            ),
          },
        ]
      : name === 'SEAT.STEP'
        ? [
            {
              says: `Step, ${unit}`,
              of: length(system, (draft, mu) =>
                valueOf(
                  seatStep,
                  push,
                  subject.value('F_m'),
                  draft,
                  mu,
                  ...sizes(),
                  ...metals(subject),
                  subject.value('F_s'),
                ),
              ),
            },
          ]
        : [];
  return [
    ...moves,
    {
      says: 'Push that frees it, over the push',
      of: (draft, mu, release) => valueOf(seatRelease, push, draft, mu, release) / push,
    },
    {
      says: 'Slides back at, over the push',
      of: (draft, mu) => valueOf(seatSlideBack, push, draft, mu) / push,
    },
  ];
}

/** A round number above what an axis must hold. */
function roundTop(most: number): number {
  const size = 10 ** Math.floor(Math.log10(most));
  return [1, 2, 2.5, 5, 10].map((step) => step * size).find((top) => top >= most) ?? most;
}

const WITH_CHART = ['SEAT.SINK', 'SEAT.STEP', 'SEAT.RELEASE'];

/** Step, release and sliding back against the draft, for the values of one calculation and the band of usual friction. */
export function draftChart(name: string, subject: Subject, system: System): string | undefined {
  if (!WITH_CHART.includes(name) || !((subject.find('F') ?? subject.find('F_i') ?? 0) > 0)) return undefined;
  const own = subject.value('alpha');
  const mu = subject.value('mu');
  const release = subject.find('mu_s') ?? mu;
  const [from, to] = [Math.min(2 * DEGREE, own / 2), Math.min(44 * DEGREE, Math.max(15 * DEGREE, 1.5 * own))];
  const drafts = Array.from({ length: POINTS + 1 }, (_, i) => from + ((to - from) * i) / POINTS);
  const x = (draft: number): number => LEFT + ((draft - from) / (to - from)) * (RIGHT - LEFT);
  const band = (friction.reading as { usual: readonly (string | number)[] }).usual.map((amount) =>
    amountSI(amount, 'ratio'),
  );
  const panels = panelsOf(name, subject, system);
  const height = panels.length * (PANEL + 28) + 54;
  const drawing = new Drawing(height);
  panels.forEach(({ says, of }, i) => {
    const top = 24 + i * (PANEL + 28);
    const bottom = top + PANEL;
    const line = drafts.map((draft) => of(draft, mu, release));
    const here = of(own, mu, release);
    // At small drafts the curves rise without end: the axis holds what lies near the draft that is asked about.
    const high = roundTop(Math.max(2.5 * Math.abs(here), 0.2 * Math.max(...line.map(Math.abs)), 1e-9));
    const low = Math.min(...line, 0) < 0 ? -high : 0;
    const y = (value: number): number => bottom - ((value - low) / (high - low)) * PANEL;
    const draw = (values: readonly number[], stroke: 'accent' | 'dashed'): void => {
      const points = values.flatMap((value, k): Point[] =>
        value <= high && value >= low ? [at(x(drafts[k] as number), y(value))] : [],
      );
      if (points.length > 1) drawing.polyline(points, stroke);
    };
    drawing.polyline([at(LEFT, top), at(LEFT, bottom), at(RIGHT, bottom)], 'thin');
    for (const mark of [low, (low + high) / 2, high]) {
      drawing.line(at(LEFT - 4, y(mark)), at(LEFT, y(mark)), 'thin');
      drawing.text(at(LEFT - 7, y(mark) + 4), numberText(mark), { anchor: 'end' });
    }
    for (const limit of band)
      draw(
        drafts.map((draft) => of(draft, limit, limit)),
        'dashed',
      );
    draw(line, 'accent');
    drawing.line(at(x(own), top), at(x(own), bottom), 'axis');
    drawing.text(at(RIGHT, top - 6), says, { anchor: 'end' });
    for (const share of [0, 0.5, 1]) {
      const draft = from + share * (to - from);
      drawing.line(at(x(draft), bottom), at(x(draft), bottom + 4), 'thin');
      if (i === panels.length - 1)
        drawing.text(at(x(draft), bottom + 18), `${numberText(Math.round((draft / DEGREE) * 10) / 10)}°`, {
          anchor: share === 1 ? 'end' : 'middle',
        });
    }
  });
  drawing.text(at(8, height - 20), `Draft per side; upright: ${subject.label('alpha')}`);
  drawing.text(
    at(8, height - 4),
    `Dashed: usual friction, ${band.join(' and ')}; line: ${subject.label('mu')}`,
  );
  return drawing.svg(
    'What the draft decides of this seat',
    `${panels.map(({ says }) => says).join('; ')}: against the draft per side, for friction ${numberText(mu)} and, dashed, for the ends of usual friction, ${band.join(' and ')}. A larger draft moves less under pressure; above the friction angle it lets go by itself and slides back as the push falls.`,
  );
}
