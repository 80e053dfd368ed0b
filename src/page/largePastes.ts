/**
 * What comes from the clipboard. A large table goes into the cells by us, as it would be typed, without its looks: the
 * grid's own way takes minutes for it. What cannot be read or would not fit is left, in words, before anything is changed.
 */
import type { Injector } from '@univerjs/core';
import { ISheetClipboardService } from '@univerjs/preset-sheets-core';
import { MAX_COLUMNS, MAX_ROWS } from '../cells/address';
import { tableOf } from './pasteTable';

/** The grid's own way is quick up to here. */
const LARGE = 5_000;
export const MOST_PASTED = 500_000;
/** Copied in the grid itself, with formulas and looks. */
const MOST_COPIED = 50_000;

const OWN_COPY = /data-copy-id/;

export interface PasteDesk {
  /** The first selected cell. */
  corner(): { readonly row: number; readonly column: number };
  write(table: readonly (readonly string[])[]): void;
  tell(text: string): void;
}

/** Cells of a text table. */
export function cellsIn(text: string): number {
  const lines = text.replace(/\r?\n$/, '').split('\n');
  return lines.reduce((sum, line) => sum + line.split('\t').length, 0);
}

const wordsOf = (html: string): string => html.replace(/<(style|title)\b[\s\S]*?<\/\1>|<[^>]*>/gi, '').trim();

const counted = (count: number): string => count.toLocaleString('en-US');
const UNREADABLE = 'The clipboard could not be read: nothing was pasted. Copy it again.';

/** True where the grid need not do anything any more. */
export function takeLarge(html: string, text: string, desk: PasteDesk): boolean {
  const count = cellsIn(text);
  const isOwn = OWN_COPY.test(html);
  // A table that lost its cells on the way would empty those of the sheet.
  const isBroken = html !== '' && text.trim() !== '' && wordsOf(html) === '';
  if (count <= (isOwn ? MOST_COPIED : LARGE) && !isBroken) return false;
  const most = isOwn ? MOST_COPIED : MOST_PASTED;
  if (count > most) {
    desk.tell(
      `The clipboard holds ${counted(count)} cells; at most ${counted(most)} are pasted at once. Nothing was changed: paste them in parts, or open them as a file.`,
    );
    return true;
  }
  const table = tableOf(text);
  const { row, column } = desk.corner();
  const width = table.reduce((widest, line) => Math.max(widest, line.length), 0);
  if (row + table.length > MAX_ROWS || column + width > MAX_COLUMNS) {
    desk.tell(
      `${counted(table.length)} rows and ${counted(width)} columns do not fit below and beside the selected cell. Nothing was changed.`,
    );
    return true;
  }
  desk.write(table);
  return true;
}

export function takePastes(injector: Injector, desk: PasteDesk): void {
  const clipboard = injector.get(ISheetClipboardService);
  const readable = async (paste: () => Promise<boolean>): Promise<boolean> => {
    try {
      return await paste();
    } catch {
      desk.tell(UNREADABLE);
      return false;
    }
  };
  const paste = clipboard.paste.bind(clipboard);
  clipboard.paste = (item, type) =>
    readable(async () => {
      const read = async (mime: string) =>
        item.types.includes(mime) ? (await item.getType(mime)).text() : '';
      return takeLarge(await read('text/html'), await read('text/plain'), desk) || paste(item, type);
    });
  const legacy = clipboard.legacyPaste.bind(clipboard);
  clipboard.legacyPaste = (html, text, files) =>
    readable(async () => takeLarge(html ?? '', text ?? '', desk) || legacy(html, text, files));
}
