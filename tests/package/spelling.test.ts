import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shiftFormula } from '../../src/package/shiftFormula';
import {
  fromFileSpelling,
  isComplete,
  knownFunctions,
  needsArrayMark,
  toFileSpelling,
} from '../../src/package/spelling';

const known = knownFunctions(['SEAT.FORCE', 'TAP.DRILL', 'TAP.DRILLNAME', 'ODD.NAME_2', 'VERSION']);
const read = (formula: string) => fromFileSpelling(formula, known);

// Prefixes of native functions: MS-XLSX 2.2.2; of custom functions: OfficeDev/Excel-Custom-Functions issue 108.
const PAIRS: readonly (readonly [ours: string, file: string])[] = [
  ['MOLD.SEAT.FORCE(A1,B1)', '_xldudf_MOLD_SEAT_FORCE(A1,B1)'],
  ['MOLD.ODD.NAME_2(1)+MOLD.VERSION()', '_xldudf_MOLD_ODD_NAME_2(1)+_xldudf_MOLD_VERSION()'],
  ['SUM(FILTER(A1:A9,A1:A9>2))', 'SUM(_xlfn._xlws.FILTER(A1:A9,A1:A9>2))'],
  ['XLOOKUP(1,A:A,B:B)&CEILING.MATH(2.1)', '_xlfn.XLOOKUP(1,A:A,B:B)&_xlfn.CEILING.MATH(2.1)'],
  ['LET(x,1,y,x+1,x*y)', '_xlfn.LET(_xlpm.x,1,_xlpm.y,_xlpm.x+1,_xlpm.x*_xlpm.y)'],
  ['LAMBDA(a,b,a+b)(1,2)', '_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b)(1,2)'],
  ['LET(f, LAMBDA(q, q*2), f(3))', '_xlfn.LET(_xlpm.f, _xlfn.LAMBDA(_xlpm.q, _xlpm.q*2), _xlpm.f(3))'],
  // The x in its own value is the workbook's name, and so is the one behind the LET.
  ['LET(x,x+1,x)+x', '_xlfn.LET(_xlpm.x,x+1,_xlpm.x)+x'],
  ['LET(a,1,Sheet1!a+a)', '_xlfn.LET(_xlpm.a,1,Sheet1!a+_xlpm.a)'],
  ['SUM({1,2;3,4})+LET(k,{1,2},k)', 'SUM({1,2;3,4})+_xlfn.LET(_xlpm.k,{1,2},_xlpm.k)'],
  ['SUM(ANCHORARRAY(C1))', 'SUM(_xlfn.ANCHORARRAY(C1))'],
  ["'MOLD.SEAT.FORCE(x)'!A1+Stock[LET(x)]", "'MOLD.SEAT.FORCE(x)'!A1+Stock[LET(x)]"],
  ['"MOLD.TAP.DRILL(""LET(x"")"&A1', '"MOLD.TAP.DRILL(""LET(x"")"&A1'],
];

describe('formula spelling', () => {
  it.each(PAIRS)('writes %s as %s', (ours, file) => {
    expect(toFileSpelling(ours)).toBe(file);
  });

  it.each(PAIRS)('reads %s back from %s', (ours, file) => {
    expect(read(file)).toBe(ours);
  });

  it.each([
    ['[2]!_xldudf_MOLD_SEAT_FORCE(A1)', 'MOLD.SEAT.FORCE(A1)'],
    ['1+Some.xla!_xldudf_mold_tap_drill("M6")', '1+MOLD.TAP.DRILL("M6")'],
    ["'C:\\add ins\\[x.xla]'!_xldudf_Mold_Tap_DrillName(1)", 'MOLD.TAP.DRILLNAME(1)'],
    ['mold.tap.drill(A1)', 'MOLD.TAP.DRILL(A1)'],
    // Not in the list: split at the first underscore only, so that it goes back as it came.
    ['_xldudf_MOLD_NOT_KNOWN(1)', 'MOLD.NOT_KNOWN(1)'],
    ['_xldudf_OTHER_FN(1)', '_xldudf_OTHER_FN(1)'],
    ['[2]!_xldudf_OTHER_FN(1)', '[2]!_xldudf_OTHER_FN(1)'],
  ])('reads the damaged or foreign %s as %s', (file, ours) => {
    expect(read(file)).toBe(ours);
  });

  it('writes a spill reference the way files have it', () => {
    expect(toFileSpelling("SUM('My sheet'!C1#)*Main!$B$2#+D3#")).toBe(
      "SUM(_xlfn.ANCHORARRAY('My sheet'!C1))*_xlfn.ANCHORARRAY(Main!$B$2)+_xlfn.ANCHORARRAY(D3)",
    );
  });

  it.each([
    ['@A1:A9*2', '_xlfn.SINGLE(A1:A9)*2'],
    ['1+@MOLD.TAP.DRILL(A1,(B1))', '1+_xlfn.SINGLE(_xldudf_MOLD_TAP_DRILL(A1,(B1)))'],
    ["SUM(@'x y'!A:A,@draft)", "SUM(_xlfn.SINGLE('x y'!A:A),_xlfn.SINGLE(draft))"],
    ['"a@b"', '"a@b"'],
  ])('writes the one value of %s as %s', (ours, file) => {
    expect(toFileSpelling(ours)).toBe(file);
  });

  it.each(['1+', 'SUM(A1', 'SUM(A1))', '"open', '{1,2)', "'x!A1", 'Stock[Size', '1|2', 'A1:', ''])(
    'calls %s unfinished',
    (formula) => {
      expect(isComplete(formula)).toBe(false);
    },
  );

  it.each([...PAIRS.map(([ours]) => ours), '50%', 'C1#', '#N/A', ' A1 '])('calls %s complete', (formula) => {
    expect(isComplete(formula)).toBe(true);
  });

  it('writes the short form of "this row" out', () => {
    expect(toFileSpelling('Stock[@Size]*[@[Unit price]]')).toBe(
      'Stock[[#This Row],[Size]]*[[#This Row],[Unit price]]',
    );
  });

  it('gives any nest of our own and native calls back as it was, whatever the texts in it say', () => {
    const text = fc.string({ maxLength: 12 }).map((one) => `"${one.replaceAll('"', '""')}"`);
    const leaf = fc.oneof(
      text,
      fc.constantFrom(
        'A1',
        '$B$2',
        'draft',
        '1.5E-3',
        'TRUE',
        "'it''s'!A1:B2",
        '#N/A',
        'Stock[Size]',
        '"_xldudf_MOLD_TAP_DRILL("',
      ),
      fc.nat().map(String),
    );
    const { formula } = fc.letrec<{ formula: string }>((tie) => ({
      formula: fc.oneof(
        { maxDepth: 4, withCrossShrink: true },
        leaf,
        fc
          .tuple(
            fc.constantFrom(
              'MOLD.SEAT.FORCE',
              'MOLD.TAP.DRILL',
              'MOLD.ODD.NAME_2',
              'SUM',
              'SORT',
              'XLOOKUP',
              'IFS',
              'NORM.S.DIST',
            ),
            fc.array(tie('formula'), { maxLength: 3 }),
          )
          .map(([name, args]) => `${name}(${args.join(',')})`),
        fc
          .tuple(tie('formula'), fc.constantFrom('+', '-', '&', '<=', ' * '), tie('formula'))
          .map((parts) => parts.join('')),
        fc.tuple(tie('formula'), tie('formula')).map(([value, body]) => `LET(loc,${value},loc+${body})`),
      ),
    }));
    fc.assert(
      fc.property(formula, (ours) => {
        const file = toFileSpelling(ours);
        expect(read(file)).toBe(ours);
        expect(file.match(/"(?:[^"]|"")*"/g)).toEqual(ours.match(/"(?:[^"]|"")*"/g));
      }),
      { numRuns: 500 },
    );
  });
});

describe('marks of dynamic arrays', () => {
  it.each([
    'MOLD.TAP.DRILL("M6")',
    'A1:A3*2',
    'SUM(A1:A3*B1:B3)',
    'ABS(A1:A3)',
    'SUM((A1:A3)*2)',
    'SEQUENCE(3)',
    'C1#',
    '{1,2,3}',
    'Stock[Size]*2',
  ])('are needed by %s', (formula) => {
    expect(needsArrayMark(formula)).toBe(true);
  });

  it.each([
    'A1+B1',
    'SUM(A1:A3)+1',
    'INDEX(A1:B9,2,1)',
    'IF(A1>2,"MOLD.TAP.DRILL(",3)',
    'SUM(Stock[Size])',
    '[@Size]*2',
    'SUM(A:A)',
  ])('are not needed by %s', (formula) => {
    expect(needsArrayMark(formula)).toBe(false);
  });
});

describe('shared formulas', () => {
  it.each([
    ['A1+$A1+A$1+$A$1', 2, 1, 'B3+$A3+B$1+$A$1'],
    ['SUM(A1:B2,C:C,3:3)', 1, 1, 'SUM(B2:C3,D:D,4:4)'],
    ['LOG10(A1)&"A1"&\'A1\'!A1&Q1!A1', 1, 0, 'LOG10(A2)&"A1"&\'A1\'!A2&Q1!A2'],
    ['Q1[A1]+SUM(Q1:Q3!A1)+draft2025x', 1, 1, 'Q1[A1]+SUM(Q1:Q3!B2)+draft2025x'],
    ['A1', -1, -1, 'XFD1048576'],
  ])('read %s %i rows and %i columns further on as %s', (formula, rows, columns, moved) => {
    expect(shiftFormula(formula, rows, columns)).toBe(moved);
  });
});
