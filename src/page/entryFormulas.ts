/** The formulas of rules for entries (the cells of a list, the bounds of a number), worked out for the grid's plugin. */
import { ICommandService } from '@univerjs/core';
import type { ICellData, Injector, IRange, Nullable } from '@univerjs/core';
import { RegisterOtherFormulaService, SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import { shiftFormula } from '../package/shiftFormula';
import type { CellPlace } from '../sheet/book';
import type { GridCalculation } from './calculation';
import { gridScalar } from './gridData';

interface Asked {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly formulaId: string;
  readonly formulaText: string;
  readonly ranges: readonly IRange[];
}

type Answer = Record<number, Record<number, Nullable<ICellData>[][]>>;

/** Cells of one rule that are answered; a rule over a whole column says little of most of them. */
const MOST_CELLS = 5_000;

export class EntryFormulas {
  private asked: Asked[] = [];
  private isDue = false;

  constructor(
    private readonly injector: Injector,
    private readonly calculation: GridCalculation,
    private readonly placeOf: (
      unitId: string,
      sheetId: string,
      row: number,
      column: number,
    ) => CellPlace | undefined,
  ) {
    injector.get(RegisterOtherFormulaService).formulaChangeWithRange$.subscribe((one: Asked) => {
      this.asked.push(one);
      if (this.isDue) return;
      this.isDue = true;
      setTimeout(() => {
        this.answer();
      });
    });
  }

  /** Values have changed. */
  answer(): void {
    this.isDue = false;
    this.asked = this.asked.filter(
      ({ unitId, subUnitId }) => this.placeOf(unitId, subUnitId, 0, 0) !== undefined,
    );
    const answers: Record<string, Record<string, Record<string, Answer>>> = {};
    for (const one of this.asked) {
      ((answers[one.unitId] ??= {})[one.subUnitId] ??= {})[one.formulaId] = this.work(one);
    }
    if (this.asked.length === 0) return;
    this.injector
      .get(ICommandService)
      .syncExecuteCommand(
        SetFormulaCalculationResultMutation.id,
        { unitData: {}, unitOtherData: answers },
        { onlyLocal: true },
      );
  }

  private work({ unitId, subUnitId, formulaText, ranges }: Asked): Answer {
    const text = formulaText.replace(/^=/, '');
    const [base] = ranges;
    const answer: Answer = {};
    let count = 0;
    for (const range of ranges) {
      for (let row = range.startRow; row <= range.endRow; row++) {
        for (let column = range.startColumn; column <= range.endColumn; column++) {
          if (!base || ++count > MOST_CELLS) return answer;
          const [down, across] = [row - base.startRow, column - base.startColumn];
          const place = this.placeOf(unitId, subUnitId, row, column);
          if (!place) continue;
          const values = this.calculation.evaluate(shiftFormula(text, down, across), place);
          (answer[down] ??= {})[across] = values.map((line) => line.map(gridScalar));
        }
      }
    }
    return answer;
  }
}
