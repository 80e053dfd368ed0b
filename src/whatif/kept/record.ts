/**
 * What a workbook remembers of a what-if written into it: hidden names that stand for its cells, so that they follow
 * wherever rows, columns and sheets go, in any program. The values tried stand in the table itself.
 */
import { readReference, referenceText, type SheetReference } from '../../cells/reference';
import type { Workbook } from '../../package/model';
import type { CellRef } from '../plan';

export interface KeptWhatIf {
  readonly number: number;
  readonly vary: readonly CellRef[];
  readonly read: readonly CellRef[];
  /**
   * The tables: of one input its values and the results beside them; of two inputs one a result, with the values of the
   * first down its left and those of the second along its top.
   */
  readonly tables: readonly SheetReference[];
  /** What it was made for: a line each with label, value then, value now and whether it has changed. */
  readonly made: SheetReference;
}

/** What the last column of a list says where an input has changed. */
export const CHANGED = 'changed';

/** As much of a workbook as tells of its what-ifs. */
export interface NamesAndSheets extends Pick<Workbook, 'names'> {
  readonly sheets: readonly { readonly name: string }[];
}

const PREFIX = 'whatif.';
const NAME = /^whatif\.(\d+)\.(vary|read|table|made)\.(\d+)$/i;

export function namesOf({ number, vary, read, tables, made }: KeptWhatIf): Record<string, string> {
  const cell = ({ sheet, row, column }: CellRef): SheetReference => ({
    sheet,
    area: { top: row, left: column, bottom: row, right: column },
  });
  const named = (kind: string, all: readonly SheetReference[]): [string, string][] =>
    all.map((one, at) => [`${PREFIX}${number}.${kind}.${at + 1}`, referenceText(one)]);
  return Object.fromEntries([
    ...named('vary', vary.map(cell)),
    ...named('read', read.map(cell)),
    ...named('table', tables),
    ...named('made', [made]),
  ]);
}

/** The what-ifs of a workbook, in the order in which they were written; those whose cells are gone are left out. */
export function keptWhatIfs(workbook: NamesAndSheets): KeptWhatIf[] {
  const found = new Map<number, Map<string, (SheetReference | undefined)[]>>();
  for (const { name, formula, sheet } of workbook.names) {
    const [, number, kind = '', at] = NAME.exec(name) ?? [];
    if (number === undefined || sheet !== undefined) continue;
    const one = found.get(Number(number)) ?? new Map<string, (SheetReference | undefined)[]>();
    found.set(Number(number), one);
    const list = one.get(kind) ?? [];
    one.set(kind, list);
    list[Number(at) - 1] = present(workbook, readReference(formula));
  }
  return [...found]
    .sort(([a], [b]) => a - b)
    .flatMap(([number, kinds]): KeptWhatIf[] => {
      const all = (kind: string): SheetReference[] | undefined => {
        const list = [...(kinds.get(kind) ?? [])];
        return list.length > 0 && list.every((one) => one !== undefined) ? list : undefined;
      };
      const [vary, read, tables, made] = [all('vary'), all('read'), all('table'), all('made')?.[0]];
      if (!vary || !read || !tables || !made) return [];
      return [{ number, vary: vary.map(cellOf), read: read.map(cellOf), tables, made }];
    });
}

const cellOf = ({ sheet, area }: SheetReference): CellRef => ({ sheet, row: area.top, column: area.left });

function present(
  { sheets }: NamesAndSheets,
  reference: SheetReference | undefined,
): SheetReference | undefined {
  const sheet = sheets.find(({ name }) => name.toLowerCase() === reference?.sheet.toLowerCase());
  return reference && sheet && { ...reference, sheet: sheet.name };
}

export const freeNumber = (workbook: Pick<Workbook, 'names'>): number =>
  Math.max(0, ...workbook.names.map(({ name }) => Number(NAME.exec(name)?.[1] ?? 0))) + 1;
