import { describe, expect, it } from 'vitest';
import { ejectForce } from '../../src/catalogue/eject/force';
import { ejectGrip } from '../../src/catalogue/eject/grip';
import { ejectPinCount } from '../../src/catalogue/eject/pinCount';
import { ejectPinPressure } from '../../src/catalogue/eject/pinPressure';
import { ejectPinShear } from '../../src/catalogue/eject/pinShear';
import { pinBuckle } from '../../src/catalogue/pin/buckle';
import { pinLength } from '../../src/catalogue/pin/length';
import { pinStand } from '../../src/catalogue/pin/stand';
import { solveBracketed } from '../../src/core/solve';
import { ask, askNumber } from '../support/ask';
import { integrate } from '../support/numeric';

describe('the grip of a part on its core', () => {
  it('is that of Lamé’s ring in the limit of a thin wall', () => {
    // A ring of inner radius r held back by the strain ε on a rigid core: p = ε E/((R² + r²)/(R² − r²) + ν).
    const [E, strain, r, nu] = [500, 0.01, 50, 0];
    for (const wall of [0.05, 0.5]) {
      const R = r + wall;
      const lame = (strain * E) / ((R ** 2 + r ** 2) / (R ** 2 - r ** 2) + nu);
      const grip = askNumber(ejectGrip, E, strain, wall, r, null, 'mm');
      // The thin ring is too high by half the wall over the radius.
      expect(Math.abs(grip / lame - 1)).toBeLessThan(wall / r);
    }
  });

  it('with a closed end balances hoop and axial strain', () => {
    // ε E = σ_h − ν σ_a with σ_h = p r/t and σ_a = σ_h/2; only the hoop strain is held back.
    const p = askNumber(ejectGrip, 500, 0.01, 2, 15, 0.4, 'mm');
    const hoop = (p * 15) / 2;
    expect((hoop - 0.4 * (hoop / 2)) / 500).toBeCloseTo(0.01, 12);
  });
});

describe('the force that strips a part', () => {
  it('is never negative, and 0 from the friction angle on', () => {
    for (let draft = 0; draft < 90; draft += 0.5) {
      const force = askNumber(ejectForce, 2, 1800, draft, 0.3, 'mm');
      expect(force).toBeGreaterThanOrEqual(0);
      if (draft > (Math.atan(0.3) * 180) / Math.PI) expect(force).toBe(0);
    }
  });

  it('is the axial sum over a cone of what pressure and friction do to each strip', () => {
    // A frustum of height h, draft θ: strips of area 2π r dx/cos θ, integrated numerically.
    const [p, mu, theta, top, height] = [2, 0.35, (1.5 * Math.PI) / 180, 10, 40];
    const strip = (x: number): number => (2 * Math.PI * (top + x * Math.tan(theta))) / Math.cos(theta);
    const area = integrate(strip, 0, height);
    const axial = integrate((x) => p * strip(x) * (mu * Math.cos(theta) - Math.sin(theta)), 0, height);
    expect(askNumber(ejectForce, p, area, 1.5, mu, 'mm')).toBeCloseTo(axial, 8);
  });
});

describe('the number of pins', () => {
  it('is the least that keeps both pressure and shear', () => {
    for (const force of [10, 333, 900, 5000]) {
      for (const [dia, wall] of [
        [3, 1.5],
        [2, 0.4],
        [6, 3],
      ] as const) {
        const n = askNumber(ejectPinCount, force, dia, wall, 12, 5, 'mm');
        const keeps = (pins: number): boolean =>
          askNumber(ejectPinPressure, force, pins, dia, 'mm') <= 12 * (1 + 1e-8) &&
          askNumber(ejectPinShear, force, pins, dia, wall, 'mm') <= 5 * (1 + 1e-8);
        expect(keeps(n)).toBe(true);
        if (n > 1) expect(keeps(n - 1)).toBe(false);
      }
    }
  });
});

describe('the buckling of a pin', () => {
  const [E, yieldStress] = [207_000, 1400];

  it('of a slender one is where a column that pivots at both ends first bends by itself', () => {
    // EI y″ + P y = 0, y(0) = 0: shooting with Runge–Kutta steps for the least P that brings y(L) to zero.
    const [d, L] = [2, 100];
    const EI = (E * Math.PI * d ** 4) / 64;
    const tip = (P: number): number => {
      const n = 2000;
      const h = L / n;
      let [y, v] = [0, 1];
      const bend = (at: number): number => (-P * at) / EI;
      for (let i = 0; i < n; i++) {
        const [k1, l1] = [v, bend(y)];
        const [k2, l2] = [v + (h / 2) * l1, bend(y + (h / 2) * k1)];
        const [k3, l3] = [v + (h / 2) * l2, bend(y + (h / 2) * k2)];
        const [k4, l4] = [v + h * l3, bend(y + h * k3)];
        y += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
        v += (h / 6) * (l1 + 2 * l2 + 2 * l3 + l4);
      }
      return y;
    };
    const critical = solveBracketed(tip, 50, 400, { tolerance: 1e-7 });
    expect(askNumber(pinBuckle, d, L, 1, E, yieldStress, 'mm') / critical).toBeCloseTo(1, 8);
  });

  it('goes over from Johnson to Euler without a step, at half the yield stress', () => {
    const d = 4;
    const L = (Math.sqrt((2 * Math.PI ** 2 * 1.2 * E) / yieldStress) * d) / 4;
    const half = (yieldStress * Math.PI * d ** 2) / 8;
    for (const factor of [1 - 1e-9, 1 + 1e-9]) {
      expect(askNumber(pinBuckle, d, L * factor, null, E, yieldStress, 'mm') / half).toBeCloseTo(1, 7);
    }
  });

  it('only falls as the unguided length grows', () => {
    let last = Infinity;
    for (let L = 0; L <= 300; L += 2) {
      const load = askNumber(pinBuckle, 3, L, null, null, null, 'mm');
      expect(load).toBeLessThan(last);
      last = load;
    }
  });
});

describe('the length of a pin', () => {
  it('stands as proud as asked when warm', () => {
    for (const proud of [-0.05, 0, 0.02, 0.3]) {
      for (const [plateRise, pinRise] of [
        [40, 30],
        [0, 60],
        [-10, 0],
      ] as const) {
        const length = askNumber(pinLength, 85, proud, '7075-T6', plateRise, 'H13', pinRise, 'mm');
        const stand = askNumber(pinStand, length, 85, '7075-T6', plateRise, 'H13', pinRise, 'mm');
        expect(stand).toBeCloseTo(proud, 12);
      }
    }
  });

  it('refuses to grind a pin away', () => {
    expect(ask(pinLength, 20, -20, 'P20', 0, 'H13', 0, 'mm')).toMatchObject({
      code: '#VALUE!',
      message: 'proud is -20 mm; it would grind away all of stack, 20 mm.',
    });
  });
});
