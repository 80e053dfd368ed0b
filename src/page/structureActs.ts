/** The grid's commands on rows, columns, cells and sheets, as acts on the workbook's file. */
import type { IRange } from '@univerjs/core';
import type { Area } from '../cells/address';
import type { DefinedName } from '../package/model';
import { freeSheetName } from '../package/sheetNames';
import type { WorkbookEdit } from '../package/edits';
import type { StructureAct } from '../package/structure';

/** What a person did beside the cells: an act that all parts of the file follow, a setting, or a new empty sheet. */
export type PageAct = StructureAct | WorkbookEdit | { readonly do: 'addSheet'; readonly name: string };

/** What a command is asked about. */
export interface ActContext {
  /** Names in the order of the tabs. */
  readonly sheetNames: readonly string[];
  /** The sheet that the command names, else the one in front. */
  readonly sheet: string;
  readonly selection: IRange | undefined;
  /** A name of the workbook by the grid's id, and a sheet's name by its id. */
  readonly nameOf: (id: string) => DefinedName | undefined;
  readonly sheetOf: (id: string) => string | undefined;
}

interface Params {
  readonly range?: IRange;
  readonly ranges?: readonly IRange[];
  readonly fromRange?: IRange;
  readonly toRange?: IRange;
  readonly name?: string;
  readonly order?: number;
  readonly sheet?: { readonly name?: string };
  readonly id?: string;
  readonly formulaOrRefString?: string;
  readonly localSheetId?: string;
}

/** The commands that the grid must not carry out itself. */
const ACTS: Readonly<
  Record<string, (params: Params, context: ActContext) => readonly PageAct[] | undefined>
> = {
  'insert-row-by-range': (params, context) => band('insert', 'rows', params, context),
  'insert-col-by-range': (params, context) => band('insert', 'columns', params, context),
  'remove-row-by-range': (params, context) => band('delete', 'rows', params, context),
  'remove-col-by-range': (params, context) => band('delete', 'columns', params, context),
  'insert-range-move-down': (params, context) => cells('insertCells', 'rows', params, context),
  'insert-range-move-right': (params, context) => cells('insertCells', 'columns', params, context),
  'delete-range-move-up': (params, context) => cells('deleteCells', 'rows', params, context),
  'delete-range-move-left': (params, context) => cells('deleteCells', 'columns', params, context),
  'move-rows': ({ toRange }, { sheet, selection }) =>
    toRange &&
    selection && [
      {
        do: 'moveRows',
        sheet,
        at: selection.startRow,
        count: selection.endRow - selection.startRow + 1,
        to: toRange.startRow,
      },
    ],
  'move-cols': ({ toRange }, { sheet, selection }) =>
    toRange &&
    selection && [
      {
        do: 'moveColumns',
        sheet,
        at: selection.startColumn,
        count: selection.endColumn - selection.startColumn + 1,
        to: toRange.startColumn,
      },
    ],
  'move-range': ({ fromRange, toRange }, { sheet }) =>
    fromRange &&
    toRange && [
      {
        do: 'moveCells',
        sheet,
        area: areaOf(fromRange),
        to: { sheet, row: toRange.startRow, column: toRange.startColumn },
      },
    ],
  'insert-defined-name': named,
  'set-defined-name': named,
  'remove-defined-name': ({ id = '', name = '' }, { nameOf }) => {
    const old = nameOf(id);
    return [
      { do: 'deleteName', name: old?.name ?? name, ...(old?.sheet !== undefined && { sheet: old.sheet }) },
    ];
  },
  'remove-sheet': (_, { sheet }) => [{ do: 'deleteSheet', sheet }],
  'copy-sheet': (_, { sheet, sheetNames }) => [
    { do: 'copySheet', sheet, name: freeSheetName(`${sheet} copy`, sheetNames) },
  ],
  'insert-sheet': ({ sheet }, { sheetNames }) => [
    { do: 'addSheet', name: freeSheetName(sheet?.name ?? `Sheet${sheetNames.length + 1}`, sheetNames) },
  ],
  'set-worksheet-name': ({ name }, { sheet }) =>
    name === undefined || name === sheet ? [] : [{ do: 'renameSheet', sheet, name }],
  'set-worksheet-order': ({ order }, { sheet }) =>
    order === undefined ? undefined : [{ do: 'moveSheet', sheet, to: order }],
  'set-worksheet-hidden': (_, { sheet }) => [{ do: 'hideSheet', sheet, hidden: true }],
  'set-worksheet-show': (_, { sheet }) => [{ do: 'hideSheet', sheet, hidden: false }],
};

/** A name that the grid's own list of names adds or changes. */
function named(
  { id = '', name = '', formulaOrRefString = '', localSheetId = '' }: Params,
  context: ActContext,
): readonly PageAct[] {
  const old = context.nameOf(id);
  const sheet = old ? old.sheet : context.sheetOf(localSheetId);
  return [
    {
      do: 'setName',
      name,
      formula: formulaOrRefString.replace(/^=/, ''),
      ...(old && { was: old.name }),
      ...(sheet !== undefined && { sheet }),
    },
  ];
}

const PREFIX = 'sheet.command.';

/** Undefined for a command that is none on structure. */
export function actsOf(
  id: string,
  params: object | undefined,
  context: ActContext,
): readonly PageAct[] | undefined {
  if (!id.startsWith(PREFIX)) return undefined;
  return ACTS[id.slice(PREFIX.length)]?.(params ?? {}, context);
}

function band(
  act: 'insert' | 'delete',
  what: 'rows' | 'columns',
  { range, ranges }: Params,
  { sheet, selection }: ActContext,
): readonly PageAct[] | undefined {
  const all = ranges ?? [range ?? selection].filter((one) => one !== undefined);
  if (all.length === 0) return undefined;
  const [from, to] =
    what === 'rows' ? (['startRow', 'endRow'] as const) : (['startColumn', 'endColumn'] as const);
  // From the far end, so that the places of the others stay.
  return [...all]
    .sort((a, b) => b[from] - a[from])
    .map((one) => ({ do: act, what, sheet, at: one[from], count: one[to] - one[from] + 1 }));
}

function cells(
  act: 'insertCells' | 'deleteCells',
  shift: 'rows' | 'columns',
  { range }: Params,
  { sheet, selection }: ActContext,
): readonly PageAct[] | undefined {
  const where = range ?? selection;
  return where && [{ do: act, sheet, area: areaOf(where), shift }];
}

const areaOf = ({ startRow, startColumn, endRow, endColumn }: IRange): Area => ({
  top: startRow,
  left: startColumn,
  bottom: endRow,
  right: endColumn,
});
