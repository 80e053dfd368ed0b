import { worksheetFunction } from '../call/worksheet';
import { CellError, type Argument } from '../cells/value';
import { inputsOf, type Amount, type AnyInput, type Definition } from '../core/define';
import type { Kind, System } from '../core/quantity';
import { roundedIn } from './units';

/** What the inputs of a form are at first, by their names, as definitions write amounts and names. */
export type Given = Readonly<Record<string, Amount | readonly Amount[] | undefined>>;

/** An example in the units of a sheet, rounded as a person would type it; as it was written where the function takes it only so. */
export function givenIn(definition: Definition, given: Given, system: System): Given {
  const rounded = Object.fromEntries(
    inputsOf(definition).map((input): [string, Given[string]] => {
      const first = given[input.name];
      const kind = kindOf(input);
      if (kind === undefined || first === undefined) return [input.name, first];
      return [
        input.name,
        typeof first === 'object'
          ? first.map((one) => roundedIn(one, kind, system))
          : roundedIn(first, kind, system),
      ];
    }),
  );
  return isAnswered(definition, rounded, system) ? rounded : given;
}

const kindOf = ({ reading }: AnyInput): Kind | undefined =>
  reading.as === 'quantity' || reading.as === 'list' ? reading.kind : undefined;

function isAnswered(definition: Definition, given: Given, system: System): boolean {
  const args = inputsOf(definition).map(({ name }): Argument => {
    const first = given[name];
    return first === undefined ? undefined : [first].flat().map((one) => [one]);
  });
  const answer = worksheetFunction(definition).call([...args, [[system]]]);
  return !answer.flat().some((cell) => cell instanceof CellError);
}
