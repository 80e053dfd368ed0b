import { changeLayout } from '../layout';
import type { Workbook } from '../model';
import { changeNotes } from '../notes';
import { readParts } from '../read';
import { readText, writeText, type EditableParts } from '../relationships';
import type { KnownFunctions } from '../spelling';
import { CannotChange } from '../structure';
import { sheetsOf } from '../structure/sheets';
import type { WorkbookEdit } from './acts';
import { addColorRule, deleteColorRule } from './colorRules';
import { withEntryRule } from './entryRules';
import { clearFilter, setFilter } from './filters';
import { deleteName, setName } from './names';

export type { ColorRule, EntryRule, WorkbookEdit } from './acts';

/**
 * The workbook after an edit.
 * @throws CannotChange with one sentence for a person; the workbook is then as it was.
 */
export function editWorkbook(workbook: Workbook, edit: WorkbookEdit, known: KnownFunctions): Workbook {
  const parts: EditableParts = new Map(workbook.parts);
  applyEdit(parts, workbook, edit);
  const after = readParts(parts, known);
  const hidden = hiddenRows(workbook, edit);
  return hidden ? changeLayout(after, new Map([hidden]), known) : after;
}

function applyEdit(parts: EditableParts, workbook: Workbook, edit: WorkbookEdit): void {
  switch (edit.do) {
    case 'setName':
      setName(parts, workbook, edit);
      return;
    case 'deleteName':
      deleteName(parts, workbook, edit);
      return;
    case 'setNote':
      changeNotes(parts, partOf(parts, edit.sheet), [edit]);
      return;
    case 'setEntryRule': {
      const part = partOf(parts, edit.sheet);
      writeText(parts, part, withEntryRule(readText(parts, part) ?? '', part, edit.area, edit.rule));
      return;
    }
    case 'addColorRule':
      addColorRule(parts, partOf(parts, edit.sheet), edit.rule);
      return;
    case 'deleteColorRule': {
      const rule = workbook.sheets.find(({ name }) => name === edit.sheet)?.conditionalFormats[edit.index];
      if (!rule) throw new CannotChange('The rule is not there any more.');
      deleteColorRule(parts, partOf(parts, edit.sheet), rule);
      return;
    }
    case 'setFilter':
      setFilter(parts, partOf(parts, edit.sheet), edit);
      return;
    case 'clearFilter':
      clearFilter(parts, partOf(parts, edit.sheet), edit);
  }
}

/** The rows that a filter hides, and those of the one before that are seen again. */
function hiddenRows(
  workbook: Workbook,
  edit: WorkbookEdit,
): [string, { readonly rows: Workbook['sheets'][number]['rows'] }] | undefined {
  if (edit.do !== 'setFilter' && edit.do !== 'clearFilter') return undefined;
  const sheet = workbook.sheets.find(({ name }) => name === edit.sheet);
  const hides = new Set(edit.do === 'setFilter' ? edit.hidden : []);
  const own =
    edit.table === undefined ? sheet?.filter : sheet?.tables.find(({ name }) => name === edit.table)?.filter;
  const filtered = (row: number) =>
    own !== undefined && own.columns.length > 0 && row > own.area.top && row <= own.area.bottom;
  const shown = (sheet?.rows ?? []).filter(({ row, hidden }) => hidden && filtered(row) && !hides.has(row));
  const heightOf = (row: number) => sheet?.rows.find((one) => one.row === row)?.height;
  const rows = [
    ...shown.map(({ row }) => ({ row, hidden: false })),
    ...[...hides].map((row) => ({ row, hidden: true })),
  ];
  return [
    edit.sheet,
    {
      rows: rows.map((one) => {
        const height = heightOf(one.row);
        return { ...one, ...(height !== undefined && { height }) };
      }),
    },
  ];
}

function partOf(parts: EditableParts, name: string): string {
  const part = sheetsOf(parts).find((one) => one.name === name)?.part;
  if (part === undefined) throw new CannotChange(`The workbook has no sheet "${name}" with cells.`);
  return part;
}
