import { inputsOf, type Bearing, type Definition } from './define';
import { numberText } from './format';

/** What the value of a named input says of its strength: Pa, at room temperature. */
export interface Yielding {
  /** As the table calls it. */
  readonly name?: string | undefined;
  readonly yield?: number | undefined;
}

/** The words of every verdict, from good to unknown. */
export type Verdict = 'holds' | 'little to spare' | 'does not hold' | 'not known';

/** From here up a metal that is not quite as its table says still holds (common practice for a static load that is well known). */
export const SPARE = 1.2;

/** The governing stress of one calculation against the yield of the metal that bears it. */
export interface Margin {
  /** Symbol of the step that is the stress. */
  readonly stress: string;
  /** Name of the input that is the metal. */
  readonly metal: string;
  /** Name of the metal itself; absent where it was given as a number. */
  readonly called?: string | undefined;
  /** Pa; absent where the metal was given as a number. */
  readonly yield?: number;
  /** Yield over stress; infinite without stress. */
  readonly margin?: number;
  readonly verdict: Verdict;
}

const verdictOf = (margin: number): Verdict =>
  margin < 1 ? 'does not hold' : margin < SPARE ? 'little to spare' : 'holds';

/**
 * The least of the margins that a definition asks for; undefined where it asks for none, or has not got so far. The
 * metal that it names first must be known; of another one that is given as a number nothing can be said.
 */
export function marginOf(
  definition: Definition,
  values: readonly unknown[],
  steps: readonly { readonly symbol: string; readonly value: number | string }[],
): Margin | undefined {
  const bearings: readonly Bearing[] = definition.type === 'lookup' ? [] : (definition.strength ?? []);
  const margins = bearings.flatMap(({ stress, of }): Margin[] => {
    const at = steps.find(({ symbol }) => symbol === stress)?.value;
    const metal = values[inputsOf(definition).findIndex(({ name }) => name === of)] as Yielding | undefined;
    if (typeof at !== 'number' || metal === undefined) return [];
    if (metal.yield === undefined) return [{ stress, metal: of, verdict: 'not known' }];
    const margin = at > 0 ? metal.yield / at : Infinity;
    return [
      { stress, metal: of, called: metal.name, yield: metal.yield, margin, verdict: verdictOf(margin) },
    ];
  });
  const [first, ...others] = margins;
  if (first?.margin === undefined) return first;
  return others.reduce<Margin>(
    (least, other) => ((other.margin ?? Infinity) < (least.margin ?? Infinity) ? other : least),
    first,
  );
}

/** As it is said everywhere: `Yield is 2.3 × the stress (margin 2.3; 1 yields)`. */
export const marginText = (margin: number): string => marginWords(shownMargin(margin));

const marginWords = (shown: string): string => `Yield is ${shown} × the stress (margin ${shown}; 1 yields)`;

/** Of two digits. */
function shownMargin(margin: number): string {
  // Rounded down, so that no margin reads better than it is.
  const place = 10 ** (Math.floor(Math.log10(margin)) - 1);
  return numberText(Math.floor(margin / place + 1e-9) * place);
}

/** What a person must know where there is too little between the stress and the yield. */
export function marginCaution({ margin, metal, called, verdict }: Margin): string | undefined {
  if (margin === undefined || verdict === 'holds') return undefined;
  const which = called === undefined ? metal : calledText(called, metal);
  return cautionWords(verdict, which, shownMargin(margin));
}

/** A metal by its name, and which of them it is: `P20 (insertMetal)`. */
export const calledText = (called: string, metal: string): string => `${called} (${metal})`;

/** The sentence, with the metal and the margin as they are to be shown. */
export function cautionWords(verdict: Verdict, which: string, shown: string): string {
  const what = marginWords(shown);
  return verdict === 'does not hold'
    ? `Does not hold: ${which} yields. ${what}, by its typical yield at 20 °C.`
    : `Little to spare: ${which} is close to yield. ${what}, by its typical yield at 20 °C; it is less above 100 °C.`;
}
