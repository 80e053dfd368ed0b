import { parseCell } from '../cells/address';
import { isCall, tokenize } from '../cells/formulaTokens';

/** A formula with its references as steps from its own cell: the same text for a formula that was filled along. */
export function relativeText(formula: string, { row, column }: { row: number; column: number }): string {
  const tokens = tokenize(formula);
  return tokens
    .map((token, at) => {
      const cell = token.kind === 'name' && !isCall(tokens, at) ? parseCell(token.text) : undefined;
      if (!cell) return token.kind === 'space' ? '' : token.text;
      const isFixed = /^(\$?)[A-Z]+(\$?)\d+$/i.exec(token.text);
      const step = (fixed: string | undefined, own: number, from: number): string =>
        fixed === '$' ? `${own}` : `[${own - from}]`;
      return `R${step(isFixed?.[2], cell.row, row)}C${step(isFixed?.[1], cell.column, column)}`;
    })
    .join('');
}
