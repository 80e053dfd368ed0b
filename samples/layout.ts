import type { SheetDescription } from '../src/package/description';
import { tokenize } from '../src/cells/formulaTokens';

/** A formula with the keys in it replaced by cells. */
export function placed(formula: string, place: (key: string) => string | undefined): string {
  return tokenize(formula)
    .map(({ kind, text }, index, all) => {
      if (kind !== 'name' || all[index + 1]?.text === '(' || /^(TRUE|FALSE)$/.test(text)) return text;
      const cell = place(text);
      if (cell === undefined) throw new Error(`No row is called ${text}: ${formula}`);
      return cell;
    })
    .join('');
}

export const print = (area: string, titleRows: string): NonNullable<SheetDescription['print']> => ({
  paper: 'Letter',
  landscape: true,
  area,
  titleRows,
  footer: { left: '&F', center: '&A', right: 'Page &P of &N' },
  margins: { side: 0.5, top: 0.5, bottom: 0.6 },
});

/** Lines that a text takes in a column of so many characters, broken at spaces. */
export function linesOf(text: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    const needed = used === 0 ? word.length : used + 1 + word.length;
    if (needed <= width) used = needed;
    else {
      lines += used === 0 ? 0 : 1;
      lines += Math.floor((word.length - 1) / width);
      used = word.length % width;
    }
  }
  return lines;
}
