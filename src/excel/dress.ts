/// <reference types="office-js" />
import type { Look } from '../forms/looks';

const ALIGNMENTS = { left: 'Left', center: 'Center', right: 'Right' } as const;

/** Gives every cell of a range one look. */
export function dress(range: Excel.Range, look: Look, rows: number, columns: number): void {
  const { format } = range;
  const { font, fill, horizontal, wrap, indent, shrink, numberFormat } = look;
  if (numberFormat !== undefined)
    range.numberFormat = Array.from({ length: rows }, () => Array<string>(columns).fill(numberFormat));
  if (font) dressFont(format.font, font);
  if (fill !== undefined) format.fill.color = fill;
  if (horizontal) format.horizontalAlignment = ALIGNMENTS[horizontal];
  if (look.vertical) format.verticalAlignment = 'Center';
  if (wrap !== undefined) format.wrapText = wrap;
  if (indent !== undefined) format.indentLevel = indent;
  if (shrink !== undefined) format.shrinkToFit = shrink;
  drawLines(format.borders, look.borders ?? {}, rows, columns);
}

function dressFont(into: Excel.RangeFont, font: NonNullable<Look['font']>): void {
  if (font.name !== undefined) into.name = font.name;
  if (font.size !== undefined) into.size = font.size;
  if (font.bold !== undefined) into.bold = font.bold;
  if (font.italic !== undefined) into.italic = font.italic;
  if (font.underline) into.underline = 'Single';
  if (font.color !== undefined) into.color = font.color;
}

/** The lines around each cell: around the range, and between its rows and columns. */
function drawLines(
  into: Excel.RangeBorderCollection,
  { top, right, bottom, left }: NonNullable<Look['borders']>,
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
    border.color = line.color;
  }
}
