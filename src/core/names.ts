/** Signs as a keyboard has them: `×` is x, `⁄` is a slash, any dash is a hyphen. */
export const plainSigns = (text: string): string =>
  text
    .replace(/(\d)(?=[¼-¾⅐-⅞])/g, '$1 ')
    .normalize('NFKC')
    .replace(/[×✕∗*]/g, 'x')
    .replace(/⁄/g, '/')
    .replace(/[‐-―−]/g, '-')
    .trim();

const BRITISH: readonly (readonly [british: RegExp, american: string])[] = [
  [/aluminium/g, 'aluminum'],
  [/centre/g, 'center'],
  [/colour/g, 'color'],
  [/fibre/g, 'fiber'],
  [/grey/g, 'gray'],
  [/litre/g, 'liter'],
  [/metre/g, 'meter'],
  [/mould/g, 'mold'],
  [/sulph/g, 'sulf'],
];

/** Lower-case words as they are spelled in America. */
export const american = (text: string): string =>
  BRITISH.reduce((spelled, [british, own]) => spelled.replace(british, own), text);

/** What of a name or a word counts: not case, spaces, hyphens or brackets, how a sign was typed, or on which side of the ocean. */
export const foldName = (text: string): string =>
  american(
    plainSigns(text)
      .toLowerCase()
      .replace(/[\s\-_()]+/g, ''),
  );
