import { valueError } from './arguments';
import { allOf, anyOf } from './forms';
import { partMark, partsIn } from './marks';
import { NO_CHOICE, type NativeCall, type NativeForm, type NativePart } from './parts';

/** One line of the working, written out. */
export interface NativeRow {
  readonly name: string;
  readonly role: NativePart['words']['role'] | 'question' | 'check' | 'result';
  readonly says: string;
  readonly symbol: string;
  readonly equation: string;
  /** With marks of other lines. */
  readonly text: string;
  /** Worksheet text. */
  readonly unit: string;
  /** The questions of which one must hold for the line to count; none where it always does. */
  readonly only: readonly string[];
  /** Lines that must all be true: `ASKED` in its text stands for whether they are. */
  readonly asks?: readonly string[];
}

export interface NativeRows {
  readonly rows: readonly NativeRow[];
  /** Names of the lines that hold the results. */
  readonly results: readonly string[];
}

type Line = Omit<NativeRow, 'only'>;

/** The name by which a text has all that its line asks. */
export const ASKED = 'asked';

const BARE = { equation: '', symbol: '', unit: '""' } as const;
/** What a line says that asks whether something is refused. */
export const CHECK = 'Check';

/** An error; the line says beside it what is refused. */
const REFUSED = valueError('no');

/** A question that the words of a variant have answered. */
const NEVER = '0';

const textOf = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/**
 * The same working as in one cell, one line a step: inputs, questions, checks, steps, results. A check is true or the
 * error of a refusal; a result asks that all its checks are true.
 */
export function rowsOf({ parts, variants }: NativeCall): NativeRows {
  const inputs = parts
    .filter(({ words }) => words.role !== 'step')
    .sort((a, b) => (a.words.input ?? -1) - (b.words.input ?? -1))
    .map(lineOf);
  const steps = parts.filter(({ words }) => words.role === 'step').map(lineOf);
  const questions = variants.flatMap(({ when }, i): Line[] => {
    if (when.length === 0) return [];
    const equation = when.map((one) => one.says).join(', ');
    const text = allOf(when.map((one) => one.when));
    return [{ ...BARE, name: `q${i}`, role: 'question', says: 'Is it this case?', equation, text }];
  });
  const checks = new Checks();
  const forms = variants.map(({ form }, i) => (typeof form === 'string' ? form : formOf(form, i, checks)));
  // A person follows the steps; what refuses stands behind them.
  const order = [...inputs, ...questions, ...steps, ...checks.lines];
  const closing = forms.flatMap((form) => (typeof form === 'string' ? [] : form));
  const last = closing.filter(({ role }) => role === 'result');
  const chosen = questions.length === 0 ? [] : chosenOf(forms, last);
  // What a person looks for is the result of the case that holds.
  const ofCases = chosen.length === 0 ? closing : closing.map(asStep);
  return {
    rows: withCases([...order, ...ofCases, ...chosen], variants.length),
    results: (chosen.length > 0 ? chosen : last).map(({ name }) => name),
  };
}

const lineOf = ({ name, symbol, text, words: { role, says, equation, unit } }: NativePart): Line => ({
  name,
  role,
  says,
  symbol,
  equation,
  text,
  unit: textOf(unit),
});

const asStep = (line: Line): Line =>
  line.role === 'result' ? { ...line, role: 'step', says: 'Result of this case', equation: '' } : line;

/** The checks of all variants, each once. */
class Checks {
  readonly lines: Line[] = [];
  private readonly known = new Map<string, string>();

  add(says: string, when: string, code: '#VALUE!' | '#N/A'): string {
    // LibreOffice shows a bare TRUE as 1 where the condition counts something.
    const text = `AND(IF(${when},${code === '#N/A' ? 'NA()' : REFUSED},TRUE))`;
    const key = `${says}\n${text}`;
    const present = this.known.get(key);
    if (present !== undefined) return present;
    const name = `c${this.lines.length}`;
    this.known.set(key, name);
    this.lines.push({ ...BARE, name, role: 'check', says: CHECK, equation: `else refused: ${says}`, text });
    return name;
  }
}

/** Adds the checks of a form. */
function formOf({ guards, gates, results }: NativeForm, at: number, checks: Checks): Line[] {
  const groups = new Map<string, { says: string; code: '#VALUE!' | '#N/A'; whens: string[] }>();
  for (const { when, code, says } of guards) {
    const group = groups.get(code + says) ?? { says, code, whens: [] };
    group.whens.push(when);
    groups.set(code + says, group);
  }
  const own = [...groups.values()].map(({ says, code, whens }) => checks.add(says, anyOf(whens), code));
  const open = gates.filter(({ when }) => when !== NEVER);
  // A refusal after an answer in words is asked only where these words are not the answer.
  const words = open.findIndex(({ refuses }) => !refuses);
  const rest = words < 0 ? [] : open.slice(words);
  for (const { when, says } of words < 0 ? open : open.slice(0, words))
    own.push(checks.add(says, when, '#VALUE!'));
  const all = [...new Set(own)];
  const asked = rest.map(({ when, says, refuses }, i): Line => ({
    ...BARE,
    name: `g${at}_${i}`,
    role: 'question',
    says: refuses ? 'Is it refused?' : 'Is the answer in words?',
    equation: says,
    text: when,
  }));
  const answer = (text: string): string =>
    rest.reduceRight(
      (inner, gate, i) =>
        `IF(${partMark(`g${at}_${i}`)},${gate.refuses ? valueError(gate.says) : textOf(gate.says)},${inner})`,
      text,
    );
  const sum = `a${at}`;
  const holds = partMark(all.length === 1 ? (all[0] ?? '') : sum);
  return [
    ...asked,
    ...(all.length > 1
      ? [
          {
            ...BARE,
            name: sum,
            role: 'check',
            says: 'All checks',
            text: partMark(ASKED),
            asks: all,
          } as const,
        ]
      : []),
    ...results.map(({ text, says, unit }, i): Line => ({
      ...BARE,
      name: `r${at}_${i}`,
      role: 'result',
      says: 'Result',
      equation: says,
      text: all.length === 0 ? answer(text) : `IF(${holds},${answer(text)},FALSE)`,
      unit,
    })),
  ];
}

/** The results of the variant whose question is answered with yes. */
function chosenOf(forms: readonly (string | Line[])[], last: readonly Line[]): Line[] {
  const found = forms.findIndex((form) => typeof form !== 'string');
  return last
    .filter(({ name }) => name.startsWith(`r${found}_`))
    .map((line, i): Line => {
      const text = forms.reduceRight<string>((rest, form, at) => {
        const own = typeof form === 'string' ? valueError(form) : partMark(`r${at}_${i}`);
        return `IF(${partMark(`q${at}`)},${own},${rest})`;
      }, valueError(NO_CHOICE));
      return {
        ...line,
        name: `r_${i}`,
        says: 'Result, of the case that holds',
        text,
      };
    });
}

const isWorked = ({ role }: Line): boolean => role === 'step' || role === 'check' || role === 'result';

/** Tells of each line in which cases it counts, and leaves out the steps that nothing asks for. */
function withCases(lines: readonly Line[], variants: number): NativeRow[] {
  const byName = new Map(lines.map((line) => [line.name, line]));
  const cases = new Map<string, Set<number>>();
  const reach = (name: string, at: number): void => {
    const own = cases.get(name) ?? new Set<number>();
    if (own.has(at)) return;
    cases.set(name, own.add(at));
    const line = byName.get(name);
    for (const next of [...partsIn(line?.text ?? ''), ...(line?.asks ?? [])]) reach(next, at);
  };
  for (let at = 0; at < variants; at++)
    for (const { name } of lines) if (name.startsWith(`r${at}_`)) reach(name, at);
  const counting = new Set([...cases.values()].flatMap((own) => [...own]));
  return lines.flatMap((line): NativeRow[] => {
    const own = cases.get(line.name);
    if (line.role === 'step' && !own) return [];
    const isAlways = counting.size < 2 || !own || own.size === counting.size;
    if (isAlways) return [{ ...line, only: [] }];
    const only = [...own].map((at) => `q${at}`);
    // What does not count is no error for whoever reads the lines.
    const text = isWorked(line) ? `IF(${anyOf(only.map(partMark))},${line.text},"–")` : line.text;
    return [{ ...line, text, only }];
  });
}
