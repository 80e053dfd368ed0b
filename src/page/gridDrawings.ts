/** Charts and pictures of the file in the grid's own layer for drawings: it scrolls, zooms and freezes with the cells. */
import type { Injector } from '@univerjs/core';
import {
  DRAWING_OBJECT_LAYER_INDEX,
  Image,
  IRenderManagerService,
  SheetSkeletonManagerService,
  type SpreadsheetSkeleton,
} from '@univerjs/preset-sheets-core';
import type { Subscription } from 'rxjs';
import type { Drawing } from '../package/drawings/model';
import type { Workbook } from '../package/model';
import type { Box, Lines } from '../render/drawings/sheetDrawings';
import type { GridCalculation } from './calculation';
import type * as DrawnDrawings from './drawnDrawings';

type Library = typeof DrawnDrawings;

interface Standing {
  readonly image: Image;
  readonly drawing: Drawing;
  /** What it shows now, to be drawn anew only when that changes. */
  source: string;
}

export class GridDrawings {
  /** The drawings of the sheet in front, in words, for those who cannot see them. */
  readonly list = document.createElement('ul');
  private workbook: Workbook | undefined;
  private unitId = '';
  private sheet = -1;
  private standing: Standing[] = [];
  private library: Library | undefined;
  private watch: Subscription | undefined;
  private isDue = false;

  constructor(
    private readonly injector: Injector,
    private readonly calculation: GridCalculation,
    /** The place in the file of a sheet of the grid. */
    private readonly sheetOf: (sheetId: string) => number,
  ) {
    this.list.className = 'drawings';
    this.list.setAttribute('aria-label', 'Charts and pictures of this sheet');
  }

  /** Shows the drawings of a workbook that the grid has just taken. What draws is loaded for a workbook that has any. */
  async load(workbook: Workbook, unitId: string): Promise<void> {
    this.watch?.unsubscribe();
    this.workbook = workbook;
    this.unitId = unitId;
    this.clear();
    if (![...workbook.parts.keys()].some((part) => /drawings\/[^/]+\.xml$/.test(part))) return;
    this.library ??= await import('./drawnDrawings');
    if (this.workbook !== workbook) return;
    this.watch = this.skeletons()?.currentSkeleton$.subscribe((param) => {
      if (param) this.place(param.sheetId, param.skeleton);
    });
  }

  /** Values have changed: charts follow with the next picture of the screen. */
  refresh(): void {
    if (this.isDue || this.standing.length === 0) return;
    this.isDue = true;
    requestAnimationFrame(() => {
      this.isDue = false;
      for (const one of this.standing) this.draw(one, one.image);
    });
  }

  private skeletons(): SheetSkeletonManagerService | undefined {
    return this.injector
      .get(IRenderManagerService)
      .getRenderById(this.unitId)
      ?.with(SheetSkeletonManagerService);
  }

  private place(sheetId: string, skeleton: SpreadsheetSkeleton): void {
    const { workbook, library } = this;
    const scene = this.injector.get(IRenderManagerService).getRenderById(this.unitId)?.scene;
    const index = this.sheetOf(sheetId);
    const sheet = workbook?.sheets[index];
    if (!workbook || !library || !scene) return;
    if (index !== this.sheet) this.clear();
    this.sheet = index;
    if (!sheet) return;
    const lines = linesOf(skeleton);
    library.drawingsOf(workbook, sheet.name).forEach((drawing, at) => {
      const box = library.boxOf(drawing, lines);
      const place = {
        ...box,
        left: box.left + skeleton.rowHeaderWidth,
        top: box.top + skeleton.columnHeaderHeight,
      };
      const old = this.standing[at];
      if (old) {
        old.image.transformByState(place);
        this.draw(old, box);
        return;
      }
      const image = new Image(`drawing-${index}-${at}`, { ...place });
      // Cells under it are chosen as if it were not there.
      image.evented = false;
      scene.addObject(image, DRAWING_OBJECT_LAYER_INDEX);
      const added = { image, drawing, source: '' };
      this.standing.push(added);
      this.draw(added, box);
      const item = document.createElement('li');
      item.textContent = library.inWords(drawing);
      this.list.append(item);
    });
  }

  private draw(one: Standing, { width, height }: Pick<Box, 'width' | 'height'>): void {
    const { workbook, library } = this;
    one.image[width < 1 || height < 1 ? 'hide' : 'show']();
    if (!workbook || !library || width < 1 || height < 1) return;
    const evaluate = (formula: string) =>
      this.calculation.evaluate(formula, { sheet: Math.max(0, this.sheet), row: 0, column: 0 });
    const source = library.sourceOf(workbook, one.drawing, { width, height }, evaluate);
    if (source === one.source) return;
    one.source = source;
    one.image.changeSource(source);
  }

  private clear(): void {
    for (const { image } of this.standing) image.dispose();
    this.standing = [];
    this.sheet = -1;
    this.list.replaceChildren();
  }
}

/** Where columns and rows begin, without the headings. */
function linesOf({ columnWidthAccumulation, rowHeightAccumulation }: SpreadsheetSkeleton): Lines {
  const begin = (ends: readonly number[], at: number): number =>
    at <= 0 ? 0 : (ends[Math.min(at, ends.length) - 1] ?? 0);
  return {
    left: (column) => begin(columnWidthAccumulation, column),
    top: (row) => begin(rowHeightAccumulation, row),
  };
}
