import { changeLayout, type SheetLayout } from '../package/layout';
import type { Workbook } from '../package/model';
import { readWorkbook } from '../package';
import { knownFunctions } from '../package/spelling';
import { saveCalculated } from '../workbook/basis';
import { changesOf } from './changes';
import type { Grid } from './grid';

/**
 * The workbook that was opened as it stands in the grid now, as a file. A draft may be made in the middle of a calculation:
 * what that has not reached keeps its stored value, since the draft is calculated anew when it is opened.
 */
export function fileOf(
  opened: Workbook,
  grid: Grid,
  functionIds: readonly string[],
  { isDraft = false } = {},
): Uint8Array {
  const changed = saveCalculated(
    opened,
    changesOf(opened, (index) => grid.openedSheet(index), { keepsUnreached: isDraft }),
  );
  const layouts = new Map(
    opened.sheets.flatMap(({ name }, index): [string, SheetLayout][] => {
      const layout = grid.changedLayout(index);
      return layout ? [[name, layout]] : [];
    }),
  );
  if (layouts.size === 0) return changed;
  const laidOut = changeLayout(readWorkbook(changed, functionIds), layouts, knownFunctions(functionIds));
  return saveCalculated(laidOut, []);
}
