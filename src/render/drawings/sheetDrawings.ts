/** Where the drawings of a sheet stand in pixels, and each as SVG. */
import { MAX_COLUMNS, MAX_ROWS, type Area } from '../../cells/address';
import type { Corner, Drawing, Size } from '../../package/drawings/model';
import { drawingsOf } from '../../package/drawings/readDrawings';
import type { Sheet, Workbook } from '../../package/model';
import { columnPixels, rowPixels } from '../../package/pixels';
import { base64 } from '../base64';
import { chartSvg, frameSvg, type ChartOptions } from './chartSvg';
import { element } from './svg';

/** Lines between columns and rows in pixels from the sheet's corner, where nothing is hidden or widened since. */
export interface Lines {
  readonly left: (column: number) => number;
  readonly top: (row: number) => number;
}

export interface Box extends Size {
  readonly left: number;
  readonly top: number;
}

export function linesOf(sheet: Sheet): Lines {
  const columnSize = (column: number): number => {
    const run = sheet.columns.find(({ first, last }) => column >= first && column <= last);
    return run?.hidden ? 0 : columnPixels(run?.width ?? sheet.defaultColumnWidth);
  };
  const plain = rowPixels(sheet.defaultRowHeight);
  return {
    left: (column) => {
      let left = 0;
      for (let one = 0; one < column; one++) left += columnSize(one);
      return left;
    },
    top: (row) =>
      sheet.rows.reduce(
        (top, one) =>
          one.row < row
            ? top + (one.hidden ? 0 : rowPixels(one.height ?? sheet.defaultRowHeight)) - plain
            : top,
        row * plain,
      ),
  };
}

export function boxOf({ anchor }: Drawing, { left, top }: Lines): Box {
  if ('at' in anchor) return { left: anchor.at.x, top: anchor.at.y, ...anchor.size };
  // A corner never leaves its cell, however narrow that has become.
  const x = ({ column, right }: Corner): number =>
    left(column) + Math.min(right, left(column + 1) - left(column));
  const y = ({ row, down }: Corner): number => top(row) + Math.min(down, top(row + 1) - top(row));
  const place = { left: x(anchor.from), top: y(anchor.from) };
  if ('size' in anchor) return { ...place, ...anchor.size };
  return {
    ...place,
    width: Math.max(0, x(anchor.to) - place.left),
    height: Math.max(0, y(anchor.to) - place.top),
  };
}

/** The cells that a box covers in part. */
export function areaUnder(box: Box, sheet: Sheet): Area {
  const { left, top } = linesOf(sheet);
  const last = (line: (at: number) => number, pixel: number): number => {
    let at = 0;
    let step = 1;
    // The line before a pixel, by steps that double and then halve.
    while (line(at + step) < pixel && at + step < MAX_ROWS) step *= 2;
    for (; step >= 1; step = Math.floor(step / 2)) if (line(at + step) < pixel) at += step;
    return at;
  };
  return {
    top: last(top, box.top + 1),
    left: last(left, box.left + 1),
    bottom: last(top, box.top + box.height),
    right: Math.min(MAX_COLUMNS - 1, last(left, box.left + box.width)),
  };
}

export interface DrawnDrawing {
  readonly drawing: Drawing;
  readonly box: Box;
}

/** The drawings of a sheet that take room, the last on top. */
export const placedDrawings = (workbook: Workbook, sheet: Sheet, lines = linesOf(sheet)): DrawnDrawing[] =>
  drawingsOf(workbook, sheet.name)
    .map((drawing) => ({ drawing, box: boxOf(drawing, lines) }))
    .filter(({ box }) => box.width >= 1 && box.height >= 1);

export function drawingSvg(workbook: Workbook, drawing: Drawing, size: Size, options: ChartOptions): string {
  switch (drawing.shows) {
    case 'chart':
      return chartSvg(drawing.chart, size, { date1904: workbook.date1904, ...options });
    case 'picture':
      return pictureSvg(workbook, drawing, size);
    case 'frame':
      return frameSvg(drawing.words, size, drawing.fill);
  }
}

function pictureSvg(
  workbook: Workbook,
  { type, part, crop, description, name }: Drawing & { readonly shows: 'picture' },
  { width, height }: Size,
): string {
  const { left = 0, top = 0, right = 0, bottom = 0 } = crop ?? {};
  const [wide, high] = [width / (1 - left - right), height / (1 - top - bottom)];
  const image = element('image', {
    href: `data:${type};base64,${base64(workbook.parts.get(part) ?? new Uint8Array())}`,
    x: -left * wide,
    y: -top * high,
    width: wide,
    height: high,
    preserveAspectRatio: 'none',
  });
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': description ?? (name || 'Picture'),
    },
    image,
  );
}
