import type { CellValue, Matrix } from '../cells/value';
import { CellError } from '../cells/value';
import { nativeNumber } from '../core/expr/native';
import { isCall, tokenize, type Token } from '../cells/formulaTokens';
import { areaContains, columnLetters, parseArea, parseCell, quotedSheet, type Area } from '../cells/address';
import { type Sheet, type Workbook } from '../package/model';

/** Where a formula stands. */
export interface Place {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
}

/** What the calculated workbook holds. */
export interface Values {
  at(sheet: Sheet, row: number, column: number): CellValue;
  /** The cells that a formula's result fills. */
  spill(sheet: Sheet, row: number, column: number): Area | undefined;
  /** Works out a formula whose references name their sheets. */
  evaluate(formula: string): Matrix;
}

/** An argument as a matrix of cells, each with the text that stands for it alone. */
export interface Reference {
  readonly text: string;
  readonly varies: boolean;
  readonly cells: readonly (readonly { readonly text: string; readonly value: CellValue }[])[];
  /** Of a single cell, its place. */
  readonly place?: string;
}

export const placeKey = (sheet: string, row: number, column: number): string => `${sheet}\n${row}\n${column}`;

/** Reads the arguments of calls: constants, cells, ranges, names, columns of tables, spilled results. */
export class References {
  constructor(
    private readonly workbook: Workbook,
    private readonly values: Values,
  ) {}

  /** Undefined where the argument is an expression and no reference or constant. `far`: with the sheet's name. */
  read(text: string, place: Place, far: boolean): Reference | undefined {
    const tokens = tokenize(text.trim()).filter(({ kind }) => kind !== 'space');
    const constant = constantOf(tokens);
    if (constant !== undefined) return single(constantTextOf(tokens), constant, false);
    const array = arrayConstant(tokens);
    if (array) {
      return {
        text: text.trim(),
        varies: false,
        cells: array.map((row) => row.map((value) => ({ text: '', value }))),
      };
    }
    const found = this.area(tokens, place);
    if (!found) return undefined;
    const { sheet, area } = found;
    const prefix = far || sheet.name !== place.sheet.name ? `${quotedSheet(sheet.name)}!` : '';
    const own = tokens.slice(tokens.findIndex((token) => token.text === '!') + 1);
    // As typed, with its dollar signs, so that the copy can be filled down as the original could.
    const signs = signsOf(own);
    if (area.top === area.bottom && area.left === area.right) {
      return {
        ...single(
          prefix + signed(area.top, area.left, signs),
          this.values.at(sheet, area.top, area.left),
          true,
        ),
        place: placeKey(sheet.name, area.top, area.left),
      };
    }
    const rows = Array.from({ length: area.bottom - area.top + 1 }, (_, down) =>
      Array.from({ length: area.right - area.left + 1 }, (__, right) => ({
        text: prefix + signed(area.top + down, area.left + right, signs),
        value: this.values.at(sheet, area.top + down, area.left + right),
      })),
    );
    const isTyped = own.every((token) => token.text === ':' || parseCell(token.text) !== undefined);
    const range = isTyped ? own.map((token) => token.text).join('') : signedArea(area, signs);
    return { text: prefix + range, varies: true, cells: rows };
  }

  /** The cells that a reference names; undefined where the text is none. */
  areaOf(text: string, place: Place): { sheet: Sheet; area: Area } | undefined {
    return this.area(
      tokenize(text.trim()).filter(({ kind }) => kind !== 'space'),
      place,
    );
  }

  /** The expression with every reference naming its sheet, so that it means the same anywhere. */
  qualified(text: string, place: Place): string {
    const tokens = tokenize(this.withoutAnchors(text, place));
    return tokens
      .map((token, at) => {
        const isOwn =
          token.kind === 'name' &&
          parseCell(token.text) !== undefined &&
          !isCall(tokens, at) &&
          tokens[at - 1]?.text !== '!' &&
          tokens[at - 1]?.text !== ':';
        return isOwn ? `${quotedSheet(place.sheet.name)}!${token.text}` : token.text;
      })
      .join('');
  }

  /** Spilled results stand in cells of their own in a copy: `ANCHORARRAY(C1)` becomes `C1:C9`. */
  withoutAnchors(
    text: string,
    place: Place,
    only: (sheet: Sheet, row: number, column: number) => boolean = () => true,
  ): string {
    if (!/ANCHORARRAY/i.test(text)) return text;
    return text.replace(
      /ANCHORARRAY\(((?:'(?:[^']|'')+'|[\w.]+)!)?(\$?[A-Z]{1,3}\$?\d+)\)/gi,
      (all, prefix: string | undefined, cell: string) => {
        const sheet = prefix === undefined ? place.sheet : this.sheetNamed(prefix.slice(0, -1));
        const at = parseCell(cell);
        if (!sheet || !at || !only(sheet, at.row, at.column)) return all;
        const area = this.values.spill(sheet, at.row, at.column);
        return (prefix ?? '') + (area ? signedArea(area, signsOf(tokenize(cell))) : cell);
      },
    );
  }

  private area(tokens: readonly Token[], place: Place): { sheet: Sheet; area: Area } | undefined {
    const isAnchor = tokens[0]?.text.toUpperCase() === 'ANCHORARRAY' && tokens.at(-1)?.text === ')';
    if (isAnchor) {
      const inner = this.area(tokens.slice(2, -1), place);
      if (!inner) return undefined;
      const { top, left } = inner.area;
      return { sheet: inner.sheet, area: this.values.spill(inner.sheet, top, left) ?? inner.area };
    }
    const bang = tokens.findIndex(({ text }) => text === '!');
    const sheet = bang === 1 ? this.sheetNamed(tokens[0]?.text ?? '') : place.sheet;
    if (!sheet || bang > 1) return undefined;
    const rest = tokens.slice(bang + 1);
    const [first, colon, last, ...more] = rest;
    if (first?.kind !== 'name' || more.length > 0) return undefined;
    if (colon?.kind === 'bracket' && last === undefined) return this.column(first.text, colon.text, place);
    const isRange = rest.length === 3 && colon?.text === ':';
    if (rest.length > 1 && !isRange) return undefined;
    const area = parseArea(isRange ? `${first.text}:${last?.text ?? ''}` : first.text);
    if (area) return { sheet, area };
    if (!isRange && bang < 0) return this.named(first.text, place);
    return undefined;
  }

  private named(name: string, place: Place): { sheet: Sheet; area: Area } | undefined {
    const same = this.workbook.names.filter((one) => one.name.toLowerCase() === name.toLowerCase());
    const found = same.find(({ sheet }) => sheet === place.sheet.name) ?? same.find(({ sheet }) => !sheet);
    if (found)
      return this.area(
        tokenize(found.formula).filter(({ kind }) => kind !== 'space'),
        place,
      );
    const table = this.table(name);
    return table && { sheet: table.sheet, area: table.data };
  }

  private column(name: string, bracket: string, place: Place): { sheet: Sheet; area: Area } | undefined {
    const table = this.table(name);
    if (!table) return undefined;
    const isRow = isThisRow({ kind: 'bracket', text: bracket });
    const wanted = bracket
      .slice(1, -1)
      .replace(/^\[#This Row\],/i, '')
      .replace(/^@/, '')
      .replace(/^\[(.*)\]$/, '$1')
      .trim();
    const at = table.columns.findIndex((one) => one.toLowerCase() === wanted.toLowerCase());
    if (at < 0) return undefined;
    const left = table.data.left + at;
    const column = { ...table.data, left, right: left };
    if (!isRow) return { sheet: table.sheet, area: column };
    const { row } = place;
    return areaContains(column, row, left)
      ? { sheet: table.sheet, area: { ...column, top: row, bottom: row } }
      : undefined;
  }

  private table(name: string): { sheet: Sheet; data: Area; columns: readonly string[] } | undefined {
    for (const sheet of this.workbook.sheets) {
      const found = sheet.tables.find((one) => one.name.toLowerCase() === name.toLowerCase());
      if (!found) continue;
      const { area, hasHeader, hasTotals, columns } = found;
      const data = {
        ...area,
        top: area.top + (hasHeader ? 1 : 0),
        bottom: area.bottom - (hasTotals ? 1 : 0),
      };
      return { sheet, data, columns };
    }
    return undefined;
  }

  private sheetNamed(text: string): Sheet | undefined {
    const name = text.startsWith("'") ? text.slice(1, -1).replaceAll("''", "'") : text;
    return this.workbook.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
  }
}

/** The dollar signs before the column and the row of a reference. */
interface Signs {
  readonly column: string;
  readonly row: string;
}

/** A name stands for the same cells wherever it is; a column of a table does, but for its cell beside the formula. */
function signsOf(tokens: readonly Token[]): Signs {
  const cell = tokens.find(({ text }) => parseCell(text) !== undefined)?.text;
  if (cell === undefined) return { column: '$', row: tokens.some(isThisRow) ? '' : '$' };
  const [, column = '', row = ''] = /^(\$?)[A-Z]+(\$?)/i.exec(cell) ?? [];
  return { column, row };
}

/** Columns of a table, in the row of the formula. */
export const isThisRow = ({ kind, text }: Token): boolean =>
  kind === 'bracket' && /^\[(?:@|\[#This Row\])/i.test(text);

const signed = (row: number, column: number, signs: Signs): string =>
  `${signs.column}${columnLetters(column)}${signs.row}${row + 1}`;

const signedArea = ({ top, left, bottom, right }: Area, signs: Signs): string =>
  top === bottom && left === right
    ? signed(top, left, signs)
    : `${signed(top, left, signs)}:${signed(bottom, right, signs)}`;

export const single = (text: string, value: CellValue, varies: boolean): Reference => ({
  text,
  varies,
  cells: [[{ text, value }]],
});

/** A value as a formula writes it. */
export const constantText = (value: CellValue): string => {
  if (typeof value === 'string') return `"${value.replaceAll('"', '""')}"`;
  if (value instanceof CellError) return value.code;
  if (typeof value === 'number') return nativeNumber(value);
  return value === null ? '0' : String(value).toUpperCase();
};

function constantOf(tokens: readonly Token[]): CellValue | undefined {
  const [first, second] = tokens;
  if (tokens.length === 1) {
    if (first?.kind === 'number') return Number(first.text);
    if (first?.kind === 'string') return first.text.slice(1, -1).replaceAll('""', '"');
    if (first?.kind === 'error') return new CellError(first.text as CellError['code']);
    if (first && /^(?:TRUE|FALSE)$/i.test(first.text)) return first.text.toUpperCase() === 'TRUE';
  }
  if (first && /^[-+]$/.test(first.text) && second?.kind === 'number' && tokens.length === 2)
    return Number(first.text + second.text);
  return undefined;
}

const constantTextOf = (tokens: readonly Token[]): string => {
  const text = tokens.map((token) => token.text).join('');
  return tokens.length > 1 ? `(${text})` : text;
};

/** `{1,2;3,4}` as rows. */
function arrayConstant(tokens: readonly Token[]): CellValue[][] | undefined {
  if (tokens[0]?.text !== '{' || tokens.at(-1)?.text !== '}') return undefined;
  const rows: CellValue[][] = [[]];
  let piece: Token[] = [];
  const end = (): boolean => {
    const value = constantOf(piece);
    piece = [];
    rows.at(-1)?.push(value ?? null);
    return value !== undefined;
  };
  for (const token of tokens.slice(1)) {
    if (token.kind !== 'comma' && token.text !== '}') piece.push(token);
    else {
      if (!end()) return undefined;
      if (token.text === ';') rows.push([]);
    }
  }
  return rows;
}
