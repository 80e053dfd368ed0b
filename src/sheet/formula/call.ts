/** A call of a declared function: its arguments as its letters ask for them, lifted where they are arrays. */
import { CellError } from '../../cells/value';
import { toLogical, toNumber, toText } from '../coerce';
import type { Letter, SheetFunction } from '../functions/spec';
import { ArrayValue, ERRORS, Keep, Raised, raise, Reference, type Scalar, type Value } from '../values';
import { general, type Code, type Compiler } from './code';
import type { Frame } from './frame';
import { lift } from './lift';
import { LONGEST_TEXT, TOO_LONG } from './operators';
import type { Node } from './syntax';

type Reader = (value: Scalar, date1904: boolean) => unknown;

/** How each letter of a scalar reads it. */
const SCALARS: Partial<Record<Letter, Reader>> = {
  n: toNumber,
  t: toText,
  b: toLogical,
  s: (value) => (value instanceof CellError ? raise(value) : value),
  v: (value) => value,
  f: (value) => (value instanceof CellError ? raise(value) : value),
};

interface Argument {
  readonly code: Code | null;
  readonly letter: Letter;
  /** For the letters of scalars. */
  readonly read: Reader | undefined;
}

export function compileCall(spec: SheetFunction, nodes: readonly (Node | null)[], to: Compiler): Code {
  const { least, most } = spec.parameters;
  if (nodes.length < least || nodes.length > most) {
    throw new Keep(`${spec.name} takes ${countText(least, most)}, not ${nodes.length}.`);
  }
  if (spec.isVolatile) to.isVolatile();
  if (spec.isOurs) to.isOurs();
  const args = nodes.map((node, i): Argument => {
    const letter = letterAt(spec, i);
    const place =
      letter === 'a' || letter === 'A'
        ? to.with({ lifts: true })
        : letter === 'p'
          ? to.with({ reads: () => undefined })
          : to;
    return { code: node && place.compile(node), letter, read: SCALARS[letter] };
  });
  const lifts = to.lifts && args.some(({ code, read }) => read && code && !code.isSingle);
  const once = (frame: Frame): Value => {
    const given = new Array<unknown>(args.length);
    return guarded(spec, () => {
      for (let i = 0; i < args.length; i++) given[i] = argument(args[i] as Argument, frame);
      return spec.call(frame, given);
    });
  };
  if (lifts) return general((frame) => overArrays(spec, args, frame));
  return general(once);
}

const countText = (least: number, most: number): string =>
  least === most ? `${least} argument${least === 1 ? '' : 's'}` : `${least} to ${most} arguments`;

function letterAt({ parameters: { letters, repeated } }: SheetFunction, at: number): Letter {
  return letters[at] ?? repeated[(at - letters.length) % repeated.length] ?? 'r';
}

function argument(one: Argument, frame: Frame): unknown {
  const { code, letter, read } = one;
  if (read && letter === 'f') return read(topLeft(frame, cells(one, frame)), frame.book.date1904);
  if (read) return read(code ? code.scalar(frame) : null, frame.book.date1904);
  if (letter === 'l') return () => code?.value(frame) ?? null;
  const value = code ? code.value(frame) : null;
  return letter === 'a' ? frame.array(value) : value;
}

/** What takes scalars is given: one, or an array to go over. */
function cells({ code, letter }: Argument, frame: Frame): Scalar | ArrayValue {
  const value = code ? code.value(frame) : null;
  return letter === 'f' && isSeveralCells(value) ? ERRORS['#VALUE!'] : frame.plain(value);
}

const isSeveralCells = (value: Value): boolean =>
  value instanceof Reference &&
  value.areas.some(({ top, left, bottom, right }) => bottom > top || right > left);

function overArrays(spec: SheetFunction, args: readonly Argument[], frame: Frame): Value {
  return guarded(spec, () => {
    const lifted: (Scalar | ArrayValue)[] = [];
    const given = args.map((one): unknown => {
      if (!one.read) return argument(one, frame);
      lifted.push(cells(one, frame));
      return undefined;
    });
    const scalars = args.flatMap(({ read }, at) => (read ? [{ at, read }] : []));
    const { date1904 } = frame.book;
    const cell = (values: readonly Scalar[]): Value =>
      guarded(spec, () => {
        scalars.forEach(({ at, read }, i) => (given[at] = read(values[i] ?? null, date1904)));
        return spec.call(frame, given);
      });
    if (!lifted.some((value) => value instanceof ArrayValue)) return cell(lifted as Scalar[]);
    return lift(frame, lifted, (values) => topLeft(frame, cell(values)));
  });
}

function topLeft(frame: Frame, value: Value): Scalar {
  const plain = frame.plain(value);
  return plain instanceof ArrayValue ? plain.at(0, 0) : plain;
}

/** What a function answers, made fit for a cell; what it raises, as its answer; a fault in it is kept. */
function guarded(spec: SheetFunction, part: () => Value): Value {
  try {
    const value = part() as Value | undefined;
    if (typeof value === 'number') return Number.isFinite(value) ? value : ERRORS['#NUM!'];
    if (typeof value === 'string') return value.length > LONGEST_TEXT ? TOO_LONG : value;
    return value ?? null;
  } catch (error) {
    if (error instanceof Raised) return error.cell;
    if (error instanceof TypeError || error instanceof ReferenceError) {
      throw new Keep(`${spec.name} failed: ${error.message}.`);
    }
    throw error;
  }
}
