import { addSheets, renameSheets } from '../package/author';
import type { Workbook } from '../package/model';
import { readWorkbook, saveWorkbook } from '../package';
import { changesOf } from './changes';
import type { Grid } from './grid';
import { describeSheets } from './newSheets';

/** The workbook that was opened as it stands in the grid now, as a file. */
export function fileOf(opened: Workbook, grid: Grid, functionIds: readonly string[]): Uint8Array {
  const changed = saveWorkbook(
    opened,
    changesOf(opened, (index) => grid.openedSheet(index)),
  );
  const renamed = new Map(
    opened.sheets.flatMap(({ name }, index) => {
      const present = grid.openedName(index);
      return present === undefined || present === name ? [] : [[name, present]];
    }),
  );
  const known = new Set(opened.names.map(({ name }) => name.toLowerCase()));
  const names = grid.definedNames().filter(([name]) => !known.has(name.toLowerCase()));
  const added = grid.addedSheets();
  if (added.length + names.length + renamed.size === 0) return changed;
  const description = describeSheets(added, (index) => opened.styles[index]);
  const grown = addSheets(renameSheets(readWorkbook(changed, functionIds), renamed), {
    ...description,
    names: Object.fromEntries(names),
  });
  return saveWorkbook(grown, []);
}
