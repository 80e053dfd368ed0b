import { CellError, type ErrorCode } from '../../cells/value';
import { ArrayValue, Lambda, raise, Reference, type Scalar } from '../values';
import { single, strictNumber } from './numbersIn';
import { inContext, plain } from './spec';

const is = (name: string, test: (value: Scalar) => boolean) => plain(name, 'v', test);

const NUMBERS: Readonly<Partial<Record<ErrorCode, number>>> = {
  '#NULL!': 1,
  '#DIV/0!': 2,
  '#VALUE!': 3,
  '#REF!': 4,
  '#NAME?': 5,
  '#NUM!': 6,
  '#N/A': 7,
  '#SPILL!': 9,
  '#CALC!': 14,
};

const isOdd = (value: number): boolean => Math.abs(Math.trunc(value)) % 2 === 1;

export const information = [
  is('ISBLANK', (value) => value === null),
  is('ISNUMBER', (value) => typeof value === 'number'),
  is('ISTEXT', (value) => typeof value === 'string'),
  is('ISNONTEXT', (value) => typeof value !== 'string'),
  is('ISLOGICAL', (value) => typeof value === 'boolean'),
  is('ISERROR', (value) => value instanceof CellError),
  is('ISERR', (value) => value instanceof CellError && value.code !== '#N/A'),
  is('ISNA', (value) => value instanceof CellError && value.code === '#N/A'),
  plain('ISEVEN', 'f', (value) => !isOdd(strictNumber(value))),
  plain('ISODD', 'f', (value) => isOdd(strictNumber(value))),
  plain('NA', '', () => raise('#N/A')),
  plain('ERROR.TYPE', 'v', (value) =>
    value instanceof CellError ? (NUMBERS[value.code] ?? raise('#N/A')) : raise('#N/A'),
  ),
  inContext('TYPE', 'A', (context, value) => {
    if (value instanceof Lambda) return 128;
    if (value instanceof ArrayValue && value.size > 1) return 64;
    if (value instanceof Reference && context.array(value).size > 1) return 64;
    const scalar = single(context, value);
    if (scalar instanceof CellError) return 16;
    return typeof scalar === 'string' ? 2 : typeof scalar === 'boolean' ? 4 : 1;
  }),
];
