/** Slicers of tables: their part of the workbook names a table and a column by number, which must not go missing. */
import { readText, type EditableParts } from '../relationships';
import { childrenOf, child, decodeText, descendants, parseXml } from '../xml';
import { CannotChange } from './acts';
import { targets } from './drawingParts';
import type { TableAfter } from './tableParts';

export function checkSlicers(parts: EditableParts, book: string, tables: readonly TableAfter[]): void {
  const sliced = targets(parts, book, 'slicerCache').flatMap((part) =>
    descendants(parseXml(readText(parts, part) ?? '', part), 'tableSlicerCache').map(({ attributes }) => ({
      table: attributes['tableId'],
      column: attributes['column'],
    })),
  );
  if (sliced.length === 0) return;
  for (const { table, area, lost } of tables) {
    const root = parseXml(readText(parts, table.part) ?? '', table.part);
    const own = sliced.filter((one) => one.table === root.attributes['id']);
    const gone = childrenOf(child(root, 'tableColumns'), 'tableColumn').filter(
      ({ attributes: { id, name = '' } }) =>
        own.some(({ column }) => column === id) && (!area || lost.has(decodeText(name).toLowerCase())),
    );
    const [one] = gone;
    if (one)
      throw new CannotChange(
        `A slicer filters the column "${decodeText(one.attributes['name'] ?? '')}" of the table "${table.name}"; take the slicer off first, in the program that made it.`,
      );
  }
}
