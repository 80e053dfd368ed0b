/** Cells of a sheet as formulas name them: `'Two words'!$A$1:$B$2`. */
import { areaAddress, parseArea, quotedSheet, type Area } from './address';

export interface SheetReference {
  readonly sheet: string;
  readonly area: Area;
}

/** Undefined where the text is no area of one sheet. */
export function readReference(text: string): SheetReference | undefined {
  const [, quoted, plain, address = ''] = /^(?:'((?:[^']|'')+)'|([^'!]+))!([^!]+)$/.exec(text.trim()) ?? [];
  const area = parseArea(address);
  const sheet = quoted?.replaceAll("''", "'") ?? plain;
  return area && sheet !== undefined ? { sheet, area } : undefined;
}

/** With dollar signs, so that it stays where it is when it is copied. */
export function referenceText({ sheet, area }: SheetReference): string {
  const fixed = areaAddress(area).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  return `${quotedSheet(sheet)}!${fixed}`;
}
