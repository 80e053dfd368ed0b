import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutBallDia } from '../../src/catalogue/cut/ballDia';
import { cutBend } from '../../src/catalogue/cut/bend';
import { cutChip } from '../../src/catalogue/cut/chip';
import { cutChipFeed } from '../../src/catalogue/cut/chipFeed';
import { cutForce } from '../../src/catalogue/cut/force';
import { cutPull } from '../../src/catalogue/cut/pull';
import { cutReach } from '../../src/catalogue/cut/reach';
import { cutRpm } from '../../src/catalogue/cut/rpm';
import { cutScallop } from '../../src/catalogue/cut/scallop';
import { cutSpeed } from '../../src/catalogue/cut/speed';
import { cutStepover } from '../../src/catalogue/cut/stepover';
import { cutWallStep } from '../../src/catalogue/cut/wallStep';
import { edgeCenter } from '../../src/catalogue/edge/center';
import { edgeMiddle } from '../../src/catalogue/edge/middle';
import { ask, askNumber } from '../support/ask';
import { integrate, turnsTrue } from '../support/numeric';

const DEGREE = Math.PI / 180;
const relative = (got: number, wanted: number): number => Math.abs(got / wanted - 1);

describe('handbook speeds', () => {
  // Handbook table of HSS drilling and reaming speeds, ft/min, as reproduced at vm68.com/stuff/sfpm.html and
  // protocutter.com/cutting-speeds-in-feet-per-minute: metal, drilling, reaming, reaming with carbide.
  it.each([
    ['P20', 60, 40, 200],
    ['H13 annealed', 60, 40, 200],
    ['H13 225 HB', 50, 30, 150],
    ['H13 350 HB', 30, 20, 100],
    ['420 annealed', 75, 50, 225],
    ['420 200 HB', 65, 45, 200],
    ['420 300 HB', 40, 25, 125],
  ])('start %s where the table does', (metal, drill, ream, carbideReam) => {
    expect(askNumber(cutSpeed, metal, 'HSS', 'drill')).toBeCloseTo(drill, 10);
    expect(askNumber(cutSpeed, metal, 'HSS', 'ream')).toBeCloseTo(ream, 10);
    expect(askNumber(cutSpeed, metal, 'carbide', 'ream')).toBeCloseTo(carbideReam, 10);
  });

  it('are refused where the table has none, by naming what it has', () => {
    expect(ask(cutSpeed, 'H13 48 HRC', 'HSS', 'mill')).toMatchObject({
      code: '#VALUE!',
      message: expect.stringContaining('carbide mill') as string,
    });
  });

  it('ask for the state of a metal that is cut in several', () => {
    expect(ask(cutSpeed, '420', 'HSS', 'drill')).toMatchObject({
      message: expect.stringContaining('420 annealed') as string,
    });
  });

  it('end at the spindle’s limit, and only there', () => {
    expect(askNumber(cutRpm, 300, 3, 10000, 'mm')).toBe(10000);
    expect(askNumber(cutRpm, 300, 3, 40000, 'mm')).toBeCloseTo(300000 / (3 * Math.PI), 8);
  });
});

describe('Kienzle’s law', () => {
  // VDI 3323 material groups, kc1.1 in MPa and mc, from a cutting tool catalogue of 2017, p. 558 (docs.steelcam.org).
  it.each([
    ['1018', 1350, 0.21],
    ['P20', 1675, 0.24],
    ['H13 annealed', 2450, 0.23],
    ['H13 350 HB', 2500, 0.23],
    ['420 annealed', 1875, 0.21],
    ['6061-T6', 800, 0.25],
    ['brass', 700, 0.27],
  ])('has the constants of its group for %s', (metal, kc, mc) => {
    expect(askNumber(cutForce, 1, 1, metal, 'mm')).toBeCloseTo(kc, 8);
    // A tenth of the thickness at ten times the width is the same section, 10^mc harder to cut.
    expect(relative(askNumber(cutForce, 0.1, 10, metal, 'mm'), kc * 10 ** mc)).toBeLessThan(1e-12);
  });

  it('takes a metal given as a number for the specific force at every thickness', () => {
    expect(askNumber(cutForce, 0.01, 1, 3000, 'mm')).toBeCloseTo(30, 10);
    expect(askNumber(cutForce, 0.1, 1, '3 GPa', 'mm')).toBeCloseTo(300, 10);
  });
});

describe('the chip of a side cut', () => {
  /** Radial distance from the tooth's path to that of the tooth before it, one feed behind: two circles. */
  const thickness = (feed: number, radius: number, angle: number): number => {
    const [x, y] = [radius * Math.sin(angle) + feed, radius * Math.cos(angle)];
    return turnsTrue(
      (depth) => Math.hypot(x - depth * Math.sin(angle), y - depth * Math.cos(angle)) <= radius,
      0,
      feed,
    );
  };

  it.each([
    [0.0005, 0.5, 8],
    [0.0005, 3.9, 8],
    [0.0002, 0.05, 6],
    [0.001, 9, 12],
  ])('is the widest gap of two circles: feed %f, depth %f, cutter %f', (feed, depth, diameter) => {
    const last = Math.acos(1 - (2 * depth) / diameter);
    let widest = 0;
    for (let i = 0; i <= 2000; i++)
      widest = Math.max(widest, thickness(feed, diameter / 2, (last * i) / 2000));
    // The sine law is the limit of small feeds; the rest is of the order of feed over diameter.
    expect(relative(askNumber(cutChip, feed, depth, diameter, 'mm'), widest)).toBeLessThan(2e-3);
  });

  it('gives its feed back', () => {
    const size = fc.double({ min: 0.1, max: 30, noNaN: true });
    const share = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, share, (diameter, engaged) => {
        const chip = askNumber(cutChip, 0.03, diameter * engaged, diameter, 'mm');
        const feed = askNumber(cutChipFeed, chip, diameter * engaged, diameter, 'mm');
        expect(relative(feed, 0.03)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe('a ball cutter', () => {
  /** Height of the ridge between two balls on a plane slope, square to it: where their lower halves cross. */
  const ridge = (ballDia: number, stepover: number, slopeDegrees: number): number => {
    const radius = ballDia / 2;
    const slope = slopeDegrees * DEGREE;
    const rise = stepover * Math.tan(slope);
    const cutByFirst = (x: number) => -Math.sqrt(radius ** 2 - x ** 2);
    const cutBySecond = (x: number) => rise - Math.sqrt(radius ** 2 - (x - stepover) ** 2);
    const from = Math.max(-radius, stepover - radius);
    const to = Math.min(radius, stepover + radius);
    const x = turnsTrue((at) => cutBySecond(at) <= cutByFirst(at), from, to);
    const plane = x * Math.tan(slope) - radius / Math.cos(slope);
    return (cutByFirst(x) - plane) * Math.cos(slope);
  };

  it.each([
    [6, 0.3, 0],
    [8, 0.4, 30],
    [10, 6, 0],
    [3, 0.15, 45],
    [4, 0.1, 60],
    [1, 0.7, 10],
  ])('of %f mm at a stepover of %f mm on %f° leaves the ridge of two circles', (ballDia, stepover, slope) => {
    const wanted = ridge(ballDia, stepover, slope);
    expect(Math.abs(askNumber(cutScallop, ballDia, stepover, slope, 'mm') - wanted)).toBeLessThan(1e-12);
    expect(relative(askNumber(cutStepover, ballDia, wanted, slope, 'mm'), stepover)).toBeLessThan(1e-9);
  });

  it('keeps the digits of a ridge of nanometres', () => {
    // Series of R − √(R² − s²/4): s²/(8R) (1 + s²/(16 R²) + …).
    const [radius, stepover] = [5, 1e-4];
    const series = (stepover ** 2 / (8 * radius)) * (1 + stepover ** 2 / (16 * radius ** 2));
    expect(relative(askNumber(cutScallop, 2 * radius, stepover, 0, 'mm'), series)).toBeLessThan(1e-13);
  });

  it('is asked for no stepover that leaves metal between the passes', () => {
    expect(ask(cutScallop, 6, 6.1, 0, 'mm')).toMatchObject({ code: '#VALUE!' });
    expect(ask(cutScallop, 6, 5.5, 30, 'mm')).toMatchObject({
      message: expect.stringContaining('stepover') as string,
    });
    expect(ask(cutStepover, 6, 3.1, 0, 'mm')).toMatchObject({ code: '#VALUE!' });
  });

  it('cuts with the chord of its circle', () => {
    const chord = 2 * turnsTrue((x) => 3 - Math.sqrt(9 - x ** 2) >= 0.2, 0, 3);
    expect(relative(askNumber(cutBallDia, 6, 0.2, 'mm'), chord)).toBeLessThan(1e-12);
  });
});

it('a flat cutter leaves the stair that stands over a drafted wall', () => {
  for (const draft of [0.5, 2, 10, 40]) {
    const step = 0.1;
    const across = step * Math.tan(draft * DEGREE);
    // The wall runs from (0, 0) to (across, step); the stair's corner between them, at (0, step), stands off it.
    const distance = (step * across) / Math.hypot(across, step);
    expect(relative(askNumber(cutWallStep, distance, draft, 'mm'), step)).toBeLessThan(1e-12);
  }
});

describe('a cutter as a stepped cantilever', () => {
  interface Cutter {
    readonly dia: number;
    readonly flutes: number;
    readonly neckDia: number;
    readonly neck: number;
    readonly modulus: number;
  }
  /** Unit-load method: the integral of M m/(E I) from the tip back, in parts of one section each. */
  const deflection = (force: number, { dia, flutes, neckDia, neck, modulus }: Cutter): number => {
    const part = (from: number, to: number, section: number) =>
      integrate((x) => (force * x * x) / (modulus * ((Math.PI * section ** 4) / 64)), from, to);
    return part(0, flutes, 0.8 * dia) + part(flutes, flutes + neck, neckDia);
  };

  it.each<Cutter>([
    { dia: 1, flutes: 2, neckDia: 0.95, neck: 10, modulus: 580000 },
    { dia: 3, flutes: 6, neckDia: 2.8, neck: 24, modulus: 600000 },
    { dia: 6, flutes: 15, neckDia: 5.5, neck: 25, modulus: 580000 },
    { dia: 2, flutes: 8, neckDia: 6, neck: 20, modulus: 210000 },
    { dia: 0.5, flutes: 0.75, neckDia: 0.45, neck: 7.25, modulus: 580000 },
  ])('bends as unit-load integration says: $dia mm, $flutes + $neck mm', (cutter) => {
    const shape = [cutter.dia, cutter.flutes, cutter.neckDia, cutter.neck, cutter.modulus, 'mm'] as const;
    const wanted = deflection(12, cutter);
    expect(relative(askNumber(cutBend, 12, ...shape), wanted)).toBeLessThan(1e-9);
    expect(relative(askNumber(cutPull, wanted, ...shape), 12)).toBeLessThan(1e-9);
  });

  it('without a neck is the fluted part alone', () => {
    const wanted = integrate((x) => (12 * x * x) / (580000 * ((Math.PI * 4.8 ** 4) / 64)), 0, 30);
    expect(relative(askNumber(cutBend, 12, 6, 30, null, null, null, 'mm'), wanted)).toBeLessThan(1e-9);
  });

  it('is refused with half a neck, by naming the other half', () => {
    expect(ask(cutBend, 12, 6, 30, 5, null, null, 'mm')).toMatchObject({
      message: 'neckLength must be given together with neckDia.',
    });
    expect(ask(cutPull, 0.01, 6, 30, null, 5, null, 'mm')).toMatchObject({
      message: 'neckDia must be given together with neckLength.',
    });
  });

  it('pulls back what it bends', () => {
    const size = fc.double({ min: 0.2, max: 12, noNaN: true });
    const length = fc.double({ min: 0.5, max: 80, noNaN: true });
    fc.assert(
      fc.property(size, length, size, length, (dia, flutes, neckDia, neck) => {
        const shape = [dia, flutes, neckDia, neck, null, 'in'] as const;
        expect(relative(askNumber(cutPull, askNumber(cutBend, 3, ...shape), ...shape), 3)).toBeLessThan(
          1e-12,
        );
      }),
    );
  });
});

describe('reach beside a drafted wall', () => {
  /** Lowest height at which a neck may begin: no point of it may stand beyond the wall. */
  const lowest = (neckDia: number, wallAt: (z: number) => number): number => {
    const free = (from: number) => {
      for (let i = 0; i <= 400; i++) if (neckDia / 2 > wallAt(from + (i * 200) / 400)) return false;
      return true;
    };
    return turnsTrue(free, 0, 1000);
  };

  it.each([
    [8, 6, 1],
    [6, 3, 0.5],
    [4, 3.9, 2],
    [20, 6, 15],
  ])('clears from there on: neck %f, cutter %f, draft %f°', (neckDia, dia, draft) => {
    // A sharp cutter touches the wall with its lower corner.
    const wanted = lowest(neckDia, (z) => dia / 2 + z * Math.tan(draft * DEGREE));
    expect(relative(askNumber(cutReach, neckDia, dia, draft, 'mm'), wanted)).toBeLessThan(1e-9);
  });

  it.each([
    [8, 6, 1],
    [6.5, 6, 5],
    [10, 6, 30],
  ])('is enough for a ball with its radius added: neck %f, ball %f, draft %f°', (neckDia, dia, draft) => {
    const [radius, lean] = [dia / 2, Math.tan(draft * DEGREE)];
    // Wall pushed up to the ball: the farthest that any point of its circle sticks out beyond a wall through the axis.
    let shift = -Infinity;
    for (let i = 0; i <= 20000; i++) {
      const angle = (i / 20000) * (Math.PI / 2);
      shift = Math.max(shift, radius * Math.cos(angle) - (radius - radius * Math.sin(angle)) * lean);
    }
    const needed = lowest(neckDia, (z) => shift + z * lean);
    const given = askNumber(cutReach, neckDia, dia, draft, 'mm');
    expect(given).toBeLessThan(needed);
    expect(given + radius).toBeGreaterThanOrEqual(needed - 1e-6);
  });

  it('needs no height where the neck is not wider, and has none beside a straight wall where it is', () => {
    expect(ask(cutReach, 6, 6, 0, 'mm')).toBe('clears');
    expect(ask(cutReach, 6.1, 6, 0, 'mm')).toMatchObject({
      code: '#VALUE!',
      message: expect.stringContaining('draft') as string,
    });
  });
});

it('two touches from outside find edges and middle of a block whatever the tip', () => {
  for (const tip of [2, 4, 10]) {
    // A block from 12 to 37 mm, touched from outside: the axis stands half a tip off.
    const [left, right] = [12 - tip / 2, 37 + tip / 2];
    expect(askNumber(edgeMiddle, left, right, 'mm')).toBeCloseTo(24.5, 12);
    expect(askNumber(edgeCenter, left, tip, 'left', 'mm')).toBeCloseTo(12, 12);
    expect(askNumber(edgeCenter, right, tip, 'right', 'mm')).toBeCloseTo(37, 12);
  }
});
