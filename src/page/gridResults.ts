/** Puts the results of a calculation into the grid, as it takes those of its own engine. */
import type { ICellData, IObjectMatrixPrimitiveType, IRange, Nullable } from '@univerjs/core';
import { ICommandService } from '@univerjs/core';
import type { Injector } from '@univerjs/core';
import { SetArrayFormulaDataMutation, SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import type { Area } from '../cells/address';
import type { CellValue } from '../cells/value';
import { eachPlace } from '../sheet/graph/dependents';
import { gridRange, gridScalar } from './gridData';

type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

/** One sheet of the grid and how its cells stand in the calculation. */
export interface Target {
  readonly sheetId: string;
  value(row: number, column: number): CellValue;
  /** What the grid holds there now. */
  shown(row: number, column: number): Nullable<ICellData>;
  formulas(): { readonly row: number; readonly column: number }[];
}

export interface Place {
  readonly target: Target;
  readonly row: number;
  readonly column: number;
}

export function everyFormula(targets: readonly (Target | undefined)[]): Place[] {
  return targets.flatMap((target) => target?.formulas().map((place) => ({ ...place, target })) ?? []);
}

/** Values of formulas; those that the grid shows already are left out. */
export function putValues(injector: Injector, unitId: string, places: readonly Place[]): void {
  const sheets: Record<string, Cells> = {};
  for (const { target, row, column } of places) {
    const cell = gridScalar(target.value(row, column) ?? 0);
    const shown = target.shown(row, column);
    // A cell that is a formula no more shows what was typed.
    if (!shown?.f && !shown?.si) continue;
    if (shown.v === cell.v && shown.t === cell.t) continue;
    ((sheets[target.sheetId] ??= {})[row] ??= {})[column] = cell;
  }
  if (Object.keys(sheets).length === 0) return;
  put(injector, SetFormulaCalculationResultMutation.id, {
    unitData: { [unitId]: sheets },
    unitOtherData: {},
  });
}

/** Everything that spills: what is not among it spills no more. */
export function putSpills(
  injector: Injector,
  unitId: string,
  spills: readonly (Place & { readonly area: Area })[],
): void {
  const ranges: Record<string, IObjectMatrixPrimitiveType<IRange>> = {};
  const cells: Record<string, Cells> = {};
  for (const { target, row, column, area } of spills) {
    ((ranges[target.sheetId] ??= {})[row] ??= {})[column] = gridRange(area);
    eachPlace(area, (r, c) => {
      ((cells[target.sheetId] ??= {})[r] ??= {})[c] = gridScalar(target.value(r, c));
    });
  }
  put(
    injector,
    SetArrayFormulaDataMutation.id,
    { arrayFormulaRange: { [unitId]: ranges }, arrayFormulaCellData: { [unitId]: cells } },
    true,
  );
}

/** Neither an edit nor something to undo. */
function put(injector: Injector, id: string, params: object, remove = false): void {
  injector
    .get(ICommandService)
    .syncExecuteCommand(id, params, { onlyLocal: true, ...(remove && { remove }) });
}
