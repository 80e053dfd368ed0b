import { inputsOf, type AnyInput, type Definition } from '../../core/define';
import { constantText, isCell, type NativeArgument } from './arguments';
import type { CallArguments } from './callArguments';
import type { Condition } from './parts';

/** A call with its words settled, and when it is the one that counts: worksheet conditions on the cells. */
export interface Variant {
  readonly when: readonly Condition[];
  readonly call: CallArguments;
}

/** More would make formulas that nobody reads: what is beyond is settled as it stands, and guarded. */
const MOST_VARIANTS = 18;

/** One thing that a cell settles: which word, or whether there is anything. */
interface Question {
  readonly answers: readonly (Condition & {
    readonly settle: (call: CallArguments) => CallArguments;
  })[];
}

/**
 * Equations differ by words and by what is left out. Every such form of a call whose cells may come to ask for it, and
 * whether these are all.
 */
export function variantsOf(
  definition: Definition,
  call: CallArguments,
): { readonly variants: readonly Variant[]; readonly isWhole: boolean } {
  let variants: Variant[] = [{ when: [], call }];
  let isWhole = true;
  for (const question of questions(definition, call)) {
    if (variants.length * question.answers.length > MOST_VARIANTS) {
      isWhole = false;
      continue;
    }
    variants = variants.flatMap((variant) =>
      question.answers.map(({ when, says, settle }) => ({
        when: [...variant.when, { when, says }],
        call: settle(variant.call),
      })),
    );
  }
  return { variants, isWhole };
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
    const hasOtherForm = input.default === undefined || reading.as === 'named';
    const mayBeOut = input.optional && hasOtherForm && input.sameAs === undefined;
    if (!mayBeOut) return [];
    if (blank) {
      const given = dummy(input, blank.text);
      return given ? [givenOrNot(input, i, given)] : [];
    }
    return arg?.varies === true && isCell(arg.text) ? [givenOrNot(input, i, arg)] : [];
  });
}

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
        says: `${input.name} ${word}`,
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
      {
        when: out,
        says: `${input.name} left out`,
        settle: (call) => settled(call, input, at, undefined),
      },
      {
        when: `NOT(${out})`,
        says: `${input.name} given`,
        settle: (call) => settled(call, input, at, arg),
      },
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
