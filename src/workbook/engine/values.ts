import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import type { BaseValueObject } from '@univerjs/engine-formula';
import { CellValueType } from '@univerjs/core';
import type { ICellData, Nullable } from '@univerjs/core';
import type { Argument, CellValue, ErrorCode, Matrix } from '../../cells/value';
import { CellError } from '../../cells/value';

/** The engine's own errors that no worksheet knows, and what a person would see instead. */
const FOREIGN: Readonly<Record<string, CellError>> = {
  [ErrorType.CYCLE]: new CellError('#REF!'),
  [ErrorType.ERROR]: new CellError('#VALUE!'),
  [ErrorType.CONNECT]: new CellError('#N/A'),
};

const ENGINE_CODES: Readonly<Record<ErrorCode, ErrorType>> = {
  '#VALUE!': ErrorType.VALUE,
  '#N/A': ErrorType.NA,
  '#NUM!': ErrorType.NUM,
  '#DIV/0!': ErrorType.DIV_BY_ZERO,
  '#REF!': ErrorType.REF,
  '#NAME?': ErrorType.NAME,
  '#NULL!': ErrorType.NULL,
  '#SPILL!': ErrorType.SPILL,
  '#CALC!': ErrorType.CALC,
};

/** The error that a cell's text stands for, or null where the text is just text. */
export function errorOf(text: string): CellError | null {
  return FOREIGN[text] ?? (text in ENGINE_CODES ? new CellError(text as ErrorCode) : null);
}

function cellValue(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return null;
  if (value instanceof ErrorValueObject) {
    const { code, message } = errorOf(value.getErrorType()) ?? new CellError('#VALUE!');
    return new CellError(code, value.getErrorContent() || message);
  }
  if (value.isNumber() || value.isBoolean()) return value.getValue();
  if (value.isString()) return numberOf(String(value.getValue()));
  return new CellError('#VALUE!');
}

/** As numbers in quotes must stay text, the engine leaves one typed with an exponent, `1E-7`, as text as well. */
function numberOf(text: string): number | string {
  return /^[+-]?(?:\d+\.?\d*|\.\d+)E[+-]?\d+$/i.test(text) ? Number(text) : text;
}

/** An engine's value as rows of cells. */
export function matrixOf(value: BaseValueObject): Matrix {
  if (!(value instanceof ArrayValueObject)) return [[cellValue(value)]];
  const rows = Array.from({ length: value.getRowCount() }, () =>
    new Array<CellValue>(value.getColumnCount()).fill(null),
  );
  const { startRow, startColumn } = value.getRangePosition();
  value.iterator((cell, row, column) => {
    const line = rows[row - startRow];
    if (line) line[column - startColumn] = cellValue(cell);
    return undefined;
  });
  return rows;
}

/** An argument as the functions take it: one that was left out is null, a blank cell is a matrix that holds null. */
export function argumentOf(value: BaseValueObject): Argument {
  return value.isNull() ? null : matrixOf(value);
}

function valueObject(value: CellValue): BaseValueObject {
  if (value === null) return NullValueObject.create();
  if (value instanceof CellError) return ErrorValueObject.create(ENGINE_CODES[value.code], value.message);
  switch (typeof value) {
    case 'number':
      return NumberValueObject.create(value);
    case 'boolean':
      return BooleanValueObject.create(value);
    default:
      return StringValueObject.create(value);
  }
}

/** A function's answer as the engine takes it; more than one cell spills. */
export function resultOf(matrix: Matrix): BaseValueObject {
  const first = matrix[0]?.[0] ?? null;
  if (matrix.length === 1 && matrix[0]?.length === 1) return valueObject(first);
  return ArrayValueObject.create({
    calculateValueList: matrix.map((row) => row.map(valueObject)),
    rowCount: matrix.length,
    columnCount: matrix[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

/** A cell of the grid: its value in full precision. */
export function gridValue(cell: Nullable<ICellData>): CellValue {
  const value = cell?.v;
  if (value === undefined || value === null) return null;
  if (cell?.t === CellValueType.BOOLEAN) return Boolean(Number(value));
  return typeof value === 'string' ? (errorOf(value) ?? value) : value;
}
