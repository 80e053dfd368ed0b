import { inputsOf, type AnyInput, type Definition } from '../../core/define';
import { answer, givesOf } from '../../core/answer';
import { fromSI, SYSTEMS, systemUnit, type Kind, type System } from '../../core/quantity';
import { Refusal } from '../../core/refusal';
import {
  constantText,
  hasWildcard,
  isCell,
  keptFor,
  nameKey,
  UnitTexts,
  valueIfAny,
  withoutDoubles,
  type NativeArgument,
} from './arguments';
import type { Guard } from './guard';
import type { CallArguments } from './callArguments';
import { partMark } from './marks';
import { NO_CHOICE, type NativeCall, type NativePart } from './parts';
import type { DataTables, TableCell } from './tables';

/** Beyond this a table is no help to anybody. */
const MOST_ROWS = 6000;

/** An argument that names one of a few things. */
interface Discrete {
  readonly at: number;
  readonly input: AnyInput;
  readonly text: string;
  readonly names: readonly string[];
  /** The name of the list that each spelling stands for, where there are more spellings than things. */
  readonly spellings: readonly (readonly [spelling: string, name: string])[];
  /** What a blank cell stands for: a word, or `LEFT_OUT`. */
  readonly whenBlank?: string;
}

/** In a key, an optional word that is left out. */
const LEFT_OUT = '';

/**
 * A function of names and words alone, such as a look-up or a drill for a tap, as a table of all its answers: one row a
 * combination, as the worksheet shows it in either system of units. Undefined for any other call.
 */
export function enumerated(
  definition: Definition,
  call: CallArguments,
  tables: DataTables,
): NativeCall | undefined {
  if (definition.type === 'formula' || (definition.type === 'procedure' && definition.native))
    return undefined;
  const inputs = inputsOf(definition);
  const asked: Discrete[] = [];
  for (const [at, input] of inputs.entries()) {
    const found = discrete(input, at, call);
    if (found === 'no') return undefined;
    if (found) asked.push(found);
  }
  const rows = asked.reduce((product, { names }) => product * names.length, 1);
  if (asked.length === 0 || rows > MOST_ROWS) return undefined;
  const { table, kinds, byUnits } = answersOf(definition, call, asked);
  if (table.length === 0) return undefined;
  const count = kinds.length;
  const fixed = inputs.flatMap(({ name }, i) => {
    const arg = call.args[i];
    return arg && !arg.varies ? [`${name} ${String(arg.content)}`] : [];
  });
  const find = tables.exact(
    {
      title: [definition.name, ...fixed].join(', '),
      heads: [
        asked.map(({ input }) => input.name).join('|'),
        ...Array.from({ length: count }, (_, i) => (count === 1 ? 'result' : `result ${i + 1}`)).flatMap(
          (head) => (byUnits ? SYSTEMS.map((system) => `${head} (${system})`) : [head]),
        ),
      ],
    },
    table,
  );
  const words = { role: 'input', unit: '' } as const;
  const parts: NativePart[] = [];
  const part = (name: string, text: string, says: string, equation: string): string => {
    parts.push({ name, symbol: '', text, words: { ...words, says, equation } });
    return partMark(name);
  };
  const key = asked
    .map(({ at, input, text, spellings, whenBlank }) => {
      if (whenBlank !== undefined) return `IF(ISBLANK(${text}),${constantText(whenBlank)},${nameKey(text)})`;
      if (spellings.length === 0) return nameKey(text);
      const heads = [`${input.name} as written`, input.name];
      const names = tables.exact({ title: `Spellings: ${input.name}`, heads }, spellings);
      const line = part(`spelled${at}`, names.row(nameKey(text)), `Spelling: ${input.name}`, text);
      return part(`name${at}`, names.cell(line, 1), input.says, 'as the table names it');
    })
    .join('&"|"&');
  const asksFor = asked.map(({ input }) => input.name).join(', ');
  const keyPart = part('key', key, asksFor, textsOf(asked));
  const row = part('row', find.row(keyPart), `Line of the table: ${definition.name}`, 'looked up');
  const units = new UnitTexts(call.units);
  const cell = (i: number, system: System): string =>
    find.cell(row, 1 + (byUnits ? 2 * i + SYSTEMS.indexOf(system) : i));
  const results = kinds.map((kind, i) => ({
    text:
      byUnits && call.units.varies
        ? `IF(${call.units.text}="mm",${cell(i, 'mm')},${cell(i, 'in')})`
        : cell(i, units.system),
    says: count === 1 ? definition.summary : `Result ${i + 1}`,
    unit: units.symbolText(kind),
  }));
  const form = { guards: [...units.guards(), ...guardsOf(asked)], gates: [], results };
  return { parts, variants: [{ when: [], form }], looksUp: true, settles: false, notes: [] };
}

const textsOf = (asked: readonly Discrete[]): string => asked.map(({ text }) => text).join(', ');

/** Undefined for an argument that is settled, 'no' for one that no list of names has. */
function discrete(input: AnyInput, at: number, call: CallArguments): Discrete | 'no' | undefined {
  const { reading } = input;
  const arg = call.args[at];
  const blank = call.leftOut?.find(({ name }) => name === input.name);
  if (reading.as === 'choice') {
    const text = arg ? (arg.varies ? arg.text : undefined) : blank?.text;
    if (text === undefined) return undefined;
    const isOut = input.optional && input.default === undefined;
    const base = { at, input, text, spellings: [] };
    if (!isCell(text) || !(isOut || input.default !== undefined)) return { ...base, names: reading.words };
    return isOut
      ? { ...base, names: [LEFT_OUT, ...reading.words], whenBlank: LEFT_OUT }
      : { ...base, names: reading.words, whenBlank: String(input.default) };
  }
  if (blank) return 'no';
  if (!arg?.varies) return arg && isPlainNumber(arg) ? 'no' : undefined;
  if (arg.byUnits === true) return 'no';
  if (reading.as !== 'named' || !reading.names || typeof arg.content !== 'string' || arg.exact) return 'no';
  const all = namesWith(reading.names(), arg.content.trim());
  const { names, spellings } = keptFor(reading, `${all.length} ${all.at(-1) ?? ''}`, () =>
    distinct(reading, all),
  );
  return { at, input, text: arg.text, names, spellings: names.length === all.length ? [] : spellings };
}

/** Each thing by the first of its names, so that a table of answers has it once. */
function distinct(
  { read }: Extract<AnyInput['reading'], { as: 'named' }>,
  all: readonly string[],
): Pick<Discrete, 'names' | 'spellings'> {
  const first = new Map<unknown, string>();
  const spellings = all.map((name): readonly [string, string] => {
    const value = valueIfAny(() => SYSTEMS.map((system): unknown => read(name, system, 'text')));
    const [inch, metric] = value ?? [];
    // What is made anew at each reading, or is another thing in the other system, stands for itself.
    if (inch === undefined || inch !== metric) return [name, name];
    const known = first.get(inch) ?? name;
    first.set(inch, known);
    return [name, known];
  });
  const table = withoutDoubles(spellings) as Discrete['spellings'];
  return { names: [...new Set(spellings.map(([, name]) => name))], spellings: table };
}

/** What a plain number means hangs on the units. */
const isPlainNumber = ({ content }: NativeArgument): boolean => typeof content !== 'string';

const namesWith = (names: readonly string[], own: string): readonly string[] =>
  names.some((name) => name.toLowerCase() === own.toLowerCase()) ? names : [...names, own];

interface Answers {
  readonly table: readonly (readonly TableCell[])[];
  readonly kinds: readonly (Kind | 'text')[];
  readonly byUnits: boolean;
}

/** A sheet calls the same function many times, and each table is thousands of answers. */
const known = new WeakMap<Definition, Map<string, Answers>>();

function answersOf(definition: Definition, call: CallArguments, asked: readonly Discrete[]): Answers {
  const own = known.get(definition) ?? new Map<string, Answers>();
  known.set(definition, own);
  const isAsked = (i: number): boolean => asked.some(({ at }) => at === i);
  const settled = call.args.map((arg, i) => (isAsked(i) ? null : (arg?.content ?? null)));
  // Of what is asked the names are the table's own, but for a name that stands there and is not in the list.
  const key = JSON.stringify([settled, asked.map(({ at, names }) => [at, names.length, names.at(-1)])]);
  const found = own.get(key) ?? allAnswers(definition, call, asked);
  own.set(key, found);
  return found;
}

function allAnswers(definition: Definition, call: CallArguments, asked: readonly Discrete[]): Answers {
  let present: readonly (Kind | 'text')[] = [];
  const shown = (names: readonly string[], system: System): TableCell[] | undefined => {
    try {
      const values = inputsOf(definition).map((_, i) => call.args[i]?.value ?? call.defaults[i]);
      asked.forEach(({ at, input: { reading } }, i) => {
        const name = names[i] ?? '';
        const own = call.args[at];
        const isOwn = own !== undefined && typeof own.content === 'string' && own.content.trim() === name;
        if (reading.as === 'named') values[at] = isOwn ? own.value : reading.read(name, system, 'text');
        else values[at] = name === LEFT_OUT ? undefined : name;
      });
      const gives = givesOf(definition, values);
      const kinds = typeof gives === 'string' ? [gives] : gives.row.map((part) => part.gives);
      const found = answer(definition, values, system);
      present = kinds;
      return (typeof found === 'object' ? found : [found]).map((one, i) => {
        const kind = kinds[i] ?? 'text';
        return kind === 'text' || typeof one === 'string' ? one : fromSI(one, systemUnit(kind, system));
      });
    } catch (error) {
      // Refused, so that the table does not have it.
      if (error instanceof Refusal) return undefined;
      throw error;
    }
  };
  const combinations = asked.reduce<string[][]>(
    (all, { names }) => all.flatMap((before) => names.map((name) => [...before, name])),
    [[]],
  );
  const found = combinations.flatMap((names) => {
    const [inch, metric] = SYSTEMS.map((system) => shown(names, system));
    return inch && metric ? [{ key: names.join('|'), inch, metric }] : [];
  });
  const byUnits = found.some(({ inch, metric }) => inch.some((one, i) => one !== metric[i]));
  const table = found.map(({ key, inch, metric }) => [
    key,
    ...inch.flatMap((one, i) => (byUnits ? [one, metric[i] ?? one] : [one])),
  ]);
  return { table: withoutDoubles(table), kinds: present, byUnits };
}

/** What a look-up would take for a pattern is refused, and so is what is no name. */
const guardsOf = (asked: readonly Discrete[]): Guard[] => [
  ...asked.flatMap(({ input, text }): Guard[] =>
    input.reading.as === 'choice'
      ? [{ when: hasWildcard(text), code: '#VALUE!', says: `${input.name}: ${NO_CHOICE}` }]
      : [],
  ),
  ...asked.flatMap(({ input, text }): Guard[] =>
    input.reading.as === 'named'
      ? [hasWildcard(text), `NOT(ISTEXT(${text}))`].map((when) => ({
          when,
          code: '#N/A',
          says: `${input.name}: a name`,
        }))
      : [],
  ),
];
