import { tokenize, type Token } from '../cells/formulaTokens';
import { quotedSheet } from '../package/structure/formula';

/** Another program may write the same formula with other spaces, capitals and digits, and name the formula's own sheet. */
export function sameContent(before: string, now: string, sheet: string): boolean {
  if (before === now) return true;
  if (before.startsWith('=') && now.startsWith('=')) return normal(before, sheet) === normal(now, sheet);
  const [a, b] = [parsed(before), parsed(now)];
  return (
    typeof a === 'number' &&
    typeof b === 'number' &&
    Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b))
  );
}

function normal(formula: string, sheet: string): string {
  const own = quotedSheet(sheet).toUpperCase().replace(/'/g, '');
  return tokenize(formula)
    .filter(({ kind }) => kind !== 'space')
    .map((token) => textOf(token))
    .join('')
    .replaceAll(new RegExp(`(?<![\\w.])${escaped(own)}!`, 'g'), '');
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const textOf = ({ kind, text }: Token): string => {
  if (kind === 'number') return Number(text).toPrecision(14);
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
