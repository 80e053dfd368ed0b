import type { Kind } from './quantity';

/**
 * A bad input, said so that the person knows what to change. Only these two error codes keep a message in Excel.
 * `#N/A` is for a name that stands in no table, `#VALUE!` for everything else.
 */
export class Refusal extends Error {
  override readonly name = 'Refusal';

  constructor(
    message: string,
    /** The argument to change; the boundary puts its name and the value given before the message. */
    readonly argument?: string,
    readonly code: '#VALUE!' | '#N/A' = '#VALUE!',
    /** Steps that the message names in braces, for the boundary to put in their units. */
    readonly steps: Readonly<Record<string, { readonly value: number; readonly gives: Kind }>> = {},
  ) {
    super(message);
  }
}

/** Refuses one argument of a function by its name in the catalogue. */
export const refuse = (argument: string, message: string): never => {
  throw new Refusal(message, argument);
};

/** Refuses a name or a class that stands in no table. */
export const notInTable = (argument: string, message: string): never => {
  throw new Refusal(message, argument, '#N/A');
};

/** Runs a part that refuses without knowing which argument it concerns, and names it. */
export function naming<T>(argument: string, part: () => T): T {
  try {
    return part();
  } catch (error) {
    if (error instanceof Refusal && error.argument === undefined) {
      throw new Refusal(error.message, argument, error.code);
    }
    throw error;
  }
}
