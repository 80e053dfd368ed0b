/** Cells that are cut and pasted are moved as everything is moved: what points at them follows. */
import type { Injector } from '@univerjs/core';
import { ISheetClipboardService } from '@univerjs/preset-sheets-core';
import type { Area } from '../cells/address';

export interface CutCells {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly area: Area;
}

interface Internal {
  _pasteInternal(copyId: string, pasteType: string): Promise<boolean>;
}

export function moveWhatIsCut(injector: Injector, move: (cut: CutCells) => boolean): void {
  const clipboard = injector.get(ISheetClipboardService);
  const internal = clipboard as unknown as Internal;
  const paste = internal._pasteInternal.bind(clipboard);
  internal._pasteInternal = (copyId, pasteType) => {
    const content = clipboard.copyContentCache().get(copyId);
    const rows = content?.range.rows ?? [];
    const columns = content?.range.cols ?? [];
    const isCut = String(content?.copyType) === 'CUT';
    if (!content || !isCut || rows.length * columns.length === 0) return paste(copyId, pasteType);
    const area = {
      top: Math.min(...rows),
      left: Math.min(...columns),
      bottom: Math.max(...rows),
      right: Math.max(...columns),
    };
    clipboard.removeMarkSelection();
    return Promise.resolve(move({ unitId: content.unitId, subUnitId: content.subUnitId, area }));
  };
}
