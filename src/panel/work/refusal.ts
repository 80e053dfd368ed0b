import { CellError } from '../../cells/value';
import type { Call } from '../../work/calls';
import { readGiven, type GivenArgument, type Surroundings } from '../../work/givenArguments';

/** A call that refuses, with what it says. */
export interface RefusedCall {
  readonly call: Call;
  readonly given: readonly GivenArgument[];
  readonly message: string;
}

/** The first call of a formula that refuses. Excel shows beside the cell what it says, but does not hand it over. */
export async function refusalIn(
  calls: readonly Call[],
  around: Surroundings,
): Promise<RefusedCall | undefined> {
  for (const call of calls) {
    const fn = around.functions.find(({ id }) => id === call.id);
    if (!fn) continue;
    const given = await Promise.all(call.args.map((argument) => readGiven(argument, around)));
    const error = fn
      .call(given.map(({ value }) => value))
      .flat()
      .find((one) => one instanceof CellError);
    if (error && error.message !== '') return { call, given, message: error.message };
  }
  return undefined;
}
