import { derived } from '../../core/define';
import { foldName } from '../../core/names';
import { notInTable } from '../../core/refusal';
import { inLetters } from '../../derive/typeset';
import { workOf, type WorkLine } from '../../derive/work';
import type { Matrix } from '../../cells/value';
import { present } from '../worksheet';
import { FUNCTION, ITS_ARGUMENTS } from './parameters';
import { atPlace, definitionOf } from './place';
import { parameter, type Tool } from './tool';

/** A step by its symbol, as it is written or as it is read, or by its meaning. */
function findStep(lines: readonly WorkLine[], wanted: string): WorkLine | undefined {
  const trimmed = wanted.trim();
  const word = foldName(trimmed);
  return (
    lines.find(({ symbol }) => symbol === trimmed) ??
    lines.find(({ symbol }) => inLetters(symbol) === trimmed) ??
    lines.find(({ says }) => foldName(says) === word) ??
    only(lines.filter(({ symbol }) => foldName(symbol) === word))
  );
}

const only = <T>(found: readonly T[]): T | undefined => (found.length === 1 ? found[0] : undefined);

export const showStep: Tool = {
  name: 'SHOW.STEP',
  late: true,
  summary: 'Value of one step of a function’s work.',
  parameters: [
    FUNCTION,
    parameter('step', 'Symbol of the step, such as "K", or its meaning, as SHOW.WORK writes them'),
    ITS_ARGUMENTS,
  ],
  example: 'SHOW.STEP("SPRING.STRESS","C",100,2,18,"mm")',
  sources: [derived('The step of the function itself')],
  notes: ['In the unit that SHOW.WORK gives beside the step.'],
  related: ['SHOW.WORK', 'SHOW.MARGIN'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    const wanted = args.text('step');
    return atPlace(definition, args.rest('arguments'), ({ values, system }): Matrix => {
      const { lines } = workOf(definition, values, system, ({ name }) => name);
      const steps = lines.filter(({ role }) => role !== 'input');
      const found = findStep(steps, wanted);
      if (!found)
        return notInTable(
          'step',
          `is "${wanted}"; ${definition.name} has ${steps.map(({ symbol, says }) => `${symbol} (${says})`).join(', ')}`,
        );
      return [[present(found.value, found.gives, system)]];
    });
  },
};
