import { describe, expect, it } from 'vitest';
import { anyUnit, dimensionWords } from '../../src/core/anyUnit';
import { dimension } from '../../src/core/dimension';

describe('a unit by itself', () => {
  it.each([
    ['in', 0.0254, { m: 1 }],
    ['lb', 0.45359237, { kg: 1 }],
    ['lbf', 4.4482216152605, { kg: 1, m: 1, s: -2 }],
    ['in^4', 0.0254 ** 4, { m: 4 }],
    ['mm4', 1e-12, { m: 4 }],
    ['mm⁴', 1e-12, { m: 4 }],
    ['N/mm', 1e3, { kg: 1, s: -2 }],
    ['kg·m²', 1, { kg: 1, m: 2 }],
    ['lbf*in*s', 4.4482216152605 * 0.0254, { kg: 1, m: 2, s: -1 }],
    ['W/(m·K)', 1, { kg: 1, m: 1, s: -3, K: -1 }],
    ['J/(kg*K*s)', 1, { m: 2, s: -3, K: -1 }],
    ['1/s', 1, { s: -1 }],
    ['', 1, {}],
    ['%', 0.01, {}],
    ['K', 1, { K: 1 }],
    ['Δ°F', 5 / 9, { K: 1 }],
  ])('%s is read with its exact factor', (text, factor, exponents) => {
    const unit = anyUnit(text);
    expect(unit?.factor).toBeCloseTo(factor, 12);
    expect(unit?.dimension).toEqual(dimension(exponents));
    expect(unit?.offset).toBe(0);
  });

  it('of a temperature is a point on its scale', () => {
    expect(anyUnit('°C')?.offset).toBe(273.15);
  });

  it.each(['stonez', 'in^', 'N//m', '·', 'mm^x', '12'])('is not made of %s', (text) => {
    expect(anyUnit(text)).toBeUndefined();
  });

  it('has its kind in words', () => {
    expect(dimensionWords(dimension({ kg: 1, m: -1, s: -2 }))).toBe('a pressure');
    expect(dimensionWords(dimension({ m: 4 }))).toBe('a quantity in m^4');
  });
});
