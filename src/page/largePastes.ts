/** A paste that would hold the page up for minutes is left, in words, before anything is changed. */
import type { Injector } from '@univerjs/core';
import { ISheetClipboardService } from '@univerjs/preset-sheets-core';

export const MOST_PASTED = 50_000;

/** Cells of a text table. */
export function cellsIn(text: string): number {
  const lines = text.replace(/\r?\n$/, '').split('\n');
  return lines.reduce((sum, line) => sum + line.split('\t').length, 0);
}

const words = (count: number): string =>
  `The clipboard holds ${count.toLocaleString('en-US')} cells; at most ${MOST_PASTED.toLocaleString('en-US')} are pasted at once. Nothing was changed: paste them in parts, or open them as a file.`;

export function leaveLargePastes(injector: Injector, tell: (text: string) => void): void {
  const clipboard = injector.get(ISheetClipboardService);
  const isTooLarge = (text: string | undefined): boolean => {
    const count = cellsIn(text ?? '');
    if (count > MOST_PASTED) tell(words(count));
    return count > MOST_PASTED;
  };
  const paste = clipboard.paste.bind(clipboard);
  clipboard.paste = async (item, type) => {
    const text = item.types.includes('text/plain') ? await (await item.getType('text/plain')).text() : '';
    return isTooLarge(text) ? false : paste(item, type);
  };
  const legacy = clipboard.legacyPaste.bind(clipboard);
  clipboard.legacyPaste = async (html, text, files) => (isTooLarge(text) ? false : legacy(html, text, files));
}
