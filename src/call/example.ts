import { NAMESPACE } from '../cells/namespace';
import { readCall } from './readCall';
import type { Argument } from '../cells/value';
import { kindOf, type Check, type Checks } from '../core/checks';
import { inputsOf, type Amount, type Definition } from '../core/define';
import { KINDS, type Kind, type System } from '../core/quantity';
import { readQuantity } from '../core/readQuantity';
import { typesetWork, type TypesetWork } from '../derive/typeset';
import { sourceText } from '../derive/words';

/** The check that a function's help works through: the first of those beside it. */
export function exampleCheck({ name }: Definition, checks: readonly Checks[]): Check {
  const [first] = checks.find(({ of }) => of === name)?.checks ?? [];
  if (!first) throw new Error(`${name} has no checks, so its help has no example`);
  return first;
}

/** A check of a definition as a call that a person may type. */
export interface Example {
  /** With its `=`. */
  readonly typed: string;
  readonly system: System;
  readonly work: TypesetWork;
  /** Where the check's answer is from. */
  readonly from: string;
}

type Given = Readonly<Record<string, Amount | readonly Amount[] | undefined>>;

export function exampleOf(definition: Definition, check: Check): Example {
  const given = check.given as Given;
  const system = check.units ?? systemOf(definition, given);
  const inputs = inputsOf(definition);
  const args = inputs.map(({ name }): Argument => {
    const value = given[name];
    if (value === undefined) return undefined;
    return typeof value === 'object' ? value.map((one) => [one]) : [[value]];
  });
  const { values } = readCall(definition, [...args, [[system]]]).at(0, 0);
  const last = inputs.map(({ name }) => given[name] !== undefined).lastIndexOf(true);
  const texts = inputs.slice(0, last + 1).map(({ name }) => typedText(given[name]));
  return {
    typed: `=${NAMESPACE}.${definition.name}(${[...texts, `"${system}"`].join(', ')})`,
    system,
    work: typesetWork(definition, values, system, ({ name, default: standard }) =>
      String(given[name] ?? standard ?? ''),
    ),
    from: sourceText({ kind: kindOf(check), cites: check.from }),
  };
}

function typedText(value: Amount | readonly Amount[] | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'object') return `{${value.map(typedText).join(';')}}`;
  return typeof value === 'number' ? String(value) : `"${value.replaceAll('"', '""')}"`;
}

/** The system that the check speaks in: inches where one of its amounts does. */
function systemOf(definition: Definition, given: Given): System {
  const inInches = inputsOf(definition).some(({ name, reading }) => {
    const kind: Kind | undefined =
      reading.as === 'quantity' || reading.as === 'list' ? reading.kind : undefined;
    if (kind === undefined || KINDS[kind].system.in === KINDS[kind].system.mm) return false;
    const amounts = [given[name] ?? []].flat();
    return amounts.some((amount) => {
      const read = typeof amount === 'string' ? readQuantity(amount, kind) : undefined;
      return read?.ok === true && read.unit?.symbol === KINDS[kind].system.in;
    });
  });
  return inInches ? 'in' : 'mm';
}
