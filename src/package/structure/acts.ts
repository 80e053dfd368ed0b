import type { Area } from '../../cells/address';

/** What a person can do to the structure of a workbook. Rows and columns count from zero. */
export type StructureAct =
  | {
      readonly do: 'insert' | 'delete';
      readonly what: 'rows' | 'columns';
      readonly sheet: string;
      readonly at: number;
      readonly count: number;
    }
  /** Cells alone: what lies below (or right) of them gives way, or closes up. */
  | {
      readonly do: 'insertCells' | 'deleteCells';
      readonly sheet: string;
      readonly area: Area;
      readonly shift: 'rows' | 'columns';
    }
  /** Cut and paste, or dragging. */
  | {
      readonly do: 'moveCells';
      readonly sheet: string;
      readonly area: Area;
      readonly to: { readonly sheet: string; readonly row: number; readonly column: number };
    }
  | {
      readonly do: 'moveRows';
      readonly sheet: string;
      readonly at: number;
      readonly count: number;
      readonly to: number;
    }
  | {
      readonly do: 'moveColumns';
      readonly sheet: string;
      readonly at: number;
      readonly count: number;
      readonly to: number;
    }
  | { readonly do: 'renameSheet'; readonly sheet: string; readonly name: string }
  | { readonly do: 'deleteSheet'; readonly sheet: string }
  | { readonly do: 'moveSheet'; readonly sheet: string; readonly to: number }
  | { readonly do: 'copySheet'; readonly sheet: string; readonly name: string }
  | { readonly do: 'hideSheet'; readonly sheet: string; readonly hidden: boolean };

/** The act cannot be done safely; nothing was changed. One sentence for a person. */
export class CannotChange extends Error {
  override readonly name = 'CannotChange';
}
