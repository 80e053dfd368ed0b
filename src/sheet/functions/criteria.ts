/** Conditions as COUNTIF and its kin and the database functions write them: `">=5"`, `"b*"`, `"<>"`, 7. */
import { CellError, type ErrorCode } from '../../cells/value';
import { numberInText } from '../coerce';
import { compareNumbers, compareTexts } from '../compare';
import { ERRORS, type Scalar } from '../values';
import { hasWildcards, wildcard } from './wildcards';

export type Criterion = (value: Scalar) => boolean;

const OPERATOR = /^(<=|>=|<>|<|>|=)?([\s\S]*)$/;

const isEqual = (order: number) => order === 0;
const ORDERS: Readonly<Record<string, (order: number) => boolean>> = {
  '=': isEqual,
  '<>': (order) => order !== 0,
  '<': (order) => order < 0,
  '>': (order) => order > 0,
  '<=': (order) => order <= 0,
  '>=': (order) => order >= 0,
};

/** The condition that a scalar stands for. A blank cell stands for 0. */
export function criterion(wanted: Scalar, date1904: boolean): Criterion {
  if (typeof wanted !== 'string') return ofScalar(wanted ?? 0, '=');
  const [, operator, operand = ''] = OPERATOR.exec(wanted) ?? [];
  if (operand === '') return ofNothing(operator);
  return ofScalar(operandOf(operand, date1904), operator ?? '=');
}

/** `=` takes blank cells alone, no text at all also empty text; `<>` whatever is there. */
function ofNothing(operator: string | undefined): Criterion {
  if (operator === undefined) return (value) => value === null || value === '';
  if (operator === '=') return (value) => value === null;
  return operator === '<>' ? (value) => value !== null : () => false;
}

function operandOf(text: string, date1904: boolean): Exclude<Scalar, null> {
  const number = numberInText(text, date1904);
  if (number !== undefined) return number;
  const word = text.toUpperCase();
  if (word === 'TRUE' || word === 'FALSE') return word === 'TRUE';
  return word in ERRORS ? ERRORS[word as ErrorCode] : text;
}

function ofScalar(wanted: Exclude<Scalar, null>, operator: string): Criterion {
  const holds = ORDERS[operator] ?? isEqual;
  if (operator === '<>') {
    // A number kept as text equals its number, and differs from it too: Excel's own values say so.
    if (typeof wanted === 'number')
      return (value) => typeof value !== 'number' || holds(compareNumbers(value, wanted));
    const same = ofScalar(wanted, '=');
    return (value) => !same(value);
  }
  if (typeof wanted === 'number') {
    const asText = operator === '=' ? (value: string) => plainNumber(value) === wanted : () => false;
    return (value) =>
      typeof value === 'number'
        ? holds(compareNumbers(value, wanted))
        : typeof value === 'string' && asText(value);
  }
  if (typeof wanted === 'boolean') {
    return (value) => typeof value === 'boolean' && holds(Number(value) - Number(wanted));
  }
  if (wanted instanceof CellError) {
    return (value) => operator === '=' && value instanceof CellError && value.code === wanted.code;
  }
  if (operator === '=' && hasWildcards(wanted)) {
    const pattern = wildcard(wanted);
    return (value) => typeof value === 'string' && pattern.matches(value);
  }
  return (value) => typeof value === 'string' && holds(compareTexts(value, wanted));
}

/** A number stored as text counts as the number. */
const plainNumber = (text: string): number | undefined =>
  text.length < 32 && /^\s*[+-]?[\d.]/.test(text) ? Number(text) : undefined;
