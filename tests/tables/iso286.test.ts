import { describe, expect, it } from 'vitest';
import { readFit } from '../../src/tables/fitName';
import { UnknownName } from '../../src/tables/names';
import {
  deviations,
  deviationSource,
  GRADES,
  gradeSource,
  LETTERS,
  PREFERRED_FITS,
  standardTolerance,
} from '../../src/tables/iso286';

// prettier-ignore
const STEPS = [
  3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
];
const tryDeviations = (size: number, given: string) => {
  try {
    return deviations(size, given);
  } catch (error) {
    if (error instanceof UnknownName) return undefined;
    throw error;
  }
};

describe('standard tolerances', () => {
  it('ascend with the grade and never fall with the size', () => {
    for (const size of STEPS) {
      const row = GRADES.map((grade) => standardTolerance(size, grade));
      row.slice(1).forEach((value, i) => {
        expect(value, `IT${GRADES[i + 1] ?? ''} at ${size}`).toBeGreaterThan(row[i] ?? NaN);
      });
    }
    for (const grade of GRADES) {
      const column = STEPS.map((size) => standardTolerance(size, grade));
      expect(column).toEqual([...column].sort((a, b) => a - b));
    }
  });

  it('grow tenfold in five grades from IT6, as the standard lays down, but for IT11 from 3 to 6 mm (75 µm)', () => {
    for (const size of STEPS) {
      for (let grade = 6; grade <= 13; grade++) {
        if (grade === 6 && size === 6) continue;
        expect(standardTolerance(size, String(grade + 5))).toBe(10 * standardTolerance(size, String(grade)));
      }
    }
  });

  it('lie near the defining formula i = 0.45·D^(1/3) + 0.001·D above 3 mm (IT7 = 16 i)', () => {
    const ends = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
    ends.slice(1).forEach((upTo, at) => {
      const mean = Math.sqrt((ends[at] ?? NaN) * upTo);
      const formula = 16 * (0.45 * Math.cbrt(mean) + 0.001 * mean);
      expect(Math.abs(standardTolerance(upTo, '7') / formula - 1)).toBeLessThan(0.05);
    });
  });

  // Narayana, Kannaiah, Venkata Reddy, Machine Drawing, Table 15.1; µm.
  it.each([
    [45, '11', 160],
    [30, '7', 21],
    [25.4, '8', 33],
    [3, '01', 0.3],
    [500, '16', 4000],
  ])('%d mm %s is %d µm', (size, grade, value) => {
    expect(standardTolerance(size, grade)).toBe(value);
  });

  it('refuses a grade that is none, and the coarse ones up to 1 mm', () => {
    expect(() => standardTolerance(20, '19')).toThrow('IT18');
    expect(() => standardTolerance(20, 'H7')).toThrow(UnknownName);
    expect(() => standardTolerance(1, '14')).toThrow('IT13');
    expect(standardTolerance(1, '13')).toBe(140);
  });
});

describe('limit deviations', () => {
  // Machine Drawing Tables 15.1 to 15.3 (read), ISO 7379 shoulder limits (f9, read at fullerkr.com), µm.
  it.each([
    [8, 'H7', 15, 0],
    [8, 'm6', 15, 6],
    [10, 'p6', 24, 15],
    [25, 'H7', 21, 0],
    [25, 'P7', -14, -35],
    [50, 'js6', 8, -8],
    [63, 'N7', -9, -39],
    [5, 'P9', -12, -42],
    [10, 'f9', -13, -49],
  ])('%d mm %s, as read', (size, given, upper, lower) => {
    expect(deviations(size, given)).toEqual({ upper, lower });
  });

  // From memory of the limit tables of ISO 286-2, µm.
  it.each([
    [6, 'g6', -4, -12],
    [6.01, 'g6', -5, -14],
    [25, 'k6', 15, 2],
    [25, 'n6', 28, 15],
    [25, 's6', 48, 35],
    [40, 'u6', 76, 60],
    [60, 'd9', -100, -174],
    [35, 'c11', -120, -280],
    [100, 'e8', -72, -126],
    [20, 'j6', 9, -4],
    [20, 'J7', 12, -9],
    [50, 'F8', 64, 25],
    [25, 'K7', 6, -15],
    [25, 'M7', 0, -21],
    [25, 'N7', -7, -28],
    [100, 'P7', -24, -59],
    [25, 'R7', -20, -41],
    [25, 'S7', -27, -48],
    [25, 'U7', -40, -61],
    [300, 'M6', -9, -41],
    [250, 'M6', -8, -37],
    [2, 'K6', 0, -6],
    [2, 'N9', -4, -29],
    [30, 'N9', 0, -52],
  ])('%d mm %s, as recalled', (size, given, upper, lower) => {
    expect(deviations(size, given)).toEqual({ upper, lower });
  });

  // The two values that the book misprints, by their defining formulas IT7 + D and IT7 + 1.6 D at the geometric mean.
  it('settles the two misprints of the book', () => {
    const mean = (over: number, upTo: number) => Math.sqrt(over * upTo);
    expect(Math.abs(deviations(212, 'u6').lower - (46 + mean(200, 225)))).toBeLessThan(0.5);
    expect(Math.abs(deviations(380, 'x6').lower - (57 + 1.6 * mean(355, 400)))).toBeLessThan(0.5);
  });

  it('spans the standard tolerance in every class that is defined', () => {
    let classes = 0;
    for (const size of [0.8, ...STEPS]) {
      for (const grade of GRADES) {
        for (const letter of [...LETTERS, ...LETTERS.map((it) => it.toUpperCase())]) {
          const found = tryDeviations(size, letter + grade);
          if (!found) continue;
          classes++;
          expect(found.upper - found.lower, `${size} ${letter}${grade}`).toBeCloseTo(
            standardTolerance(size, grade),
            9,
          );
        }
      }
    }
    expect(classes).toBeGreaterThan(20_000);
  });

  it('rises from letter to letter: shafts grow from a to zc, holes shrink from A to ZC', () => {
    const order = LETTERS.filter((letter) => !letter.startsWith('j'));
    for (const size of STEPS) {
      for (const grade of ['6', '7', '8']) {
        const shafts = order
          .map((letter) => tryDeviations(size, letter + grade)?.lower)
          .filter((v) => v !== undefined);
        const holes = order.map((letter) => tryDeviations(size, letter.toUpperCase() + grade)?.upper);
        expect(shafts, `${size}`).toEqual([...shafts].sort((a, b) => a - b));
        const fine = holes.filter((v) => v !== undefined);
        expect(fine, `${size} holes ${grade}`).toEqual([...fine].sort((a, b) => b - a));
      }
    }
  });

  it('moves away from nominal as sizes grow', () => {
    for (const letter of LETTERS) {
      const column = STEPS.map((size) => tryDeviations(size, `${letter}6`)).filter((it) => it !== undefined);
      const reach = column.map((it) => Math.abs(it.upper + it.lower));
      if (letter === 'js' || letter === 'j') continue;
      expect(reach, letter).toEqual([...reach].sort((a, b) => a - b));
    }
  });

  it('mirrors holes and shafts: A to H are the shafts turned over, and a fit of equal letters is the same from either basis', () => {
    for (const size of STEPS) {
      for (const letter of ['a', 'c', 'd', 'e', 'f', 'g', 'h']) {
        const shaft = deviations(size, `${letter}8`);
        const hole = deviations(size, `${letter.toUpperCase()}8`);
        expect([hole.lower, hole.upper]).toEqual([0 - shaft.upper, -shaft.lower]);
      }
      // The purpose of delta: H7/p6 and P7/h6 have the same greatest and least interference (ISO 286-1).
      if (size <= 3) continue;
      for (const letter of ['k', 'm', 'n', 'p', 'r', 's', 'u', 'x', 'z']) {
        const [H, shaft] = [deviations(size, 'H7'), deviations(size, `${letter}6`)];
        const [hole, h] = [deviations(size, `${letter.toUpperCase()}7`), deviations(size, 'h6')];
        expect(hole.lower - h.upper, `${size} ${letter}`).toBeCloseTo(H.lower - shaft.upper, 9);
      }
    }
  });

  it('takes a step up to and including its end, also for sizes converted from metres', () => {
    for (const end of STEPS.slice(0, -1)) {
      expect(deviations((end / 1000) * 1000, 'n6')).toEqual(deviations(end - 0.01, 'n6'));
      expect(deviations(end + 0.001, 'x6').lower).toBeGreaterThan(deviations(end, 'x6').lower);
    }
  });

  it.each([
    [20, 't6', ['u6', 's6', 'v6']],
    [20, 'K9', ['M9', 'N9', 'JS9']],
    [60, 'cd6', ['d6', 'c6', 'e6']],
    [14, 'v6', ['x6', 'u6']],
  ])('%d mm %s is not defined; it names %s', (size, given, nearest) => {
    expect(() => deviations(size, given)).toThrow(UnknownName);
    expect(() => deviations(size, given)).toThrow(nearest.join(', '));
  });

  it.each(['', 'H', '7', 'Q7', 'hH7', 'H7/g6', 'h19', 'H-7', 'a9'])('%s is refused at 0.9 mm', (given) => {
    expect(() => deviations(0.9, given)).toThrow(UnknownName);
  });

  it.each([0, -5, 500.1, NaN, Infinity])('a size of %d mm is refused', (size) => {
    expect(() => deviations(size, 'H7')).toThrow('500 mm');
  });
});

describe('fits', () => {
  it('are refused where they are no hole and shaft', () => {
    for (const wrong of ['g6/H7', 'H7', 'h7/g6', 'H7/g6/h5'])
      expect(() => readFit(wrong)).toThrow(UnknownName);
  });

  it('of the preferred list are defined at every size and get tighter down the list', () => {
    for (const size of STEPS) {
      const least = PREFERRED_FITS.map((fit) => {
        const { hole, shaft } = readFit(fit);
        return deviations(size, hole).lower - deviations(size, shaft).upper;
      });
      expect(least, `${size}`).toEqual([...least].sort((a, b) => b - a));
    }
  });
});

it('sources tell what was read from what was recalled', () => {
  expect(deviationSource(25, 'H7').kind).toBe('published');
  expect(deviationSource(25, 's6').kind).toBe('published');
  expect(deviationSource(25, 'g6').kind).toBe('memory');
  expect(deviationSource(200, 'g6').kind).toBe('published');
  expect(deviationSource(25, 'H17').kind).toBe('memory');
  expect(gradeSource('18').kind).toBe('memory');
});
