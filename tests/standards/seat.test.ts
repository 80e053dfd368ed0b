import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { seatClear } from '../../src/catalogue/seat/clear';
import { seatForce } from '../../src/catalogue/seat/force';
import { seatFreeDraft } from '../../src/catalogue/seat/freeDraft';
import { seatLift } from '../../src/catalogue/seat/lift';
import { seatMillPush } from '../../src/catalogue/seat/millPush';
import { seatPushOut } from '../../src/catalogue/seat/pushOut';
import { seatRelease } from '../../src/catalogue/seat/release';
import { seatSink } from '../../src/catalogue/seat/sink';
import { seatSlideBack } from '../../src/catalogue/seat/slideBack';
import { seatSpread } from '../../src/catalogue/seat/spread';
import { seatStep } from '../../src/catalogue/seat/step';
import { seatStiffness } from '../../src/catalogue/seat/stiffness';
import { seatWedgeSink } from '../../src/catalogue/seat/wedgeSink';
import { SEAT_CHART_CASE, seatChart } from '../../src/derive/seatChart';
import { evaluate } from '../../src/core/evaluate';
import { CellError } from '../../src/cells/value';
import { ask, askNumber } from '../support/ask';
import { integrate } from '../support/numeric';
import { valuesOf } from '../support/runCheck';

const DEGREE = Math.PI / 180;

interface Metal {
  readonly E: number;
  readonly nu: number;
}

/**
 * Radial displacement at the contact of a ring (pressed from inside) or of a plug (`from` = 0, pressed from outside),
 * by finite differences: the radial equilibrium u″ + u′/ρ − u/ρ² = 0 of plane stress and the stresses at its edges,
 * nothing of Lamé's solution. One ghost point outside either edge makes the edge stress a central difference.
 */
function displacementByDifferences(
  metal: Metal,
  from: number,
  to: number,
  pressure: number,
  n: number,
): number {
  const { E, nu } = metal;
  const h = (to - from) / n;
  const rho = (i: number): number => from + (i - 1) * h;
  const matrix = Matrix.zeros(n + 3, n + 3);
  const load = Matrix.zeros(n + 3, 1);
  const setRow = (
    row: number,
    middle: number,
    [before, at, after]: readonly [number, number, number],
  ): void => {
    matrix.set(row, middle - 1, before);
    matrix.set(row, middle, at);
    matrix.set(row, middle + 1, after);
  };
  const radialStress = (row: number, at: number, value: number): void => {
    const stiffness = E / (1 - nu ** 2);
    setRow(row, at, [-stiffness / (2 * h), (stiffness * nu) / rho(at), stiffness / (2 * h)]);
    load.set(row, 0, value);
  };
  for (let i = 1; i <= n + 1; i++) {
    const lean = 1 / (2 * h * rho(i));
    setRow(i, i, [1 / h ** 2 - lean, -2 / h ** 2 - 1 / rho(i) ** 2, 1 / h ** 2 + lean]);
  }
  if (from === 0) {
    // The middle of a plug stays where it is, and its ghost point has no part in anything.
    setRow(1, 1, [0, 1, 0]);
    matrix.set(0, 0, 1);
    radialStress(n + 2, n + 1, -pressure);
  } else {
    radialStress(0, 1, -pressure);
    radialStress(n + 2, n + 1, 0);
  }
  return solve(matrix, load).get(from === 0 ? n + 1 : 1, 0);
}

/** The error of central differences falls with the square of the step, so two steps cancel its first term. */
function displacement(metal: Metal, from: number, to: number, pressure: number): number {
  const [coarse, fine] = [120, 240].map((n) => displacementByDifferences(metal, from, to, pressure, n));
  return (4 * (fine as number) - (coarse as number)) / 3;
}

describe('the sink of a round seat', () => {
  const P20 = { E: 205000, nu: 0.29 };
  const ALUMINIUM = { E: 71700, nu: 0.33 };

  // The metals' values: P20 205 GPa and 0.29 by its data sheet, 7075-T6 71.7 GPa and 0.33 by handbook, from memory.
  it.each([
    { push: 3000, draft: 5, friction: 0.15, radius: 10, length: 12, block: 25 },
    { push: 800, draft: 2, friction: 0.1, radius: 6, length: 20, block: 40 },
    { push: 5000, draft: 10, friction: 0.3, radius: 20, length: 15, block: 24 },
  ])(
    'agrees with finite differences of ring and plug (draft $draft°)',
    ({ push, draft, friction, radius, length, block }) => {
      const alpha = draft * DEGREE;
      // Free body in components, without the friction angle: both act on the flank's normal force.
      const normal = push / (Math.sin(alpha) + friction * Math.cos(alpha));
      const radial = normal * (Math.cos(alpha) - friction * Math.sin(alpha));
      const pressure = radial / (2 * Math.PI * radius * length);
      const opens = displacement(ALUMINIUM, radius, block, pressure);
      const closes = displacement(P20, 0, radius, pressure);
      expect(opens).toBeGreaterThan(0);
      expect(closes).toBeLessThan(0);
      const sink = askNumber(
        seatSink,
        push,
        draft,
        friction,
        radius,
        length,
        block,
        'P20',
        '7075-T6',
        null,
        null,
        'mm',
      );
      const independent = (opens - closes) / Math.tan(alpha);
      expect(Math.abs(sink / independent - 1)).toBeLessThan(1e-5);
    },
  );

  const plug = [5, 0.15, 10, 12, 25, 'P20', '7075-T6'] as const;

  it('follows the push in proportion until a stop takes its share, and then no further than a rigid stop', () => {
    const sink = (push: number, gap: number | null = null, stiffness: number | null = null): number =>
      askNumber(seatSink, push, ...plug, gap, stiffness, 'mm');
    expect(sink(2000) / sink(1000)).toBeCloseTo(2, 12);
    expect(sink(500, 0.02)).toBe(sink(500));
    expect(sink(3000, 0.02)).toBeCloseTo(0.02, 12);
    const alone = sink(3000);
    for (const stiffness of [1, 1e3, 1e5, 1e7, 1e10]) {
      const shared = sink(3000, 0.02, stiffness);
      expect(shared).toBeGreaterThanOrEqual(0.02);
      expect(shared).toBeLessThan(alone);
    }
    expect(sink(3000, 0.02, 1e-6)).toBeCloseTo(alone, 9);
    expect(sink(3000, 0, 1e12)).toBeLessThan(1e-8);
  });

  it('is the push over SEAT.STIFFNESS', () => {
    const sink = askNumber(seatSink, 3000, ...plug, null, null, 'mm');
    expect(sink).toBeCloseTo(3000 / askNumber(seatStiffness, ...plug, 'mm'), 14);
  });

  it('refuses the stiffness of a stop that has no gap', () => {
    const cell = ask(seatSink, 3000, ...plug, null, 1000, 'mm');
    expect(cell).toBeInstanceOf(CellError);
    expect((cell as CellError).message).toBe(
      'stopStiffness is 1000 N/mm; it needs a stopGap with it: 0 for a stop that is met at once.',
    );
  });
});

describe('the sink of a wedge', () => {
  /**
   * Mean displacement of a half-space under an even load on a square, as a factor of S (1−ν²)/(E √A): the mean of
   * 1/distance over all pairs of points, over π (Boussinesq). In polar coordinates the singularity cancels; the
   * radial integral of (1 − r cos)(1 − r sin) is written out, and eight sectors of 45° are alike.
   */
  const meanDisplacementOfSquare = (): number =>
    (8 / Math.PI) *
    integrate(
      (angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        return 1 / c - (c + s) / (2 * c ** 2) + s / (3 * c ** 2);
      },
      0,
      Math.PI / 4,
    );

  it('takes the half-space factor that quadrature gives, rounded to two digits', () => {
    const factor = meanDisplacementOfSquare();
    expect(factor).toBeGreaterThan(0.945);
    expect(factor).toBeLessThan(0.955);
    // A stiff insert; what it gives way itself is a bar's compression.
    const [push, draft, side, width, stiff] = [2000, 6, 15, 10, 7e5];
    const sink = askNumber(
      seatWedgeSink,
      push,
      draft,
      0,
      width,
      side,
      side,
      stiff,
      '7075-T6',
      null,
      null,
      'mm',
    );
    const spread = push / 2 / Math.tan(draft * DEGREE);
    const walls = (2 * factor * spread * (1 - 0.33 ** 2)) / (71700 * side);
    const independent = (walls + (spread * width) / (stiff * side * side)) / (2 * Math.tan(draft * DEGREE));
    expect(Math.abs(sink / independent - 1)).toBeLessThan(0.005);
  });
});

const anyDraft = fc.double({ min: 0.5, max: 40, noNaN: true });
const anyFriction = fc.double({ min: 0, max: 0.8, noNaN: true });
const anyPush = fc.double({ min: 1, max: 1e5, noNaN: true });
const roundSeat = fc
  .record({
    draft: anyDraft,
    friction: anyFriction,
    radius: fc.double({ min: 1, max: 100, noNaN: true }),
    length: fc.double({ min: 1, max: 100, noNaN: true }),
    wall: fc.double({ min: 1.2, max: 20, noNaN: true }),
  })
  .map((x) => [x.draft, x.friction, x.radius, x.length, x.radius * x.wall, 'P20', '6061-T6'] as const);

describe('seating and release', () => {
  it('have friction coefficients of their own', () => {
    const release = (seating: number, atRelease: number | null = null): number =>
      askNumber(seatRelease, 1000, 5, seating, atRelease, 'mm');
    expect(release(0.15)).toBe(release(0.15, 0.15));
    expect(release(0.15, 0.25)).toBeGreaterThan(release(0.15));
    // A seat that slid in easily sits harder: more normal force is locked in by the same push.
    expect(release(0.1, 0.25)).toBeGreaterThan(release(0.2, 0.25));
  });

  it('balance the push in components on the flank', () => {
    fc.assert(
      fc.property(anyPush, anyDraft, anyFriction, (push, draft, friction) => {
        const alpha = draft * DEGREE;
        const normal = askNumber(seatForce, push, draft, friction, 'mm');
        expect(normal * (Math.sin(alpha) + friction * Math.cos(alpha))).toBeCloseTo(push, 6);
        const spread = askNumber(seatSpread, push, draft, friction, 'mm');
        expect(Math.hypot(spread, push) / Math.hypot(normal, friction * normal)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('lock or slide back, never both', () => {
    fc.assert(
      fc.property(anyPush, anyDraft, anyFriction, (push, draft, friction) => {
        const release = askNumber(seatRelease, push, draft, friction, null, 'mm');
        const slideBack = askNumber(seatSlideBack, push, draft, friction, 'mm');
        expect(release).toBeGreaterThanOrEqual(0);
        expect(slideBack).toBeGreaterThanOrEqual(0);
        expect(slideBack).toBeLessThanOrEqual(push * (1 + 1e-12));
        const free = askNumber(seatFreeDraft, friction, 'mm');
        if (draft > free + 1e-6) expect(release).toBe(0);
        if (draft < free - 1e-6) expect(slideBack).toBe(0);
        expect(Math.min(release, slideBack)).toBeLessThan(1e-6 * push);
      }),
    );
  });
});

describe('the witness step', () => {
  it('is undone by SEAT.MILLPUSH', () => {
    fc.assert(
      fc.property(roundSeat, anyPush, fc.double({ min: 0, max: 3, noNaN: true }), (seat, push, part) => {
        const step = askNumber(seatStep, push, push * part, ...seat, 'mm');
        const back = askNumber(seatMillPush, push, step, ...seat, 'mm');
        expect(Math.abs(back - push * part)).toBeLessThan(1e-9 * push);
      }),
    );
  });

  it('is positive where the milling push falls short, negative where it exceeds', () => {
    const plug = [5, 0.15, 10, 12, 25, 'P20', '7075-T6', 'mm'] as const;
    expect(askNumber(seatStep, 3000, 1000, ...plug)).toBeGreaterThan(0);
    expect(askNumber(seatStep, 3000, 3000, ...plug)).toBe(0);
    expect(askNumber(seatStep, 3000, 4000, ...plug)).toBeLessThan(0);
    expect(askNumber(seatMillPush, 3000, -0.01, ...plug)).toBeGreaterThan(3000);
  });

  it('is never asked for beyond the whole sink', () => {
    const cell = ask(seatMillPush, 3000, 0.06, 5, 0.15, 10, 12, 25, 'P20', '7075-T6', 'mm');
    expect((cell as CellError).message).toMatch(/^step is 0.06 mm; it must not be more than the whole sink/);
  });

  it('warns that a locked seat keeps the deeper sink of milling', () => {
    const outcome = (millingPush: string): readonly string[] =>
      evaluate(
        seatStep,
        valuesOf(seatStep, {
          given: {
            injectionPush: '3 kN',
            millingPush,
            draft: '5 deg',
            friction: 0.15,
            seatRadius: '10 mm',
            seatLength: '12 mm',
            blockRadius: '25 mm',
            insertMetal: 'P20',
            blockMetal: '7075-T6',
          },
          expect: '0 mm',
          from: '',
        }),
        'mm',
      ).cautions;
    expect(outcome('4 kN').some((caution) => caution.startsWith('Self-locking'))).toBe(true);
    expect(outcome('2 kN').some((caution) => caution.startsWith('Self-locking'))).toBe(false);
  });
});

describe('lift and clearance', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), anyDraft, (lift, draft) => {
        const gap = askNumber(seatClear, lift, draft, 'mm');
        expect(Math.abs(askNumber(seatLift, gap, draft, 'mm') - lift)).toBeLessThan(1e-9 * (1 + lift));
      }),
    );
  });

  it('free the seat at once: pushing out costs the release at lift 0 only', () => {
    const effort = (lift: number): number => askNumber(seatPushOut, lift, 600, 8, 64, 90, 25, 1, 'mm');
    expect(effort(0)).toBe(779);
    expect(effort(1e-6)).toBeCloseTo(179, 4);
    expect(effort(10)).toBeCloseTo(259, 12);
  });
});

describe('the chart of the seat', () => {
  const rows = seatChart();

  it('shows that a larger draft sinks less, frees better and moves the height less', () => {
    rows.slice(1).forEach((row, i) => {
      const before = rows[i] as (typeof rows)[number];
      expect(row.draft).toBeGreaterThan(before.draft);
      expect(row.sink).toBeLessThan(before.sink);
      expect(row.releaseRatio).toBeLessThanOrEqual(before.releaseRatio);
      expect(row.heightFactor).toBeLessThan(before.heightFactor);
    });
  });

  it('reaches from locked to free by itself at its stated friction', () => {
    const free = Math.atan(SEAT_CHART_CASE.releaseFriction);
    for (const { draft, releaseRatio } of rows) expect(releaseRatio > 0).toBe(draft < free);
    expect(rows[0]?.releaseRatio).toBeGreaterThan(0);
    expect(rows.at(-1)?.releaseRatio).toBe(0);
  });
});
