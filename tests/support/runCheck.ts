import { amountSI } from '../../src/core/amount';
import type { Check } from '../../src/core/checks';
import { inputsOf, type Amount, type Definition } from '../../src/core/define';
import { givesOf } from '../../src/core/answer';
import { fromSI, systemUnit, type Kind, type System } from '../../src/core/quantity';
import { splitNumber } from '../../src/core/readQuantity';
import { CellError, type Argument, type CellValue } from '../../src/cells/value';
import { defaultValue, readerOf } from '../../src/call/readArgument';
import { worksheetFunction } from '../../src/call/worksheet';

/** The arguments of a check as a worksheet would give them, with its own units in text. */
export function argumentsOf(definition: Definition, check: Check, system: System): Argument[] {
  const given = check.given as Readonly<Record<string, Amount | readonly Amount[] | undefined>>;
  const args = inputsOf(definition).map(({ name }): Argument => {
    const value = given[name];
    if (value === undefined) return undefined;
    return typeof value === 'object' ? value.map((v) => [v]) : [[value]];
  });
  return [...args, [[system]]];
}

/** The values of a check's inputs as `evaluate` takes them. */
export function valuesOf(definition: Definition, check: Check, system: System = 'mm'): unknown[] {
  const given = check.given as Readonly<Record<string, Amount | readonly Amount[] | undefined>>;
  const values = inputsOf(definition).map((input): unknown => {
    const value = given[input.name];
    if (value === undefined) return defaultValue(input, system);
    const read = readerOf(input);
    return typeof value === 'object' ? value.map((v) => read(v, system)) : read(value, system);
  });
  inputsOf(definition).forEach((input, i) => {
    if (given[input.name] === undefined && input.sameAs !== undefined) {
      values[i] = values[inputsOf(definition).findIndex(({ name }) => name === input.sameAs)];
    }
  });
  return values;
}

export interface Outcome {
  readonly got: readonly CellValue[];
  readonly wanted: readonly CellValue[];
  readonly problem: string | undefined;
}

/** Runs a check through the worksheet boundary in one system. */
export function runCheck(definition: Definition, check: Check, system: System): Outcome {
  const [row = []] = worksheetFunction(definition).call(argumentsOf(definition, check, system));
  const gives = givesOf(definition, valuesOf(definition, check, system));
  const parts = typeof gives === 'string' ? [gives] : gives.row.map((part) => part.gives);
  const expected = typeof check.expect === 'object' ? check.expect : [check.expect];
  const wanted = expected.map((amount, i) => expectedCell(amount, parts[i] ?? 'ratio', system));
  const problem = expected
    .map((amount, i) =>
      compare(row[i] ?? null, wanted[i] ?? null, amount, parts[i] ?? 'ratio', check, system),
    )
    .find((p) => p);
  return { got: row, wanted, problem };
}

function expectedCell(amount: Amount, gives: Kind | 'text', system: System): CellValue {
  if (gives === 'text') return amount;
  if (typeof amount === 'string' && !splitNumber(amount)) return amount;
  return fromSI(amountSI(amount, gives), systemUnit(gives, system));
}

function compare(
  got: CellValue,
  wanted: CellValue,
  amount: Amount,
  gives: Kind | 'text',
  check: Check,
  system: System,
): string | undefined {
  if (got instanceof CellError) return `${got.code} ${got.message}`;
  if (typeof wanted !== 'number' || typeof got !== 'number') {
    return got === wanted ? undefined : `${String(got)} instead of ${String(wanted)}`;
  }
  const within = check.within ?? 1e-12;
  const scale = Math.abs(wanted) || 1;
  const unit = gives === 'text' ? '' : systemUnit(gives, system).symbol;
  return Math.abs(got - wanted) <= within * scale
    ? undefined
    : `${got} ${unit} instead of ${wanted} (${String(amount)}), tolerance ${within}`;
}
