import { SPARE } from '../core/strength';
import { GOOD, INFO, WARN } from './looks';

/** What a row is judged by: whether something is so, or how often over it is there; 1 is just enough. */
export type Judged = { readonly when: string } | { readonly margin: string };

/** The words of every verdict on every design sheet, as SHOW.CHECK and SHOW.MARGIN mean them. */
export const HOLDS = '✓ holds';
export const LITTLE = '! little to spare';
export const FAILS = '✗ does not hold';
export const UNKNOWN = '? not known';

/** Each word with its look. */
export const SCALE = [
  [HOLDS, GOOD],
  [LITTLE, INFO],
  [FAILS, WARN],
  [UNKNOWN, INFO],
] as const;

/** The word for a margin, or for what is so or not; what cannot be worked out is not known. */
export function verdictFormula(judged: Judged): string {
  const word =
    'when' in judged
      ? `IF(${judged.when}, "${HOLDS}", "${FAILS}")`
      : `LOOKUP(${judged.margin}, {-1E+99,1,${SPARE}}, {"${FAILS}","${LITTLE}","${HOLDS}"})`;
  return `IFERROR(${word}, "${UNKNOWN}")`;
}

/** The word for what SHOW.CHECK says in another cell. */
export const checkedFormula = (words: string): string =>
  `IFERROR(IF(${words}="in range","${HOLDS}",IF(ISNUMBER(SEARCH("does not hold",${words})),"${FAILS}",IF(ISNUMBER(SEARCH("little to spare",${words})),"${LITTLE}","${UNKNOWN}"))),"${UNKNOWN}")`;

/** The worst of the words in a range. */
export function overallFormula(range: string): string {
  const any = (word: string): string => `SUMPRODUCT(--(${range}="${word}"))>0`;
  return `IF(${any(FAILS)},"${FAILS}",IF(${any(UNKNOWN)},"${UNKNOWN}",IF(${any(LITTLE)},"${LITTLE}","${HOLDS}")))`;
}
