/** A formula's tree as closures. */
import { NAMESPACE } from '../../cells/namespace';
import { CellError, type ErrorCode } from '../../cells/value';
import { ArrayValue, ERRORS, Keep, Lambda, Reference, type Scalar } from '../values';
import { branches } from './branches';
import { compileCall } from './call';
import { general, single, type Code, type Compiler } from './code';
import type { Frame } from './frame';
import { lift } from './lift';
import { BINARY, UNARY, type Binary } from './operators';
import { readPlace } from './places';
import { tableCode } from './tables';
import { joinedAreas, metAreas, spannedAreas } from './references';
import {
  OPTIONAL,
  readFormula,
  type BinaryNode,
  type CallNode,
  type LambdaNode,
  type LetNode,
  type Node,
  type ReferenceNode,
} from './syntax';

export function compile(node: Node, to: Compiler): Code {
  switch (node.type) {
    case 'Literal':
      return constant(node.value);
    case 'ErrorLiteral':
      return constant(errorNamed(node.value));
    case 'ReferenceIdentifier':
      return reference(node, to);
    case 'UnaryExpression':
      return unary(node.operator, node.arguments[0], to);
    case 'BinaryExpression':
      return binary(node, to);
    case 'CallExpression':
      return call(node, to);
    case 'ArrayExpression':
      return constantArray(node.elements);
    case 'LetExpression':
      return letCode(node, to);
    case 'LambdaExpression':
      return lambdaCode(node, to);
  }
}

const constant = (value: Scalar): Code => single(() => value);

/** What was left empty between commas is blank. */
const maybe = (node: Node | null, to: Compiler): Code => (node ? compile(node, to) : constant(null));

function errorNamed(code: string): CellError {
  return (
    (ERRORS as Readonly<Record<string, CellError | undefined>>)[code.toUpperCase()] ??
    new CellError(code as ErrorCode)
  );
}

function constantArray(rows: readonly (readonly Node[])[]): Code {
  const array = ArrayValue.of(
    rows.map((row) =>
      row.map((node): Scalar => {
        if (node.type === 'Literal') return node.value;
        return node.type === 'ErrorLiteral' ? errorNamed(node.value) : ERRORS['#VALUE!'];
      }),
    ),
  );
  return general(() => array);
}

function reference(node: ReferenceNode, to: Compiler): Code {
  if (node.kind === 'table') return tableCode(node.value, to) ?? unknownName(node.value, to);
  if (node.kind === 'name') return nameCode(node.value, to);
  // What looks like a cell may be a name or a table: `Tbl1`.
  if (to.book.cellLike.size > 0 && to.book.cellLike.has(node.value.toUpperCase()))
    return nameCode(node.value, to);
  const place = readPlace(node.value, to.from, to.isName, to.book.sheetNamed);
  if (!place) return constant(new CellError('#REF!', `There is no sheet for ${node.value}.`));
  to.reads(place);
  if (place.isCell) {
    return {
      value: (frame) => Reference.cell(place.sheet(frame), place.row(frame), place.column(frame)),
      scalar: (frame) => frame.book.read(place.sheet(frame), place.row(frame), place.column(frame)),
      isSingle: true,
    };
  }
  return general((frame) => new Reference(place.areas(frame)));
}

function nameCode(text: string, to: Compiler): Code {
  const depth = to.scope.lastIndexOf(text.toUpperCase());
  if (depth >= 0) return variable(to.scope.length - 1 - depth);
  return namedCode(text, to) ?? unknownName(text, to);
}

/** A name of the sheet or the workbook, or a whole table. */
function namedCode(text: string, to: Compiler): Code | undefined {
  const bang = text.lastIndexOf('!');
  const owner =
    bang < 0
      ? undefined
      : text
          .slice(0, bang)
          .replace(/^'(.*)'$/, '$1')
          .replaceAll("''", "'");
  if (owner?.startsWith('[')) throw new Keep(`It refers to another workbook: ${text}.`);
  const sheet = owner === undefined ? to.from.sheet : to.book.sheetNamed(owner);
  const name = text.slice(bang + 1);
  const formula = sheet === undefined ? undefined : to.book.named(name, sheet);
  if (sheet === undefined || formula === undefined) return tableCode(name, to);
  const key = `${sheet} ${name.toUpperCase()}`;
  const known = to.names.get(key);
  // A LAMBDA that calls itself by its name is compiled once it is called.
  if (known) return known.code ?? general((frame) => known.code?.value(frame) ?? null);
  const entry: { code?: Code } = {};
  to.names.set(key, entry);
  const from = { sheet, row: 0, column: 0 };
  entry.code = compile(readFormula(formula), to.with({ from, isName: true, lifts: true, scope: [] }));
  return entry.code;
}

/** A function's name without brackets is the function itself, as in BYROW(A1:B9,SUM). */
function unknownName(text: string, to: Compiler): Code {
  const spec = to.book.functions.get(text.toUpperCase());
  if (!spec) throw new Keep(`There is no name ${text}.`);
  const { least, most } = spec.parameters;
  return general(
    (frame) =>
      new Lambda(least, most, (args) =>
        spec.call(
          frame,
          args.map((arg) => arg ?? null),
        ),
      ),
  );
}

const variable = (outward: number): Code =>
  general((frame) => {
    let scope = frame.scope;
    for (let i = 0; i < outward; i++) scope = scope?.outer;
    return scope?.value ?? null;
  });

function unary(operator: string, operand: Node, to: Compiler): Code {
  if (operator === '#') return call(callOf('ANCHORARRAY', operand), to);
  if (operator === '@') return single(compile(operand, to).scalar);
  const code = compile(operand, to);
  const of = UNARY[operator];
  if (!of) throw new Keep(`It cannot be read: ${operator}.`);
  const scalar = (frame: Frame) => of(code.scalar(frame), frame.book.date1904);
  if (code.isSingle || !to.lifts) return single(scalar);
  return general((frame) => {
    const value = frame.plain(code.value(frame));
    const { date1904 } = frame.book;
    return value instanceof ArrayValue
      ? lift(frame, [value], ([a = null]) => of(a, date1904))
      : of(value, date1904);
  });
}

const callOf = (name: string, ...args: Node[]): CallNode => ({
  type: 'CallExpression',
  callee: { type: 'Identifier', name },
  arguments: args,
});

const REFERENCE_OPERATORS = {
  ':': spannedAreas,
  ' ': metAreas,
  ',': joinedAreas,
};

/** A chain a+b+c+… of thousands of terms is a loop, not thousands of calls inside one another. */
const LONG_CHAIN = 32;

function binary(node: BinaryNode, to: Compiler): Code {
  const terms: { readonly operator: string; readonly right: Node }[] = [];
  let first: Node = node;
  while (first.type === 'BinaryExpression') {
    terms.push({ operator: first.operator, right: first.arguments[1] });
    first = first.arguments[0];
  }
  terms.reverse();
  const start = compile(first, to);
  const codes = terms.map(({ operator, right }) => ({ operator, right: compile(right, to) }));
  const isChain =
    codes.length > LONG_CHAIN &&
    codes.every(({ operator, right }) => operator in BINARY && (right.isSingle || !to.lifts)) &&
    (start.isSingle || !to.lifts);
  if (isChain) return chain(start, codes);
  return codes.reduce((left, { operator, right }) => {
    if (operator in REFERENCE_OPERATORS) {
      return referenceOperator(operator as keyof typeof REFERENCE_OPERATORS, left, right, to);
    }
    const of = BINARY[operator];
    if (!of) throw new Keep(`It cannot be read: ${operator}.`);
    return operation(of, left, right, to);
  }, start);
}

function chain(start: Code, codes: readonly { readonly operator: string; readonly right: Code }[]): Code {
  const steps = codes.map(({ operator, right }) => ({ of: BINARY[operator] as Binary, right: right.scalar }));
  return single((frame) => {
    const { date1904 } = frame.book;
    let value = start.scalar(frame);
    for (const { of, right } of steps) value = of(value, right(frame), date1904);
    return value;
  });
}

function operation(of: Binary, left: Code, right: Code, to: Compiler): Code {
  if (!to.lifts || (left.isSingle && right.isSingle)) {
    const a = left.scalar;
    const b = right.scalar;
    return single((frame) => of(a(frame), b(frame), frame.book.date1904));
  }
  return general((frame) => {
    const a = frame.plain(left.value(frame));
    const b = frame.plain(right.value(frame));
    const { date1904 } = frame.book;
    if (a instanceof ArrayValue || b instanceof ArrayValue) {
      return lift(frame, [a, b], ([x = null, y = null]) => of(x, y, date1904));
    }
    return of(a, b, date1904);
  });
}

function referenceOperator(
  operator: keyof typeof REFERENCE_OPERATORS,
  left: Code,
  right: Code,
  to: Compiler,
): Code {
  const of = REFERENCE_OPERATORS[operator];
  // What lies between two ends is known only when both are.
  if (operator === ':') to.isVolatile();
  return general((frame) => {
    const a = left.value(frame);
    const b = right.value(frame);
    if (a instanceof CellError) return a;
    if (b instanceof CellError) return b;
    if (!(a instanceof Reference) || !(b instanceof Reference)) return ERRORS['#VALUE!'];
    return of(a.areas, b.areas);
  });
}

function call(node: CallNode, to: Compiler): Code {
  const args = node.arguments;
  if (node.callee.type !== 'Identifier') return lambdaCall(compile(node.callee, to), args, to);
  const name = node.callee.name.toUpperCase().replace(/^(?:_XLFN\.|_XLWS\.|_XLUDF\.)+/, '');
  if (to.scope.includes(name)) return lambdaCall(nameCode(name, to), args, to);
  if (name === 'SINGLE' && args[0]) return unary('@', args[0], to);
  const branch = branches[name];
  if (branch) return branch(args, to);
  const spec = to.book.functions.get(name);
  if (spec) return compileCall(spec, args, to);
  const named = namedCode(node.callee.name, to);
  if (named) return lambdaCall(named, args, to);
  if (name.startsWith(`${NAMESPACE}.`)) to.isOurs();
  throw new Keep(to.book.unknownFunction(node.callee.name));
}

function lambdaCall(callee: Code, args: readonly (Node | null)[], to: Compiler): Code {
  const codes = args.map((arg) => arg && compile(arg, to));
  return general((frame) => {
    const lambda = callee.value(frame);
    if (lambda instanceof CellError) return lambda;
    if (!(lambda instanceof Lambda)) return ERRORS['#REF!'];
    return lambda.call(codes.map((code) => code?.value(frame)));
  });
}

function letCode(node: LetNode, to: Compiler): Code {
  let inner = to;
  const values = node.declarations.map(({ id, init }) => {
    const code = maybe(init, inner);
    inner = inner.with({ scope: [...inner.scope, id.name.toUpperCase()] });
    return code.value;
  });
  const body = maybe(node.body, inner);
  const scoped = (frame: Frame): Frame => {
    let own = frame;
    for (const value of values) own = own.within(value(own));
    return own;
  };
  return {
    value: (frame) => {
      const own = scoped(frame);
      return body.value(own);
    },
    scalar: (frame) => body.scalar(scoped(frame)),
    isSingle: body.isSingle,
  };
}

function lambdaCode(node: LambdaNode, to: Compiler): Code {
  const names = node.params.map(({ name }) => name);
  const optional = names.findIndex((name) => name.endsWith(OPTIONAL));
  const least = optional < 0 ? names.length : optional;
  const body = maybe(
    node.body,
    to.with({ scope: [...to.scope, ...names.map((name) => name.replace(OPTIONAL, '').toUpperCase())] }),
  );
  return general(
    (frame) =>
      new Lambda(least, names.length, (args) => {
        if (args.length < least || args.length > names.length) return ERRORS['#VALUE!'];
        let own = frame;
        for (let i = 0; i < names.length; i++) own = own.within(args[i]);
        return frame.book.deeper(() => body.value(own));
      }),
  );
}
