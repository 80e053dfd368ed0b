import { raise } from '../values';
import { plain } from './spec';

const over = (value: number): number => (value === 0 ? raise('#DIV/0!') : 1 / value);

export const trigonometry = [
  plain('PI', '', () => Math.PI),
  plain('RADIANS', 'n', (degrees) => (degrees / 180) * Math.PI),
  plain('DEGREES', 'n', (radians) => (radians / Math.PI) * 180),
  plain('SIN', 'n', Math.sin),
  plain('COS', 'n', Math.cos),
  plain('TAN', 'n', Math.tan),
  plain('COT', 'n', (angle) => over(Math.tan(angle))),
  plain('SEC', 'n', (angle) => over(Math.cos(angle))),
  plain('CSC', 'n', (angle) => over(Math.sin(angle))),
  plain('ASIN', 'n', Math.asin),
  plain('ACOS', 'n', Math.acos),
  plain('ATAN', 'n', Math.atan),
  plain('ACOT', 'n', (value) => Math.PI / 2 - Math.atan(value)),
  /** x before y, the other way around than in most languages. */
  plain('ATAN2', 'nn', (x, y) => (x === 0 && y === 0 ? raise('#DIV/0!') : Math.atan2(y, x))),
  plain('SINH', 'n', Math.sinh),
  plain('COSH', 'n', Math.cosh),
  plain('TANH', 'n', Math.tanh),
  plain('COTH', 'n', (value) => over(Math.tanh(value))),
  plain('SECH', 'n', (value) => 1 / Math.cosh(value)),
  plain('CSCH', 'n', (value) => over(Math.sinh(value))),
  plain('ASINH', 'n', Math.asinh),
  plain('ACOSH', 'n', Math.acosh),
  plain('ATANH', 'n', Math.atanh),
  plain('ACOTH', 'n', (value) => Math.atanh(1 / value)),
];
