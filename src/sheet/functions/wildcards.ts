/** `?` stands for one character, `*` for any number of them, `~` before any for itself; case does not matter. */

export interface Wildcard {
  /** Is the whole text of this form? */
  matches(text: string): boolean;
  /** Where the first part of this form begins, from a place on; −1 where there is none. */
  find(text: string, from?: number): number;
}

export const hasWildcards = (text: string): boolean => /[?*~]/.test(text);

/** Made by searching for the pieces between the stars one after the other, so the time never explodes. */
export function wildcard(pattern: string): Wildcard {
  const pieces = piecesOf(pattern.toLowerCase());
  const first = pieces[0] ?? [];
  const last = pieces[pieces.length - 1] ?? [];
  const middle = pieces.slice(1, -1);

  const search = (text: string, from: number, among: readonly Piece[]): number => {
    let at = from;
    for (const piece of among) {
      const found = indexOf(text, piece, at);
      if (found < 0) return -1;
      at = found + piece.length;
    }
    return at;
  };

  return {
    matches(given) {
      const text = given.toLowerCase();
      if (pieces.length === 1) return text.length === first.length && isAt(text, first, 0);
      const end = text.length - last.length;
      if (!isAt(text, first, 0) || end < first.length || !isAt(text, last, end)) return false;
      const reached = search(text, first.length, middle);
      return reached >= 0 && reached <= end;
    },
    find(given, from = 0) {
      const text = given.toLowerCase();
      const begin = indexOf(text, first, from);
      return begin >= 0 && search(text, begin + first.length, pieces.slice(1)) >= 0 ? begin : -1;
    },
  };
}

/** One character each; `null` is any. */
type Piece = readonly (string | null)[];

function piecesOf(pattern: string): Piece[] {
  const pieces: (string | null)[][] = [[]];
  for (let i = 0; i < pattern.length; i++) {
    const current = pieces[pieces.length - 1] as (string | null)[];
    const next = pattern[i + 1];
    const char = pattern[i] as string;
    if (char === '~' && next !== undefined) {
      current.push(next);
      i++;
    } else if (char === '*') pieces.push([]);
    else current.push(char === '?' ? null : char);
  }
  return pieces;
}

function isAt(text: string, piece: Piece, at: number): boolean {
  if (at < 0 || at + piece.length > text.length) return false;
  for (let i = 0; i < piece.length; i++) if (piece[i] !== null && piece[i] !== text[at + i]) return false;
  return true;
}

function indexOf(text: string, piece: Piece, from: number): number {
  for (let at = from; at + piece.length <= text.length; at++) if (isAt(text, piece, at)) return at;
  return -1;
}
