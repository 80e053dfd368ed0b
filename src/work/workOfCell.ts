import { cellAt } from '../call/broadcast';
import type { Argument, CellValue } from '../cells/value';
import { errorCell } from '../call/worksheet';
import { inPlaces } from '../call/places';
import { readCall } from '../call/readCall';
import { valueSource } from '../call/tools/show';
import { inputsOf, takesRange, type AnyInput, type Definition, type Source } from '../core/define';
import { Refusal } from '../core/refusal';
import type { System } from '../core/quantity';
import { chartOf, pictureOf } from '../derive/pictures';
import { unusualText } from '../derive/unusual';
import { typesetWork, type TypesetLine, type TypesetWork } from '../derive/typeset';
import { areaAddress } from '../cells/address';
import type { Call } from './calls';
import { originAddress, readGiven, type GivenArgument, type Surroundings } from './givenArguments';

/** An input as the work view shows it. */
export interface ShownInput {
  readonly line: TypesetLine;
  /** The argument's name. */
  readonly name: string;
  /** Where its value came from; absent for what another input brings along, as a metal its modulus. */
  readonly from?: string;
  /** Said of a value outside of the range that is usual in this trade. */
  readonly unusual?: string;
}

/** All that the work view shows of one call, or why there is nothing to show. */
export type CallWork =
  | {
      readonly definition: Definition;
      readonly work: TypesetWork;
      readonly inputs: readonly ShownInput[];
      readonly picture: string | undefined;
      readonly sources: readonly Source[];
    }
  | { readonly definition: Definition; readonly refusal: string };

/** The work of a call at a place of the range that its formula fills. */
export async function workOfCall(
  call: Call,
  definition: Definition,
  around: Surroundings,
  place: { readonly row: number; readonly column: number },
): Promise<CallWork> {
  const given = await Promise.all(call.args.map((arg) => readGiven(arg, around)));
  try {
    return shown(definition, given, place);
  } catch (error) {
    return { definition, refusal: errorCell(error).message || errorCell(error).code };
  }
}

function shown(
  definition: Definition,
  typed: readonly GivenArgument[],
  wanted: { readonly row: number; readonly column: number },
): CallWork {
  const given = inPlaces(
    typed.map((argument) => (argument.value ? argument : undefined)),
    inputsOf(definition).length,
    ({ value }) => value ?? [],
  );
  const args = given.map((argument) => argument?.value);
  const call = readCall(definition, args);
  const row = Math.min(wanted.row, call.shape.rows - 1);
  const column = Math.min(wanted.column, call.shape.columns - 1);
  const place = call.at(row, column);
  const { values, system } = place;
  const cellOf = (arg: Argument): CellValue => (arg ? cellAt(arg, row, column) : null);
  const textGiven = (input: AnyInput, index: number): string =>
    String((args[index] ? cellOf(args[index]) : input.default) ?? '');
  let work: TypesetWork;
  try {
    work = typesetWork(definition, values, system, textGiven);
  } catch (error) {
    throw error instanceof Refusal ? call.explain(error, place) : error;
  }
  return {
    definition,
    work,
    inputs: work.lines
      .filter(({ role }) => role === 'input')
      .map((line) => shownInput(definition, line, given, { row, column }, system)),
    picture: picturesOf(definition.name, work.lines, system),
    sources: valueSource(
      definition,
      args.map((arg) => (arg ? [[cellOf(arg)]] : arg)),
    ),
  };
}

function shownInput(
  definition: Definition,
  line: TypesetLine,
  given: readonly (GivenArgument | undefined)[],
  place: { readonly row: number; readonly column: number },
  system: System,
): ShownInput {
  const index = line.input ?? -1;
  const input = inputsOf(definition)[index] as AnyInput;
  const unusual = line.gives === 'text' ? undefined : unusualText(input, line.value, system);
  return {
    line,
    name: input.name,
    ...(isProvided(input, line) ? {} : { from: fromText(input, given[index], place) }),
    ...(unusual === undefined ? {} : { unusual: sentence(unusual) }),
  };
}

const isProvided = ({ reading, name }: AnyInput, { symbol }: TypesetLine): boolean =>
  reading.as === 'named' && symbol !== name;

function fromText(
  input: AnyInput,
  given: GivenArgument | undefined,
  { row, column }: { readonly row: number; readonly column: number },
): string {
  const { origin } = given ?? { origin: { from: 'nothing' } as const };
  switch (origin.from) {
    case 'nothing':
      return input.sameAs === undefined ? 'left out: the default' : `left out: as ${input.sameAs}`;
    case 'constant':
      return 'typed in the formula';
    case 'cells':
      return takesRange(input.reading)
        ? `from ${origin.sheet === undefined ? '' : `${origin.sheet}!`}${areaAddress(origin.area)}`
        : `from ${originAddress(origin, row, column)}`;
    case 'expression':
      return `from ${origin.text}`;
  }
}

const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('?') ? '' : '.'}`;

/** The picture with its chart, where there are any. */
function picturesOf(name: string, lines: readonly TypesetLine[], system: System): string | undefined {
  const drawn = [pictureOf, chartOf].flatMap((draw) => draw(name, lines, system) ?? []);
  return drawn.length === 0 ? undefined : drawn.join('');
}
