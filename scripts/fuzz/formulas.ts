/**
 * Random formulas over the cells of `cells.ts`, as people and programs write them. Left out where LibreOffice is known to
 * answer otherwise than a spreadsheet's manual: RANK of what is not in the list, `#.##` of a whole number, 0^0, angles and
 * powers beyond its range.
 */
import * as fc from 'fast-check';

const literal = fc.oneof(
  fc.integer({ min: 0, max: 200 }).map(String),
  fc.constantFrom('2.50', '1.0', '.5', '0.10', '1E3', '2.5e-3', '7.', '1E+2', '0', '1', '10', '100'),
  fc.integer({ min: 1, max: 99_999 }).map((n) => (n / 1000).toFixed(3)),
);
const numberCell = fc.constantFrom(
  'A1',
  'A2',
  '$A$3',
  'A$4',
  '$A5',
  'A6',
  'A7',
  'B1',
  'B2',
  'B3',
  'B4',
  'B5',
);
const numberRange = fc.constantFrom('A1:A8', '$A$1:$A$8', 'A1:B5', 'B1:B8', 'A2:A6', 'A1:C8');
const textCell = fc.constantFrom('C1', 'C2', 'C3', 'C4', 'C5');
const textLiteral = fc.constantFrom('"mold"', '"M6"', '" a b "', '"ABC"', '"2.50"', '"x""y"', '""', '"1E3"');
const small = fc.constantFrom('0', '1', '2', '3', '-1', '-2');
const exponent = fc.constantFrom('1', '2', '3', '-1', '-2');
const positive = fc.constantFrom('1', '2', '3', '4');
const comparison = fc.constantFrom('=', '<>', '<', '>', '<=', '>=');
const condition = fc.constantFrom('">2"', '"<=10"', '"<>5"', '5', '"a*"', '"=12.5"', '"*o*"', '"m?"', '"<>"');
const pattern = fc.constantFrom('"0"', '"0.00"', '"#,##0.0"', '"0%"', '"0.0%"', '"000"', '"0.00E+00"');

type Name = string;
const call = (name: Name, ...args: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc.tuple(...args).map((texts) => `${name}(${texts.join(',')})`);
const calls = (names: readonly Name[], ...args: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc.tuple(fc.constantFrom(...names), ...args).map(([name, ...texts]) => `${name}(${texts.join(',')})`);

const ONE_NUMBER = [
  'ABS',
  'SIGN',
  'SQRT',
  'EXP',
  'LN',
  'LOG10',
  'INT',
  'TRUNC',
  'EVEN',
  'ODD',
  'FACT',
  'ASIN',
  'ACOS',
  'ATAN',
  'TANH',
  'DEGREES',
  'RADIANS',
];
const OF_RANGES = [
  'SUM',
  'AVERAGE',
  'MIN',
  'MAX',
  'COUNT',
  'COUNTA',
  'MEDIAN',
  'STDEV',
  'VAR',
  'SUMSQ',
  'PRODUCT',
];

const grammar = fc.letrec<{ number: string; text: string; truth: string }>((tie) => {
  const number = tie('number');
  const text = tie('text');
  const truth = tie('truth');
  const operator = fc.constantFrom('+', '-', '*', '/');
  return {
    number: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      literal,
      numberCell,
      fc.tuple(number, operator, number).map((parts) => parts.join('')),
      fc.tuple(number, operator, number).map(([a, sign, b]) => `(${a}${sign} ${b})`),
      fc.tuple(fc.oneof(literal, numberCell), exponent).map(([base, power]) => `${base}^${power}`),
      number.map((one) => `-${one}`),
      literal.map((one) => `${one}%`),
      calls(ONE_NUMBER, number),
      calls(OF_RANGES, numberRange),
      calls(OF_RANGES, numberRange, number),
      calls(['ROUND', 'ROUNDUP', 'ROUNDDOWN'], number, small),
      calls(['MOD', 'QUOTIENT'], number, literal),
      call('POWER', fc.oneof(literal, numberCell), exponent),
      call('ATAN2', number, positive),
      calls(['SIN', 'COS', 'TAN'], fc.oneof(literal, numberCell)),
      calls(['SINH', 'COSH'], positive),
      calls(['CEILING', 'FLOOR', 'MROUND'], literal, positive),
      calls(['COMBIN', 'PERMUT', 'GCD', 'LCM'], positive, positive),
      calls(['LARGE', 'SMALL'], numberRange, positive),
      call('RANK', fc.constantFrom('A1', 'A2', '$A$3', 'A8'), fc.constantFrom('A1:A8', 'A1:B8')),
      call('LOG', number, fc.constantFrom('2', '10', '3')),
      call('SUMPRODUCT', fc.constant('A1:A8'), fc.constant('B1:B8')),
      calls(['SUMIF', 'COUNTIF', 'AVERAGEIF'], fc.constantFrom('A1:A8', 'C1:C8', 'B1:B8'), condition),
      call('SUMIF', fc.constant('C1:C8'), condition, fc.constant('A1:A8')),
      call('MATCH', literal, fc.constant('D1:D8'), fc.constantFrom('0', '1')),
      call(
        'VLOOKUP',
        literal,
        fc.constant('D1:E8'),
        fc.constant('2'),
        fc.constantFrom('FALSE', 'TRUE', '0', '1'),
      ),
      call('INDEX', fc.constant('A1:B8'), positive, fc.constantFrom('1', '2')),
      call('CHOOSE', fc.constantFrom('1', '2'), number, number),
      call(
        'DATE',
        fc.constantFrom('2024', '1999'),
        fc.constantFrom('2', '13', '0', '7'),
        fc.constantFrom('29', '1', '0', '31'),
      ),
      calls(['YEAR', 'MONTH', 'DAY', 'WEEKDAY'], fc.integer({ min: 61, max: 60_000 }).map(String)),
      call('LEN', text),
      calls(['FIND', 'SEARCH'], fc.constantFrom('"o"', '"a"', '"B"'), text),
      call('VALUE', fc.constantFrom('"2.50"', '"1E3"', '" 7 "', '"5%"', '"x"')),
      call('IF', truth, number, number),
      call('IFERROR', number, literal),
    ),
    text: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      textLiteral,
      textCell,
      fc.tuple(text, text).map(([a, b]) => `${a}&${b}`),
      fc.tuple(literal, textLiteral).map(([a, b]) => `${a}&${b}`),
      calls(['LEFT', 'RIGHT'], text, positive),
      call('MID', text, positive, positive),
      calls(['UPPER', 'LOWER', 'TRIM'], text),
      call('CONCATENATE', text, fc.constant('"-"'), text),
      call('SUBSTITUTE', text, fc.constantFrom('"o"', '"a"', '"B"'), textLiteral),
      call('REPT', textLiteral, positive),
      call('TEXT', literal, pattern),
      call('IF', truth, text, text),
    ),
    truth: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      fc.tuple(number, comparison, number).map((parts) => parts.join('')),
      fc.tuple(text, comparison, text).map((parts) => parts.join('')),
      fc.constantFrom('TRUE', 'FALSE'),
      calls(['AND', 'OR'], truth, truth),
      call('NOT', truth),
      calls(['ISNUMBER', 'ISTEXT', 'ISBLANK'], fc.oneof(numberCell, textCell, fc.constant('C8'))),
      call('ISERROR', number),
    ),
  };
});

export function randomFormulas(count: number, seed: number): string[] {
  const any = fc.oneof({ weight: 4, arbitrary: grammar.number }, grammar.text, grammar.truth);
  return fc.sample(any, { numRuns: count, seed });
}
