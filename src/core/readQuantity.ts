import { KINDS, toSI, type Kind } from './quantity';
import type { Unit } from './units';

/** A number as people write it on a shop drawing: `12`, `0.5`, `.250`, `1e-3`, `1/2`, `1 1/2`, `1-1/2`, `-3/4`. */
const NUMBER =
  /^([+-]?)(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)|^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;

/** Splits `1 1/2 in` into 1.5 and `in`. Undefined where no number leads. */
export function splitNumber(text: string): { value: number; rest: string } | undefined {
  const trimmed = text.trim().replace(/−/g, '-');
  const match = NUMBER.exec(trimmed);
  if (!match) return undefined;
  const [all, sign, whole, top, bottom] = match;
  const rest = trimmed.slice(all.length).trim();
  if (top === undefined || bottom === undefined) return { value: Number(all), rest };
  const size = Number(whole ?? 0) + Number(top) / Number(bottom);
  return { value: sign === '-' ? -size : size, rest };
}

const spelled = (u: Unit, text: string): boolean => u.symbol === text || u.aliases.includes(text);

/** The unit of this kind that the text names; the letter case matters only where two units differ in nothing else. */
export function findUnit(kind: Kind, text: string): Unit | undefined {
  const { units } = KINDS[kind];
  const exact = units.find((u) => spelled(u, text));
  if (exact) return exact;
  const folded = text.toLowerCase();
  const loose = units.filter((u) => [u.symbol, ...u.aliases].some((s) => s.toLowerCase() === folded));
  return loose.length === 1 ? loose[0] : undefined;
}

/** Kinds that know this unit, most usual first. */
export const kindsWithUnit = (text: string): Kind[] =>
  (Object.keys(KINDS) as Kind[]).filter((kind) => findUnit(kind, text) !== undefined);

export type Reading =
  | { readonly ok: true; readonly si: number; readonly unit: Unit | undefined; readonly plain: number }
  | {
      readonly ok: false;
      readonly problem: 'not a number' | 'unknown unit' | 'other kind';
      readonly unitText: string;
    };

/** Reads text with an optional unit. Without a unit, `plain` is the number and the caller decides what it is in. */
export function readQuantity(text: string, kind: Kind): Reading {
  const split = splitNumber(text);
  if (!split || !Number.isFinite(split.value)) return { ok: false, problem: 'not a number', unitText: '' };
  const { value, rest } = split;
  if (rest === '') return { ok: true, si: NaN, unit: undefined, plain: value };
  const unit = findUnit(kind, rest);
  if (unit) return { ok: true, si: toSI(value, unit), unit, plain: value };
  const problem = kindsWithUnit(rest).length > 0 ? 'other kind' : 'unknown unit';
  return { ok: false, problem, unitText: rest };
}
