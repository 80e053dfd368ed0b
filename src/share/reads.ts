import { isCall, tokenize, type Token } from '../cells/formulaTokens';
import type { Area } from '../cells/address';
import type { Sheet } from '../package/model';
import type { Place, References } from '../workbook/references';
import { referenceEnd } from './slice';

/** What these read does not stand in their text. */
const OPAQUE = /^(?:INDIRECT|OFFSET|CELL|INFO|LAMBDA|LET)$/i;

export interface Reads {
  readonly areas: readonly { readonly sheet: Sheet; readonly area: Area }[];
  /** Not all that it reads stands in its text. */
  readonly opaque: boolean;
}

/** The cells that a formula reads. */
export function readsOf(formula: string, place: Place, references: References): Reads {
  const tokens = tokenize(formula).filter(({ kind }) => kind !== 'space');
  const areas: { sheet: Sheet; area: Area }[] = [];
  let opaque = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const end = referenceEnd(tokens, at);
    if (end > at) {
      const text = tokens
        .slice(at, end)
        .map((one) => one.text)
        .join('');
      const found = references.areaOf(text, place);
      if (found) areas.push(found);
      else if (!/^(?:TRUE|FALSE|\{.*\})$/i.test(text)) opaque = true;
      at = end - 1;
    } else if (token.kind === 'name' && isCall(tokens, at) && OPAQUE.test(token.text)) opaque = true;
  }
  return { areas, opaque };
}
