import { CellError, type Argument, type CellValue } from '../../src/cells/value';
import { worksheetFunction } from '../../src/call/worksheet';
import { amountSI } from '../../src/core/amount';
import type { Check } from '../../src/core/checks';
import { inputsOf, type Amount, type AnyInput, type Definition } from '../../src/core/define';
import { givesOf } from '../../src/core/answer';
import { fromSI, systemUnit, toSI, type Kind, type System } from '../../src/core/quantity';
import { percentFrom } from '../../src/core/readQuantity';
import { valuesOf } from './runCheck';

/** A check's arguments as plain numbers of one system, without a unit in sight; names and words as they are. */
function plainArguments(definition: Definition, check: Check, system: System): Argument[] {
  const given = check.given as Readonly<Record<string, Amount | readonly Amount[] | undefined>>;
  const args = inputsOf(definition).map((input): Argument => {
    const value = given[input.name];
    if (value === undefined) return undefined;
    return [value].flat().map((one) => [plainCell(input, one, system)]);
  });
  return [...args, [[system]]];
}

function plainCell({ reading }: AnyInput, amount: Amount, system: System): CellValue {
  if (reading.as !== 'quantity' && reading.as !== 'list') return amount;
  const plain = fromSI(amountSI(amount, reading.kind), systemUnit(reading.kind, system));
  // A percentage that a plain number could be misread as stays text.
  return reading.kind === 'percent' && percentFrom(plain) === undefined ? amount : plain;
}

/** What a check's plain numbers of one system give, in SI. */
export function answerIn(definition: Definition, check: Check, system: System): CellValue[] {
  const gives = givesOf(definition, valuesOf(definition, check, system));
  const kinds: readonly (Kind | 'text')[] =
    typeof gives === 'string' ? [gives] : gives.row.map((part) => part.gives);
  const [row = []] = worksheetFunction(definition).call(plainArguments(definition, check, system));
  return row.map((cell, i) => {
    const kind = kinds[i] ?? 'text';
    if (cell instanceof CellError) throw new Error(`${cell.code} ${cell.message}`);
    return typeof cell === 'number' && kind !== 'text' ? toSI(cell, systemUnit(kind, system)) : cell;
  });
}
