import { LuDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fillBurn } from '../../src/catalogue/fill/burn';
import { fillDiscDrop } from '../../src/catalogue/fill/discDrop';
import { fillFrozen } from '../../src/catalogue/fill/frozen';
import { fillReach } from '../../src/catalogue/fill/reach';
import { fillSlitDrop } from '../../src/catalogue/fill/slitDrop';
import { fillSlitRate } from '../../src/catalogue/fill/slitRate';
import { fillTubeDrop } from '../../src/catalogue/fill/tubeDrop';
import { fillTubeRate } from '../../src/catalogue/fill/tubeRate';
import { fillVent } from '../../src/catalogue/fill/vent';
import { fillVentFlow } from '../../src/catalogue/fill/ventFlow';
import { fillViscosity } from '../../src/catalogue/fill/viscosity';
import { valuesOf } from '../support/runCheck';
import { evaluate } from '../../src/core/evaluate';
import { ask, askNumber } from '../support/ask';
import { integrate, turnsTrue } from '../support/numeric';

const relative = (got: number, wanted: number): number => Math.abs(got / wanted - 1);

/** A melt in SI: τ = K γ̇ⁿ. */
interface Melt {
  readonly consistency: number;
  readonly index: number;
}
const MELTS: readonly Melt[] = [
  { consistency: 9000, index: 0.35 },
  { consistency: 20000, index: 0.22 },
  { consistency: 1500, index: 0.7 },
  { consistency: 200, index: 1 },
];

/** Shear rate at a distance from the middle where the pressure falls by `gradient` a metre; `form` 1 for a slit, 2 for a tube. */
const rateAt =
  ({ consistency, index }: Melt, gradient: number, form: 1 | 2) =>
  (y: number) =>
    ((gradient * y) / (form * consistency)) ** (1 / index);

/** Flow through a slit by summing the velocity profile, which is itself summed from the wall, as one integral by parts. */
const slitFlow = (melt: Melt, gradient: number, width: number, gap: number): number => {
  const rate = rateAt(melt, gradient, 1);
  return 2 * width * integrate((y) => y * rate(y), 0, gap / 2);
};
const tubeFlow = (melt: Melt, gradient: number, radius: number): number => {
  const rate = rateAt(melt, gradient, 2);
  return Math.PI * integrate((r) => r * r * rate(r), 0, radius);
};

describe.each(MELTS)('a melt of $consistency Pa·s^n and index $index', (melt) => {
  const { consistency, index } = melt;

  it('loses in a slit what drives its velocity profile', () => {
    const [width, gap, length, drop] = [25e-3, 2e-3, 80e-3, 9e6];
    const flow = slitFlow(melt, drop / length, width, gap);
    const got = askNumber(
      fillSlitDrop,
      flow * 1e6,
      width * 1e3,
      gap * 1e3,
      length * 1e3,
      consistency,
      index,
      'mm',
    );
    expect(relative(got, drop / 1e6)).toBeLessThan(1e-7);
    const wallRate = rateAt(melt, drop / length, 1)(gap / 2);
    const rate = askNumber(fillSlitRate, flow * 1e6, width * 1e3, gap * 1e3, index, 'mm');
    expect(relative(rate, wallRate)).toBeLessThan(1e-7);
  });

  it('loses in a tube what drives its velocity profile', () => {
    const [radius, length, drop] = [2.5e-3, 60e-3, 4e6];
    const flow = tubeFlow(melt, drop / length, radius);
    const got = askNumber(fillTubeDrop, flow * 1e6, radius * 1e3, length * 1e3, consistency, index, 'mm');
    expect(relative(got, drop / 1e6)).toBeLessThan(1e-7);
    const wallRate = rateAt(melt, drop / length, 2)(radius);
    expect(relative(askNumber(fillTubeRate, flow * 1e6, radius * 1e3, index, 'mm'), wallRate)).toBeLessThan(
      1e-7,
    );
  });

  it('loses in a disc the sum of what it loses in narrow rings', () => {
    const [flow, gap, inner, outer] = [10, 2, 2, 40];
    const inRing = (r: number) =>
      askNumber(fillSlitDrop, flow, 2 * Math.PI * r, gap, 1, consistency, index, 'mm');
    const wanted = integrate((u) => Math.exp(u) * inRing(Math.exp(u)), Math.log(inner), Math.log(outer), 400);
    const got = askNumber(fillDiscDrop, flow, gap, inner, outer, consistency, index, 'mm');
    expect(relative(got, wanted)).toBeLessThan(1e-9);
  });

  it('reaches the length at which a slit has used up the pressure', () => {
    const [speed, gap, pressure, width] = [90, 1.8, 7, 20];
    const reach = askNumber(fillReach, pressure, gap, speed, consistency, index, 'mm');
    const flow = (speed * gap * width) / 1000;
    const drop = askNumber(fillSlitDrop, flow, width, gap, reach, consistency, index, 'mm');
    expect(relative(drop, pressure)).toBeLessThan(1e-12);
  });
});

it('a disc of nearly Newtonian melt has no jump where the equation changes form', () => {
  const drop = (index: number) => askNumber(fillDiscDrop, 10, 2, 2, 40, 200, index, 'mm');
  // The form changes where (1 − n) ln 20 = 0.001; between neighbours the drop moves by their index alone.
  const edge = 1 - 0.001 / Math.log(20);
  const [below, above] = [drop(edge - 1e-9), drop(edge + 1e-9)];
  expect(relative(below, above)).toBeLessThan(1e-7);
  expect(relative(drop(1 - 1e-12), drop(1))).toBeLessThan(1e-10);
});

it('the side walls of a slit ten times as wide as high add more than 5 % to a Newtonian drop', () => {
  // Series solution of the rectangular duct (Boussinesq): flow over that between plates.
  const aspect = 10;
  let sum = 0;
  for (let k = 1; k < 200; k += 2) sum += Math.tanh((k * Math.PI * aspect) / 2) / k ** 5;
  const share = 1 - ((192 / Math.PI ** 5) * sum) / aspect;
  expect(1 / share - 1).toBeGreaterThan(0.05);
  expect(1 / share - 1).toBeLessThan(0.08);
  const outside = (width: string) => {
    const given = { flow: '10 cm³/s', width, gap: '2 mm', powerIndex: 1 };
    return evaluate(fillSlitRate, valuesOf(fillSlitRate, { given, expect: 0, from: '' }), 'mm').outside;
  };
  expect(outside('20 mm')).toEqual([]);
  expect(outside('19 mm')).toHaveLength(1);
});

describe('the Cross-WLF viscosity', () => {
  const at = (rate: number, celsius: number) =>
    askNumber(fillViscosity, rate, celsius, 4e14, 263.15, 33, '51.6 K', '25 kPa', 0.28, 'mm');

  it('falls with shear as rate to the index less one, far above the stress of thinning', () => {
    const slope = Math.log(at(1e10, 220) / at(1e9, 220)) / Math.log(10);
    expect(slope).toBeCloseTo(0.28 - 1, 3);
  });

  it('falls with temperature as Williams, Landel and Ferry have it', () => {
    // Slope of ln η₀: −A1 A2/(A2 + T − T*)², against a central difference.
    const slope = (Math.log(at(0, 220.01)) - Math.log(at(0, 219.99))) / 0.02;
    expect(slope).toBeCloseTo((-33 * 51.6) / (51.6 + 230) ** 2, 7);
  });

  it('takes D2 in kelvin in both systems, and in another unit where it is written', () => {
    const inch = (d2: number | string) =>
      askNumber(fillViscosity, 800, 446, 4e14, d2, 33, '51.6 K', '25 kPa', 0.28, 'in');
    expect(relative(inch(263.15), at(800, 230))).toBeLessThan(1e-12);
    expect(relative(inch('-10 °C'), at(800, 230))).toBeLessThan(1e-12);
  });

  it('has no value where the shift has its pole, and says which temperature is too low', () => {
    expect(ask(fillViscosity, 800, -70, 4e14, 263.15, 33, '51.6 K', '25 kPa', 0.28, 'mm')).toMatchObject({
      message: expect.stringMatching(/^temp .*D2, 263\.15 K/) as string,
    });
  });
});

describe('the frozen layer', () => {
  /**
   * Implicit finite differences (Crank–Nicolson, first steps fully implicit) in a layer so deep that its far side
   * stays hot: the depth at which the temperature passes `noFlow`, in mm.
   */
  const byDifferences = (
    diffusivity: number,
    melt: number,
    mold: number,
    noFlow: number,
    time: number,
  ): number => {
    const [cells, steps] = [200, 200];
    const depth = 10 * Math.sqrt(diffusivity * time);
    const dx = depth / cells;
    const dt = time / steps;
    const n = cells - 1;
    const system = (weight: number) =>
      Matrix.eye(n, n).add(
        Matrix.zeros(n, n).apply(function (this: Matrix, i: number, j: number) {
          const r = (weight * diffusivity * dt) / dx ** 2;
          this.set(i, j, i === j ? 2 * r : Math.abs(i - j) === 1 ? -r : 0);
        }),
      );
    // Temperatures above the wall's, so that the wall is zero; the far side is the melt's.
    const hot = melt - mold;
    const march = (field: Matrix, weight: number, lu: LuDecomposition): Matrix => {
      const r = (diffusivity * dt) / dx ** 2;
      const value = (i: number) => (i < 0 ? 0 : i >= n ? hot : field.get(i, 0));
      const right = Matrix.columnVector(
        Array.from({ length: n }, (_, i) => {
          const curvature = value(i - 1) - 2 * value(i) + value(i + 1);
          return value(i) + (1 - weight) * r * curvature + (i === n - 1 ? weight * r * hot : 0);
        }),
      );
      return lu.solve(right);
    };
    const implicit = new LuDecomposition(system(1));
    const centred = new LuDecomposition(system(0.5));
    let field = Matrix.columnVector(Array.from({ length: n }, () => hot));
    for (let k = 0; k < steps; k++) field = k < 4 ? march(field, 1, implicit) : march(field, 0.5, centred);
    const wanted = noFlow - mold;
    const above = Array.from({ length: n }, (_, i) => field.get(i, 0)).findIndex((t) => t >= wanted);
    const [low, high] = [above === 0 ? 0 : field.get(above - 1, 0), field.get(above, 0)];
    return dx * (above + (wanted - low) / (high - low));
  };

  it.each([
    [0.08, 220, 40, 130, 1],
    [0.065, 230, 40, 140, 1.5],
    [0.147, 300, 90, 150, 0.4],
    [0.1, 280, 60, 250, 3],
  ])(
    'is that of finite differences: %f mm²/s, %f °C on %f °C, no flow at %f °C, %f s',
    (a, melt, mold, noFlow, time) => {
      const wanted = byDifferences(a, melt, mold, noFlow, time);
      expect(relative(askNumber(fillFrozen, a, melt, mold, noFlow, time, 'mm'), wanted)).toBeLessThan(1e-3);
    },
  );

  it('lies where the error function, summed from its integral, has the no-flow temperature', () => {
    for (const share of [1e-6, 0.01, 0.3, 0.5, 0.9, 0.999]) {
      const erf = (x: number) => (2 / Math.sqrt(Math.PI)) * integrate((t) => Math.exp(-t * t), 0, x, 400);
      const lambda = turnsTrue((x) => erf(x) >= share, 0, 4);
      // One mm²/s and a quarter of a second: the layer in mm is λ itself.
      const got = askNumber(fillFrozen, 1, 200, 0, 200 * share, 0.25, 'mm');
      expect(relative(got, lambda)).toBeLessThan(1e-9);
    }
  });

  it('takes a resin’s effective diffusivity from the table', () => {
    // PP 0.65e-7 m²/s: R. J. Crawford, Plastics Engineering, Table 1.8.
    expect(askNumber(fillFrozen, 'PP', 230, 40, 140, 1.5, 'mm')).toBe(
      askNumber(fillFrozen, '0.065 mm²/s', 230, 40, 140, 1.5, 'mm'),
    );
  });

  it('is refused with temperatures out of order, by naming both', () => {
    expect(ask(fillFrozen, 'PP', 230, 40, 30, 1, 'mm')).toMatchObject({
      message: expect.stringMatching(/^noFlowTemp is 30 °C; .*moldTemp, 40 °C/) as string,
    });
    expect(ask(fillFrozen, 'PP', 230, 40, 240, 1, 'mm')).toMatchObject({
      message: expect.stringMatching(/^noFlowTemp is 240 °C; .*meltTemp, 230 °C/) as string,
    });
  });
});

it('air in a blocked vent is as hot as the first law, followed in small steps, makes it', () => {
  // dT/T = −(γ − 1) dV/V; the classical Runge–Kutta step. The pressure follows from p V/T.
  const gamma = 1.4;
  const steps = 2000;
  for (const squeeze of [2, 5, 20]) {
    const dV = (1 / squeeze - 1) / steps;
    let [temperature, volume] = [293.15, 1];
    const slope = (v: number, t: number) => (-(gamma - 1) * t) / v;
    for (let i = 0; i < steps; i++) {
      const k1 = slope(volume, temperature);
      const k2 = slope(volume + dV / 2, temperature + (dV / 2) * k1);
      const k3 = slope(volume + dV / 2, temperature + (dV / 2) * k2);
      const k4 = slope(volume + dV, temperature + dV * k3);
      temperature += (dV / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
      volume += dV;
    }
    const ratio = (temperature / 293.15) * squeeze;
    expect(askNumber(fillBurn, ratio, null, 'mm') + 273.15).toBeCloseTo(temperature, 5);
  }
});

it('air through a vent has the parabola of slow flow between two walls', () => {
  const [width, depth, land, pressure] = [8e-3, 15e-6, 1.2e-3, 20e3];
  // u'' = −p/(µ L) with u = 0 at both walls, summed over the gap.
  const speed = (y: number) => ((pressure / (1.8e-5 * land)) * y * (depth - y)) / 2;
  const wanted = width * integrate(speed, 0, depth);
  const got = askNumber(fillVentFlow, width * 1e3, depth * 1e3, land * 1e3, pressure / 1e6, 'mm');
  expect(relative(got, wanted * 1e6)).toBeLessThan(1e-9);
});

it('vents start at the shallow end of the published range', () => {
  // Vent depths in inches: viewmold.com, venting standards.
  for (const [resin, inches] of [
    ['PP', 0.0005],
    ['ABS', 0.001],
    ['PC', 0.0015],
    ['PA66', 0.0003],
    ['POM', 0.0005],
    ['PS', 0.0007],
  ] as const) {
    // The table is kept in mm with four decimals.
    expect(Math.abs(askNumber(fillVent, resin, 'in') - inches)).toBeLessThan(3e-6);
  }
});
