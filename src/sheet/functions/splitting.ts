/** Texts taken apart at delimiters. */
import { toText } from '../coerce';
import { ArrayValue, ERRORS, raise, type Scalar, type Value } from '../values';
import { plain } from './spec';

interface Cut {
  readonly from: number;
  readonly to: number;
}

const delimitersOf = (array: ArrayValue): string[] => array.dense().map((value) => toText(value));

/** Where the delimiters stand, from left to right, the longest first where several do. */
function cutsIn(text: string, delimiters: readonly string[], ignoresCase: boolean): Cut[] {
  const fold = (one: string) => (ignoresCase ? one.toLowerCase() : one);
  const within = fold(text);
  const wanted = delimiters
    .filter((one) => one !== '')
    .map(fold)
    .sort((a, b) => b.length - a.length);
  const cuts: Cut[] = [];
  const next = wanted.map((one) => within.indexOf(one));
  for (let at = 0; ;) {
    let best: Cut | undefined;
    wanted.forEach((one, i) => {
      if ((next[i] ?? -1) >= 0 && (next[i] as number) < at) next[i] = within.indexOf(one, at);
      const from = next[i] as number;
      if (from >= 0 && (best === undefined || from < best.from)) best = { from, to: from + one.length };
    });
    if (best === undefined) return cuts;
    cuts.push(best);
    at = best.to;
  }
}

type Side = (text: string, cut: Cut) => string;
const before: Side = (text, cut) => text.slice(0, cut.from);
const after: Side = (text, cut) => text.slice(cut.to);

const beside = (name: string, side: Side) =>
  plain(
    name,
    'tan?n?n?v?',
    (text, delimiter, occurrence = 1, mode = 0, endCounts = 0, otherwise?: Scalar) => {
      const wanted = Math.trunc(occurrence);
      if (wanted === 0 || (text !== '' && Math.abs(wanted) > text.length)) return raise('#VALUE!');
      const delimiters = delimitersOf(delimiter);
      const end: Cut = { from: text.length, to: text.length };
      const start: Cut = { from: 0, to: 0 };
      if (delimiters.every((one) => one === '')) return side(text, wanted > 0 ? start : end);
      const cuts = cutsIn(text, delimiters, mode === 1);
      if (endCounts === 1) {
        if (wanted > 0) cuts.push(end);
        else cuts.unshift(start);
      }
      const cut = cuts[wanted > 0 ? wanted - 1 : cuts.length + wanted];
      if (cut === undefined) return otherwise === undefined ? ERRORS['#N/A'] : otherwise;
      return side(text, cut);
    },
  );

function pieces(
  text: string,
  delimiters: readonly string[],
  ignoresEmpty: boolean,
  ignoresCase: boolean,
): string[] {
  const parts: string[] = [];
  let at = 0;
  for (const cut of cutsIn(text, delimiters, ignoresCase)) {
    parts.push(text.slice(at, cut.from));
    at = cut.to;
  }
  parts.push(text.slice(at));
  return ignoresEmpty ? parts.filter((part) => part !== '') : parts;
}

function split(
  text: string,
  columns: ArrayValue | undefined,
  rows: ArrayValue | undefined,
  ignoresEmpty: boolean,
  ignoresCase: boolean,
  pad: Scalar,
): Value {
  const across =
    columns === undefined ? [] : delimitersOf(columns).filter((_, i) => columns.dense()[i] !== null);
  const down = rows === undefined ? [] : delimitersOf(rows).filter((_, i) => rows.dense()[i] !== null);
  if (across.length + down.length === 0 || [...across, ...down].includes('')) return raise('#VALUE!');
  const table = (down.length === 0 ? [text] : pieces(text, down, ignoresEmpty, ignoresCase)).map((line) =>
    across.length === 0 ? [line] : pieces(line, across, ignoresEmpty, ignoresCase),
  );
  const width = Math.max(0, ...table.map((line) => line.length));
  if (width === 0) return raise('#CALC!');
  return ArrayValue.build(table.length, width, (row, column) => table[row]?.[column] ?? pad);
}

export const splitting = [
  beside('TEXTBEFORE', before),
  beside('TEXTAFTER', after),
  plain('TEXTSPLIT', 'ta?a?b?n?v?', (text, columns, rows, ignoresEmpty = false, mode = 0, pad?: Scalar) =>
    split(text, columns, rows, ignoresEmpty, mode === 1, pad === undefined ? ERRORS['#N/A'] : pad),
  ),
];
