import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { convert, fromSI, KINDS, SYSTEMS, systemUnit, toSI, type Kind } from '../../src/core/quantity';
import { findUnit, kindsWithUnit, readQuantity, splitNumber } from '../../src/core/readQuantity';

const kinds = Object.keys(KINDS) as Kind[];

describe('a number on a drawing', () => {
  it.each([
    ['12', 12, ''],
    ['.250', 0.25, ''],
    ['1/2 in', 0.5, 'in'],
    ['1 1/2 in', 1.5, 'in'],
    ['-3/4 in', -0.75, 'in'],
    ['1e-3 m', 0.001, 'm'],
    ['−5 mm', -5, 'mm'],
    ['10°', 10, '°'],
    ['0.6MPa', 0.6, 'MPa'],
    ['½"', 0.5, '"'],
    ['1½ in', 1.5, 'in'],
    ['1-1/2"', 1.5, '"'],
    ['5.5mm', 5.5, 'mm'],
  ])('%s is %d with "%s" behind it', (text, value, rest) => {
    expect(splitNumber(text)).toEqual({ value, rest });
  });

  it('is none where no figure leads', () => {
    expect(splitNumber('a lot')).toBeUndefined();
    expect(splitNumber('')).toBeUndefined();
  });
});

describe('a length in text', () => {
  const millimeters = (text: string): number => {
    const reading = readQuantity(text, 'length');
    if (!reading.ok) throw new Error(reading.problem);
    return reading.unit ? reading.si * 1000 : reading.plain;
  };
  it.each([
    ['Ø5.5', 5.5],
    ['Ø 5.5 mm', 5.5],
    ['⌀½"', 12.7],
    ['1 1/2 in.', 38.1],
    ["3/8''", 9.525],
    ['2 millimetres', 2],
    ['5 mil', 0.127],
    ['5 thou', 0.127],
  ])('%s is %d', (text, value) => {
    expect(millimeters(text)).toBeCloseTo(value, 12);
  });

  it.each(['0,5 mm', '1,5', ',5', '-0,5 in', '1,000', 'Ø5,5'])('%s is refused for its comma', (text) => {
    expect(readQuantity(text, 'length')).toMatchObject({ ok: false, problem: 'comma' });
  });

  it('is the same number however it is written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        fc.nat(63),
        (whole, under, n) => {
          const over = 1 + (n % (under - 1 || 1));
          const size = (whole + over / under) * 25.4;
          for (const text of [
            `${whole} ${over}/${under} in`,
            `${whole}-${over}/${under}"`,
            `Ø${whole + over / under}in`,
            `${size} mm`,
          ])
            expect(millimeters(text)).toBeCloseTo(size, 9);
        },
      ),
    );
  });
});

describe('a unit', () => {
  // mathjs is the outside: its names for the units that have the same meaning.
  const math = create(all as FactoryFunctionMap);
  it.each([
    ['length', 'in', 'inch', 'm'],
    ['length', 'thou', 'mil', 'm'],
    ['length', 'ft', 'ft', 'm'],
    ['area', 'in²', 'sqin', 'm^2'],
    ['volume', 'in³', 'cuin', 'm^3'],
    ['volume', 'cm³', 'cc', 'm^3'],
    ['force', 'lbf', 'lbf', 'N'],
    ['force', 'tonf', '2000 lbf', 'N'],
    ['force', 'tf', '1000 kgf', 'N'],
    ['pressure', 'psi', 'psi', 'Pa'],
    ['pressure', 'ksi', '1000 psi', 'Pa'],
    ['pressure', 'bar', 'bar', 'Pa'],
    ['pressure', 'atm', 'atm', 'Pa'],
    ['torque', 'lbf·in', 'lbf inch', 'N m'],
    ['stiffness', 'lbf/in', 'lbf/inch', 'N/m'],
    ['mass', 'oz', 'ounce', 'kg'],
    ['mass', 'lb', 'lbm', 'kg'],
    ['power', 'hp', '550 ft lbf/s', 'W'],
    ['heatContent', 'Btu/lb', 'BTU/lbm', 'J/kg'],
    ['film', 'Btu/(h·ft²·°F)', 'BTU/(hour ft^2 degF)', 'W/(m^2 K)'],
    ['angle', 'deg', 'deg', 'rad'],
    ['angle', 'arcmin', 'arcmin', 'rad'],
    ['cuttingSpeed', 'ft/min', 'ft/minute', 'm/s'],
    ['flow', 'L/min', 'litre/minute', 'm^3/s'],
  ] as const)('of %s, %s, is as mathjs has it', (kind, symbol, mathUnit, si) => {
    const unit = findUnit(kind, symbol);
    const factor = math.unit(`1 ${mathUnit}`.replace(/^1 (\d)/, '$1')).toNumber(si);
    expect(Math.abs((unit?.factor ?? 0) / factor - 1)).toBeLessThan(1e-9);
  });

  it.each([
    ['°F', '°C', 212, 100],
    ['°F', '°C', -40, -40],
    ['°C', 'K', 0, 273.15],
    ['°F', 'K', 32, 273.15],
  ])('of temperature: %s to %s at %d is %d', (from, to, value, expected) => {
    const [a, b] = [findUnit('temperature', from), findUnit('temperature', to)];
    expect(a && b && convert(value, a, b)).toBeCloseTo(expected, 11);
  });

  it('of a rise has no zero point', () => {
    const [f, c] = [findUnit('rise', '°F'), findUnit('rise', '°C')];
    expect(f && c && convert(18, f, c)).toBeCloseTo(10, 12);
  });

  it.each(kinds)('of %s goes to SI and back to what it was', (kind) => {
    for (const unit of KINDS[kind].units) {
      for (const value of [0, 1, -2.5, 1e-6, 12345.678]) {
        expect(fromSI(toSI(value, unit), unit)).toBeCloseTo(value, 9);
        expect(convert(value, unit, unit)).toBe(value);
      }
    }
  });

  it.each(kinds)('of %s has no spelling twice', (kind) => {
    const spellings = KINDS[kind].units.flatMap(({ symbol, aliases }) => [symbol, ...aliases]);
    expect(new Set(spellings).size).toBe(spellings.length);
  });

  it.each(kinds)('of each system stands among those of %s', (kind) => {
    for (const system of SYSTEMS) expect(KINDS[kind].units).toContain(systemUnit(kind, system));
  });

  it('keeps its letter case where that tells two apart, and is free of it elsewhere', () => {
    expect(findUnit('length', 'MM')?.symbol).toBe('mm');
    expect(findUnit('pressure', 'mpa')?.symbol).toBe('MPa');
    expect(findUnit('pressure', 'mpsi')?.symbol).toBe('Mpsi');
    expect(findUnit('length', 'furlong')).toBeUndefined();
  });

  it.each([
    ['temperature', 'ºC', '°C'],
    ['temperature', '˚F', '°F'],
    ['temperature', '℃', '°C'],
    ['angle', 'º', 'deg'],
    ['torque', 'ft·lb', 'lbf·ft'],
    ['torque', 'in ⋅ lbf', 'lbf·in'],
    ['torque', 'N\u00a0m', 'N·m'],
    ['area', 'sq\u2009in', 'in²'],
  ] as const)('of %s is %j too, which looks or joins alike', (kind, text, symbol) => {
    expect(findUnit(kind, text)?.symbol).toBe(symbol);
  });

  it('is a pound of mass for a mass and of force for a force', () => {
    expect(findUnit('force', 'lb')?.symbol).toBe('lbf');
    expect(findUnit('mass', 'lb')?.symbol).toBe('lb');
  });

  it('names the kind it belongs to when it stands in the wrong place', () => {
    expect(readQuantity('5 MPa', 'force')).toMatchObject({ ok: false, problem: 'other kind' });
    expect(readQuantity('5 furlong', 'force')).toMatchObject({ ok: false, problem: 'unknown unit' });
    expect(kindsWithUnit('MPa')).toEqual(['pressure']);
  });
});

function unitOf(kind: Kind, symbol: string) {
  const unit = findUnit(kind, symbol);
  if (!unit) throw new Error(`${symbol} is no unit of ${kind}`);
  return unit;
}

describe('A number that leaves in another unit', () => {
  it.each([
    [4.2, 'length', 'mm'],
    [0.159, 'length', 'in'],
    [3.785411784, 'volume', 'gal'],
    [106.68, 'length', 'mm'],
    [464, 'temperature', '°F'],
    [0, 'temperature', '°C'],
    [0.7, 'percent', '%'],
  ] as const)(
    '%d of %s in %s comes back as it was written, so that a look-up finds it',
    (value, kind, symbol) => {
      const unit = unitOf(kind, symbol);
      expect(fromSI(toSI(value, unit), unit)).toBe(value);
    },
  );

  it('comes back as it was written, whatever thousandth of an inch or millimeter it is', () => {
    for (const system of SYSTEMS) {
      const unit = systemUnit('length', system);
      for (let i = 1; i <= 30_000; i++) expect(fromSI(toSI(i / 1000, unit), unit)).toBe(i / 1000);
    }
  });

  it('is left as it is where it has no decimals to be settled', () => {
    const pascal = unitOf('pressure', 'Pa');
    for (let i = 1; i <= 1_000; i++) {
      const value = 900_000 + i * 12_345.678_9;
      expect(fromSI(value, pascal)).toBe(value);
    }
  });

  it.each([
    [32, '°F', '°C', 0],
    [212, '°F', '°C', 100],
    [72, '°F', '°C', 200 / 9],
    [-40, '°C', '°F', -40],
    [-459.67, '°F', 'K', 0],
  ] as const)('%d %s in %s is the nearest number, not one beside it', (value, from, to, expected) => {
    const [a, b] = [unitOf('temperature', from), unitOf('temperature', to)];
    expect(Math.abs(convert(value, a, b) - expected)).toBeLessThanOrEqual(2 ** -52 * Math.abs(expected));
  });
});
