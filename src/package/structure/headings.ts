/** A table whose heading is typed anew: its column has the name of its heading, or the file is taken for broken. */
import { tokenize } from '../../cells/formulaTokens';
import type { CellChange } from '../changes';
import type { Workbook } from '../model';
import { readText, writeText, type EditableParts } from '../relationships';
import { applyEdits, child, childrenOf, decodeText, encodeText, parseXml, withAttributes } from '../xml';
import { rewriteAll, sheetsOf } from './sheets';
import { renamedBracket, tablesOf } from './tableParts';

/** Names a column without its table, as a formula inside the table may: `[Draft]`. Not `[1]Sheet1!A1` of another workbook. */
function isBare(formula: string): boolean {
  if (!formula.includes('[')) return false;
  const tokens = tokenize(formula);
  return tokens.some(
    ({ kind }, at) =>
      kind === 'bracket' && tokens[at - 1]?.kind !== 'name' && tokens[at + 1]?.kind !== 'name',
  );
}

type Names = ReadonlyMap<string, string>;

export function followHeadings(
  parts: EditableParts,
  { sheets }: Workbook,
  changes: readonly CellChange[],
): void {
  const renamed = new Map<string, Names>();
  for (const { name: sheet, tables } of sheets) {
    for (const { name, area, hasHeader, columns } of tables) {
      if (!hasHeader) continue;
      const names = new Map<string, string>();
      for (const { sheet: on, row, column, value, formula } of changes) {
        const old = on === sheet && row === area.top ? columns[column - area.left] : undefined;
        const heading = typeof value === 'number' || typeof value === 'string' ? String(value) : '';
        const isTaken = columns.some((one) => one !== old && one.toLowerCase() === heading.toLowerCase());
        if (old === undefined || formula !== undefined || heading === '' || heading === old || isTaken)
          continue;
        names.set(old.toLowerCase(), heading);
      }
      if (names.size > 0) renamed.set(name.toLowerCase(), names);
    }
  }
  if (renamed.size === 0) return;
  // What does not say its table could not be told from another one's.
  if (sheets.some(({ cells }) => cells.some(({ formula }) => formula !== undefined && isBare(formula))))
    return;
  rewriteAll(parts, (sheet) => ({
    from: sheet,
    to: sheet,
    area: (on, area) => ({ ...area, sheet: on }),
    columns: (table, bracket) => {
      const names = renamed.get(table.toLowerCase());
      return names ? renamedBracket(bracket, names) : bracket;
    },
  }));
  for (const { part } of sheetsOf(parts)) {
    if (part === undefined) continue;
    for (const table of tablesOf(parts, part)) {
      const names = renamed.get(table.name.toLowerCase());
      if (names) renameColumns(parts, table.part, names);
    }
  }
}

function renameColumns(parts: EditableParts, table: string, names: Names): void {
  const xml = readText(parts, table) ?? '';
  const columns = childrenOf(child(parseXml(xml, table), 'tableColumns'), 'tableColumn');
  const edits = columns.flatMap((column) => {
    const name = names.get(decodeText(column.attributes['name'] ?? '').toLowerCase());
    return name === undefined
      ? []
      : [{ start: column.start, end: column.end, text: withAttributes(column, { name: encodeText(name) }) }];
  });
  writeText(parts, table, applyEdits(xml, edits));
}
