import { inputsOf, type AnyInput, type Definition } from '../../core/define';
import { CannotBeNative, constantText, valueError, type NativeArgument } from './arguments';
import type { NativePart } from './forms';
import { partMark } from './marks';
import type { CallArguments, NativeCall } from './index';

/** A call with its words settled, and when it is the one that counts: a worksheet condition on the cells. */
export interface Variant {
  readonly when: readonly string[];
  readonly call: CallArguments;
}

/** More would make formulas that nobody reads: what is beyond is settled as it stands, and guarded. */
const MOST_VARIANTS = 12;

/** One thing that a cell settles: which word, or whether there is anything. */
interface Question {
  readonly answers: readonly {
    readonly when: string;
    readonly settle: (call: CallArguments) => CallArguments;
  }[];
}

/** Equations differ by words and by what is left out. Every such form of a call whose cells may come to ask for it. */
export function variantsOf(definition: Definition, call: CallArguments): Variant[] {
  let variants: Variant[] = [{ when: [], call }];
  for (const question of questions(definition, call)) {
    if (variants.length * question.answers.length > MOST_VARIANTS) continue;
    variants = variants.flatMap((variant) =>
      question.answers.map(({ when, settle }) => ({
        when: [...variant.when, when],
        call: settle(variant.call),
      })),
    );
  }
  return variants;
}

function questions(definition: Definition, call: CallArguments): Question[] {
  return inputsOf(definition).flatMap((input, i): Question[] => {
    const { reading } = input;
    const arg = call.args[i];
    const blank = call.leftOut?.find(({ name }) => name === input.name);
    if (reading.as === 'choice') {
      const text = arg?.varies === true ? arg.text : blank?.text;
      return text === undefined ? [] : [words(input, i, reading.words, text)];
    }
    const mayBeOut = input.optional && input.default === undefined && input.sameAs === undefined;
    if (!mayBeOut) return [];
    if (blank) {
      const given = dummy(input, blank.text);
      return given ? [givenOrNot(input, i, given)] : [];
    }
    return arg?.varies === true && isCell(arg.text) ? [givenOrNot(input, i, arg)] : [];
  });
}

/** An expression is never blank. */
const isCell = (text: string): boolean => !text.startsWith('(');

const settled = (
  { args, leftOut = [], ...rest }: CallArguments,
  { name }: AnyInput,
  at: number,
  arg: NativeArgument | undefined,
): CallArguments => ({
  ...rest,
  args: args.map((own, i) => (i === at ? arg : own)),
  leftOut: leftOut.filter((one) => one.name !== name),
});

function words(input: AnyInput, at: number, all: readonly string[], text: string): Question {
  return {
    answers: all.map((word) => {
      const same = `TRIM(${text})=${constantText(word)}`;
      const isDefault = input.default === word && isCell(text);
      return {
        when: isDefault ? `OR(ISBLANK(${text}),${same})` : same,
        settle: (call) =>
          settled(call, input, at, { text: constantText(word), varies: false, content: word, value: word }),
      };
    }),
  };
}

function givenOrNot(input: AnyInput, at: number, arg: NativeArgument): Question {
  const out = input.reading.as === 'list' ? `COUNTA(${arg.text})=0` : `ISBLANK(${arg.text})`;
  return {
    answers: [
      { when: out, settle: (call) => settled(call, input, at, undefined) },
      { when: `NOT(${out})`, settle: (call) => settled(call, input, at, arg) },
    ],
  };
}

/** Something where there is nothing yet; undefined where nobody can say what may come. */
function dummy({ reading }: AnyInput, text: string): NativeArgument | undefined {
  switch (reading.as) {
    case 'quantity':
      return { text, varies: true, content: 1, value: 1 };
    case 'list':
      return { text, varies: true, content: [1], value: [1] };
    case 'named': {
      const [name] = reading.names?.() ?? [];
      return name === undefined
        ? undefined
        : { text, varies: true, content: name, value: reading.read(name, 'in', 'text') };
    }
    default:
      return undefined;
  }
}

/** The variants one after another, each where its cells ask for it; of one that is refused, why. */
export function chosenAmong(
  variants: readonly { readonly when: readonly string[]; readonly native: NativeCall | string }[],
  parts: NativePart[],
): NativeCall {
  const written = variants.flatMap(({ native }) => (typeof native === 'string' ? [] : [native]));
  const [first] = written;
  if (!first) {
    const [why = ''] = variants.flatMap(({ native }) => (typeof native === 'string' ? [native] : []));
    throw new CannotBeNative(why);
  }
  // A part of its own, so that long forms stand one under another and not within one cell.
  const named = (text: string): string => {
    const name = `v${parts.length + 1}_result`;
    parts.push({ name, symbol: 'result', text });
    return partMark(name);
  };
  const choose = (at: number): string =>
    variants.reduceRight((rest, { when, native }) => {
      const result = typeof native === 'string' ? valueError(native) : named(native.results[at] ?? '');
      const all = when.length === 1 ? when[0] : `AND(${when.join(',')})`;
      return `IF(${all ?? ''},${result},${rest})`;
    }, valueError('a word that is no choice here'));
  return {
    parts,
    results: first.results.map((_, at) => choose(at)),
    looksUp: written.some(({ looksUp }) => looksUp),
    notes: [...new Set(written.flatMap(({ notes }) => notes))],
  };
}
