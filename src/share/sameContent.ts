import { tokenize, type Token } from '../cells/formulaTokens';

/** Another program may write the same formula with other spaces, capitals and digits, and name the formula's own sheet. */
export function sameContent(before: string, now: string, sheet: string): boolean {
  if (before === now) return true;
  if (before.startsWith('=') && now.startsWith('=')) {
    const [a, b] = [before, now].map((formula) => pieces(formula.slice(1), sheet));
    return a?.length === b?.length && a?.every((piece, i) => samePiece(piece, b?.[i])) === true;
  }
  const [a, b] = [parsed(before), parsed(now)];
  return typeof a === 'number' && typeof b === 'number' && near(a, b, 1e-12);
}

type Piece = string | number;

const samePiece = (a: Piece, b: Piece | undefined): boolean =>
  // Some programs write thirteen digits of a number inside a formula.
  typeof a === 'number' && typeof b === 'number' ? near(a, b, 1e-11) : a === b;

const near = (a: number, b: number, part: number): boolean =>
  Math.abs(a - b) <= part * Math.max(Math.abs(a), Math.abs(b));

function pieces(formula: string, sheet: string): Piece[] {
  const own = sheet.toUpperCase();
  const tokens = tokenize(formula).filter(({ kind }) => kind !== 'space');
  return tokens.flatMap((token, at): Piece[] => {
    const isOwn = (i: number): boolean =>
      named(tokens[i]) === own && tokens[i + 1]?.text === '!' && tokens[i - 1]?.text !== ':';
    const isEmptyCall = (i: number): boolean =>
      /^(?:TRUE|FALSE)$/i.test(tokens[i]?.text ?? '') &&
      tokens[i + 1]?.text === '(' &&
      tokens[i + 2]?.text === ')';
    if (isOwn(at) || isOwn(at - 1) || isEmptyCall(at - 1) || isEmptyCall(at - 2)) return [];
    return [pieceOf(token)];
  });
}

/** The sheet that a token names, with or without quotes: not all programs quote the same names. */
const named = (token: Token | undefined): string | undefined => {
  const text = token?.text.toUpperCase();
  return token?.kind === 'quoted' ? text?.slice(1, -1).replaceAll("''", "'") : text;
};

const pieceOf = ({ kind, text }: Token): Piece => {
  if (kind === 'number') return Number(text);
  return kind === 'string' ? text : text.toUpperCase().replace(/[$']/g, '');
};

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

export const shownContent = (content: string): string => {
  if (content.startsWith('=')) return content;
  const value = parsed(content);
  return typeof value === 'string' ? value : content === 'null' ? '' : content;
};
