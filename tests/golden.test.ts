import { describe, expect, it } from 'vitest';
import { catalogue } from '../src/catalogue';
import { worksheetFunctions } from '../src/call/functions';
import { inputsOf, type Definition, type Formula, type Step } from '../src/core/define';

/**
 * What sheets in the field rely on, written out so that a change shows as a diff: `npx vitest -u` takes it over, and
 * the changelog says why.
 */
function signature(definition: Definition, name: string = definition.name): string {
  const args = inputsOf(definition).map(({ name: input, optional, default: standard, sameAs }) => {
    const value = standard ?? sameAs;
    return optional ? `[${input}${value === undefined ? '' : ` = ${value}`}]` : input;
  });
  return `${name}(${[...args, '[units = in]'].join(', ')})`;
}

const equation = (symbol: string, step: Step): string =>
  'by' in step
    ? Object.entries(step.cases)
        .map(([word, text]) => `  ${symbol} = ${text}   where ${step.by} is ${word}`)
        .join('\n')
    : `  ${symbol} = ${step.expr}`;

const equations = ({ name, constants, steps, result }: Formula): string =>
  [
    `${name} gives ${result}`,
    ...Object.entries(constants ?? {}).map(([symbol, { is }]) => `  ${symbol} is ${is}`),
    ...Object.entries<Step>(steps).map(([symbol, step]) => equation(symbol, step)),
  ].join('\n');

describe('the contract', () => {
  it('of names, arguments and defaults is as it was', async () => {
    const tools = worksheetFunctions
      .filter(({ id, aliasOf }) => !catalogue.some(({ name }) => name === (aliasOf ?? id)))
      .map(
        ({ id, parameters }) =>
          `${id}(${parameters.map((p) => (p.optional ? `[${p.name}]` : p.name)).join(', ')})`,
      );
    const everyName = catalogue.flatMap((one) =>
      [one.name, ...(one.aliases ?? [])].map((name) => signature(one, name)),
    );
    const text = [...everyName, ...tools].sort().join('\n');
    await expect(`${text}\n`).toMatchFileSnapshot('golden/signatures.txt');
  });

  it('of equations is as it was', async () => {
    const formulas = catalogue.filter((definition): definition is Formula => definition.type === 'formula');
    await expect(`${formulas.map(equations).sort().join('\n\n')}\n`).toMatchFileSnapshot(
      'golden/equations.txt',
    );
  });
});
