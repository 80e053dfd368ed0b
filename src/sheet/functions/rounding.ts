/** Rounding, on the decimal digits that a person sees: 1.005 to two places is 1.01, 0.3 in steps of 0.1 is three. */
import { raise } from '../values';
import { strictNumber } from './numbersIn';
import { plain } from './spec';

/** The digits that a cell holds for certain. */
const seen = (value: number): number => Number(value.toPrecision(15));

type Rule = (magnitude: number) => number;

function roundBy(rule: Rule, value: number, places: number): number {
  const digits = Math.trunc(places);
  const shifted = shift(Math.abs(value), digits);
  // Nothing stands so far behind the point of a number so large.
  if (digits > 15 || !Number.isFinite(shifted)) return value;
  // Nothing less than zero is left of a small number below it.
  return Math.sign(value) * shift(rule(seen(shifted)), -digits) + 0;
}

/** Half away from zero. */
export const roundTo = (value: number, digits: number): number => roundBy(Math.round, value, digits);

/** Moves the decimal point by the text of the number: to multiply by a power of ten would add its own error. */
const shift = (value: number, places: number): number => {
  const [mantissa = '', power = '0'] = String(value).split('e');
  return Number(`${mantissa}e${Number(power) + places}`);
};

/** A multiple of a step, its own digits seen as a person sees them. */
const inSteps = (rule: Rule, value: number, step: number): number =>
  step === 0 ? 0 : rule(seen(value / step)) * step;

/** Up or down, without regard to the sign of the step. */
const upward = (value: number, step: number) => inSteps(Math.ceil, value, Math.abs(step));
const downward = (value: number, step: number) => inSteps(Math.floor, value, Math.abs(step));

const precise = (name: string, round: typeof upward) =>
  plain(name, 'nn?', (value, step = 1) => round(value, step));

/** `away` from zero instead for negative numbers, where the mode is given. */
const inModes = (name: string, usual: typeof upward, away: typeof upward) =>
  plain(name, 'nn?n?', (value, step, mode = 0) => (value < 0 && mode !== 0 ? away : usual)(value, step ?? 1));

const toNextEven = (value: number, parity: 0 | 1): number => {
  const magnitude = Math.ceil(Math.abs(value));
  return (value < 0 ? -1 : 1) * (magnitude % 2 === parity ? magnitude : magnitude + 1);
};

export const rounding = [
  plain('ROUND', 'nn', roundTo),
  plain('ROUNDUP', 'nn', (value, digits) => roundBy(Math.ceil, value, digits)),
  plain('ROUNDDOWN', 'nn', (value, digits) => roundBy(Math.floor, value, digits)),
  plain('TRUNC', 'nn?', (value, digits = 0) => roundBy(Math.floor, value, digits)),
  plain('INT', 'n', Math.floor),
  plain('EVEN', 'n', (value) => toNextEven(value, 0)),
  plain('ODD', 'n', (value) => toNextEven(value, 1)),
  plain('CEILING', 'nn', (value, step) =>
    value > 0 && step < 0 ? raise('#NUM!') : inSteps(Math.ceil, value, step),
  ),
  plain('FLOOR', 'nn', (value, step) => {
    if (value > 0 && step < 0) return raise('#NUM!');
    if (step === 0 && value !== 0) return raise('#DIV/0!');
    return inSteps(Math.floor, value, step);
  }),
  inModes('CEILING.MATH', upward, (value, step) => -upward(-value, step)),
  inModes('FLOOR.MATH', downward, (value, step) => -downward(-value, step)),
  precise('CEILING.PRECISE', upward),
  precise('ISO.CEILING', upward),
  precise('FLOOR.PRECISE', downward),
  plain('MROUND', 'ff', (number, multiple) => {
    const value = strictNumber(number);
    const step = strictNumber(multiple);
    if (value * step < 0) return raise('#NUM!');
    return Math.sign(value) * inSteps(Math.round, Math.abs(value), Math.abs(step));
  }),
];
