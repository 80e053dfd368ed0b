/// <reference types="office-js" />
import type { StyleDescription } from '../package/description';

const HORIZONTAL = {
  general: 'General',
  left: 'Left',
  center: 'Center',
  right: 'Right',
  fill: 'Fill',
  justify: 'Justify',
  centerContinuous: 'CenterAcrossSelection',
  distributed: 'Distributed',
} as const;
const VERTICAL = {
  top: 'Top',
  center: 'Center',
  bottom: 'Bottom',
  justify: 'Justify',
  distributed: 'Distributed',
} as const;

/** Gives every cell of a range one look. */
export function dress(range: Excel.Range, look: StyleDescription, rows: number, columns: number): void {
  const { format } = range;
  const { font, fill, horizontal, vertical, wrap, indent, shrink, numberFormat } = look;
  if (numberFormat !== undefined && numberFormat !== 'General')
    range.numberFormat = Array.from({ length: rows }, () => Array<string>(columns).fill(numberFormat));
  if (font) dressFont(format.font, font);
  if (fill !== undefined) format.fill.color = fill;
  if (horizontal) format.horizontalAlignment = HORIZONTAL[horizontal];
  if (vertical) format.verticalAlignment = VERTICAL[vertical];
  if (wrap !== undefined) format.wrapText = wrap;
  if (indent !== undefined) format.indentLevel = indent;
  if (shrink !== undefined) format.shrinkToFit = shrink;
  drawLines(format.borders, look.borders ?? {}, rows, columns);
}

function dressFont(into: Excel.RangeFont, font: NonNullable<StyleDescription['font']>): void {
  if (font.name !== undefined) into.name = font.name;
  if (font.size !== undefined) into.size = font.size;
  if (font.bold !== undefined) into.bold = font.bold;
  if (font.italic !== undefined) into.italic = font.italic;
  if (font.underline === 'single') into.underline = 'Single';
  if (font.color !== undefined) into.color = font.color;
}

/** The lines around each cell: around the range, and between its rows and columns. All that we draw are thin. */
function drawLines(
  into: Excel.RangeBorderCollection,
  { top, right, bottom, left }: NonNullable<StyleDescription['borders']>,
  rows: number,
  columns: number,
): void {
  const lines = [
    ['EdgeTop', top],
    ['EdgeRight', right],
    ['EdgeBottom', bottom],
    ['EdgeLeft', left],
    // A range of one row has no line between its rows to be set.
    ['InsideHorizontal', rows > 1 ? (bottom ?? top) : undefined],
    ['InsideVertical', columns > 1 ? (right ?? left) : undefined],
  ] as const;
  for (const [edge, line] of lines) {
    if (!line) continue;
    const border = into.getItem(edge);
    border.style = 'Continuous';
    border.weight = 'Thin';
    if (line.color !== undefined) border.color = line.color;
  }
}
