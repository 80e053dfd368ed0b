/** A text table from the clipboard, as cells. */
import { CellValueType, type ICellData } from '@univerjs/core';
import { readEntry } from '../cells/entryNumbers';

/** Lines of texts; a field in quotation marks may hold tabs, line ends and doubled marks. */
export function tableOf(text: string): string[][] {
  const table: string[][] = [[]];
  const field = /(?:"((?:[^"]|"")*)"|([^\t\r\n]*))(\t|\r?\n|\r|$)/y;
  for (let at = 0; at < text.length; at = field.lastIndex) {
    field.lastIndex = at;
    const [, quoted, plain = '', end] = field.exec(text) ?? unquoted(text, at, field);
    table.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === '\t') {
      // A blank field ends the table.
      if (field.lastIndex === text.length) table.at(-1)?.push('');
    } else if (end !== '' && field.lastIndex < text.length) table.push([]);
  }
  return table;
}

/** A mark of quotation that is an inch mark, or that nothing closes. */
function unquoted(text: string, at: number, field: RegExp): (string | undefined)[] {
  const [plain = ''] = /^[^\t\r\n]*/.exec(text.slice(at)) ?? [];
  const [end = ''] = /^(\t|\r?\n|\r|$)/.exec(text.slice(at + plain.length)) ?? [];
  field.lastIndex = at + plain.length + end.length;
  return [undefined, undefined, plain, end];
}

export type PastedCell = Pick<ICellData, 'v' | 't' | 'f' | 'si' | 'p'> & {
  readonly s?: { readonly n: { readonly pattern: string } };
};

/** As if it had been typed. */
export function pastedCell(text: string): PastedCell {
  const nothingElse = { f: null, si: null, p: null };
  if (text === '') return { v: null, t: null, ...nothingElse };
  if (/^=./.test(text)) return { ...nothingElse, v: null, t: null, f: text };
  if (/^(true|false)$/i.test(text))
    return { v: /true/i.test(text) ? 1 : 0, t: CellValueType.BOOLEAN, ...nothingElse };
  const read = readEntry(text);
  if (typeof read?.v === 'number')
    return {
      v: read.v,
      t: CellValueType.NUMBER,
      ...nothingElse,
      ...(read.z !== undefined && { s: { n: { pattern: read.z } } }),
    };
  return { v: text, t: CellValueType.STRING, ...nothingElse };
}
