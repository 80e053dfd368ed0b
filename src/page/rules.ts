import {
  BooleanNumber,
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
} from '@univerjs/core';
import type { ISheetDataValidationRule, IStyleBase } from '@univerjs/core';
import { gridRange, sheetId } from './gridData';
import { gridBorders } from './gridStyles';
import { cellAddress } from '../cells/address';
import type {
  ConditionalFormat,
  Sheet,
  StyleOverlay,
  Validation,
  ValidationKind,
  Workbook,
} from '../package/model';

/** The workbook's rules for entries as the grid's plugin loads them; those for looks as formulas and styles. */
export function ruleResources(workbook: Workbook): { name: string; data: string }[] {
  return [
    {
      name: 'SHEET_DATA_VALIDATION_PLUGIN',
      data: bySheet(workbook, ({ validations }) => validations.map(entryRule)),
    },
  ];
}

function bySheet(workbook: Workbook, rules: (sheet: Sheet) => unknown[]): string {
  return JSON.stringify(
    Object.fromEntries(workbook.sheets.map((sheet, index) => [sheetId(index), rules(sheet)])),
  );
}

const ENTRIES: Readonly<Record<ValidationKind, DataValidationType>> = {
  none: DataValidationType.ANY,
  list: DataValidationType.LIST,
  whole: DataValidationType.WHOLE,
  decimal: DataValidationType.DECIMAL,
  date: DataValidationType.DATE,
  time: DataValidationType.TIME,
  textLength: DataValidationType.TEXT_LENGTH,
  custom: DataValidationType.CUSTOM,
};

const OPERATORS: Readonly<Record<string, DataValidationOperator>> = Object.fromEntries(
  Object.values(DataValidationOperator).map((one) => [one, one]),
);

const REFUSALS = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
} as const;

function entryRule(rule: Validation, index: number): ISheetDataValidationRule {
  const { areas, kind, choices, operator, formulas, allowBlank, showsArrow, prompt, refusal } = rule;
  const [formula1, formula2] = choices ? [choices.join(',')] : formulas.map(asWritten);
  // Files give every rule an operator; the grid would apply it also where it means nothing.
  const compares = ['whole', 'decimal', 'date', 'time', 'textLength'].includes(kind);
  const comparison = OPERATORS[operator];
  return {
    uid: `entry-${index + 1}`,
    ranges: areas.map(gridRange),
    type: ENTRIES[kind],
    allowBlank,
    ...(compares && comparison && { operator: comparison }),
    ...(formula1 !== undefined && { formula1 }),
    ...(formula2 !== undefined && { formula2 }),
    renderMode: showsArrow ? DataValidationRenderMode.ARROW : DataValidationRenderMode.TEXT,
    showDropDown: showsArrow,
    ...(prompt && { showInputMessage: true, promptTitle: prompt.title, prompt: prompt.text }),
    ...(refusal && {
      showErrorMessage: true,
      errorStyle: REFUSALS[refusal.style],
      errorTitle: refusal.title,
      error: refusal.text,
    }),
  };
}

/** A number stands as it is; everything else is a formula. */
const asWritten = (text: string) => (Number.isNaN(Number(text)) ? `=${text}` : text);

const COMPARISONS: Readonly<Record<string, string>> = {
  equal: '=',
  notEqual: '<>',
  greaterThan: '>',
  greaterThanOrEqual: '>=',
  lessThan: '<',
  lessThanOrEqual: '<=',
};

/** The rule as a formula for the first cell, which is what files count relative references from. */
export function conditionOf({
  kind,
  operator = '',
  formulas: [first = 'FALSE', second = first],
  areas,
}: ConditionalFormat) {
  if (kind === 'expression') return first;
  const cell = cellAddress(areas[0]?.top ?? 0, areas[0]?.left ?? 0);
  const between = `AND(${cell}>=(${first}),${cell}<=(${second}))`;
  if (operator === 'between') return between;
  if (operator === 'notBetween') return `NOT(${between})`;
  return `${cell}${COMPARISONS[operator] ?? '='}(${first})`;
}

export function gridOverlay({ font, fill, borders }: StyleOverlay): IStyleBase {
  const { bold, italic, strike, underline, color } = font;
  const is = (set: boolean) => (set ? BooleanNumber.TRUE : BooleanNumber.FALSE);
  return {
    ...(bold !== undefined && { bl: is(bold) }),
    ...(italic !== undefined && { it: is(italic) }),
    ...(strike !== undefined && { st: { s: is(strike) } }),
    ...(underline !== undefined && { ul: { s: is(underline !== 'none') } }),
    ...(color !== undefined && { cl: { rgb: color } }),
    ...(fill !== undefined && { bg: { rgb: fill } }),
    ...(Object.keys(borders).length > 0 && { bd: gridBorders(borders) }),
  };
}
