import { catalogue } from '../../src/catalogue';
import type { AnyInput, Definition, Formula, Strength } from '../../src/core/define';
import { toJs } from '../../src/core/expr/js';
import { toText } from '../../src/core/expr/text';
import { variables, type Expr } from '../../src/core/expr/tree';
import { programsOf, type Gate, type KeyedProgram, type Program } from '../../src/core/program';

/**
 * The text of the module that stands in the place of `src/core/equations.ts`: for every formula of the catalogue the
 * functions of its variants, made from the same trees that are interpreted otherwise.
 */
export function equationsModule({ alsoOthers }: { readonly alsoOthers: boolean }): string {
  const formulas = catalogue.filter(isFormula);
  return [
    "import { erf } from './erf';",
    "import { raise } from './expr/raise';",
    "import { notFinite, refuseInputs } from './refuseFormula';",
    ...(alsoOthers ? ["import { interpreted } from './interpret';"] : []),
    'const { isFinite } = Number;',
    'const made = {',
    ...formulas.map((formula) => `${JSON.stringify(formula.name)}: ${factory(formula)},`),
    '};',
    alsoOthers
      ? 'export const equationsOf = (formula) => (made[formula.name] ?? interpreted)(formula);'
      : 'export const equationsOf = (formula) => made[formula.name](formula);',
  ].join('\n');
}

const isFormula = (definition: Definition): definition is Formula => definition.type === 'formula';

/** A function that makes a formula's equations, once what its names stand for can be read off its definition. */
function factory(formula: Formula): string {
  const picks = new Map<string, string>();
  const [chosen, ...others] = programsOf(formula)
    .map((variant) => ({ ...variant, text: runner(formula, variant.program, picks) }))
    .reverse();
  if (!chosen) throw new Error(`${formula.name} has no variant`);
  const variants = [chosen, ...others];
  const names = variants.map((_, i) => `run${i}`);
  const dispatch =
    variants.length === 1
      ? 'return run0;'
      : `return (v, system, stresses) => ${others.reduce(
          (rest, { marks }, i) =>
            `${marks.map(test).join('&&')} ? ${names[i + 1] ?? ''}(v, system, stresses) : ${rest}`,
          'run0(v, system, stresses)',
        )};`;
  return [
    '(f) => {',
    ...[...picks].map(([name, text]) => `const ${name} = ${text};`),
    ...variants.map(({ text }, i) => `const ${names[i] ?? ''} = ${text};`),
    dispatch,
    '}',
  ].join('\n');
}

const test = ({ input, mark }: KeyedProgram['marks'][number]): string =>
  typeof mark === 'string'
    ? `v[${input}]===${JSON.stringify(mark)}`
    : `v[${input}]${mark ? '!==' : '==='}undefined`;

/** One variant as a function: what its inputs hold, then step by step. */
function runner(formula: Formula, program: Program, picks: Map<string, string>): string {
  const places = new Map([
    ...program.symbols.map(({ symbol }, i) => [symbol, `x${i}`] as const),
    ...program.steps.map(({ symbol, slot }) => [symbol, `x${slot}`] as const),
  ]);
  const place = (symbol: string): string => {
    const found = places.get(symbol);
    if (found === undefined) throw new Error(`${formula.name} has no ${symbol}`);
    return found;
  };
  const js = (e: Expr): string => toJs(e, place);

  const gateLine = (gate: Gate): string => {
    if (gate.type === 'words') return `if (${js(gate.test)}!==0) return f.inWords.says;`;
    const named = program.steps.filter(({ symbol }) => gate.says.includes(`{${symbol}}`));
    const steps = named.map(({ symbol }) => `${JSON.stringify(symbol)}: ${place(symbol)}`).join(', ');
    const also = named.length === 0 ? '' : `, { ${steps} }`;
    return `if (${js(gate.test)}!==0) refuseInputs(f, ${gate.index}${also});`;
  };

  const exprs = [
    ...program.steps.map(({ expr }) => expr),
    ...gatesOf(program).map(({ test: asked }) => asked),
  ];
  const used = new Set(exprs.flatMap((expr) => [...variables(expr)]));
  // What is picked of a named input is picked whether used or not: it may refuse.
  const inputs = program.symbols.flatMap(({ symbol, input }) =>
    used.has(symbol) || formula.inputs[input]?.reading.as === 'named'
      ? [`const ${place(symbol)} = ${inputText(formula, input, symbol, picks)};`]
      : [],
  );
  const steps = program.steps.flatMap(({ symbol, expr, written, gates }) => [
    `const ${place(symbol)} = ${js(expr)};`,
    `if (!isFinite(${place(symbol)})) notFinite(${JSON.stringify(`${symbol} = ${toText(written)}`)});`,
    ...askable(gates).map(gateLine),
  ]);
  const strength: Strength | undefined = formula.strength;
  const stresses = strength?.map(({ stress }) => place(stress)).join(', ');
  return [
    `(v${stresses === undefined ? '' : ', system, stresses'}) => {`,
    ...inputs,
    ...askable(program.start).map(gateLine),
    ...steps,
    ...(stresses === undefined ? [] : [`if (stresses) stresses.push(${stresses});`]),
    `return ${place(formula.result)};`,
    '}',
  ].join('\n');
}

const gatesOf = ({ start, steps }: Program): Gate[] => [...start, ...steps.flatMap(({ gates }) => gates)];

/** Those that can hold in this variant at all. */
const askable = (gates: readonly Gate[]): readonly Gate[] =>
  gates.filter(({ test: asked }) => asked.type !== 'num' || asked.value !== 0);

/** The number that a symbol has: the value itself, or what is picked of what a name stands for. */
function inputText(formula: Formula, index: number, symbol: string, picks: Map<string, string>): string {
  const input = formula.inputs[index] as AnyInput;
  const value = `v[${index}]`;
  if (input.reading.as !== 'named') return value;
  const pick = `p${index}_${Object.keys(input.reading.binds ?? {}).indexOf(symbol)}`;
  picks.set(pick, `f.inputs[${index}].reading.binds[${JSON.stringify(symbol)}].from`);
  return input.optional ? `${value} === undefined ? NaN : ${pick}(${value})` : `${pick}(${value})`;
}
