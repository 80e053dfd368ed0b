import type { Definition } from '../../core/define';
import { naming, Refusal } from '../../core/refusal';
import type { Argument } from '../../cells/value';
import { findDefinition } from '../findDefinition';
import { readCall, type Place } from '../readCall';
import type { Args } from './tool';

/** The function that a tool is asked about. */
export const definitionOf = (args: Args): Definition =>
  naming('function', () => findDefinition(args.text('function')));

/** Does something with one calculation of a function, its arguments in their places; a refusal of its inputs says their values. */
export function atPlace<T>(
  definition: Definition,
  args: readonly Argument[],
  work: (place: Place & { readonly args: readonly Argument[] }) => T,
): T {
  const call = readCall(definition, args);
  const { rows, columns } = call.shape;
  if (rows * columns > 1)
    throw new Refusal('are ranges; the work is shown for one cell of each', 'arguments');
  const place = call.at(0, 0);
  try {
    return work({ ...place, args: call.args });
  } catch (error) {
    throw error instanceof Refusal ? call.explain(error, place) : error;
  }
}
