import type { Argument, CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { findDefinition } from '../call/findDefinition';
import { NAMESPACE } from '../cells/namespace';
import { readCall } from '../call/readCall';
import { valueSource } from '../call/tools/show';
import { sourceText } from '../derive/words';
import { inputsOf, type Definition, type Entry } from '../core/define';
import { quantityText, withUnit } from '../core/format';
import { systemUnit } from '../core/quantity';
import { entriesText, workOf } from '../derive/work';
import type { CellCall } from '../workbook/calculated';

/** One call of a function of the catalogue, told for a person. */
export interface DescribedCall {
  readonly name: string;
  readonly summary: string;
  /** `push = 3 kN`, one an input. */
  readonly inputs: readonly string[];
  readonly equations: readonly string[];
  /** What each letter of the equations means. */
  readonly symbols: readonly { readonly symbol: string; readonly says: string }[];
  /** Unit of the result; empty for a ratio or words. */
  readonly unit: string;
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
  readonly outside: readonly string[];
}

/** Undefined for the functions about functions, and for a name that there is not. */
export function describeCall({ id, args: typed }: CellCall): DescribedCall | undefined {
  const definition = definitionIfAny(id);
  if (!definition) return undefined;
  const told = {
    name: `${NAMESPACE}.${definition.name}`,
    summary: definition.summary,
    inputs: [],
    equations: [],
    symbols: [],
    unit: '',
    cautions: [],
    outside: [],
    sources: definition.sources.map(sourceText),
  };
  try {
    const call = readCall(definition, typed);
    const { args } = call;
    const place = call.at(0, 0);
    const work = workOf(definition, place.values, place.system, (_, i) => firstText(args[i]));
    const results = work.lines.filter(({ role }) => role === 'result');
    const unit = (gives: (typeof results)[number]['gives']): string =>
      gives === 'text' ? '' : systemUnit(gives, place.system).symbol;
    return {
      ...told,
      inputs: inputsOf(definition).flatMap(({ name, reading }, i) => {
        const value = place.values[i];
        if (value === undefined) return [];
        const text =
          reading.as === 'quantity'
            ? quantityText(value as number, reading.kind, place.system)
            : reading.as === 'list'
              ? (value as readonly number[])
                  .map((one) => quantityText(one, reading.kind, place.system))
                  .join(', ')
              : reading.as === 'set'
                ? entriesText(value as readonly Entry<unknown>[])
                : args[i]
                  ? firstText(args[i])
                  : String(inputsOf(definition)[i]?.default ?? '');
        return [`${name} = ${text}${args[i] ? '' : ' (left out)'}`];
      }),
      equations: work.lines.flatMap(({ role, equation }) =>
        role === 'input' || equation === '' ? [] : [equation],
      ),
      symbols: work.lines.flatMap(({ symbol, says, role }) =>
        symbol === '' || symbol === 'result' || (role === 'input' && !work.lines.some(inEquation(symbol)))
          ? []
          : [{ symbol, says }],
      ),
      unit: [...new Set(results.map(({ gives }) => unit(gives)))].filter((one) => one !== '').join(', '),
      sources: valueSource(definition, args).map(sourceText),
      cautions: work.cautions,
      outside: work.outside,
    };
  } catch {
    // What is refused has no working; the cell itself says why.
    return told;
  }
}

/** Whether an equation names the symbol. */
const inEquation =
  (symbol: string) =>
  ({ equation }: { readonly equation: string }): boolean =>
    equation.split(/[^\w'′]+/).includes(symbol);

function definitionIfAny(id: string): Definition | undefined {
  try {
    return findDefinition(id);
  } catch {
    return undefined;
  }
}

const firstText = (arg: Argument): string => valueText(arg?.[0]?.[0] ?? null);

export const valueText = (value: CellValue): string =>
  value === null ? '' : value instanceof CellError ? value.code : String(value);

export const withItsUnit = (value: CellValue, unit: string): string =>
  typeof value === 'number' ? withUnit(String(Number(value.toPrecision(6))), unit) : valueText(value);
