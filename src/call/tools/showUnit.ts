import {
  derived,
  type Column,
  type Definition,
  type Formula,
  type Lookup,
  type Procedure,
} from '../../core/define';
import { systemUnit, type Kind, type System } from '../../core/quantity';
import { notInTable } from '../../core/refusal';
import type { Matrix } from '../../cells/value';
import { FUNCTION, UNITS } from './parameters';
import { definitionOf } from './place';
import type { Tool } from './tool';

/** All that a function may answer with. */
function kindsOf(definition: Definition): readonly (Kind | 'text')[] {
  switch (definition.type) {
    case 'formula': {
      const { steps, result } = definition as Formula;
      return [(steps[result] as { gives: Kind }).gives];
    }
    case 'lookup':
      return Object.values<Column<unknown>>((definition as Lookup).columns).map(({ gives }) => gives);
    case 'procedure': {
      const { gives } = definition as Procedure;
      if (typeof gives === 'string') return [gives];
      return 'row' in gives ? gives.row.map((part) => part.gives) : Object.values(gives.kinds);
    }
  }
}

/** As a sheet says tons of force, where the short symbols of units would be taken for masses. */
const IN_WORDS: Partial<Record<Kind, Readonly<Record<System, string>>>> = {
  tonnage: { in: 'US ton', mm: 't' },
};

const unitText = (kind: Kind | 'text', system: System): string =>
  kind === 'text' ? 'text' : (IN_WORDS[kind]?.[system] ?? systemUnit(kind, system).symbol);

export const showUnit: Tool = {
  name: 'SHOW.UNIT',
  summary: 'Unit of a function’s result, for the unit column of a sheet.',
  parameters: [FUNCTION, UNITS],
  example: 'SHOW.UNIT("COOL.MOLDTEMP","mm")',
  sources: [derived('What the function’s definition says')],
  notes: ['Empty for a ratio or a count, "text" for a text.'],
  related: ['SHOW.WORK', 'UNIT.CONVERT'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    const system = args.units();
    const [unit = '', ...others] = new Set(kindsOf(definition).map((kind) => unitText(kind, system)));
    if (others.length > 0)
      return notInTable(
        'function',
        `is ${definition.name}, whose unit depends on what it is asked for: ${[unit, ...others].filter((text) => text !== '').join(', ')}`,
      );
    return [[unit]];
  },
};
