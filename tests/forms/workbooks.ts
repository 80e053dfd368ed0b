import { newWorkbook } from '../../src/package';
import type { Workbook } from '../../src/package/model';

/** A design sheet as ours are: a units cell, heads, filled rows, names. */
export const own = (): Workbook =>
  newWorkbook({
    sheets: [
      {
        name: 'Insert',
        columns: { A: 31, B: 11, C: 10, D: 11, E: 9, F: 54, G: 52 },
        cells: {
          A1: 'Tapered insert',
          A4: 'Units of this sheet',
          D4: 'mm',
          A7: 'Draft',
          D7: 5,
          E7: 'deg',
          A8: 'Friction',
          D8: 0.15,
          E8: '–',
          A9: 'Wall',
          D9: 3,
          E9: 'ft',
        },
        validations: [{ cells: 'D4', choices: ['in', 'mm'] }],
      },
    ],
    names: { draft: 'Insert!$D$7', friction: 'Insert!$D$8', wall: 'Insert!$D$9' },
  });

/** A sheet of somebody else: narrow columns, merged cells, rules and colors of its own, another sheet in front. */
export const foreignLike = (): Workbook =>
  newWorkbook({
    sheets: [
      { name: 'Start here', cells: { A1: 'Prices', B2: { formula: "SUM('My sheet'!B2:B3)", value: 7 } } },
      {
        name: 'My sheet',
        columns: { A: 6, 'B:D': 7 },
        cells: { A1: 'x', B2: 3, B3: 4, C5: { value: 0.5, style: 'p' }, A6: 'merged' },
        merges: ['A6:C6'],
        validations: [{ cells: 'B2', accepts: 'B2>0' }],
        conditions: [{ cells: 'B2:B3', when: 'B2>3', style: { fill: '#FFFF00' } }],
      },
    ],
    styles: { p: { numberFormat: '0%' } },
    names: { push: "'My sheet'!$B$2", units: "'My sheet'!$B$3" },
    font: { name: 'Courier New', size: 12 },
  });
