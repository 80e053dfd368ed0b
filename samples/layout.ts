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
