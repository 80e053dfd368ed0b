import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { plateFloor } from '../../src/catalogue/plate/floor';
import { plateRing } from '../../src/catalogue/plate/ring';
import { plateRound } from '../../src/catalogue/plate/round';
import { plateSag } from '../../src/catalogue/plate/sag';
import { plateThickness } from '../../src/catalogue/plate/thickness';
import { plateWall } from '../../src/catalogue/plate/wall';
import { evaluate } from '../../src/core/evaluate';
import type { Definition } from '../../src/core/define';
import { ask, askNumber } from '../support/ask';
import { integrate } from '../support/numeric';

// Independent solutions of the same mechanics, in mm, N and MPa; a metal given by its modulus has ν = 0.3.
const E = 205_000;
const NU = 0.3;
const G = E / (2 * (1 + NU));

/** A step's value of the shown work, in MPa, for arguments in mm and MPa. */
function stress(definition: Definition, ...args: readonly (number | string)[]): number {
  const metal = { modulus: E * 1e6, poisson: NU };
  const isPressure = (i: number): boolean =>
    (definition.inputs as readonly { name: string }[])[i]?.name === 'pressure';
  const values = args.map((arg, i) =>
    arg === 'metal' ? metal : typeof arg === 'string' ? arg : arg * (isPressure(i) ? 1e6 : 1e-3),
  );
  const step = evaluate(definition, values, 'mm').steps.find(({ symbol }) => symbol === 'sigma');
  return (step?.value as number) / 1e6;
}

/** Integral of moment and shear times those of a unit load, piece by piece so that kinks lie between the pieces. */
function unitLoad(
  edges: readonly number[],
  moment: (x: number) => number,
  shear: (x: number) => number,
  unitMoment: (x: number) => number,
  unitShear: (x: number) => number,
  { inertia, area }: { inertia: number; area: number },
): { bending: number; shear: number } {
  // The integrands jump at the edges: each piece is taken from just inside.
  const over = (f: (x: number) => number): number =>
    edges.slice(1).reduce((sum, high, i) => {
      const low = edges[i] as number;
      const inside = (high - low) * 1e-12;
      return sum + integrate(f, low + inside, high - inside, 20);
    }, 0);
  return {
    bending: over((x) => (moment(x) * unitMoment(x)) / (E * inertia)),
    shear: over((x) => (1.2 * shear(x) * unitShear(x)) / (G * area)),
  };
}

const PLATES = [
  [90, 110, 28, 12, 50, 60],
  [80, 100, 25, 20, 80, 100],
  [300, 150, 40, 8, 30, 150],
  [60, 60, 45, 30, 1, 5],
] as const;

describe('the sag of a plate on two rails', () => {
  it.each(PLATES)(
    'is the unit-load integral of moment and shear for span %s, width %s, thickness %s, %s MPa on %s by %s',
    (span, width, thickness, pressure, c, w) => {
      const load = pressure * w;
      const reaction = (load * c) / 2;
      const start = (span - c) / 2;
      const onPatch = (x: number): number => Math.min(Math.max(x - start, 0), c);
      const { bending, shear } = unitLoad(
        [0, start, span / 2, span - start, span].filter((x, i, all) => i === 0 || x > (all[i - 1] as number)),
        (x) => {
          const s = onPatch(x);
          return reaction * x - load * s * (x - start - s / 2);
        },
        (x) => reaction - load * onPatch(x),
        (x) => (x < span / 2 ? x : span - x) / 2,
        (x) => (x < span / 2 ? 0.5 : -0.5),
        { inertia: (width * thickness ** 3) / 12, area: width * thickness },
      );
      const sag = askNumber(plateSag, span, width, thickness, pressure, c, w, E, 'mm');
      expect(Math.abs(sag / (bending + shear) - 1)).toBeLessThan(1e-9);
    },
  );

  it('counts shear: about a quarter of the bending at three times the thickness', () => {
    // 5 w L⁴/(384 E I) and 1.2 w L²/(8 G A): their ratio is 0.96 (E/G)(t/L)², by hand.
    const [span, thickness] = [75, 25];
    const bending = (5 * 10 * span ** 4) / (32 * E * thickness ** 3);
    const sag = askNumber(plateSag, span, 100, thickness, 10, span, 100, E, 'mm');
    expect(sag / bending - 1).toBeCloseTo((0.96 * 2.6) / 9, 6);
  });
});

describe('the thickness of a plate', () => {
  it.each(PLATES)(
    'gives back the sag of span %s, width %s to nine digits and more',
    (span, width, t, p, c, w) => {
      for (const allow of [0.001, 0.01, 0.05]) {
        const thickness = askNumber(plateThickness, span, width, allow, p, c, w, E, 'mm');
        const sag = askNumber(plateSag, span, width, thickness, p, c, w, E, 'mm');
        expect(Math.abs(sag / allow - 1)).toBeLessThan(1e-12);
      }
      const sag = askNumber(plateSag, span, width, t, p, c, w, E, 'mm');
      expect(askNumber(plateThickness, span, width, sag, p, c, w, E, 'mm') / t).toBeCloseTo(1, 12);
    },
  );

  it('refuses what no plate can keep, and says what to change', () => {
    expect(ask(plateThickness, 100, 100, 1e-6, 100, 100, 100, 1000, 'mm')).toMatchObject({
      code: '#VALUE!',
      message: expect.stringMatching(/^allowSag .*cannot be kept.*rails or pillars closer/) as unknown,
    });
    expect(ask(plateThickness, 100, 100, 0.01, 0, 100, 100, E, 'mm')).toMatchObject({
      code: '#VALUE!',
      message: expect.stringMatching(/^allowSag is 0.01 mm; it needs no thickness/) as unknown,
    });
  });
});

describe('the stress beside a sag', () => {
  // Statics: σ = 6 M/(b t²), with the moments of the beam tables.
  it('of a plate is that of its moment in the middle', () => {
    const [L, b, t, p, c, w] = [90, 110, 28, 12, 50, 60];
    // A strip of the patch at x from the middle bends the middle by half its distance from the nearer rail.
    const moment = 2 * integrate((x) => (p * w * (L / 2 - x)) / 2, 0, c / 2);
    expect(stress(plateSag, L, b, t, p, c, w, 'metal')).toBeCloseTo((6 * moment) / (b * t ** 2), 8);
  });

  it('of a wall is that of p h²/2 at its foot or p L²/12 at its ends', () => {
    const [L, h, s, p] = [60, 25, 10, 20];
    const foot = integrate((x) => p * x, 0, h);
    expect(stress(plateWall, L, h, s, p, 'metal', 'cantilever')).toBeCloseTo((6 * foot) / s ** 2, 8);
    expect(stress(plateWall, L, h, s, p, 'metal', 'fixed')).toBeCloseTo((6 * p * L ** 2) / 12 / s ** 2, 8);
  });

  // Roark at ν = 0.3 (from memory): 1.238 p a²/t² in the middle when supported, 0.75 p a²/t² at a clamped edge.
  it.each([
    ['supported', 1.238],
    ['clamped', 0.75],
  ] as const)('of a round plate has Roark’s coefficient, %s', (edge, coefficient) => {
    expect(stress(plateRound, 50, 5, 2, 'metal', edge) / (2 * 100)).toBeCloseTo(coefficient, 2);
  });
});

/** A condition at a bound: a f + b f′ = c. */
interface Bound {
  readonly value: number;
  readonly slope: number;
  readonly is: number;
}

/**
 * f″ + f′/r − f/r² = g by central differences of second order: the radial equation of a plate's slope and of a ring's
 * displacement. One-sided differences of second order at the bounds.
 */
function radial(
  g: (r: number) => number,
  low: number,
  high: number,
  inner: Bound,
  outer: Bound,
  n: number,
): number[] {
  const h = (high - low) / n;
  const matrix = Matrix.zeros(n + 1, n + 1);
  const right = Matrix.zeros(n + 1, 1);
  for (let i = 1; i < n; i++) {
    const r = low + i * h;
    matrix.set(i, i - 1, 1 / h ** 2 - 1 / (2 * r * h));
    matrix.set(i, i, -2 / h ** 2 - 1 / r ** 2);
    matrix.set(i, i + 1, 1 / h ** 2 + 1 / (2 * r * h));
    right.set(i, 0, g(r));
  }
  const bound = (row: number, inward: 1 | -1, { value, slope, is }: Bound): void => {
    [-1.5, 2, -0.5].forEach((weight, k) => {
      const column = row + inward * k;
      matrix.set(row, column, (slope * inward * weight) / h + (k === 0 ? value : 0));
    });
    right.set(row, 0, is);
  };
  bound(0, 1, inner);
  bound(n, -1, outer);
  return solve(matrix, right).to1DArray();
}

/** Doubles the intervals once and takes the error of second order off. */
const refined = (at: (n: number) => number): number => (4 * at(200) - at(100)) / 3;

describe('the sag of a round plate', () => {
  it.each([
    ['supported', { value: NU / 40, slope: 1, is: 0 }],
    ['clamped', { value: 1, slope: 0, is: 0 }],
  ] as const)('is that of finite differences with its edge %s', (edge, outer) => {
    const [a, t, p] = [40, 8, 10];
    const D = (E * t ** 3) / (12 * (1 - NU ** 2));
    const expected = refined((n) => {
      const slope = radial((r) => (-p * r) / (2 * D), 0, a, { value: 1, slope: 0, is: 0 }, outer, n);
      // Simpson's rule over the slope from the middle to the edge.
      const h = a / n;
      return slope.reduce(
        (sum, f, i) => sum + (f * h * (i === 0 || i === n ? 1 : i % 2 === 0 ? 2 : 4)) / 3,
        0,
      );
    });
    expect(Math.abs(askNumber(plateRound, a, t, p, E, edge, 'mm') / Math.abs(expected) - 1)).toBeLessThan(
      1e-6,
    );
  });

  // Roark, Formulas for Stress and Strain, flat circular plates: y = K p a⁴/(E t³) at ν = 0.3 (from memory).
  it.each([
    ['supported', 0.696],
    ['clamped', 0.171],
  ] as const)('has Roark’s coefficient for its edge %s', (edge, coefficient) => {
    const sag = askNumber(plateRound, 50, 5, 2, E, edge, 'mm');
    expect((sag * E * 5 ** 3) / (2 * 50 ** 4)).toBeCloseTo(coefficient, 3);
  });
});

describe('the sag of a rectangular floor', () => {
  it.each([
    [60, 60],
    [90, 60],
    [150, 50],
    [40, 200],
  ])('is Navier’s double series, %s by %s', (a, b) => {
    const [t, p] = [6, 3];
    const D = (E * t ** 3) / (12 * (1 - NU ** 2));
    let sum = 0;
    for (let m = 1; m < 400; m += 2) {
      for (let n = 1; n < 400; n += 2) {
        const sign = ((m + n) / 2) % 2 === 1 ? 1 : -1;
        sum += sign / (m * n * (m ** 2 / a ** 2 + n ** 2 / b ** 2) ** 2);
      }
    }
    const expected = (16 * p * sum) / (Math.PI ** 6 * D);
    expect(Math.abs(askNumber(plateFloor, a, b, t, p, E, 'mm') / expected - 1)).toBeLessThan(1e-7);
  });

  // Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, four supported sides (from memory).
  it.each([
    [1, 0.00406],
    [1.5, 0.00772],
    [2, 0.01013],
    [3, 0.01223],
    [4, 0.01282],
  ])('has Timoshenko’s coefficient for sides of 1 to %s', (ratio, coefficient) => {
    const D = (E * 5 ** 3) / (12 * (1 - NU ** 2));
    const k = (askNumber(plateFloor, 50 * ratio, 50, 5, 2, E, 'mm') * D) / (2 * 50 ** 4);
    expect(k).toBeCloseTo(coefficient, 5);
  });
});

describe('the growth of a round cavity', () => {
  it.each([
    [15, 40, 25],
    [12, 30, 20],
    [50, 60, 5],
  ] as const)('is that of finite differences, bore %s in %s at %s MPa', (r, R, p) => {
    // σ_r = E/(1 − ν²)(u′ + ν u/r): −p at the bore, 0 outside.
    const C = E / (1 - NU ** 2);
    const growth = refined(
      (n) =>
        radial(
          () => 0,
          r,
          R,
          { value: (C * NU) / r, slope: C, is: -p },
          { value: NU / R, slope: 1, is: 0 },
          n,
        )[0] as number,
    );
    expect(Math.abs(askNumber(plateRing, r, R, p, E, 'mm') / growth - 1)).toBeLessThan(1e-5);
  });
});

describe('the bulge of a wall', () => {
  it('held at its foot is the unit-load integral', () => {
    const [h, s, p] = [20, 18, 25];
    const { bending, shear } = unitLoad(
      [0, h],
      (x) => (p * x ** 2) / 2,
      (x) => p * x,
      (x) => x,
      () => 1,
      { inertia: s ** 3 / 12, area: s },
    );
    const bulge = askNumber(plateWall, 200, h, s, p, E, 'cantilever', 'mm');
    expect(bulge / (bending + shear)).toBeCloseTo(1, 10);
  });

  it('held at both ends is the unit-load integral with the end moments p L²/12', () => {
    const [L, s, p] = [60, 10, 20];
    const { bending, shear } = unitLoad(
      [0, L / 2, L],
      (x) => (p * x * (L - x)) / 2 - (p * L ** 2) / 12,
      (x) => p * (L / 2 - x),
      (x) => (x < L / 2 ? x : L - x) / 2 - L / 8,
      (x) => (x < L / 2 ? 0.5 : -0.5),
      { inertia: s ** 3 / 12, area: s },
    );
    const bulge = askNumber(plateWall, L, 50, s, p, E, 'fixed', 'mm');
    expect(bulge / (bending + shear)).toBeCloseTo(1, 10);
  });

  it('takes the way of holding that bulges less', () => {
    for (const [L, h] of [
      [200, 20],
      [30, 60],
    ] as const) {
      const each = ['cantilever', 'fixed'].map((ends) => askNumber(plateWall, L, h, 15, 10, E, ends, 'mm'));
      expect(askNumber(plateWall, L, h, 15, 10, E, null, 'mm')).toBe(Math.min(...each));
    }
  });
});
