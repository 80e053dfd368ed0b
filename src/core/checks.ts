import type { Amount, AnyInput, NameOf, Source } from './define';

/**
 * What definitions are tested by: it stands beside each in `<name>.checks.ts`, where the tests and the help find it.
 * No program that a person waits for loads it.
 */

/** An outside check or a limiting case. Given and expected amounts carry their units. */
export interface Check<N extends string = string> {
  readonly given: Readonly<Partial<Record<N, Amount | readonly Amount[]>>>;
  readonly expect: Amount | readonly Amount[];
  /** Relative tolerance; absolute, in the unit of `expect`, where that is zero. */
  readonly within?: number;
  readonly from: string;
  /** How that was come by; absent where the value is worked out from the defining equation by other means than ours. */
  readonly kind?: Source['kind'];
  /** A case whose answer is known without the equation: zero friction, infinite stiffness, equal parts. */
  readonly limit?: true;
  /** The system whose unitless constants the check is about; both otherwise. */
  readonly units?: 'in' | 'mm';
}

/** The checks of one definition, by its name. */
export interface Checks {
  readonly of: string;
  readonly checks: readonly [Check, ...Check[]];
}

/** Binds checks to their definition: what is given must be an argument of it. The first is the example of the help. */
export const checks = <const I extends readonly AnyInput[]>(
  { name }: { readonly name: string; readonly inputs: I },
  list: readonly [Check<NameOf<I>>, ...Check<NameOf<I>>[]],
): Checks => ({ of: name, checks: list });

/** How the expected value of a check was come by. */
export const kindOf = ({ kind }: Check): Source['kind'] => kind ?? 'derived';
