import { boundsOf } from '../../core/amount';
import type { Amount, AnyInput, Bearing, Reading } from '../../core/define';
import { withUnit } from '../../core/format';
import { nativeNumber } from '../../core/expr/native';
import { systemUnit, type System } from '../../core/quantity';
import { calledText, cautionWords, SPARE, type Yielding } from '../../core/strength';
import { otherThan, unusualWords, usualWords } from '../unusual';
import { textOf, valueError, type ArgumentTexts, type UnitTexts } from './arguments';

/** What a call is asked for: its result, its margin against yield, or whether it is in range. */
export type Asked = 'result' | 'margin' | 'check';

/** What the words on a call are made of: its inputs, and lines of its working. */
export interface Judged {
  readonly inputs: readonly AnyInput[];
  readonly texts: readonly ArgumentTexts[];
  readonly units: UnitTexts;
  /** Gives a text a line of its own. */
  readonly line: (says: string, equation: string, text: string) => string;
}

/** A margin that no stress makes. */
const NONE = '1E+99';

export interface NativeMargin {
  /** The least margin; text where the metal asked about first is a number. */
  readonly margin: string;
  /** Text: how that metal is called. */
  readonly which: string;
}

/** Yield over stress of the metals that are given, in the order of the definition; undefined without any. */
export function nativeMargin(
  { inputs, texts, line }: Judged,
  bearings: readonly Bearing[],
  stressOf: (symbol: string) => string,
): NativeMargin | undefined {
  const margins = bearings.flatMap(({ stress, of }): NativeMargin[] => {
    const metal = texts[inputs.findIndex(({ name }) => name === of)];
    if (!metal?.given) return [];
    const { limit, called } = metal.look<'limit' | 'called'>({
      limit: { head: 'yield (Pa)', from: (value: Yielding) => value.yield ?? 'not known' },
      called: { head: 'as the table calls it', from: (value: Yielding) => value.name ?? '' },
    });
    const at = stressOf(stress);
    return [
      {
        margin: line(
          `Margin of ${of}`,
          `yield/${stress}`,
          `IF(ISNUMBER(${limit}),IF(${at}>0,${limit}/${at},${NONE}),"not known")`,
        ),
        which: sentence((name) => calledText(name, of), called),
      },
    ];
  });
  const [first, ...others] = margins;
  if (!first) return undefined;
  return others.reduce<NativeMargin>((least, other) => {
    const isLess = line(
      'Is this one the least?',
      'less than the one before',
      `AND(ISNUMBER(${least.margin}),ISNUMBER(${other.margin}),IF(ISNUMBER(${other.margin}),${other.margin},${NONE})<IF(ISNUMBER(${least.margin}),${least.margin},0))`,
    );
    return {
      margin: line('Least margin so far', '', `IF(${isLess},${other.margin},${least.margin})`),
      which: `IF(${isLess},${other.which},${least.which})`,
    };
  }, first);
}

/** The number of SHOW.MARGIN. */
export const marginNumber = ({ margin }: NativeMargin): string =>
  `IF(ISNUMBER(${margin}),IF(${margin}<${NONE},${margin},NA()),NA())`;

/** The words of SHOW.CHECK where the equation is asked through: strength, then validity, then what is usual. */
export function checkWords(
  judged: Judged,
  margin: NativeMargin | undefined,
  valid: readonly { readonly holds: string; readonly says: string }[],
): string {
  const { line } = judged;
  const yields = margin ? [line('Does the metal hold?', '', strengthWords(judged, margin))] : [];
  const outside = valid.map(({ holds, says }) =>
    line('Range of validity', '', `IF(${holds},"",${longText(says)})`),
  );
  const words = joined(judged, [...yields, ...outside, ...unusual(judged)]);
  const good = margin ? `"in range"&IF(ISNUMBER(${margin.margin}),"","; strength not known")` : '"in range"';
  return words === undefined ? good : `IF(${words}="",${good},${words})`;
}

/** The same of an answer in words or from a table, which asks for what is usual alone. */
export const usualOnly = (judged: Judged): string => checkWords(judged, undefined, []);

function joined({ line }: Judged, sentences: readonly string[]): string | undefined {
  return sentences.length === 0
    ? undefined
    : line('All that is to be said', '', `TRIM(${sentences.join('&" "&')})`);
}

function strengthWords({ line }: Judged, { margin, which }: NativeMargin): string {
  const place = `10^(INT(LOG10(${margin}))-1)`;
  const shown = line(
    'Margin as it is shown, never rounded up',
    '',
    `IF(ISNUMBER(${margin}),IF(AND(${margin}>=${nativeNumber(LEAST_SHOWN)},${margin}<${nativeNumber(SPARE)}),ROUND(INT(${margin}/${place}+1E-9)*${place},6)&"",""),"")`,
  );
  const says = (verdict: 'does not hold' | 'little to spare'): string =>
    sentence((metal, number) => cautionWords(verdict, metal, number), which, shown);
  return `IF(ISNUMBER(${margin}),IF(${margin}<${nativeNumber(LEAST_SHOWN)},${UNTOLD},IF(${margin}<1,${says('does not hold')},IF(${margin}<${nativeNumber(SPARE)},${says('little to spare')},""))),"")`;
}

/** Programs write smaller numbers each in its own way. */
const LEAST_SHOWN = 0.0001;
const MOST_SHOWN = 1e9;
const UNTOLD = valueError('a number too small or too large to be told here');

/** Sentences on the inputs that are outside of what is usual. */
function unusual(judged: Judged): string[] {
  return judged.inputs.flatMap((input, i) => {
    const { reading } = input;
    const text = judged.texts[i];
    if (reading.as !== 'quantity' || !reading.usual || !text?.given) return [];
    return [unusualSentence(judged, input, reading, reading.usual, text.text)];
  });
}

function unusualSentence(
  { units, line }: Judged,
  input: AnyInput,
  { kind }: Extract<Reading, { as: 'quantity' }>,
  usual: readonly [Amount, Amount],
  si: string,
): string {
  const { low, high } = boundsOf({ min: usual[0], max: usual[1] }, kind);
  const within = (x: string): string => `AND(${x}>=${nativeNumber(low)},${x}<=${nativeNumber(high)})`;
  const bySystem = (of: (system: System) => string): string => {
    const [inch, metric] = [of('in'), of('mm')];
    return inch === metric ? inch : units.choose(inch, metric);
  };
  const number = units.fromSI(si, kind);
  const digits =
    kind === 'count'
      ? `${number}&""`
      : `IF(${number}=0,"0",IF(OR(ABS(${number})>=${nativeNumber(MOST_SHOWN)},ABS(${number})<${nativeNumber(LEAST_SHOWN)}),${UNTOLD},ROUND(${number},5-INT(LOG10(ABS(${number}))))&""))`;
  const shown = line(`${input.name}, where it is not usual`, '', `IF(${within(si)},"",${digits})`);
  const unit = bySystem((system) => textOf(withUnit('', systemUnit(kind, system).symbol)));
  const usually = bySystem((system) => textOf(usualWords(usual, kind, system).usually));
  const meant = (system: System): string => {
    const { factor, offset } = systemUnit(kind, otherThan(system));
    const other = `${number}*${nativeNumber(factor)}${offset === 0 ? '' : `+${nativeNumber(offset)}`}`;
    return within(`(${other})`);
  };
  const end = bySystem((system) => {
    const { question } = usualWords(usual, kind, system);
    return question === undefined ? textOf('.') : `IF(${meant(system)},${textOf(`; ${question}`)},".")`;
  });
  const told = kind === 'count' || unit === '""' ? shown : `${shown}&${unit}`;
  const words = sentence((value, says) => unusualWords(input.name, value, says), told, `${usually}&${end}`);
  return line('What is usual', '', `IF(${shown}="","",${words})`);
}

/** A sentence with worksheet texts put in where its words ask for them. */
function sentence(words: (...put: string[]) => string, ...texts: string[]): string {
  const holes = texts.map((_, i) => `\uE008${i}\uE009`);
  const pieces = words(...holes).split(/\uE008(\d+)\uE009/);
  const written = pieces.flatMap((piece, i) => {
    if (i % 2 === 1) return texts[Number(piece)] ?? '';
    return piece === '' ? [] : longText(piece);
  });
  return written.length === 1 ? (written[0] ?? '') : `(${written.join('&')})`;
}

/** A text of any length: formulas take only short ones. */
const longText = (text: string): string =>
  (text.match(/[^]{1,250}/gu) ?? ['']).map((piece) => textOf(piece)).join('&');
