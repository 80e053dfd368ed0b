import { worksheetFunctions } from '../call/functions';
import { callsOurs, fromFileSpelling, knownFunctions } from '../package/spelling';
import { isCall, tokenize } from '../cells/formulaTokens';
import { NAMESPACE } from '../cells/namespace';

const known = knownFunctions(worksheetFunctions.map(({ id }) => id));

/**
 * A formula as Excel hands it out, in the spelling in which a person types it. While the add-in was away Excel shows
 * `_xldudf_MOLD_SEAT_FORCE(`, and from a file without the mark of dynamic arrays `@MOLD.SEAT.FORCE(`, which would
 * give one cell of a table only.
 */
export const typedFormula = (formula: string): string => {
  if (!formula.startsWith('=')) return formula;
  const tokens = tokenize(fromFileSpelling(formula.slice(1), known));
  return `=${tokens
    .filter((token, at) => !(token.text === '@' && isOurCall(tokens, at + 1)))
    .map(({ text }) => text)
    .join('')}`;
};

/** True where a formula, with its `=`, calls one of our functions, in whatever spelling. */
export const isOurs = (formula: string): boolean => callsOurs(typedFormula(formula).slice(1));

const isOurCall = (tokens: ReturnType<typeof tokenize>, at: number): boolean =>
  isCall(tokens, at) && (tokens[at]?.text.startsWith(`${NAMESPACE}.`) ?? false);
