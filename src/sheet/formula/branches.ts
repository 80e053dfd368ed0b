/** The functions that calculate only the arguments that they need. */
import { CellError } from '../../cells/value';
import { toLogical, toNumber } from '../coerce';
import { compare } from '../compare';
import { ArrayValue, ERRORS, Keep, Raised, type Scalar, type Value } from '../values';
import { general, type Code, type Compiler } from './code';
import type { Frame } from './frame';
import { lift } from './lift';
import type { Node } from './syntax';

type Args = readonly (Node | null)[];
type Branch = (args: Args, to: Compiler) => Code;

const fixed = (value: Scalar): Code => ({ value: () => value, scalar: () => value, isSingle: true });
const EMPTY = fixed(0);

/** An empty argument between commas is 0. */
const part = (node: Node | null, to: Compiler): Code => (node ? to.compile(node) : EMPTY);

/** A picked argument by its index, as opposed to a value that is the answer itself. */
class Pick {
  constructor(readonly index: number) {}
}

/** Looks at the deciding arguments by their index, one after another. */
type Decide = (at: (index: number) => Scalar) => Pick | Scalar;

/**
 * A function that decides by scalars which of its arguments is the answer. One scalar decides without calculating the
 * others; arrays decide cell by cell.
 */
function choosing(codes: readonly Code[], deciders: readonly number[], to: Compiler, decide: Decide): Code {
  const deciding = (frame: Frame): Pick | Scalar => {
    try {
      return decide((index) => (codes[index] as Code).scalar(frame));
    } catch (error) {
      if (error instanceof Raised) return error.cell;
      throw error;
    }
  };
  const value = (frame: Frame): Value => {
    const found = deciding(frame);
    return found instanceof Pick ? (codes[found.index] as Code).value(frame) : found;
  };
  const scalar = (frame: Frame): Scalar => {
    const found = deciding(frame);
    return found instanceof Pick ? (codes[found.index] as Code).scalar(frame) : found;
  };
  const isSimple = !to.lifts || deciders.every((index) => (codes[index] as Code).isSingle);
  if (isSimple) return { value, scalar, isSingle: codes.every(({ isSingle }) => isSingle) };
  return general((frame) => {
    const known: (Scalar | ArrayValue | undefined)[] = [];
    const plain = (index: number): Scalar | ArrayValue =>
      (known[index] ??= frame.plain((codes[index] as Code).value(frame)));
    const arrays = deciders.some((index) => plain(index) instanceof ArrayValue);
    if (!arrays) return value(frame);
    const all = codes.map((_, index) => plain(index));
    return lift(frame, all, (cells) => {
      try {
        const found = decide((index) => cells[index] ?? null);
        return found instanceof Pick ? (cells[found.index] ?? null) : found;
      } catch (error) {
        if (error instanceof Raised) return error.cell;
        throw error;
      }
    });
  });
}

function counted(name: string, args: Args, least: number, most = 255): void {
  if (args.length < least || args.length > most)
    throw new Keep(`${name} is not written with ${args.length} arguments.`);
}

const condition = (value: Scalar): boolean => {
  if (typeof value === 'boolean') return value;
  return typeof value === 'number' ? value !== 0 : toLogical(value);
};

const ifBranch: Branch = (args, to) => {
  counted('IF', args, 1, 3);
  const [test = null, then, otherwise] = args;
  const codes = [
    part(test, to),
    then === undefined ? fixed(true) : part(then, to),
    otherwise === undefined ? fixed(false) : part(otherwise, to),
  ];
  const [THEN, OTHERWISE] = [new Pick(1), new Pick(2)];
  return choosing(codes, [0], to, (at) => (condition(at(0)) ? THEN : OTHERWISE));
};

const ifsBranch: Branch = (args, to) => {
  counted('IFS', args, 2);
  const codes = args.map((arg) => part(arg, to));
  const tests = codes.map((_, index) => index).filter((index) => index % 2 === 0);
  return choosing(codes, tests, to, (at) => {
    for (const index of tests) if (condition(at(index))) return new Pick(index + 1);
    return ERRORS['#N/A'];
  });
};

const switchBranch: Branch = (args, to) => {
  counted('SWITCH', args, 3);
  const codes = args.map((arg) => part(arg, to));
  const pairs = Math.floor((codes.length - 1) / 2);
  const cases = Array.from({ length: pairs }, (_, pair) => 1 + 2 * pair);
  const otherwise = codes.length % 2 === 0 ? new Pick(codes.length - 1) : ERRORS['#N/A'];
  return choosing(codes, [0, ...cases], to, (at) => {
    const value = at(0);
    if (value instanceof CellError) return value;
    const found = cases.find((index) => {
      const other = at(index);
      return compare(value, other) === 0;
    });
    return found === undefined ? otherwise : new Pick(found + 1);
  });
};

const chooseBranch: Branch = (args, to) => {
  counted('CHOOSE', args, 2);
  const codes = args.map((arg) => part(arg, to));
  return choosing(codes, [0], to, (at) => {
    const index = Math.trunc(toNumber(at(0)));
    return index >= 1 && index < codes.length ? new Pick(index) : ERRORS['#VALUE!'];
  });
};

const catching =
  (name: string, catches: (value: CellError) => boolean): Branch =>
  (args, to) => {
    counted(name, args, 2, 2);
    const [code, other] = args.map((arg) => part(arg, to)) as [Code, Code];
    const isCaught = (value: unknown) => value instanceof CellError && catches(value);
    const scalar = (frame: Frame): Scalar => {
      const value = code.scalar(frame);
      return isCaught(value) ? other.scalar(frame) : value;
    };
    if (!to.lifts || code.isSingle) {
      return {
        scalar,
        value: (frame) => {
          const value = code.scalar(frame);
          return isCaught(value) ? other.value(frame) : value;
        },
        isSingle: other.isSingle,
      };
    }
    return general((frame) => {
      const value = frame.plain(code.value(frame));
      if (!(value instanceof ArrayValue)) return isCaught(value) ? other.value(frame) : value;
      if (!value.stored.some(isCaught) && !isCaught(value.tail)) return value;
      const instead = frame.plain(other.value(frame));
      return lift(frame, [value, instead], ([one = null, two = null]) => (isCaught(one) ? two : one));
    });
  };

/** A LAMBDA's parameter that was left out. */
const isOmitted: Branch = (args, to) => {
  counted('ISOMITTED', args, 1, 1);
  const [node] = args;
  const name = node?.type === 'ReferenceIdentifier' ? node.value.toUpperCase() : '';
  const depth = to.scope.lastIndexOf(name);
  if (depth < 0) return fixed(false);
  const outward = to.scope.length - 1 - depth;
  const scalar = (frame: Frame): Scalar => {
    let scope = frame.scope;
    for (let i = 0; i < outward; i++) scope = scope?.outer;
    return scope?.value === undefined;
  };
  return { value: scalar, scalar, isSingle: true };
};

export const branches: Readonly<Record<string, Branch | undefined>> = {
  IF: ifBranch,
  IFS: ifsBranch,
  SWITCH: switchBranch,
  CHOOSE: chooseBranch,
  IFERROR: catching('IFERROR', () => true),
  IFNA: catching('IFNA', ({ code }) => code === '#N/A'),
  ISOMITTED: isOmitted,
};
