import { CellError, type Argument, type CellValue } from '../cells/value';
import { amountSI } from '../core/amount';
import { kindOf, type Check, type Checks } from '../core/checks';
import { inputsOf, type Amount, type Definition } from '../core/define';
import { givesOf } from '../core/answer';
import { numberText } from '../core/format';
import { fromSI, systemUnit, type Kind, type System } from '../core/quantity';
import { splitNumber } from '../core/readQuantity';
import type { CheckLine } from '../derive/validation';
import { findDefinition } from './findDefinition';
import { readCall } from './readCall';
import { worksheetFunction } from './worksheet';

type Given = Readonly<Record<string, Amount | readonly Amount[] | undefined>>;

/** Every check of every function, calculated now as a worksheet calculates it. */
export const validate = (checks: readonly Checks[]): readonly CheckLine[] =>
  checks.flatMap(({ of, checks: list }) => {
    const definition = findDefinition(of);
    return list.map((check) => lineOf(definition, check));
  });

function lineOf(definition: Definition, check: Check): CheckLine {
  const given = check.given as Given;
  const system: System = check.units ?? 'mm';
  const args = inputsOf(definition).map(({ name }): Argument => {
    const value = given[name];
    if (value === undefined) return undefined;
    return typeof value === 'object' ? value.map((one) => [one]) : [[value]];
  });
  const call: Argument[] = [...args, [[system]]];
  const { values } = readCall(definition, call).at(0, 0);
  const gives = givesOf(definition, values);
  const kinds = typeof gives === 'string' ? [gives] : gives.row.map((part) => part.gives);
  const [row = []] = worksheetFunction(definition).call(call);
  const wanted = (typeof check.expect === 'object' ? check.expect : [check.expect]).map((amount, i) =>
    cellOf(amount, kinds[i] ?? 'ratio', system),
  );
  const differences = wanted.map((one, i) => differenceOf(one, row[i] ?? null));
  return {
    id: definition.name,
    given: Object.entries(given)
      .map(([name, value]) => `${name} ${[value].flat().join('; ')}`)
      .join(', '),
    expected: wanted.map(textOf).join('; '),
    ours: wanted.map((_, i) => textOf(row[i] ?? null)).join('; '),
    difference: differences.includes(undefined)
      ? undefined
      : Math.max(...differences.map((one) => Math.abs(one ?? 0))),
    unit: [...new Set(kinds.map((kind) => (kind === 'text' ? '' : systemUnit(kind, system).symbol)))].join(
      '; ',
    ),
    from: check.from,
    kind: kindOf(check),
  };
}

function cellOf(amount: Amount, gives: Kind | 'text', system: System): CellValue {
  if (gives === 'text' || (typeof amount === 'string' && !splitNumber(amount))) return amount;
  return fromSI(amountSI(amount, gives), systemUnit(gives, system));
}

const textOf = (cell: CellValue): string =>
  typeof cell === 'number' ? numberText(cell) : cell instanceof CellError ? cell.code : String(cell);

const differenceOf = (wanted: CellValue, ours: CellValue): number | undefined =>
  typeof wanted !== 'number' || typeof ours !== 'number'
    ? undefined
    : wanted === 0
      ? ours
      : ours / wanted - 1;
