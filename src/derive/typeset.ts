import { type Constant, type Definition, type Formula, type Procedure, type Step } from '../core/define';
import { prune } from '../core/expr/fold';
import { OPERATORS } from '../core/expr/operators';
import { parseEquation } from '../core/expr/parse';
import { symbolTex, toTex } from '../core/expr/tex';
import { rewrite, variables, type Expr } from '../core/expr/tree';
import { programFor, type CompiledStep } from '../core/program';
import type { Kind, System } from '../core/quantity';
import { findUnit } from '../core/readQuantity';
import { quantityText } from '../core/format';
import { measureTex, quantityTex } from './typesetQuantity';
import { amountText, unitsOfKind } from './words';
import { workOf, type GivenText, type Work, type WorkLine } from './work';

/** A line of the work, ready to be shown. TeX is for math mode. */
export interface TypesetLine extends WorkLine {
  readonly symbolTex: string;
  /** With its unit, or in words. */
  readonly valueText: string;
  /** The equation in symbols; absent where the relation is said in words. */
  readonly tex?: string;
  /** The same with the numbers put in, and what comes out. */
  readonly numbersTex?: string;
  /** A relation in words. */
  readonly words?: string;
  /** What a rule of thumb expects: its numbers carry no units. */
  readonly note?: string;
}

export interface TypesetWork extends Omit<Work, 'lines'> {
  readonly lines: readonly TypesetLine[];
}

/** The work of one calculation, typeset, in the units of a system. */
export function typesetWork(
  definition: Definition,
  values: readonly unknown[],
  system: System,
  given: GivenText,
): TypesetWork {
  const work = workOf(definition, values, system, given);
  const equations =
    definition.type === 'formula'
      ? formulaEquations(definition as Formula, values, work, system)
      : writtenEquations(work.lines, system);
  return { ...work, lines: work.lines.map((line) => typesetLine(line, system, equations.get(line.symbol))) };
}

interface Typeset {
  readonly tex: string;
  readonly numbersTex?: string;
  readonly note?: string;
}

function typesetLine(line: WorkLine, system: System, equation: Typeset | undefined): TypesetLine {
  const valueText =
    typeof line.value === 'number' && line.gives !== 'text'
      ? quantityText(line.value, line.gives, system)
      : String(line.value);
  const isNamed = line.gives === 'text' || line.symbol === 'result';
  const shown = {
    ...line,
    symbolTex: isNamed ? `\\text{${plain(line.symbol)}}` : symbolTex(line.symbol),
    valueText,
  };
  if (line.role === 'input') return shown;
  if (line.role === 'constant')
    return {
      ...shown,
      tex: `${shown.symbolTex} = {${quantityTex(line.value as number, line.gives as Kind, system)}}`,
    };
  return equation ? { ...shown, ...equation } : { ...shown, words: inLetters(line.equation) };
}

/** Words that pass through TeX's text mode unchanged. */
const plain = (text: string): string => text.replace(/[^A-Za-z0-9 ]/g, ' ');

function formulaEquations(
  formula: Formula,
  values: readonly unknown[],
  { lines }: Work,
  system: System,
): Map<string, Typeset> {
  const known = new Map(lines.map((line) => [line.symbol, line]));
  const done = programFor(formula, values).steps.filter(({ symbol }) => known.has(symbol));
  return new Map([
    // Of the lines that no step stands behind: the margin against yield.
    ...writtenEquations(lines, system),
    ...done.map((step) => [step.symbol, stepEquation(step, known, system)] as const),
  ]);
}

type Known = ReadonlyMap<string, WorkLine>;

function stepEquation({ symbol, step, written }: CompiledStep, known: Known, system: System): Typeset {
  const left = symbolTex(symbol);
  const tex = `${left} = ${toTex(written)}`;
  const numbers = step.fitted ? inOwnUnits(step.fitted, known) : (name: string) => valueIn(known, name);
  const taken = branchTaken(written, numbers);
  const print = step.fitted
    ? (name: string) => measureTex(numbers(name), '')
    : inUnits(known, system, temperaturesInDifferences(taken, known));
  const value = valueIn(known, symbol);
  const result = step.fitted
    ? measureTex(value / factorOf(step.gives, step.fitted.out), step.fitted.out)
    : quantityTex(value, step.gives, system);
  // In braces no line breaks between a number and its unit.
  const unbroken = `{${result}}`;
  // A step that only passes a value on has no numbers to put in.
  const isPassedOn = taken.type === 'var' || taken.type === 'num';
  return {
    tex,
    numbersTex: isPassedOn ? `${left} = ${unbroken}` : `${left} = ${toTex(taken, print)} = ${unbroken}`,
    ...noteOf(step),
  };
}

const valueIn = (known: Known, name: string): number => {
  const value = known.get(name)?.value;
  return typeof value === 'number' ? value : NaN;
};

const kindIn = (known: Known, name: string): Kind => {
  const gives = known.get(name)?.gives ?? 'ratio';
  return gives === 'text' ? 'ratio' : gives;
};

type Fitted = NonNullable<Step['fitted']>;

const factorOf = (kind: Kind, unit: string): number => findUnit(kind, unit)?.factor ?? 1;

const inOwnUnits =
  ({ units }: Fitted, known: Known) =>
  (name: string): number => {
    const unit = units[name];
    return valueIn(known, name) / (unit === undefined ? 1 : factorOf(kindIn(known, name), unit));
  };

/** Says the units that the numbers of a rule stand for; a constant says its own. */
function noteOf({ fitted }: Step): { note?: string } {
  if (!fitted || Object.keys(fitted.units).length === 0) return {};
  const { units, out } = fitted;
  const read = Object.entries(units).map(([symbol, unit]) => `${inLetters(symbol)} in ${unit}`);
  return { note: `Numbers without units: ${[...read, `the result in ${out}`].join(', ')}.` };
}

/** Only a difference of temperatures means the same on any scale; all else counts from absolute zero. */
const inUnits =
  (known: Known, system: System, differences: ReadonlySet<string>) =>
  (name: string): string => {
    const kind = kindIn(known, name);
    return kind === 'temperature' && !differences.has(name)
      ? measureTex(valueIn(known, name), 'K')
      : quantityTex(valueIn(known, name), kind, system);
  };

/** Temperatures that an equation takes only from one another. */
function temperaturesInDifferences(equation: Expr, known: Known): ReadonlySet<string> {
  const inside = new Set<string>();
  const outside = new Set<string>();
  const isTemperature = (e: Expr | undefined): e is Extract<Expr, { type: 'var' }> =>
    e?.type === 'var' && kindIn(known, e.name) === 'temperature';
  const visit = (e: Expr): void => {
    if (e.type === 'var') outside.add(e.name);
    if (e.type === 'if') [e.test, e.then, e.else].forEach(visit);
    if (e.type !== 'op') return;
    const [a, b] = e.args;
    if (e.op === 'sub' && isTemperature(a) && isTemperature(b)) {
      inside.add(a.name);
      inside.add(b.name);
    } else e.args.forEach(visit);
  };
  visit(equation);
  return new Set([...inside].filter((name) => !outside.has(name)));
}

/** The equation without its conditions: the branches that these values take. */
const branchTaken = (e: Expr, numbers: (name: string) => number): Expr =>
  rewrite(e, (node) =>
    node.type === 'if' ? (valueOf(node.test, numbers) === 0 ? node.else : node.then) : node,
  );

function valueOf(e: Expr, numbers: (name: string) => number): number {
  switch (e.type) {
    case 'num':
      return e.value;
    case 'var':
      return numbers(e.name);
    case 'op':
      return OPERATORS[e.op].run(...e.args.map((arg) => valueOf(arg, numbers)));
    case 'if':
      return valueOf(valueOf(e.test, numbers) === 0 ? e.else : e.then, numbers);
  }
}

/** Equations that a procedure says for people, where they are in the language of equations. */
function writtenEquations(lines: readonly WorkLine[], system: System): Map<string, Typeset> {
  const known = new Map(lines.map((line) => [line.symbol, line]));
  const found = new Map<string, Typeset>();
  for (const { role, symbol, equation, value, gives } of lines) {
    const expr = role === 'step' ? readWritten(symbol, equation) : undefined;
    if (!expr) continue;
    const left = symbolTex(symbol);
    const print = inUnits(known, system, temperaturesInDifferences(expr, known));
    const canPut =
      expr.type !== 'var' && [...variables(expr)].every((name) => Number.isFinite(valueIn(known, name)));
    const tex = `${left} = ${toTex(expr)}`;
    found.set(symbol, {
      tex,
      ...(canPut && typeof value === 'number' && gives !== 'text'
        ? { numbersTex: `${left} = ${toTex(expr, print)} = {${quantityTex(value, gives, system)}}` }
        : {}),
    });
  }
  return found;
}

/** The equation that a procedure says for people; undefined where it is said in words. */
function readWritten(symbol: string, equation: string): Expr | undefined {
  const right = equation.startsWith(`${symbol} = `) ? equation.slice(symbol.length + 3) : equation;
  try {
    const read = parseEquation(right, () => true);
    // "table or formula" says which of two it was: no equation.
    return read.type === 'op' && ['and', 'or', 'not'].includes(read.op) ? undefined : read;
  } catch {
    return undefined;
  }
}

const LETTERS: Readonly<Record<string, string>> = {
  alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ', epsilon: 'ε', eta: 'η', theta: 'θ', kappa: 'κ', lambda: 'λ',
  mu: 'µ', nu: 'ν', rho: 'ρ', sigma: 'σ', tau: 'τ', phi: 'φ', omega: 'ω', pi: 'π',
}; // prettier-ignore

/** A relation in words, with its Greek letters as letters. */
export const inLetters = (text: string): string =>
  text
    .replace(/(?<![A-Za-z])D(?=[A-Za-z](?![A-Za-z]))/g, 'Δ')
    .replace(/(?<![A-Za-z])[a-z]+(?![a-z])/g, (word) => LETTERS[word] ?? word)
    .replace(/(?<=[\p{L}\d_)])\*(?=[\p{L}\d_(])/gu, ' · ');

/** An equation with letters and signs as people write them; one with places of cells in it as it is. */
export const inSigns = (equation: string): string =>
  equation.includes('!')
    ? equation
    : inLetters(equation).replace(/\^([23])(?![\d.])/g, (_, power) => (power === '2' ? '²' : '³'));

/** A text with names of arguments in it, such as `airPressure`, for who does not type them. */
export const inWords = (text: string): string =>
  text.replace(/(?<![\w!.])[a-z]{2,}(?:[A-Z][a-z]+)+(?!\w)/g, (name) =>
    name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
  );

/** One equation of a definition, as a person looks it up: in symbols, for each case of its choice. */
export interface GeneralEquation {
  readonly symbolTex: string;
  readonly says: string;
  readonly unit: string;
  readonly cases: readonly {
    readonly when?: string;
    readonly tex?: string;
    readonly words?: string;
    /** For where nothing can be typeset. */
    readonly text: string;
  }[];
  readonly note?: string;
}

/** Every step of a definition in symbols, with all of its optional inputs given. */
export function equationsOf(definition: Definition): GeneralEquation[] {
  if (definition.type === 'lookup') return [];
  if (definition.type === 'procedure') return procedureEquations(definition);
  return Object.entries((definition as Formula).steps).map(([symbol, step]): GeneralEquation => {
    const cases: readonly (readonly [string | undefined, string])[] =
      'by' in step ? Object.entries(step.cases) : [[undefined, step.expr]];
    return {
      symbolTex: symbolTex(symbol),
      says: step.says,
      unit: unitsOfKind(step.gives),
      cases: cases.map(([when, expr]) => ({
        ...(when === undefined ? {} : { when }),
        tex: `${symbolTex(symbol)} = ${toTex(prune(parseEquation(expr, () => true)))}`,
        text: inLetters(`${symbol} = ${expr}`),
      })),
      ...noteOf(step),
    };
  });
}

function procedureEquations(definition: Extract<Definition, { type: 'procedure' }>): GeneralEquation[] {
  const steps = Object.entries(
    (definition.steps ?? {}) as Readonly<
      Record<string, { gives: Kind | 'text'; says: string; equation: string }>
    >,
  );
  return steps.map(([symbol, { gives, says, equation }]) => {
    const expr = readWritten(symbol, equation);
    return {
      symbolTex: symbolTex(symbol),
      says,
      unit: gives === 'text' ? '' : unitsOfKind(gives),
      cases: [
        {
          ...(expr ? { tex: `${symbolTex(symbol)} = ${toTex(expr)}` } : { words: inLetters(equation) }),
          text: inLetters(
            equation.startsWith(`${symbol} = `) ? equation : `${symbol}${expr ? ' =' : ':'} ${equation}`,
          ),
        },
      ],
    };
  });
}

/** A number that the equations of a definition name. */
export interface NamedConstant {
  readonly symbolTex: string;
  /** For where nothing can be typeset. */
  readonly symbol: string;
  /** As it was written, and in the other system's units. */
  readonly is: string;
  readonly says: string;
}

export const constantsOf = (definition: Definition): NamedConstant[] =>
  Object.entries(declaredConstants(definition)).map(([symbol, { gives, is, says }]) => ({
    symbolTex: symbolTex(symbol),
    symbol: inLetters(symbol),
    is: amountText(is, gives),
    says,
  }));

const declaredConstants = (definition: Definition): Readonly<Record<string, Constant>> =>
  definition.type === 'lookup' ? {} : ((definition as Formula | Procedure).constants ?? {});

/** One condition of an equation's range of validity. */
export interface RangeCondition {
  /** What must hold; absent where it is not said in symbols. */
  readonly tex?: string;
  /** The same for where nothing can be typeset. */
  readonly text?: string;
  /** The sentence for a person where it does not hold. */
  readonly says: string;
}

/** The range of validity of a definition. */
export function rangeOf(definition: Definition): RangeCondition[] {
  if (definition.type === 'lookup') return [];
  if (definition.type === 'procedure')
    return (definition.valid ?? []).map(({ says }: { readonly says: string }) => ({ says }));
  return ((definition as Formula).valid ?? []).map(({ holds, says }) => ({
    tex: toTex(prune(parseEquation(holds, () => true))),
    text: inLetters(holds),
    says,
  }));
}
