/** The looks that the workbook's rules lay over its cells, worked out for the cells on screen. */
import { InterceptorEffectEnum } from '@univerjs/core';
import type { Injector, IStyleBase } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { areaContains } from '../cells/address';
import { CellError } from '../cells/value';
import type { ConditionalFormat, Workbook } from '../package/model';
import { shiftFormula } from '../package/shiftFormula';
import type { CellPlace } from '../sheet/book';
import type { GridCalculation } from './calculation';
import { conditionOf, gridOverlay } from './rules';

interface Rule {
  readonly format: ConditionalFormat;
  readonly condition: string;
  readonly style: IStyleBase;
}

export class RuleColors {
  private sheets: readonly (readonly Rule[])[] = [];
  private readonly known = new Map<string, IStyleBase | null>();

  constructor(private readonly calculation: GridCalculation) {}

  load(workbook: Workbook): void {
    this.known.clear();
    this.sheets = workbook.sheets.map(({ conditionalFormats }) =>
      [...conditionalFormats]
        .sort((a, b) => a.priority - b.priority)
        .map((format) => ({ format, condition: conditionOf(format), style: gridOverlay(format.style) })),
    );
  }

  /** Values have changed; true where that may change a look. */
  forget(): boolean {
    this.known.clear();
    return this.sheets.some((rules) => rules.length > 0);
  }

  of(place: CellPlace): IStyleBase | null {
    const rules = this.sheets[place.sheet];
    if (!rules || rules.length === 0) return null;
    const key = `${place.sheet} ${place.row} ${place.column}`;
    let look = this.known.get(key);
    if (look === undefined) this.known.set(key, (look = this.find(rules, place)));
    return look;
  }

  /** The first rule that holds wins; those behind it add what it leaves open. */
  private find(rules: readonly Rule[], place: CellPlace): IStyleBase | null {
    let look: IStyleBase | undefined;
    for (const { format, condition, style } of rules) {
      if (!format.areas.some((area) => areaContains(area, place.row, place.column))) continue;
      if (!this.holds(format, condition, place)) continue;
      look = laidOver(style, look);
      if (format.stopIfTrue) break;
    }
    return look ?? null;
  }

  private holds({ areas: [base] }: ConditionalFormat, condition: string, place: CellPlace): boolean {
    if (!base) return false;
    const text = shiftFormula(condition, place.row - base.top, place.column - base.left);
    const value = this.calculation.evaluate(text, place)[0]?.[0] ?? null;
    return !(value instanceof CellError) && typeof value !== 'string' && Boolean(value);
  }
}

/** Side by side, rules draw the sides of a cell that each of them says. */
function laidOver(under: IStyleBase, over: IStyleBase | undefined): IStyleBase {
  const sides = under.bd && over?.bd ? { bd: { ...under.bd, ...over.bd } } : {};
  return { ...under, ...over, ...sides };
}

/** Draws the cells with their rules' looks. `placeOf` is the cell's place in the calculation. */
export function drawRuleColors(
  injector: Injector,
  colors: RuleColors,
  placeOf: (unitId: string, sheetId: string, row: number, column: number) => CellPlace | undefined,
): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority: 10,
    handler: (cell, { unitId, subUnitId, row, col, workbook, rawData }, next) => {
      const place = placeOf(unitId, subUnitId, row, col);
      const look = place && colors.of(place);
      if (!look) return next(cell);
      const own = workbook.getStyles().getStyleByCell(cell ?? rawData);
      return next({ ...cell, s: laidOver(own ?? {}, look) });
    },
  });
}
