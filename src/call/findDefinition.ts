import { catalogue } from '../catalogue';
import { inputsOf, type AnyInput, type Definition } from '../core/define';
import { Refusal } from '../core/refusal';
import { nameFinder } from '../tables/names';
import { NAMESPACE } from '../cells/namespace';

const find = nameFinder('function', catalogue);
const PREFIX = new RegExp(`^=?${NAMESPACE}\\.`, 'i');

/** A function of the catalogue by its name, with or without the namespace. Throws `UnknownName` with the nearest ones. */
export const findDefinition = (name: string): Definition =>
  find(name.trim().replace(PREFIX, '').replace(/\($/, ''));

/** The place of an argument among a function's inputs. */
export function inputIndex(definition: Definition, name: string): number {
  const inputs = inputsOf(definition);
  const index = inputs.findIndex((input) => input.name.toLowerCase() === name.trim().toLowerCase());
  if (index >= 0) return index;
  throw new Refusal(
    `names "${name}", but ${definition.name} takes ${inputs.map((input) => input.name).join(', ')}`,
  );
}

/** An argument with its place. */
export function argumentNamed(definition: Definition, name: string) {
  const index = inputIndex(definition, name);
  return { definition, index, input: inputsOf(definition)[index] as AnyInput };
}
