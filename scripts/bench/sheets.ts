/**
 * Whole workbooks beside HyperFormula (GPL-3.0: a need of this measurement alone, never shipped): built and calculated
 * from cells in memory, then one cell edited. Each is the best of a few rounds.
 */
import { HyperFormula } from 'hyperformula';
import { worksheetFunctions } from '../../src/call/functions';
import { NAMESPACE } from '../../src/cells/namespace';
import { Book } from '../../src/sheet/book';
import type { BookCell } from '../../src/sheet/content';

const ROUNDS = 3;
const SHEET = 'Sheet1';
type Line = readonly (number | string)[];

/** A number and four formulas in each row: products, roots, choices, sums of a window. */
const nativeLine = (row: number): Line => {
  const r = row + 1;
  return [
    400 + row,
    `=A${r}*1.5+2`,
    `=ROUND(SQRT(A${r}),3)+B${r}`,
    `=IF(C${r}>B${r},C${r}-B${r},0)`,
    `=SUM(A${Math.max(1, r - 9)}:A${r})`,
  ];
};
const FORMULAS_A_LINE = 4;

const moldLine = (row: number): Line => [400 + row, `=${NAMESPACE}.SEAT.FORCE(A${row + 1},5,0.15)`];

const linesOf = (count: number, line: (row: number) => Line): Line[] =>
  Array.from({ length: count }, (_, row) => line(row));

const cellsOf = (lines: readonly Line[]): BookCell[] =>
  lines.flatMap((line, row) =>
    line.map((value, column): BookCell =>
      typeof value === 'string'
        ? { row, column, value: null, formula: value.slice(1) }
        : { row, column, value },
    ),
  );

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}
const best = (run: () => readonly number[]): number[] => {
  const rounds = Array.from({ length: ROUNDS }, run);
  return (rounds[0] ?? []).map((_, i) => Math.min(...rounds.map((round) => round[i] ?? Infinity)));
};

/** Milliseconds to build and calculate, and to change one input. */
function ours(lines: readonly Line[]): number[] {
  const cells = cellsOf(lines);
  return best(() => {
    let book: Book | undefined;
    const build = timed(() => {
      const sheet = { name: SHEET, cells, tables: [], rows: [] };
      book = new Book({ sheets: [sheet], names: [], date1904: false }, worksheetFunctions);
      book.calculate();
    });
    const edits = Array.from({ length: 20 }, (_, i) =>
      timed(() => {
        book?.set([{ sheet: 0, row: 500 + i, column: 0, value: 7 + i }]);
        book?.calculate();
      }),
    );
    return [build, Math.min(...edits)];
  });
}

function rivals(lines: readonly Line[]): number[] {
  const sheet = lines.map((line) => [...line]);
  return best(() => {
    let engine: HyperFormula | undefined;
    const build = timed(() => {
      engine = HyperFormula.buildFromSheets({ [SHEET]: sheet }, { licenseKey: 'gpl-v3' });
    });
    const edits = Array.from({ length: 20 }, (_, i) =>
      timed(() => engine?.setCellContents({ sheet: 0, row: 500 + i, col: 0 }, [[7 + i]])),
    );
    engine?.destroy();
    return [build, Math.min(...edits)];
  });
}

const ms = (value: number): string => value.toFixed(value < 10 ? 2 : 0);

/** Formulas; ours and theirs for build and edit, and ours as a multiple of theirs. */
export function nativeSheets(): string[][] {
  return [10_000, 100_000].map((formulas) => {
    const lines = linesOf(formulas / FORMULAS_A_LINE, nativeLine);
    const [build = 0, edit = 0] = ours(lines);
    const [theirBuild = 0, theirEdit = 0] = rivals(lines);
    return [
      String(formulas),
      ms(build),
      ms(theirBuild),
      (build / theirBuild).toFixed(2),
      ms(edit),
      ms(theirEdit),
      (edit / theirEdit).toFixed(2),
    ];
  });
}

/** Formulas of our own functions: build and calculate, one edit. */
export function moldSheets(): string[][] {
  return [10_000, 100_000].map((formulas) => [
    String(formulas),
    ...ours(linesOf(formulas, moldLine)).map(ms),
  ]);
}
