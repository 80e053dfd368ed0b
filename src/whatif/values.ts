import { Refusal } from '../core/refusal';
import type { CellInput } from '../workbook/cells';
import { MOST_RUNS } from './plan';

/** Values of `a..b`: both ends and the tenths between. */
const TENTHS = 10;

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/**
 * Reads the values to try: a list by comma, of which each may be a number, a word, TRUE or FALSE, text in quotes,
 * `from:to:step`, or `from..to` for eleven values evenly apart.
 */
export function readValues(text: string): CellInput[] {
  const values = pieces(text).flatMap(pieceValues);
  if (values.length > MOST_RUNS)
    throw new Refusal(`"${text}" gives ${values.length} values; at most ${MOST_RUNS} are run at once.`);
  return values;
}

/** Reads `from..to`, the ends between which a solution is sought. */
export function readBracket(text: string): { readonly low: number; readonly high: number } {
  const [from, to, ...more] = text.split('..').map((part) => numberOf(part.trim()));
  if (from === undefined || to === undefined || more.length > 0) {
    throw new Refusal(`"${text}" is no pair of ends; write it as 1..20.`);
  }
  if (from === to) throw new Refusal(`"${text}" has the same number at both ends.`);
  return { low: Math.min(from, to), high: Math.max(from, to) };
}

function pieces(text: string): string[] {
  const found = text.match(/(?:"(?:[^"]|"")*"|[^,"]|")+|(?<=,)(?=,|$)|^(?=,)/g) ?? [];
  const trimmed = found.map((piece) => piece.trim());
  if (trimmed.length === 0 || trimmed.includes('')) {
    throw new Refusal(
      text.trim() === ''
        ? 'Give values, such as 3:15:1 or 0.1, 0.15, 0.2.'
        : `"${text}" has a gap in its list.`,
    );
  }
  return trimmed;
}

function pieceValues(piece: string): CellInput[] {
  if (piece.startsWith('"')) {
    const [, inside] = /^"((?:[^"]|"")*)"$/.exec(piece) ?? [];
    if (inside === undefined) throw new Refusal(`${piece} has no closing quote.`);
    return [inside.replaceAll('""', '"')];
  }
  const number = numberOf(piece);
  if (number !== undefined) return [number];
  if (/^(true|false)$/i.test(piece)) return [piece.toLowerCase() === 'true'];
  if (piece.startsWith('=')) throw new Refusal(`${piece} is a formula; give values.`);
  const ends = piece.split('..').map((part) => part.trim());
  if (ends.length === 2) return tenths(piece, ends);
  const parts = piece.split(':').map((part) => part.trim());
  if (parts.length === 3 && parts.some((part) => numberOf(part) !== undefined)) return steps(piece, parts);
  if (parts.length === 2 && parts.every((part) => numberOf(part) !== undefined)) {
    throw new Refusal(`"${piece}" has no step; write it as ${piece}:1.`);
  }
  return [piece];
}

function tenths(piece: string, [a = '', b = '']: readonly string[]): number[] {
  const [from, to] = [numberOf(a), numberOf(b)];
  if (from === undefined || to === undefined) throw new Refusal(`"${piece}" needs a number at both ends.`);
  if (from === to) return [from];
  const scale = 10 ** Math.max(decimals(a), decimals(b));
  const [first, last] = [Math.round(from * scale), Math.round(to * scale)];
  return Array.from({ length: TENTHS + 1 }, (_, i) => (first * (TENTHS - i) + last * i) / (TENTHS * scale));
}

/** Counted in whole units of the last decimal, so that every value is the number one would type. */
function steps(piece: string, parts: readonly string[]): number[] {
  const [from, to, step] = parts.map(numberOf);
  if (from === undefined || to === undefined || step === undefined) {
    throw new Refusal(`"${piece}" needs three numbers: from:to:step.`);
  }
  if (step === 0) throw new Refusal(`"${piece}" has a step of 0.`);
  const scale = 10 ** Math.max(...parts.map(decimals));
  const [first, last, size] = [from, to, step].map((number) => Math.round(number * scale)) as [
    number,
    number,
    number,
  ];
  const stride = Math.sign(last - first || 1) * Math.abs(size);
  const count = Math.floor(Math.abs((last - first) / size)) + 1;
  if (count > MOST_RUNS)
    throw new Refusal(`"${piece}" gives ${count} values; at most ${MOST_RUNS} are run at once.`);
  return Array.from({ length: count }, (_, i) => (first + i * stride) / scale);
}

function numberOf(text: string): number | undefined {
  const typed = text.replace(/−/g, '-');
  return NUMBER.test(typed) ? Number(typed) : undefined;
}

/** Digits behind the point of a number as typed. */
function decimals(text: string): number {
  const [mantissa = '', exponent = '0'] = text.toLowerCase().split('e');
  return Math.max(0, (mantissa.split('.')[1] ?? '').length - Number(exponent));
}
