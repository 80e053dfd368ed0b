import { derived, type Column, type Definition, type Lookup, type Source } from '../../core/define';
import { evaluate } from '../../core/evaluate';
import { systemUnit } from '../../core/quantity';
import { marginCaution } from '../../core/strength';
import { unusualInputs } from '../../derive/unusual';
import { sourceText } from '../../derive/words';
import { workOf, type GivenText, type WorkLine } from '../../derive/work';
import type { Argument, CellValue, Matrix } from '../../cells/value';
import type { Place } from '../readCall';
import { BASIS_TEXT } from '../version';
import { present } from '../worksheet';
import { FUNCTION, ITS_ARGUMENTS } from './parameters';
import { atPlace, definitionOf } from './place';
import type { Tool } from './tool';

const OWN: readonly [Source] = [derived('What the function’s definition says')];

/** What was typed for an argument, or its default. */
const givenText =
  (args: readonly Argument[]): GivenText =>
  (input, index) =>
    String(args[index]?.[0]?.[0] ?? input.default ?? '');

/** The lines of the work as cells: symbol, meaning, equation, value, unit. */
export const workCells = (line: WorkLine, system: Place['system']): CellValue[] => [
  line.symbol,
  line.says,
  line.equation,
  present(line.value, line.gives, system),
  line.gives === 'text' ? '' : systemUnit(line.gives, system).symbol,
];

export const showWork: Tool = {
  name: 'SHOW.WORK',
  late: true,
  summary: 'The working of a function, line by line: inputs, steps, result.',
  parameters: [FUNCTION, ITS_ARGUMENTS],
  example: 'SHOW.WORK("SEAT.FORCE",2000,5,0.15,"mm")',
  sources: OWN,
  notes: ['Columns: symbol, meaning, equation, value, unit. The last row is the result.'],
  related: ['SHOW.CHECK', 'SHOW.SOURCE'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    return atPlace(definition, args.rest('arguments'), ({ values, system, args: given }) =>
      workOf(definition, values, system, givenText(given)).lines.map((line) => workCells(line, system)),
    );
  },
};

/** The source of the very value, where a table's rows or columns have their own. */
export function valueSource(definition: Definition, args: readonly Argument[]): readonly Source[] {
  if (definition.type !== 'lookup' || args.length === 0) return definition.sources;
  return atPlace(definition, args, ({ values }) => {
    const lookup = definition as Lookup;
    const columns = Object.values<Column<unknown>>(lookup.columns);
    const column = lookup.inputs.length > 1 ? lookup.columns[String(values[1])] : columns[0];
    const source = column?.source;
    if (!source) return definition.sources;
    return [typeof source === 'function' ? source(values[0]) : source];
  });
}

export const showSource: Tool = {
  name: 'SHOW.SOURCE',
  late: true,
  summary: 'Where a function’s equation or a table’s value comes from.',
  parameters: [FUNCTION, ITS_ARGUMENTS],
  example: 'SHOW.SOURCE("SEAT.SINK")',
  sources: OWN,
  notes: ['With the arguments of a function that reads a table it tells the source of that value.'],
  related: ['SHOW.WORK', 'SHOW.CAUTION'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    return [[valueSource(definition, args.rest('arguments')).map(sourceText).join('; ')]];
  },
};

export const showCaution: Tool = {
  name: 'SHOW.CAUTION',
  late: true,
  summary: 'What to watch for with a function; with its arguments, what these values call for.',
  parameters: [FUNCTION, ITS_ARGUMENTS],
  example: 'SHOW.CAUTION("PRESS.SCREWCLAMP")',
  sources: OWN,
  related: ['SHOW.CHECK'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    const given = args.rest('arguments');
    const all = (definition.cautions ?? []) as readonly { readonly says: string }[];
    if (given.length === 0)
      return [[all.length > 0 ? all.map(({ says }) => says).join(' ') : 'No caution of its own.']];
    const { cautions } = atPlace(definition, given, ({ values, system }) =>
      evaluate(definition, values, system),
    );
    return [[cautions.length > 0 ? cautions.join(' ') : 'Nothing to watch for with these values.']];
  },
};

export const showCheck: Tool = {
  name: 'SHOW.CHECK',
  late: true,
  summary:
    'Whether the equation holds for the inputs and the metal for the stress: "in range", or what is outside.',
  parameters: [FUNCTION, ITS_ARGUMENTS],
  example: 'SHOW.CHECK("SPRING.PRELOAD",8,40,32,"mm")',
  sources: OWN,
  notes: [
    'In this order: whether the metal holds, where the function knows load and metal ("does not hold" below a margin of 1, "little to spare" below 1.2); what lies outside of the range of validity; which inputs lie outside of what is usual in this trade.',
    'Where the metal is given as a number it ends with "strength not known".',
  ],
  related: ['SHOW.MARGIN', 'SHOW.CAUTION', 'SHOW.WORK'],
  run: (args): Matrix => {
    const definition = definitionOf(args);
    const { outside, strength, unusual } = atPlace(
      definition,
      args.rest('arguments'),
      ({ values, system }) => ({
        ...evaluate(definition, values, system),
        unusual: unusualInputs(definition, values, system),
      }),
    );
    const caution = strength && marginCaution(strength);
    const faults = [...(caution === undefined ? [] : [caution]), ...outside, ...unusual];
    const unknown = strength?.verdict === 'not known' ? '; strength not known' : '';
    return [[faults.length > 0 ? faults.join(' ') : `in range${unknown}`]];
  },
};

export const showBasis: Tool = {
  name: 'SHOW.BASIS',
  summary: 'The basis of the numbers and the version of the functions, to write on a sheet.',
  parameters: [],
  example: 'SHOW.BASIS()',
  sources: OWN,
  notes: ['The basis changes only when a result may change; the changelog says which.'],
  run: (): Matrix => [[BASIS_TEXT]],
};
