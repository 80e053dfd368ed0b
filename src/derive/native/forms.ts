import { nativeNumber } from '../../core/expr/native';
import { valueError } from './arguments';
import type { Guard } from './guard';
import { partMark, partsIn, putColumns, putParts } from './marks';
import { NO_CHOICE, type NativeCall, type NativeForm, type NativePart } from './parts';
import type { DataTables } from './tables';

type BarePart = Pick<NativePart, 'name' | 'symbol' | 'text'>;

/** The working and the results of a call as formulas that hold their own questions. */
export interface OneCell {
  readonly parts: readonly BarePart[];
  readonly results: readonly string[];
}

/** The variants one after another, each where its cells ask for it; of one that is refused, why. */
export function oneCell({ parts, variants }: NativeCall): OneCell {
  const own: BarePart[] = [...parts];
  // A part of its own, so that long forms stand one under another and not within one cell.
  const named = (text: string): string => {
    const name = `v${own.length + 1}_result`;
    own.push({ name, symbol: 'result', text });
    return partMark(name);
  };
  const texts = variants.map(({ form }) => (typeof form === 'string' ? form : resultsOf(form)));
  const [only, ...more] = texts;
  if (typeof only === 'object' && more.length === 0) return tidy(own, only);
  const count = texts.find((one) => typeof one === 'object')?.length ?? 0;
  const choose = (at: number): string =>
    variants.reduceRight((rest, { when }, i) => {
      const form = texts[i];
      const result = typeof form === 'object' ? named(form[at] ?? '') : valueError(form ?? '');
      return `IF(${allOf(when.map((one) => one.when))},${result},${rest})`;
    }, valueError(NO_CHOICE));
  return tidy(
    own,
    Array.from({ length: count }, (_, at) => choose(at)),
  );
}

const resultsOf = ({ guards, gates, results }: NativeForm): string[] =>
  results.map(({ text: result }) =>
    guarded(
      guards,
      gates.reduceRight(
        (text, gate) =>
          `IF(${gate.when},${gate.refuses ? valueError(gate.says) : textOf(gate.says)},${text})`,
        result,
      ),
    ),
  );

const textOf = (says: string): string => `"${says.replaceAll('"', '""')}"`;

/** Asks the guards in groups of one error kind, in their order. */
function guarded(guards: readonly Guard[], result: string): string {
  const groups: { code: Guard['code']; guards: Guard[] }[] = [];
  for (const guard of guards) {
    const last = groups.at(-1);
    if (last?.code === guard.code) last.guards.push(guard);
    else groups.push({ code: guard.code, guards: [guard] });
  }
  return groups.reduceRight((text, { code, guards: own }) => {
    const says = [...new Set(own.map((guard) => guard.says))];
    const error =
      code === '#N/A'
        ? 'NA()'
        : valueError(says.length > 3 ? 'an argument is out of its limits' : says.join('; '));
    return `IF(${anyOf(own.map(({ when }) => when))},${error},${text})`;
  }, result);
}

/** Old programs take at most 30 arguments. */
const MOST = 29;

const joined = (name: 'AND' | 'OR', conditions: readonly string[]): string => {
  const [one, ...more] = [...new Set(conditions)];
  if (more.length === 0) return one ?? 'FALSE';
  if (more.length < MOST) return `${name}(${[one, ...more].join(',')})`;
  const all = [one ?? '', ...more];
  return joined(
    name,
    Array.from({ length: Math.ceil(all.length / MOST) }, (_, i) =>
      joined(name, all.slice(MOST * i, MOST * (i + 1))),
    ),
  );
};

export const anyOf = (conditions: readonly string[]): string => joined('OR', conditions);
export const allOf = (conditions: readonly string[]): string => joined('AND', conditions);

/** A number or a bare name is put where it is used, and what nothing uses is left out. */
function tidy(parts: readonly BarePart[], results: readonly string[]): OneCell {
  const bare = new Map<string, string>();
  const put = (text: string): string => putParts(text, (name) => bare.get(name) ?? partMark(name));
  const kept: BarePart[] = [];
  for (const part of parts) {
    const text = put(part.text);
    if (/^(?:\(-)?[\w.]+\)?$/.test(text) || text === 'PI()') bare.set(part.name, text);
    else kept.push({ ...part, text });
  }
  const own = results.map(put);
  const used = new Set<string>();
  const mark = (text: string): void => {
    for (const name of partsIn(text)) used.add(name);
  };
  own.forEach(mark);
  for (const { name, text } of [...kept].reverse()) if (used.has(name)) mark(text);
  return { parts: kept.filter(({ name }) => used.has(name)), results: own };
}

/** The whole call in one formula that even old programs read: every part stands wherever it is used. */
export function inlineText(parts: readonly BarePart[], result: string): string {
  const texts = new Map<string, string>();
  const put = (text: string): string => putParts(text, (name) => texts.get(name) ?? '');
  for (const { name, text } of parts) texts.set(name, put(text));
  return put(result);
}

/** The length of the inline text, found without building it: it may be beyond any memory. */
export function inlineLength(parts: readonly BarePart[], result: string): number {
  const lengths = new Map<string, number>();
  const measure = (text: string): number => {
    let inserted = 0;
    const rest = putParts(text, (name) => {
      inserted += lengths.get(name) ?? 0;
      return '';
    });
    return rest.length + inserted;
  };
  for (const { name, text } of parts) lengths.set(name, measure(text));
  return measure(result);
}

/** The call in one LET, which names every part once. */
export function letText(parts: readonly BarePart[], result: string): string {
  if (parts.length === 0) return result;
  const named = (text: string): string => putParts(text, (name) => name);
  return `LET(${parts.map(({ name, text }) => `${name},${named(text)}`).join(',')},${named(result)})`;
}

/** Tables written out as arrays in place, for a formula that stands alone. */
export const arrayColumns = (text: string, tables: DataTables): string =>
  putColumns(text, (id, at) => {
    const rows = tables.tables.get(id)?.rows ?? [];
    const cell = (value: number | string | undefined): string =>
      typeof value === 'number'
        ? nativeNumber(value).replace(/[()]/g, '')
        : `"${String(value).replaceAll('"', '""')}"`;
    return `{${rows.map((row) => cell(row[at])).join(';')}}`;
  });
