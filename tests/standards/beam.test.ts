import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { pinStepBuckle } from '../../src/catalogue/pin/stepBuckle';
import { plateWall } from '../../src/catalogue/plate/wall';
import { askNumber } from '../support/ask';

const [E, NU] = [205_000, 0.3];
const SHEAR_FACTOR = 1.2;

/**
 * Largest deflection of a beam one unit wide that shears as well as bends, by finite differences: the balance of forces
 * and of moments at each point, nothing of a solution. The left end is held; the right one is held or free.
 */
function bulgeByDifferences(
  {
    length,
    thickness,
    pressure,
    held,
  }: { length: number; thickness: number; pressure: number; held: boolean },
  n: number,
): number {
  const h = length / n;
  const bend = (E * thickness ** 3) / 12;
  const shear = (E / (2 * (1 + NU)) / SHEAR_FACTOR) * thickness;
  // Deflection and turn at each point, by turns; one ghost point beyond the right end.
  const count = 2 * (n + 2);
  const matrix = Matrix.zeros(count, count);
  const load = Matrix.zeros(count, 1);
  const w = (i: number): number => 2 * i;
  const turn = (i: number): number => 2 * i + 1;
  const add = (row: number, column: number, value: number): void => {
    matrix.set(row, column, matrix.get(row, column) + value);
  };
  matrix.set(0, w(0), 1);
  matrix.set(1, turn(0), 1);
  for (let i = 1; i <= n; i++) {
    const [forces, moments] = [w(i), turn(i)];
    add(forces, w(i + 1), shear / h ** 2);
    add(forces, w(i), (-2 * shear) / h ** 2);
    add(forces, w(i - 1), shear / h ** 2);
    add(forces, turn(i + 1), -shear / (2 * h));
    add(forces, turn(i - 1), shear / (2 * h));
    load.set(forces, 0, -pressure);
    add(moments, turn(i + 1), bend / h ** 2);
    add(moments, turn(i), (-2 * bend) / h ** 2 - shear);
    add(moments, turn(i - 1), bend / h ** 2);
    add(moments, w(i + 1), shear / (2 * h));
    add(moments, w(i - 1), -shear / (2 * h));
  }
  const [last, beyond] = [count - 2, count - 1];
  if (held) {
    matrix.set(last, w(n), 1);
    matrix.set(beyond, turn(n), 1);
  } else {
    // Neither moment nor shear force at a free end.
    add(last, turn(n + 1), 1);
    add(last, turn(n - 1), -1);
    add(beyond, w(n + 1), 1 / (2 * h));
    add(beyond, w(n - 1), -1 / (2 * h));
    add(beyond, turn(n), -1);
  }
  const found = solve(matrix, load);
  return Math.max(...Array.from({ length: n + 1 }, (_, i) => Math.abs(found.get(w(i), 0))));
}

/** Errors fall with the square of the spacing: two spacings leave only the fourth power. */
const refined = (at: (n: number) => number, n: number): number => (4 * at(2 * n) - at(n)) / 3;

describe('a wall by finite differences of bending and shear', () => {
  it.each([
    [48, 8],
    [20, 18],
    [30, 30],
    [12, 20],
  ])('held at its foot, %s deep and %s thick', (depth, thickness) => {
    const bulge = refined(
      (n) => bulgeByDifferences({ length: depth, thickness, pressure: 20, held: false }, n),
      100,
    );
    expect(askNumber(plateWall, 500, depth, thickness, 20, E, 'cantilever', 'mm') / bulge).toBeCloseTo(1, 5);
  });

  it.each([
    [60, 12],
    [60, 20],
    [45, 20],
    [30, 30],
  ])('held at both ends, %s long and %s thick', (length, thickness) => {
    const bulge = refined((n) => bulgeByDifferences({ length, thickness, pressure: 20, held: true }, n), 100);
    expect(askNumber(plateWall, length, 200, thickness, 20, E, 'fixed', 'mm') / bulge).toBeCloseTo(1, 5);
  });
});

/**
 * Buckling load of a column of two parts whose ends pivot, by finite differences of E I y″ + P y = 0: the least
 * eigenvalue by inverse iteration, the tridiagonal matrix solved by elimination. The step lies on a point.
 */
function bucklingByDifferences(
  parts: readonly (readonly [rigidity: number, length: number])[],
  per: number,
): number {
  // Points of one spacing in each part; between the parts the spacing changes, and the balance is that of the cell.
  const points = parts.flatMap(([rigidity, length]) =>
    Array.from({ length: per }, () => ({ rigidity, h: length / per })),
  );
  const n = points.length - 1;
  const [below, at, above, mass] = [0, 1, 2, 3].map(() => new Float64Array(n)) as [
    Float64Array, Float64Array, Float64Array, Float64Array,
  ]; // prettier-ignore
  for (let i = 0; i < n; i++) {
    const [before, after] = [
      points[i] as { rigidity: number; h: number },
      points[i + 1] as { rigidity: number; h: number },
    ];
    below[i] = -1 / before.h;
    above[i] = -1 / after.h;
    at[i] = 1 / before.h + 1 / after.h;
    mass[i] = before.h / 2 / before.rigidity + after.h / 2 / after.rigidity;
  }
  let y = Float64Array.from({ length: n }, (_, i) => Math.sin((Math.PI * (i + 1)) / (n + 1)));
  let load = 0;
  for (let iteration = 0; iteration < 60; iteration++) {
    const right = y.map((v, i) => v * (mass[i] as number));
    const next = solveTridiagonal(below, at, above, right);
    const size = Math.max(...next.map(Math.abs));
    const top = next.reduce((sum, v, i) => sum + v * (right[i] as number), 0);
    const bottom = next.reduce((sum, v, i) => sum + v * v * (mass[i] as number), 0);
    load = top / bottom;
    y = next.map((v) => v / size);
  }
  return load;
}

function solveTridiagonal(
  below: Float64Array,
  at: Float64Array,
  above: Float64Array,
  right: Float64Array,
): Float64Array {
  const n = right.length;
  const [c, d] = [new Float64Array(n), new Float64Array(n)];
  for (let i = 0; i < n; i++) {
    const m = (at[i] as number) - (i === 0 ? 0 : (below[i] as number) * (c[i - 1] as number));
    c[i] = (above[i] as number) / m;
    d[i] = ((right[i] as number) - (i === 0 ? 0 : (below[i] as number) * (d[i - 1] as number))) / m;
  }
  for (let i = n - 2; i >= 0; i--) d[i] = (d[i] as number) - (c[i] as number) * (d[i + 1] as number);
  return d;
}

const rigidity = (diameter: number): number => (207_000 * Math.PI * diameter ** 4) / 64;

describe('a stepped pin by finite differences', () => {
  it('buckles at the same load, whatever its steps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 12, noNaN: true }),
        fc.double({ min: 5, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 12, noNaN: true }),
        fc.double({ min: 5, max: 200, noNaN: true }),
        (d1, l1, d2, l2) => {
          const parts = [
            [rigidity(d1), l1],
            [rigidity(d2), l2],
          ] as const;
          const load = refined((n) => bucklingByDifferences(parts, n), 100);
          expect(Math.abs(askNumber(pinStepBuckle, d1, l1, d2, l2, null, 'mm') / load - 1)).toBeLessThan(
            1e-6,
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  it('of equal halves, and turned round, is the same pin', () => {
    expect(askNumber(pinStepBuckle, 5, 60, 2, 60, null, 'mm')).toBeCloseTo(
      askNumber(pinStepBuckle, 2, 60, 5, 60, null, 'mm'),
      9,
    );
  });
});
