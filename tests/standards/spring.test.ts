import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { CellError } from '../../src/cells/value';
import { springBuckle } from '../../src/catalogue/spring/buckle';
import { springDiscForce } from '../../src/catalogue/spring/discForce';
import { springDiscStack } from '../../src/catalogue/spring/discStack';
import { springDiscStress } from '../../src/catalogue/spring/discStress';
import { springForce } from '../../src/catalogue/spring/force';
import { springFreeLimit } from '../../src/catalogue/spring/freeLimit';
import { springLength } from '../../src/catalogue/spring/length';
import { springParallel } from '../../src/catalogue/spring/parallel';
import { springPreload } from '../../src/catalogue/spring/preload';
import { springRate } from '../../src/catalogue/spring/rate';
import { springSeries } from '../../src/catalogue/spring/series';
import { springShim } from '../../src/catalogue/spring/shim';
import { springStrength } from '../../src/catalogue/spring/strength';
import { springStress } from '../../src/catalogue/spring/stress';
import { springTravel } from '../../src/catalogue/spring/travel';
import { springWaveRate } from '../../src/catalogue/spring/waveRate';
import { springWaveStress } from '../../src/catalogue/spring/waveStress';
import { worksheetFunction } from '../../src/call/worksheet';
import type { Definition } from '../../src/core/define';
import { evaluate } from '../../src/core/evaluate';
import { ask, askNumber } from '../support/ask';
import { integrate } from '../support/numeric';
import { valuesOf } from '../support/runCheck';

const messageOf = (definition: Definition, ...args: readonly (string | number | null)[]): string => {
  const cell = ask(definition, ...args);
  return cell instanceof CellError ? `${cell.code} ${cell.message}` : String(cell);
};

const evaluated = (definition: Definition, given: Readonly<Record<string, string | number>>) =>
  evaluate(definition, valuesOf(definition, { given, expect: 0, from: '' }), 'mm');

// Shigley's Mechanical Engineering Design, 10th edition, solution of problem 10-3: music wire 2.5 mm, outside
// diameter 31 mm, plain and ground ends, 14 coils in all.
describe('the helical spring of a worked example', () => {
  const [wire, meanDia] = [2.5, 31 - 2.5];

  it('has the rate, the strength, the factor and the load at yield that the book prints', () => {
    const rate = askNumber(springRate, wire, meanDia, 14 - 1, null, 'mm');
    const strength = askNumber(springStrength, 'music wire', wire, 'mm');
    const perNewton = askNumber(springStress, 1, wire, meanDia, null, 'mm');
    expect(rate).toBeCloseTo(1.314, 3);
    expect(Math.abs(strength - 1936)).toBeLessThan(1);
    expect((perNewton * Math.PI * wire ** 3) / (8 * meanDia)).toBeCloseTo(1.117, 3);
    expect((0.45 * strength) / perNewton).toBeCloseTo(167.9, 1);
  });

  it('is as stiff as its coils in series, and twice as stiff beside its twin', () => {
    const coil = askNumber(springRate, wire, meanDia, 1, null, 'mm');
    const coils = Array.from({ length: 13 }, () => [coil]);
    const [[series] = []] = worksheetFunction(springSeries).call([coils, [['mm']]]);
    const rate = askNumber(springRate, wire, meanDia, 13, null, 'mm');
    expect(series).toBeCloseTo(rate, 12);
    const [[pair] = []] = worksheetFunction(springParallel).call([[[rate, rate]], [['mm']]]);
    expect(pair).toBeCloseTo(2 * rate, 12);
  });

  it('takes the modulus of music wire by its size', () => {
    // Shigley, Table 10-5, music wire in GPa (from memory), at wires within its four size groups in inches.
    for (const [diameter, modulus] of [
      [0.03, 82.7],
      [0.05, 81.7],
      [0.1, 81],
      [0.2, 80],
    ] as const) {
      const byName = askNumber(springRate, diameter, 8 * diameter, 6, 'music wire', 'in');
      expect(byName).toBeCloseTo(askNumber(springRate, diameter, 8 * diameter, 6, `${modulus} GPa`, 'in'), 9);
    }
  });

  it('has the inch strength from the inch constants, 0.2 % beside the metric ones', () => {
    const inch = askNumber(springStrength, 'music wire', '2.5 mm', 'in') / 145.0377377;
    const metric = askNumber(springStrength, 'music wire', '2.5 mm', 'mm');
    expect(Math.abs(inch / metric - 1)).toBeGreaterThan(1e-3);
    expect(Math.abs(inch / metric - 1)).toBeLessThan(3e-3);
  });
});

describe('a compression spring in its pocket', () => {
  const rate = fc.double({ min: 0.01, max: 1e4, noNaN: true });
  const length = fc.double({ min: 1, max: 500, noNaN: true });
  const part = fc.double({ min: 0, max: 0.95, noNaN: true });

  it('never pulls', () => {
    fc.assert(
      fc.property(rate, length, length, (k, free, at) => {
        const force = askNumber(springForce, k, free, at, 'mm');
        expect(force).toBeGreaterThanOrEqual(0);
        if (at >= free) expect(force).toBe(0);
      }),
    );
  });

  it('has SPRING.LENGTH as the inverse of SPRING.FORCE', () => {
    fc.assert(
      fc.property(rate, length, part, (k, free, pressed) => {
        const force = k * free * pressed;
        const at = askNumber(springLength, k, free, force, 'mm');
        expect(Math.abs(askNumber(springForce, k, free, at, 'mm') - force)).toBeLessThan(1e-9 * k * free);
      }),
    );
  });

  it('has SPRING.SHIM as the inverse of SPRING.PRELOAD, a deeper pocket in place of a negative shim', () => {
    fc.assert(
      fc.property(rate, length, length, part, (k, free, pocket, pressed) => {
        const preload = k * free * pressed;
        const shim = askNumber(springShim, k, free, pocket, preload, 'mm');
        const back =
          shim >= 0
            ? askNumber(springPreload, k, free, pocket, shim, 'mm')
            : askNumber(springPreload, k, free, pocket - shim, 0, 'mm');
        expect(Math.abs(back - preload)).toBeLessThan(1e-9 * k * (free + pocket));
      }),
    );
  });

  it('says what a negative shim means', () => {
    const shim = { rate: '25 lbf/in', freeLength: '1.5 in', pocketLength: '1.3 in' };
    const deeper = evaluated(springShim, { ...shim, preload: '4 lbf' });
    expect(deeper.answer).toBeLessThan(0);
    expect(deeper.cautions).toContain('Negative: the pocket must be cut deeper by this much.');
    expect(evaluated(springShim, { ...shim, preload: '8 lbf' }).cautions).not.toContain(
      'Negative: the pocket must be cut deeper by this much.',
    );
  });

  it('is refused past nothing and past solid, with the argument to change', () => {
    expect(messageOf(springForce, 8, 40, -3, 'mm')).toBe('#VALUE! length is -3 mm; it must be above 0 mm.');
    expect(messageOf(springLength, 8, 40, 400, 'mm')).toMatch(/^#VALUE! force is 400 N/);
    expect(messageOf(springTravel, 20, 32, null, 'mm')).toMatch(
      /^#VALUE! solidLength is 32 mm; it must not be more than pocketLength, 20 mm/,
    );
    expect(messageOf(springDiscForce, 20, 10.2, 1.1, 0.45, 0.46, null, null, 'mm')).toMatch(
      /^#VALUE! deflection is 0.46 mm; it must not be more than coneHeight, 0.45 mm/,
    );
  });
});

describe('buckling', () => {
  // Shigley, 10th edition, chapter 10: steel springs are stable below a free length of 2.63 D/α. Its moduli differ a
  // little from those of EN 10270-1, which give 2.58.
  it.each([0.5, 0.707, 1, 2])('begins where the book’s rule for steel has it (seating %f)', (seating) => {
    const limit = askNumber(springFreeLimit, 20, seating, null, 'mm');
    expect(limit / ((2.63 * 20) / seating)).toBeGreaterThan(0.98);
    expect(limit / ((2.63 * 20) / seating)).toBeLessThanOrEqual(1);
  });

  it('turns from "stable" to a deflection at SPRING.FREELIMIT, and the deflection falls with length', () => {
    for (const seating of [0.5, 0.707, 1, 2]) {
      const limit = askNumber(springFreeLimit, 14, seating, null, 'mm');
      expect(ask(springBuckle, limit * (1 - 1e-9), 14, seating, 'mm')).toBe('stable');
      let before = Infinity;
      for (const times of [1 + 1e-9, 1.05, 1.2, 1.5, 2, 4]) {
        const part = askNumber(springBuckle, limit * times, 14, seating, 'mm') / (limit * times);
        expect(part).toBeGreaterThan(0);
        expect(part).toBeLessThan(Math.min(before, 1));
        before = part;
      }
    }
  });

  it('depends on a wire’s moduli alone through their ratio', () => {
    const limit = (material: string): number => askNumber(springFreeLimit, 20, 0.5, material, 'mm');
    // Shigley's equation 10-12 with its steel of 11.5 and 30 Mpsi.
    const gamma = 11.5 / 30;
    const book = 40 * Math.PI * Math.sqrt((2 * (1 - gamma)) / (2 * gamma + 1));
    expect(limit(`${gamma * 206} GPa`)).toBeCloseTo(book, 9);
    // The stiffer in shear against bending, the sooner it bends out: 302 is 69 to 193 GPa, music wire 80 to 193.
    expect(limit('music wire')).toBeLessThan(limit('302 stainless'));
  });
});

describe('disc springs', () => {
  // DIN 2093 series A: De, Di, t, h0, deflection (three quarters of h0, rounded as tabulated), load, stress OM and
  // the larger of the tensions II and III, in mm, N and MPa.
  const DISCS = [
    [8, 4.2, 0.4, 0.2, 0.15, 210, -1200, 1220],
    [10, 5.2, 0.5, 0.25, 0.19, 329, -1210, 1240],
    [12.5, 6.2, 0.7, 0.3, 0.23, 673, -1280, 1420],
    [14, 7.2, 0.8, 0.3, 0.23, 813, -1190, 1340],
    [16, 8.2, 0.9, 0.35, 0.26, 1000, -1160, 1290],
    [18, 9.2, 1, 0.4, 0.3, 1250, -1170, 1300],
    [20, 10.2, 1.1, 0.45, 0.34, 1530, -1180, 1300],
    [22.5, 11.2, 1.25, 0.5, 0.38, 1950, -1170, 1320],
    [25, 12.2, 1.5, 0.55, 0.41, 2910, -1210, 1410],
    [28, 14.2, 1.5, 0.65, 0.49, 2850, -1180, 1280],
    [31.5, 16.3, 1.75, 0.7, 0.53, 3900, -1190, 1320],
  ] as const;

  it.each(DISCS)('of %f × %f × %f mm have the tabulated load and stresses', (...disc) => {
    const [De, Di, t, h0, s, load, upperMiddle, tension] = disc;
    const force = askNumber(springDiscForce, De, Di, t, h0, s, null, null, 'mm');
    expect(Math.abs(force / load - 1)).toBeLessThan(0.006);
    const stress = (point: string): number =>
      askNumber(springDiscStress, De, Di, t, h0, s, point, null, null, 'mm');
    // Stresses are tabulated to the nearest ten.
    expect(Math.abs(stress('OM') - upperMiddle)).toBeLessThan(10);
    expect(Math.abs(Math.max(stress('II'), stress('III')) - tension)).toBeLessThan(13);
  });

  it('of the standard are within the range of the equations, others are noted', () => {
    const of = (De: number, Di: number, t: number, h0: number, s: number) =>
      evaluated(springDiscForce, {
        outsideDia: `${De} mm`,
        insideDia: `${Di} mm`,
        thickness: `${t} mm`,
        coneHeight: `${h0} mm`,
        deflection: `${s} mm`,
      }).outside.join(' ');
    for (const [De, Di, t, h0, s] of DISCS) expect(of(De, Di, t, h0, s)).toBe('');
    expect(of(20, 15, 1.1, 0.45, 0.3)).toMatch(/diameter ratio/);
    expect(of(20, 10.2, 1.1, 0.2, 0.1)).toMatch(/cone height/);
    expect(of(20, 10.2, 0.3, 0.3, 0.1)).toMatch(/16 to 40 times/);
    expect(of(150, 71, 8, 4, 2)).toMatch(/contact flats/);
    expect(of(20, 10.2, 1.1, 0.45, 0.4)).toMatch(/three quarters/);
  });

  /**
   * The energy of a ring whose section turns as a rigid body by an angle: hoop strain from the turn alone, summed by
   * quadrature over the section. The force is its slope, so nothing of the closed form is used.
   * The standard's form has one ring factor where this energy has two, for the cone and for the thickness, which
   * differ by less than 1 %: (δ+1)/(δ−1) − 2/ln δ against (ln δ)/6.
   */
  const energy = (De: number, Di: number, t: number, h0: number, s: number): number => {
    const [a, b] = [De / 2, Di / 2];
    const centre = (a - b) / integrate((r) => 1 / r, b, a);
    const turn = s / (a - b);
    const slope = h0 / (a - b) - turn / 2;
    const across = (r: number): number => (centre - r) * turn * slope;
    const modulus = 206000 / (1 - 0.3 ** 2);
    return (
      Math.PI *
      modulus *
      integrate((r) => integrate((y) => (across(r) + y * turn) ** 2, -t / 2, t / 2, 2) / r, b, a, 400)
    );
  };

  it.each(DISCS)('of %f × %f × %f mm push with the slope of the energy of a turning section', (...disc) => {
    const [De, Di, t, h0] = disc;
    for (const part of [0.2, 0.5, 0.75, 0.9]) {
      const s = part * h0;
      const step = 1e-4 * h0;
      const slope = (energy(De, Di, t, h0, s + step) - energy(De, Di, t, h0, s - step)) / (2 * step);
      const force = askNumber(springDiscForce, De, Di, t, h0, s, null, null, 'mm');
      expect(Math.abs(force / slope - 1)).toBeLessThan(0.01);
    }
  });

  it('have the stresses of the turning section at its five points', () => {
    const [De, Di, t, h0, s] = [20, 10.2, 1.1, 0.45, 0.3];
    const [a, b] = [De / 2, Di / 2];
    const centre = (a - b) / Math.log(a / b);
    const turn = s / (a - b);
    const hoop = (r: number, y: number): number =>
      ((-206000 / (1 - 0.3 ** 2)) * ((centre - r) * turn * (h0 / (a - b) - turn / 2) + y * turn)) / r;
    const points = {
      OM: hoop(centre, t / 2),
      I: hoop(b, t / 2),
      II: hoop(b, -t / 2),
      III: hoop(a, -t / 2),
      IV: hoop(a, t / 2),
    };
    for (const [point, expected] of Object.entries(points)) {
      const stress = askNumber(springDiscStress, De, Di, t, h0, s, point, null, null, 'mm');
      expect(Math.abs(stress / expected - 1)).toBeLessThan(0.01);
    }
  });

  it('in a stack do the work of all their discs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 30 }), (parallel, series) => {
        const stack = (what: string): number =>
          askNumber(springDiscStack, 1050, 0.2, parallel, series, what, 'mm');
        expect(stack('force') * stack('deflection')).toBeCloseTo(1050 * 0.2 * parallel * series, 6);
      }),
    );
  });
});

describe('wave springs', () => {
  const [od, id, t, waves, force, modulus] = [25, 19, 0.35, 3.5, 40, 206000];
  const [dm, b] = [(od + id) / 2, (od - id) / 2];

  /**
   * One wave as a straight beam of a wavelength, clamped at both crests and pressed in the middle by its share of the
   * force: E I w⁗ = q by finite differences over half of it. Gives the deflection and the clamping moment.
   */
  function clampedWave(n: number): { readonly deflection: number; readonly moment: number } {
    const half = (Math.PI * dm) / waves / 2;
    const h = half / n;
    const bending = (modulus * b * t ** 3) / 12;
    // Unknowns 0 … n + 4: two ghost points on either side of the half beam, which starts at 2.
    const size = n + 5;
    const matrix = Matrix.zeros(size, size);
    const load = Matrix.zeros(size, 1);
    const setRow = (row: number, first: number, terms: readonly number[]): void => {
      terms.forEach((term, i) => matrix.set(row, first + i, term));
    };
    for (let i = 2; i <= n + 2; i++) setRow(i, i - 2, [1, -4, 6, -4, 1]);
    // The clamped end has neither deflection nor slope; its ghost point far out belongs to no other condition.
    setRow(2, 2, [1]);
    setRow(1, 1, [-1, 0, 1]);
    setRow(0, 0, [1]);
    // The middle is level, and half of the wave's force is its shear.
    setRow(n + 3, n + 1, [-1, 0, 1]);
    setRow(n + 4, n, [-1, 2, 0, -2, 1]);
    load.set(n + 4, 0, ((force / waves / 2) * 2 * h ** 3) / bending);
    const w = solve(matrix, load);
    return {
      deflection: Math.abs(w.get(n + 2, 0)),
      moment: Math.abs((bending * (w.get(3, 0) - 2 * w.get(2, 0) + w.get(1, 0))) / h ** 2),
    };
  }

  it('have the bending stress of a beam clamped at its crests', () => {
    const { moment } = clampedWave(100);
    const stress = askNumber(springWaveStress, force, od, id, t, waves, 'mm');
    expect(Math.abs(stress / (moment / ((b * t ** 2) / 6)) - 1)).toBeLessThan(1e-3);
  });

  it('are half as stiff as that beam at few waves, and no softer than one that rests on its crests', () => {
    const { deflection } = clampedWave(100);
    // The sheet's factor for the ring's breadth is taken out: it makes the straight beam of the mean diameter.
    const turn = askNumber(springWaveRate, od, id, t, waves, 1, null, 'mm') * (id / od);
    expect(turn / (force / deflection)).toBeGreaterThan(0.49);
    expect(turn / (force / deflection)).toBeLessThan(0.51);
    // A beam on two rests gives way four times as much as a clamped one.
    for (const n of [2, 3, 4, 4.5, 6, 7, 9, 10, 12]) {
      const clamped = (modulus * b * t ** 3 * 16 * n ** 4) / (Math.PI ** 3 * dm ** 3);
      const rate = askNumber(springWaveRate, od, id, t, n, 1, null, 'mm') * (id / od);
      expect(rate).toBeLessThan(clamped);
      expect(rate).toBeGreaterThan(clamped / 4);
    }
  });

  it('take the factor of their number of waves', () => {
    // The formula sheet's table: 3.88 to 4 waves, 2.90 to 6.5, 2.30 to 9.5, 2.13 from 10.
    const factor = (n: number): number =>
      (modulus * b * t ** 3 * n ** 4 * od) /
      (dm ** 3 * id * askNumber(springWaveRate, od, id, t, n, 1, null, 'mm'));
    for (const [n, K] of [
      [2, 3.88],
      [4, 3.88],
      [4.5, 2.9],
      [6.5, 2.9],
      [7, 2.3],
      [9.5, 2.3],
      [10, 2.13],
      [14, 2.13],
    ] as const) {
      expect(factor(n)).toBeCloseTo(K, 9);
    }
    expect(messageOf(springWaveRate, od, id, t, 1.5, 1, null, 'mm')).toMatch(/^#VALUE! wavesPerTurn/);
  });
});
