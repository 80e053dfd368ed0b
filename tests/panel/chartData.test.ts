import { describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { chartsOf } from '../../src/panel/whatif/chartData';
import type { CellInput } from '../../src/workbook/cells';
import type { Outcome } from '../../src/whatif/run';

const at = (row: number) => ({ sheet: 'Insert', row, column: 1 });

function outcome(
  inputs: Readonly<Record<string, CellInput[]>>,
  rows: readonly (readonly [CellInput[], CellValue[]])[],
): Outcome {
  return {
    inputs: Object.entries(inputs).map(([label, values], row) => ({
      cell: at(row),
      label,
      unit: '',
      now: 0,
      values,
    })),
    results: [{ cell: at(9), label: 'Push', unit: 'N' }],
    rows: rows.map(([tried, results]) => ({ inputs: tried, results })),
    planned: rows.length,
  };
}

describe('the charts of an outcome', () => {
  it('run along the input with more values, by the other one', () => {
    const [chart] = chartsOf(
      outcome({ Draft: [1, 2], Friction: [0.1, 0.2, 0.3] }, [
        [[1, 0.3], [5]],
        [[1, 0.1], [6]],
      ]),
    );
    expect(chart).toMatchObject({
      title: 'Push (N) by Draft',
      xLabel: 'Friction',
      yLabel: 'N',
      series: 'Draft',
    });
    expect(chart?.points).toEqual([
      { x: 0.1, y: 6, series: '1' },
      { x: 0.3, y: 5, series: '1' },
    ]);
  });

  it('run along numbers rather than words, however few', () => {
    const [chart] = chartsOf(outcome({ Metal: ['P20', 'H13', 'brass'], Draft: [1, 2] }, [[['P20', 2], [3]]]));
    expect(chart).toMatchObject({ xLabel: 'Draft', isOrdinal: false });
    expect(chart?.points).toEqual([{ x: 2, y: 3, series: 'P20' }]);
  });

  it('keep words in their order along the axis, and leave a gap for a result in error', () => {
    const [chart] = chartsOf(
      outcome({ Metal: ['P20', 'brass'] }, [
        [['P20'], [3]],
        [['brass'], [new CellError('#N/A')]],
      ]),
    );
    expect(chart?.isOrdinal).toBe(true);
    expect(chart?.series).toBeUndefined();
    expect(chart?.points.map(({ x, y }) => [x, y])).toEqual([
      ['P20', 3],
      ['brass', NaN],
    ]);
  });

  it('shade many lines from number to number', () => {
    const many = Array.from({ length: 11 }, (_, i) => i);
    const [chart] = chartsOf(outcome({ Draft: [...many, 11], Friction: many }, [[[1, 0], [3]]]));
    expect(chart?.isShaded).toBe(true);
    expect(chart?.points[0]?.series).toBe(0);
  });

  it('are none for results in words', () => {
    expect(chartsOf(outcome({ Draft: [1] }, [[[1], ['in range']]]))).toEqual([]);
  });
});
