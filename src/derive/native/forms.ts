import { nativeNumber } from '../../core/expr/native';
import { putColumns, putParts } from './marks';
import type { DataTables } from './tables';

/** A named part of the working: an argument in SI, or a step. Its text may hold the marks of earlier parts. */
export interface NativePart {
  readonly name: string;
  readonly symbol: string;
  readonly text: string;
}

/** The whole call in one formula that even old programs read: every part stands wherever it is used. */
export function inlineText(parts: readonly NativePart[], result: string): string {
  const texts = new Map<string, string>();
  const put = (text: string): string => putParts(text, (name) => texts.get(name) ?? '');
  for (const { name, text } of parts) texts.set(name, put(text));
  return put(result);
}

/** The length of the inline text, found without building it: it may be beyond any memory. */
export function inlineLength(parts: readonly NativePart[], result: string): number {
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
export function letText(parts: readonly NativePart[], result: string): string {
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
