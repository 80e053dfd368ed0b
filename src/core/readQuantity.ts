import { american } from './names';
import { KINDS, toSI, type Kind } from './quantity';
import type { Unit } from './units';

/** A number as people write it on a shop drawing: `12`, `0.5`, `.250`, `1e-3`, `1/2`, `1 1/2`, `1-1/2`, `-3/4`. */
const NUMBER =
  /^([+-]?)(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)|^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;

/** `1½` and `½` as `1 1/2` and `1/2`, a minus sign as the keyboard's. */
const plainFigures = (text: string): string =>
  text
    .replace(/−/g, '-')
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(/⁄/g, '/')
    .trim();

/** Splits `1 1/2 in` into 1.5 and `in`. Undefined where no number leads. */
export function splitNumber(text: string): { value: number; rest: string } | undefined {
  const trimmed = plainFigures(text);
  const match = NUMBER.exec(trimmed);
  if (!match) return undefined;
  const [all, sign, whole, top, bottom] = match;
  const rest = trimmed.slice(all.length).trim();
  if (top === undefined || bottom === undefined) return { value: Number(all), rest };
  const size = Number(whole ?? 0) + Number(top) / Number(bottom);
  return { value: sign === '-' ? -size : size, rest };
}

const spelled = (u: Unit, text: string): boolean => u.symbol === text || u.aliases.includes(text);

/**
 * A unit without what makes no difference to a reader: signs that look alike (`º`, `℃`, `μ`), the sign between two units
 * or the blank there, letter case, British endings.
 */
const alike = (text: string): string =>
  american(
    text
      .replace(/[º˚]/g, '°')
      .normalize('NFKC')
      .replace(/\s*[·⋅•∙*-]\s*|\s+/g, '·')
      .toLowerCase(),
  );

/** Of a kind's units, made once. */
const alikes = new Map<Kind, ReadonlyMap<Unit, ReadonlySet<string>>>();

function alikesOf(kind: Kind): ReadonlyMap<Unit, ReadonlySet<string>> {
  const known = alikes.get(kind);
  if (known) return known;
  const made = new Map(
    KINDS[kind].units.map((u) => [u, new Set([u.symbol, ...u.aliases].map(alike))] as const),
  );
  alikes.set(kind, made);
  return made;
}

/** The unit of this kind that the text names; the letter case matters only where two units differ in nothing else. */
export function findUnit(kind: Kind, text: string): Unit | undefined {
  const exact = KINDS[kind].units.find((u) => spelled(u, text));
  if (exact) return exact;
  const wanted = alike(text);
  const loose = [...alikesOf(kind)].filter(([, names]) => names.has(wanted));
  return loose.length === 1 ? loose[0]?.[0] : undefined;
}

/** Kinds that know this unit, most usual first. */
export const kindsWithUnit = (text: string): Kind[] =>
  (Object.keys(KINDS) as Kind[]).filter((kind) => findUnit(kind, text) !== undefined);

/** The two units of a conversion. `inverse`: threads per inch and the pitch are each other's reciprocal. */
export interface UnitPair {
  readonly kind: Kind;
  readonly source: Unit;
  readonly target: Unit;
  readonly inverse: boolean;
}

/** Units of one kind by their texts, or those of a number per length and of a length. */
export function unitsBetween(from: string, to: string): UnitPair | undefined {
  const before = pairs.get(from);
  const known = before?.get(to);
  if (known) return known;
  const found = findPair(from, to);
  // Only spellings of units are kept, of which there are so many and no more.
  if (found) {
    if (before) before.set(to, found);
    else pairs.set(from, new Map([[to, found]]));
  }
  return found;
}

/** A sheet converts between the same few units in every cell. */
const pairs = new Map<string, Map<string, UnitPair>>();

function findPair(from: string, to: string): UnitPair | undefined {
  for (const kind of kindsWithUnit(from)) {
    const others: readonly [Kind, boolean][] = [
      [kind, false],
      ...(kind === 'perInch' ? [['length', true] as [Kind, boolean]] : []),
      ...(kind === 'length' ? [['perInch', true] as [Kind, boolean]] : []),
    ];
    for (const [other, inverse] of others) {
      const [source, target] = [findUnit(kind, from), findUnit(other, to)];
      if (source && target) return { kind, source, target, inverse };
    }
  }
  return undefined;
}

export type Reading =
  | { readonly ok: true; readonly si: number; readonly unit: Unit | undefined; readonly plain: number }
  | {
      readonly ok: false;
      readonly problem: 'not a number' | 'comma' | 'unknown unit' | 'other kind';
      readonly unitText: string;
    };

/** A comma where a decimal point or nothing is meant: `0,5 mm`, `,5`, `1,000 lbf`. */
const COMMA = /^[+-]?\d*,\d/;

export const hasComma = (text: string): boolean => COMMA.test(plainFigures(text));

/** The sign that a drawing puts before a diameter. */
const DIAMETER = /^\s*[Øø⌀∅]/;

/** Reads text with an optional unit. Without a unit, `plain` is the number and the caller decides what it is in. */
export function readQuantity(given: string, kind: Kind): Reading {
  const text = kind === 'length' ? given.replace(DIAMETER, '') : given;
  if (hasComma(text)) return { ok: false, problem: 'comma', unitText: '' };
  const split = splitNumber(text);
  if (!split || !Number.isFinite(split.value)) return { ok: false, problem: 'not a number', unitText: '' };
  const { value, rest } = split;
  if (rest === '') return { ok: true, si: NaN, unit: undefined, plain: value };
  const unit = findUnit(kind, rest);
  if (unit) return { ok: true, si: toSI(value, unit), unit, plain: value };
  const problem = kindsWithUnit(rest).length > 0 ? 'other kind' : 'unknown unit';
  return { ok: false, problem, unitText: rest };
}

/**
 * A plain number that stands for a percentage: from 30 to 100 in percent, from 0.3 to 1 the fraction that a cell
 * formatted in percent holds. Undefined where it could be misread.
 */
export function percentFrom(plain: number): number | undefined {
  if (plain >= 0.3 && plain <= 1) return plain;
  return plain >= 30 && plain <= 100 ? plain / 100 : undefined;
}
