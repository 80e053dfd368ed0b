/** Pieces of SVG as text. */
import { escapeHtml } from '../html';

type Attributes = Readonly<Record<string, string | number | undefined>>;

export function element(name: string, attributes: Attributes, inner = ''): string {
  const text = Object.entries(attributes)
    .map(([key, value]) =>
      value === undefined ? '' : ` ${key}="${typeof value === 'number' ? short(value) : escapeHtml(value)}"`,
    )
    .join('');
  return inner === '' ? `<${name}${text}/>` : `<${name}${text}>${inner}</${name}>`;
}

/** Hundredths of a pixel are enough for any eye. */
export const short = (value: number): string => String(Math.round(value * 100) / 100);

export const words = (text: string, attributes: Attributes): string =>
  element('text', attributes, escapeHtml(text) || ' ');
