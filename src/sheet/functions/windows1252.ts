/**
 * The characters of CHAR and CODE, Windows code page 1252. Node's own decoder gives control characters for 128 to 159,
 * so the table stands here; the five codes that the page leaves open stay themselves.
 */
const FROM_128 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

export function charOf(code: number): string | undefined {
  if (!(code >= 1 && code <= 255)) return undefined;
  return code >= 128 && code < 160 ? FROM_128[code - 128] : String.fromCharCode(code);
}

/** The code of the first character; that of a question mark for what the page has not. */
export function codeOf(text: string): number {
  const place = FROM_128.indexOf(text.charAt(0));
  if (place >= 0) return 128 + place;
  const code = text.charCodeAt(0);
  return code < 128 || (code >= 160 && code < 256) ? code : 63;
}
