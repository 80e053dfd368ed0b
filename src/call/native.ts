import { inputsOf, type AnyInput, type Definition } from '../core/define';
import { SYSTEMS } from '../core/quantity';
import { Refusal } from '../core/refusal';
import type { CallArguments, NativeArgument } from '../derive/native';
import { CellError, type CellValue } from '../cells/value';
import { defaultValue, PassedError, readerOf, readUnits } from './readArgument';

/** An argument of a call in a worksheet: its text there, and what its cells hold. */
export interface CallArgument {
  readonly text: string;
  readonly cells: readonly CellValue[];
  /** The text of each cell of a range, row by row. */
  readonly texts?: readonly string[];
  /** Anything but a constant. */
  readonly varies: boolean;
  /** Rows of a range that is read whole; one where absent. */
  readonly rows?: number;
}

/** A name or a word that the function refuses as it stands. */
export interface RefusedCall {
  readonly refused: string;
  readonly code: '#VALUE!' | '#N/A';
}

/**
 * Reads names, words and units of a call as the boundary does; numbers stay what the worksheet makes of them.
 * The arguments stand in their places, units last.
 */
export function nativeArguments(
  definition: Definition,
  args: readonly (CallArgument | undefined)[],
): CallArguments | RefusedCall {
  const inputs = inputsOf(definition);
  try {
    const units = args[inputs.length];
    const system = units ? readUnits(units.cells[0] ?? null) : 'in';
    const isBlank = (i: number): boolean => args[i]?.cells.every((cell) => cell === null) ?? false;
    // What is left out has another equation, unless a default or another input stands in for it.
    const staysOut = ({ reading, default: standard, sameAs }: AnyInput, i: number): boolean =>
      isBlank(i) && (reading.as !== 'quantity' || (standard === undefined && sameAs === undefined));
    return {
      leftOut: inputs.flatMap((input, i) => {
        const arg = args[i];
        return arg && input.optional && staysOut(input, i)
          ? [{ name: input.name, text: arg.text, isList: input.reading.as === 'list' }]
          : [];
      }),
      units: { text: units ? unitsText(units) : '', varies: units?.varies ?? false, system },
      defaults: inputs.map((input) => defaultValue(input, system)),
      args: inputs.map((input, i): NativeArgument | undefined => {
        const arg = args[i];
        if (!input.optional && (!arg || isBlank(i))) throw new Refusal(`${input.name} is missing`);
        if (!arg || staysOut(input, i)) return undefined;
        const read = readerOf(input);
        const contents = arg.cells.map((cell) => (cell instanceof CellError ? null : cell));
        const [first = null] = contents;
        if (input.reading.as === 'quantity' || input.reading.as === 'list') {
          const value = valueIfAny(() =>
            input.reading.as === 'list' ? contents.map((cell) => read(cell, system)) : read(first, system),
          );
          const content = input.reading.as === 'list' ? contents : first;
          const { text, varies, texts, rows = 1 } = arg;
          return { text, varies, content, value, rows, ...(texts && { texts }) };
        }
        if (input.reading.as === 'set') {
          const entries = contents.filter((cell) => cell !== null && cell !== '');
          const { text, varies, rows = 1 } = arg;
          return { text, varies, content: contents, rows, value: entries.map((cell) => read(cell, system)) };
        }
        const value = read(arg.cells[0] ?? null, system);
        const other = typeof first === 'string' ? valueIfAny(() => read(swapCase(first), system)) : value;
        return {
          text: arg.text,
          varies: arg.varies,
          content: first,
          value,
          exact: JSON.stringify(other) !== JSON.stringify(value),
          byUnits: SYSTEMS.some(
            (one) => JSON.stringify(valueIfAny(() => read(first, one))) !== JSON.stringify(value),
          ),
        };
      }),
    };
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.message, code: error.code };
    if (error instanceof PassedError) return { refused: 'an argument is in error', code: '#VALUE!' };
    throw error;
  }
}

/** A worksheet's `=` passes over capitals but not over blanks. */
const unitsText = ({ text, cells: [cell = null] }: CallArgument): string =>
  typeof cell === 'string' && /\s/.test(cell) ? `SUBSTITUTE(${text}," ","")` : text;

/** A number that is refused today may be changed tomorrow, so the native form is written all the same. */
function valueIfAny(read: () => unknown): unknown {
  try {
    return read();
  } catch {
    return undefined;
  }
}

const swapCase = (text: string): string =>
  Array.from(text, (c) => (c === c.toUpperCase() ? c.toLowerCase() : c.toUpperCase())).join('');
