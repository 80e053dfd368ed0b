/** Units by themselves, whatever kind of quantity they measure, and products of them: for equations of a shop's own. */
import { dimensionText, over, power, RATIO, sameDimension, times, type Dimension } from './dimension';
import { KINDS, type Kind } from './quantity';
import { kindsWithUnit } from './readQuantity';
import type { Unit } from './units';

export interface AnyUnit {
  readonly factor: number;
  /** SI value at zero of the scale; only of °C and °F by themselves. */
  readonly offset: number;
  readonly dimension: Dimension;
}

/** No kinds of quantity that a shop writes equations of; their units would be taken for others. */
const LEFT_OUT: readonly Kind[] = ['money', 'moneyRate', 'massPrice', 'consistency', 'rise', 'tonnage'];

/** Temperatures by their unit alone are points on the scale; differences are kelvins, or marked so. */
const DIFFERENCE = /^[Δ∆]\s*/;

const spelledExactly = (kind: Kind, text: string): Unit | undefined =>
  KINDS[kind].units.find(({ symbol }) => symbol === text);
const alias = (kind: Kind, text: string): Unit | undefined =>
  KINDS[kind].units.find(({ aliases }) => aliases.includes(text));

/** A unit of the tables: a symbol as it stands there goes before another spelling, so that `lb` is a mass. */
function simple(text: string): AnyUnit | undefined {
  const kinds = kindsWithUnit(text).filter((kind) => !LEFT_OUT.includes(kind));
  for (const find of [spelledExactly, alias]) {
    for (const kind of kinds) {
      const unit = find(kind, text);
      if (unit) return { factor: unit.factor, offset: unit.offset, dimension: KINDS[kind].dimension };
    }
  }
  return undefined;
}

const FACTOR = /^([^\d^⁰-⁹²³]+?)(?:\^?(-?\d+)|([²³⁴⁵⁶]))?$/u;
const RAISED: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4, '⁵': 5, '⁶': 6 };

/** One unit of a product with its exponent: `in^4`, `mm²`, `s`. A degree inside a product is a difference. */
function raised(text: string): AnyUnit | undefined {
  if (text === '') return undefined;
  if (text === '1') return { factor: 1, offset: 0, dimension: RATIO };
  const whole = simple(text);
  if (whole) return { ...whole, offset: 0 };
  const found = FACTOR.exec(text);
  const base = found?.[1] === undefined ? undefined : simple(found[1].trim());
  if (!found || !base) return undefined;
  const exponent = found[3] === undefined ? Number(found[2] ?? 1) : (RAISED[found[3]] ?? 1);
  return { factor: base.factor ** exponent, offset: 0, dimension: power(base.dimension, exponent) };
}

function product(text: string): AnyUnit | undefined {
  const plain = text.replace(/\/\s*\(([^()]*)\)$/, (_, below: string) => `/${below.split(/[·*]/).join('/')}`);
  let result: AnyUnit = { factor: 1, offset: 0, dimension: RATIO };
  let divides = false;
  for (const part of plain.split(/([·*/])/)) {
    const piece = part.trim();
    if (piece === '·' || piece === '*') divides = false;
    else if (piece === '/') divides = true;
    else {
      const unit = raised(piece);
      if (!unit) return undefined;
      result = {
        factor: divides ? result.factor / unit.factor : result.factor * unit.factor,
        offset: 0,
        dimension: (divides ? over : times)(result.dimension, unit.dimension),
      };
    }
  }
  return result;
}

/** What a text names as a unit: of the tables, or a product such as `in^4`, `lbf/in`, `kg·m²`. Undefined: no unit. */
export function anyUnit(text: string): AnyUnit | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return { factor: 1, offset: 0, dimension: RATIO };
  if (DIFFERENCE.test(trimmed)) {
    const unit = simple(trimmed.replace(DIFFERENCE, ''));
    return unit && { ...unit, offset: 0 };
  }
  return simple(trimmed) ?? product(trimmed);
}

/** What a dimension measures, in words: `a pressure`; its base units where no kind of quantity has it. */
export function dimensionWords(dimension: Dimension): string {
  if (sameDimension(dimension, RATIO)) return 'a pure number';
  const kinds = (Object.keys(KINDS) as Kind[]).filter(
    (kind) => !LEFT_OUT.includes(kind) && sameDimension(KINDS[kind].dimension, dimension),
  );
  const [first] = kinds;
  if (first === undefined) return `a quantity in ${dimensionText(dimension)}`;
  const { says } = KINDS[first];
  return `${/^[aeiou]/.test(says) ? 'an' : 'a'} ${says}`;
}

/** A unit of the tables that measures a dimension, as an example. */
export const exampleUnit = (dimension: Dimension): string | undefined =>
  (Object.keys(KINDS) as Kind[])
    .filter((kind) => !LEFT_OUT.includes(kind) && sameDimension(KINDS[kind].dimension, dimension))
    .map((kind) => KINDS[kind].units[0]?.symbol)
    .find((symbol) => symbol !== undefined && symbol !== '');
