import { derived } from '../../core/define';
import { stressesOf } from '../../core/answer';
import { notInTable, Refusal } from '../../core/refusal';
import { marginOf } from '../../core/strength';
import { catalogue } from '../../catalogue';
import type { Matrix } from '../../cells/value';
import { FUNCTION, ITS_ARGUMENTS } from './parameters';
import { atPlace, definitionOf } from './place';
import type { Tool } from './tool';

const withStrength = (): string =>
  catalogue
    .filter((definition) => definition.type !== 'lookup' && definition.strength)
    .map(({ name }) => name)
    .join(', ');

export const showMargin: Tool = {
  name: 'SHOW.MARGIN',
  summary: 'Margin of a function against yield: yield of the metal over its governing stress; 1 yields.',
  parameters: [FUNCTION, ITS_ARGUMENTS],
  example: 'SHOW.MARGIN("PLATE.PILLAR",12000,4,1.25,3,"P20")',
  sources: [derived('Yield of the table of metals over the stress among the steps of the function')],
  notes: [
    'Yield is typical and that at 20 °C; above 100 °C it is less. Divide by what your shop asks for: 1.5 to 2 on a static load that is well known, more where a failure can hurt someone (common practice).',
    'Of a capacity, such as DOWEL.SHEAR or PIN.BUCKLE, the margin is the capacity over your load.',
  ],
  cautions: [
    'A margin is as good as its load: a fit, a friction or a pressure that is off by half takes half of it away.',
  ],
  related: ['SHOW.CHECK', 'METAL.VALUE'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    return atPlace(definition, args.rest('arguments'), ({ values, system }): Matrix => {
      const strength = marginOf(definition, values, stressesOf(definition, values, system));
      if (!strength)
        return notInTable(
          'function',
          `is ${definition.name}, which knows no stress and metal together; these do: ${withStrength()}`,
        );
      const { margin, metal } = strength;
      if (margin === undefined)
        return notInTable(metal, 'is given as a number, so its strength is not known; name the metal');
      if (!Number.isFinite(margin))
        throw new Refusal(
          'There is no stress with these values, so there is no margin to tell.',
          undefined,
          '#N/A',
        );
      return [[margin]];
    });
  },
};
