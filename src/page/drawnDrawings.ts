/** What draws charts and pictures, loaded when a workbook has some. */
import type { Matrix } from '../cells/value';
import type { Drawing, Size } from '../package/drawings/model';
import type { Workbook } from '../package/model';
import { lookWith } from '../render/drawings/look';
import { drawingSvg } from '../render/drawings/sheetDrawings';

export { drawingsOf } from '../package/drawings/readDrawings';
export { boxOf } from '../render/drawings/sheetDrawings';

/** The drawing as the address of an image. */
export const sourceOf = (
  workbook: Workbook,
  drawing: Drawing,
  size: Size,
  evaluate: (formula: string) => Matrix,
): string =>
  `data:image/svg+xml,${encodeURIComponent(drawingSvg(workbook, drawing, size, { look: lookWith(evaluate) }))}`;

export function inWords(drawing: Drawing): string {
  const called = drawing.description ?? drawing.name;
  switch (drawing.shows) {
    case 'chart':
      return `Chart: ${drawing.chart.title?.text ?? called}`;
    case 'picture':
      return `Picture: ${called}`;
    case 'frame':
      return drawing.words;
  }
}
