/** The headings of a sheet's filter have arrows; one whose column is filtered is filled. */
import { InterceptorEffectEnum } from '@univerjs/core';
import type { ICellDataForSheetInterceptor, ICellRenderContext, Injector } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { areaContains } from '../cells/address';
import type { Sheet, SheetFilter } from '../package/model';

const SIZE = 15;
const EDGE = 2;

type Render = Extract<ICellDataForSheetInterceptor['customRender'], readonly unknown[]>[number];
type Place = Pick<ICellRenderContext, 'primaryWithCoord'>;

/** In the lower right corner of the cell. */
function boxOf({ primaryWithCoord }: Place): { readonly x: number; readonly y: number } {
  const { isMerged, isMergedMainCell, mergeInfo, ...own } = primaryWithCoord;
  const { endX, endY } = isMerged || isMergedMainCell ? mergeInfo : own;
  return { x: endX - SIZE - EDGE, y: endY - SIZE - EDGE };
}

function arrow(isFiltered: boolean, open: () => void): Render {
  return {
    zIndex: 20,
    drawWith(context, place) {
      const { x, y } = boxOf(place);
      context.save();
      context.fillStyle = isFiltered ? '#0F548C' : '#F3F3F3';
      context.strokeStyle = '#6B6B6B';
      context.lineWidth = 1;
      context.fillRect(x, y, SIZE, SIZE);
      context.strokeRect(x + 0.5, y + 0.5, SIZE - 1, SIZE - 1);
      context.fillStyle = isFiltered ? '#FFFFFF' : '#333333';
      context.beginPath();
      context.moveTo(x + 4, y + 6);
      context.lineTo(x + SIZE - 4, y + 6);
      context.lineTo(x + SIZE / 2, y + 10.5);
      context.fill();
      context.restore();
    },
    isHit({ x, y }, place) {
      const box = boxOf(place);
      return x >= box.x && x <= box.x + SIZE && y >= box.y && y <= box.y + SIZE;
    },
    onPointerDown: open,
  };
}

export interface OwnFilter extends SheetFilter {
  /** The table that it belongs to. */
  readonly table?: string;
}

/** That of the sheet, and those of its tables. */
export const filtersOf = ({ filter, tables }: Pick<Sheet, 'filter' | 'tables'>): OwnFilter[] => [
  ...(filter ? [filter] : []),
  ...tables.flatMap((table) =>
    table.filter && table.hasHeader ? [{ ...table.filter, table: table.name }] : [],
  ),
];

/** The filter that a cell is a heading of. */
export const filterAt = (sheet: Sheet | undefined, row: number, column: number): OwnFilter | undefined =>
  sheet && filtersOf(sheet).find(({ area }) => row === area.top && areaContains(area, row, column));

export function drawFilterArrows(
  injector: Injector,
  sheetOf: (unitId: string, sheetId: string) => Sheet | undefined,
  open: () => void,
): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority: 5,
    handler: (cell, { unitId, subUnitId, row, col, rawData }, next) => {
      const filter = filterAt(sheetOf(unitId, subUnitId), row, col);
      if (!filter) return next(cell);
      const isFiltered = filter.columns.some(({ column }) => column === col - filter.area.left);
      const own = !cell || cell === rawData ? { ...rawData } : { ...cell };
      return next({ ...own, customRender: [...(own.customRender ?? []), arrow(isFiltered, open)] });
    },
  });
}
