/** What a person has seen already, kept in the browser part of Excel; where that keeps nothing, until it is closed. */
const seen = new Set<string>();

const keyOf = (what: string): string => `moldsheet.seen.${what}`;

export function isSeen(what: string): boolean {
  if (seen.has(what)) return true;
  try {
    return localStorage.getItem(keyOf(what)) !== null;
  } catch {
    return false;
  }
}

export function rememberSeen(what: string): void {
  seen.add(what);
  try {
    localStorage.setItem(keyOf(what), 'yes');
  } catch {
    // Private windows keep nothing: it is shown again another day.
  }
}
