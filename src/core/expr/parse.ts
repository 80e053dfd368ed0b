import { create, parseDependencies, type FactoryFunctionMap, type MathNode } from 'mathjs/number';
import { OPERATORS } from './operators';
import { num, op, variable, when, type Expr, type OperatorName } from './tree';

let parser: ((text: string) => MathNode) | undefined;

/** Made when first needed, since a program that only calculates reads no equation. */
function parseWithMathjs(text: string): MathNode {
  // The parser alone: a named import of `parse` would pull in all of mathjs.
  parser ??= create({ parseDependencies } as FactoryFunctionMap).parse as (text: string) => MathNode;
  return parser(text);
}

/** An equation that the language does not allow; a fault of a definition, never of a worksheet. */
export class EquationError extends Error {
  override readonly name = 'EquationError';
}

/** mathjs names that differ from ours. */
const OPERATOR_OF: Readonly<Record<string, OperatorName>> = {
  add: 'add', subtract: 'sub', multiply: 'mul', divide: 'div', pow: 'pow', unaryMinus: 'neg',
  smaller: 'lt', smallerEq: 'le', larger: 'gt', largerEq: 'ge', and: 'and', or: 'or', not: 'not',
}; // prettier-ignore

/** Functions are written by their own name; the infix operators are not. */
const FUNCTIONS = new Map<string, OperatorName>(
  (Object.keys(OPERATORS) as OperatorName[])
    .filter((name) => !OPERATORS[name].infix)
    .map((name) => [name, name]),
);

// mathjs types its nodes loosely; this names the parts that we read.
interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly fn?: string | { readonly name?: string };
  readonly args?: readonly Node[];
  readonly implicit?: boolean;
  readonly isPercentage?: boolean;
  readonly content?: Node;
  readonly condition?: Node;
  readonly trueExpr?: Node;
  readonly falseExpr?: Node;
}

/**
 * Reads an equation's right side, strictly: only the symbols in `known`, `pi` and the functions of the operator
 * table; no implicit multiplication (mathjs would take `2 F` for farads), no chained comparison, assignment, array,
 * text, percent or factorial. `given(x)` asks whether an optional input was given and is answered by `isGiven`.
 */
export function parseEquation(
  text: string,
  known: (name: string) => boolean,
  isGiven: (name: string) => boolean = () => true,
): Expr {
  const fail = (why: string): never => {
    throw new EquationError(`${why} in "${text}"`);
  };

  const lower = (node: Node | undefined): Expr => {
    switch (node?.type) {
      case 'ConstantNode':
        return typeof node.value === 'number'
          ? num(node.value)
          : fail('only numbers are allowed as constants');
      case 'SymbolNode':
        return symbol(node.name ?? '');
      case 'ParenthesisNode':
        return lower(node.content);
      case 'OperatorNode':
        return operator(node);
      case 'FunctionNode':
        return functionCall(node);
      case 'ConditionalNode':
        return when(lower(node.condition), lower(node.trueExpr), lower(node.falseExpr));
      case 'RelationalNode':
        return fail('a chained comparison is not allowed');
      default:
        return fail(`${node?.type ?? 'nothing'} is not allowed`);
    }
  };

  const symbol = (name: string): Expr => {
    if (name === 'pi') return num(Math.PI);
    return known(name) ? variable(name) : fail(`unknown symbol ${name}`);
  };

  const operator = (node: Node): Expr => {
    if (node.implicit) return fail('multiplication without a sign is not allowed');
    if (node.isPercentage) return fail('% is not allowed');
    const name = OPERATOR_OF[typeof node.fn === 'string' ? node.fn : ''];
    if (!name) return fail(`operator ${typeof node.fn === 'string' ? node.fn : '?'} is not allowed`);
    return op(name, ...(node.args ?? []).map(lower));
  };

  const functionCall = (node: Node): Expr => {
    const name = typeof node.fn === 'object' ? (node.fn.name ?? '') : '';
    const args = node.args ?? [];
    if (name === 'given') {
      const [asked] = args;
      if (args.length !== 1 || asked?.type !== 'SymbolNode') return fail('given() takes one symbol');
      return num(isGiven(asked.name ?? '') ? 1 : 0);
    }
    const known = FUNCTIONS.get(name);
    if (!known) return fail(`unknown function ${name}`);
    const { arity } = OPERATORS[known];
    // max and min may be written with more than two arguments; the tree nests them.
    if (known === 'max' || known === 'min') {
      const lowered = args.map(lower);
      if (lowered.length < 2) return fail(`${name} takes two or more arguments`);
      return lowered.reduce((a, b) => op(known, a, b));
    }
    if (args.length !== arity) return fail(`${name} takes ${arity} argument${arity === 1 ? '' : 's'}`);
    return op(known, ...args.map(lower));
  };

  let node: MathNode;
  try {
    node = parseWithMathjs(text);
  } catch (error) {
    return fail(error instanceof Error ? error.message : 'not an equation');
  }
  return lower(node);
}
