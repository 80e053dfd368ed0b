import { worksheetFunctions } from '../../../src/call/functions';
import { isCall, tokenize } from '../../../src/cells/formulaTokens';
import { NAMESPACE } from '../../../src/cells/namespace';
import { CellError, isErrorCode, type CellValue } from '../../../src/cells/value';
import { callsIn } from '../../../src/work/calls';

/** What Excel refuses to do, with the code that it gives. */
export class Refused extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const DAY = 86_400_000;
const THIS_YEAR = 2026;

/** A text as Excel takes it from the keyboard: numbers, percentages, dates, times, truth values and errors are no texts. */
export function typedText(text: string): { readonly value: CellValue; readonly format?: string } {
  const trimmed = text.trim();
  const code = trimmed.toUpperCase();
  if (isErrorCode(code)) return { value: new CellError(code) };
  if (/^(true|false)$/i.test(trimmed)) return { value: /^true$/i.test(trimmed) };
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(trimmed)) return { value: Number(trimmed) };
  if (/^[+-]?(\d+\.?\d*|\.\d+)%$/.test(trimmed))
    return { value: Number(trimmed.slice(0, -1)) / 100, format: '0%' };
  const mixed = /^(\d+) (\d+)\/(\d+)$/.exec(trimmed);
  if (mixed) return { value: Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]), format: '# ?/?' };
  const time = /^(\d{1,2}) ?([ap])m?$/i.exec(trimmed);
  if (time && Number(time[1]) <= 12) return { value: Number(time[1]) / 24, format: 'h:mm AM/PM' };
  return dateOf(trimmed) ?? { value: text };
}

function dateOf(text: string): { value: number; format: string } | undefined {
  const [, first = '', second = ''] = /^(\w+)[-/ ](\d{1,4})$/.exec(text) ?? [];
  const named = MONTHS.indexOf(first.toLowerCase()) + 1;
  const month = named > 0 ? named : Number(first);
  if (!(month >= 1 && month <= 12) || second === '') return undefined;
  const number = Number(second);
  const isDay = number >= 1 && number <= new Date(THIS_YEAR, month, 0).getDate();
  const years = number < 30 ? 2000 + number : number < 100 ? 1900 + number : number;
  const [year, day] = isDay ? [THIS_YEAR, number] : [years, 1];
  if (year < 1900 || year > 9999) return undefined;
  const value = (Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / DAY;
  return { value, format: isDay ? 'd-mmm' : 'mmm-yy' };
}

/** Refuses a formula as Excel does at its entry; `formulas` takes American signs wherever Excel stands. */
export function checkFormula(formula: string): void {
  const refuse = (why: string): never => {
    throw new Refused('InvalidArgument', `There is a problem with this formula: ${why}.`);
  };
  if (formula.length > 8192) refuse('it is longer than 8192 characters');
  const tokens = tokenize(formula);
  const depth = tokens.reduce(
    (open, { kind }) => open + (kind === 'open' ? 1 : kind === 'close' ? -1 : 0),
    0,
  );
  if (depth !== 0) refuse('brackets do not match');
  let braces = 0;
  for (const { text } of tokens) {
    if (text === '{') braces++;
    if (text === '}') braces--;
    if (text === ';' && braces === 0) refuse('a semicolon between arguments');
  }
  const long = tokens.find(({ kind, text }) => kind === 'string' && text.length > 257);
  if (long) refuse('a text of more than 255 characters');
  for (const { id, args } of callsIn(formula)) {
    const fn = worksheetFunctions.find((one) => one.id === id);
    if (!fn) continue;
    const needed = fn.parameters.filter(({ optional, repeating }) => !optional && !repeating).length;
    // A bracket with nothing in it is one argument left empty.
    const given = Math.max(args.length, 1);
    if (given < needed) refuse(`too few arguments for ${id}`);
    if (!fn.parameters.some(({ repeating }) => repeating) && args.length > fn.parameters.length)
      refuse(`too many arguments for ${id}`);
  }
}

/** True for a formula that calls one of our functions in the spelling in which Excel binds it at its entry. */
export const isTypedCall = (formula: string): boolean => {
  const tokens = tokenize(formula);
  return tokens.some(({ text }, at) => isCall(tokens, at) && text.toUpperCase().startsWith(`${NAMESPACE}.`));
};
