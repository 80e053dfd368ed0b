import { inputsOf, type AnyInput, type Definition } from '../core/define';
import { KINDS, SYSTEMS, type Kind } from '../core/quantity';
import type { WorksheetParameter } from './worksheetFunction';

/** The last parameter of every function: in which units plain numbers are read and the result is given. */
export const UNITS_PARAMETER: WorksheetParameter = {
  name: 'units',
  says: 'Units of plain numbers and of the result: "in" (default) or "mm". May follow the last argument given, wherever that stands',
  optional: true,
  repeating: false,
  choices: SYSTEMS,
};

/** `lbf or N`; one unit where both systems share it; empty for a ratio. */
export function unitsOfKind(kind: Kind): string {
  const { in: inch, mm } = KINDS[kind].system;
  return inch === mm ? inch : `${inch} or ${mm}`;
}

function unitText({ reading }: AnyInput): string {
  switch (reading.as) {
    case 'quantity':
    case 'list':
      return unitsOfKind(reading.kind);
    case 'named': {
      const { what, number } = reading;
      if (!number) return what;
      const unit = unitsOfKind(number.kind);
      return `${what}, or ${number.says}${unit === '' ? '' : ` in ${unit}`}`;
    }
    case 'choice':
    case 'text':
      return '';
  }
}

function defaultText(input: AnyInput): string {
  if (input.default !== undefined) return String(input.default);
  if (input.sameAs !== undefined) return `as ${input.sameAs}`;
  return '';
}

/** `Axial force that drives the insert home (lbf or N)`. */
export function parameterText(input: AnyInput): string {
  const unit = unitText(input);
  const standard = defaultText(input);
  return `${input.says}${unit === '' ? '' : ` (${unit})`}${standard === '' ? '' : `. If left out: ${standard}`}`;
}

const parameterOf = (input: AnyInput): WorksheetParameter => ({
  name: input.name,
  says: parameterText(input),
  optional: input.optional,
  repeating: false,
  ...(input.reading.as === 'choice' ? { choices: input.reading.words } : {}),
});

export const parametersOf = (definition: Definition): WorksheetParameter[] => [
  ...inputsOf(definition).map(parameterOf),
  UNITS_PARAMETER,
];

export const familyOf = (name: string): string => name.slice(0, name.indexOf('.'));
