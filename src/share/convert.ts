import { UNITS_PARAMETER } from '../derive/words';
import { commonShape, type Shape } from '../call/broadcast';
import type { CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { findDefinition } from '../call/findDefinition';
import { readUnits } from '../call/readArgument';
import { inPlaces } from '../call/places';
import { nativeArguments, type CallArgument } from '../call/native';
import { NAMESPACE } from '../cells/namespace';
import { BASIS_TEXT } from '../call/version';
import { inputsOf, takesRange, type AnyInput, type Definition } from '../core/define';
import { SYSTEMS, type Kind } from '../core/quantity';
import { Refusal } from '../core/refusal';
import {
  allOf,
  entryText,
  inlineLength,
  inlineText,
  isPart,
  letText,
  nativeCall,
  oneCell,
  partMark,
  putParts,
  rowsOf,
  valueError,
  type Asked,
  type DataTables,
  type NativeCall,
  type NativePart,
} from '../derive/native';
import { cellAddress, quotedSheet, type Area } from '../cells/address';
import { outerCalls, type Call } from '../workbook/calls';
import { nativeFormula } from './convertFormula';
import { nativeConversion } from './convertUnits';
import type { HelperSheets } from './helperSheets';
import { relativeText } from './relativeText';
import { cellsOfThisRow, goesAlong, linesOf, sliced } from './slice';
import { RefusedNow, Unconvertible } from './unconvertible';
import { rowLabel } from '../workbook/rowLabel';
import { MOST_COLUMNS, readsLines } from './working';
import type { WorkingHead } from './workingLine';
import {
  constantText,
  References,
  single,
  type Place,
  type Reference,
  type Values,
} from '../workbook/references';

/** Longer inline forms are read by nobody: their working goes to a sheet of its own. Cells take 8,192 characters. */
const READABLE = 1500;
const CELL_LIMIT = 8192;
/** An expression that an argument repeats in its guards and in every step; a longer one gets a cell. */
const SHORT_ARGUMENT = 40;

/** In place of a result that stands in no cell of its own. */
const ERROR = 'NA()';

/** What stands in a cell that is no longer where its working belongs to. */
export const MOVED = 'sorted or moved: ask for a new copy';

/** Functions that judge another one, and what they ask of it. */
const ASKED: Readonly<Record<string, Asked>> = { 'SHOW.CHECK': 'check', 'SHOW.MARGIN': 'margin' };

const JUDGES: Readonly<Record<Asked, string>> = {
  result: '',
  check: 'Whether the equation holds for these inputs, and the metal for its stress.',
  margin: 'Yield of the metal over its stress.',
};

const MANY = `more than ${MOST_COLUMNS} cells: each has a formula of its own, without its steps`;

/** What the calls of a formula rest on. */
export interface CallsOfFormula {
  /** Texts of their results, which stand in cells of the working; of those that do not, an error. */
  readonly results: readonly string[];
  /** An argument stays what it was when the copy was made. */
  readonly settles: boolean;
  /** By place, the words that a cell may hold: the copy knows them all. */
  readonly words: ReadonlyMap<string, readonly string[]>;
}

export const allCalls = (all: readonly CallsOfFormula[]): CallsOfFormula => ({
  results: all.flatMap(({ results }) => results),
  settles: all.some(({ settles }) => settles),
  words: new Map(all.flatMap(({ words }) => [...words])),
});

export interface ConvertedFormula {
  /** One formula for each cell that the result fills. */
  readonly formulas: readonly (readonly string[])[];
  /** The formula itself still spills: what it wraps has become a range. */
  readonly spills: boolean;
  readonly looksUp: boolean;
  readonly notes: readonly string[];
  readonly calls: CallsOfFormula;
}

type ConvertedText = Omit<ConvertedFormula, 'calls'>;

/** How a piece of a formula is written. */
interface Manner {
  /** It will stand on another sheet, so that its references name theirs. */
  readonly far: boolean;
  /** Calls are a line a step on the sheet of the working, and what is written reads these lines. */
  readonly rows: boolean;
}

/** The results of one call, cell by cell. */
interface ConvertedCall {
  readonly results: readonly (readonly string[])[];
  readonly looksUp: boolean;
  readonly notes: readonly string[];
}

/** With what it is about: calls of one function with the same arguments have this in common. */
interface WrittenOne extends NativeCall {
  readonly subject: string;
}

/** The native forms of one call, cell by cell. */
interface WrittenCall {
  readonly calls: readonly (readonly WrittenOne[])[];
  readonly says: string;
  readonly looksUp: boolean;
  readonly settles: boolean;
  readonly notes: readonly string[];
}

type Arguments = readonly (Reference | undefined)[];

/** Rewrites formulas with our functions into formulas without them. */
export class Converter {
  private readonly references: References;
  /** Ranges of lists that were placed already. */
  private readonly lists = new Map<string, string>();
  /** Of the calls of the formula that is being written. */
  private results: string[] = [];
  private settles = false;
  private words = new Map<string, readonly string[]>();
  /** Of a cell that one formula fills with others: that formula, and how many of its calls were placed. */
  private slice: { readonly of: string; calls: number } | undefined;

  constructor(
    workbook: ConstructorParameters<typeof References>[0],
    private readonly values: Values,
    private readonly tables: DataTables,
    private readonly helpers: HelperSheets,
    private readonly options: {
      /** A line for every step on the sheet of the working, and short formulas that read them. */
      readonly rows: boolean;
      readonly let: boolean;
    },
  ) {
    this.references = new References(workbook, values);
  }

  /** @throws Unconvertible */
  formula(formula: string, place: Place): ConvertedFormula {
    this.begin();
    const converted = this.helpers.undone(() => this.converted(formula, place));
    const formulas = converted.spills
      ? converted.formulas
      : converted.formulas.map((line, down) =>
          line.map((text, right) => this.heldInPlace(text, formula, place, { down, right })),
        );
    return { ...converted, formulas, calls: this.ended() };
  }

  private begin(): void {
    this.lists.clear();
    this.results = [];
    this.settles = false;
    this.words = new Map();
    this.slice = undefined;
  }

  private ended(): CallsOfFormula {
    return { results: this.results, settles: this.settles, words: this.words };
  }

  /**
   * What reads lines of the working reads the same lines wherever it is put. Of a formula whose references go along with
   * it, cells that are sorted, or filled, would stand beside the numbers of others; and where it fills an area, each cell
   * is the one in line with its own of every range.
   */
  private heldInPlace(
    text: string,
    formula: string,
    place: Place,
    at: { readonly down: number; readonly right: number },
  ): string {
    const isPlaced = readsLines(text);
    const isOne = this.values.spill(place.sheet, place.row, place.column) === undefined;
    const [row, column] = [place.row + at.down, place.column + at.right];
    const own = isPlaced ? `${quotedSheet(place.sheet.name)}!${cellAddress(row, column)}` : '';
    const lines = isOne ? [] : linesOf(formula, place, this.references, at, isPlaced);
    const asks = [
      ...cellsOfThisRow(formula, place, this.references, isPlaced).map((one) => `ROW(${one})=ROW(${own})`),
      ...lines.flatMap((one) => [
        `ROWS(${one.range})=${one.rows}`,
        `COLUMNS(${one.range})=${one.columns}`,
        ...['ROW', 'COLUMN'].map(
          (of) => `${of}(INDEX(${one.range},${one.row},${one.column}))=${of}(${one.cell})`,
        ),
      ]),
    ];
    // An error: a text would be left out of a sum, and be larger than any limit.
    const holding = (when: string): string => fitting(`IF(${when},${text},${valueError(MOVED)})`);
    if (!isPlaced) return asks.length === 0 ? text : holding(allOf(asks));
    if (asks.length === 0 && !goesAlong(formula)) return text;
    return holding(this.helpers.standsIn(place.sheet.name, row, column, asks));
  }

  private converted(formula: string, place: Place): ConvertedText {
    const near: Manner = { far: false, rows: this.options.rows };
    const calls = outerCalls(formula);
    const [only] = calls;
    if (calls.length === 1 && only && isWhole(only, formula)) {
      try {
        const { results, ...rest } = this.call(formula, only, place, near);
        return { ...rest, formulas: results, spills: false };
      } catch (error) {
        if (!(error instanceof ArrayArgument)) throw error;
      }
    }
    const area = this.values.spill(place.sheet, place.row, place.column);
    const cells = area && this.cellByCell(formula, place, area, near);
    if (cells) return cells;
    const { text, looksUp, notes } = this.expression(formula, place, near);
    return { formulas: [[fitting(text)]], spills: area !== undefined, looksUp, notes };
  }

  /**
   * A formula that stands in no cell, to be written on another sheet, as seen from a cell.
   * @throws Unconvertible
   */
  elsewhere(formula: string, place: Place): { readonly text: string; readonly calls: CallsOfFormula } {
    this.begin();
    const text = fitting(this.expression(formula, place, { far: true, rows: false }).text);
    return { text, calls: this.ended() };
  }

  /** A formula that works along ranges, written for each cell of its own. */
  private cellByCell(
    formula: string,
    place: Place,
    { top, left, bottom, right }: Area,
    manner: Manner,
  ): ConvertedText | undefined {
    const isMany = (bottom - top + 1) * (right - left + 1) > MOST_COLUMNS;
    const own: Manner = { ...manner, rows: manner.rows && !isMany };
    const formulas: string[][] = [];
    const notes: string[] = manner.rows && isMany ? [MANY] : [];
    let looksUp = false;
    for (let down = 0; down <= bottom - top; down++) {
      const line: string[] = [];
      for (let across = 0; across <= right - left; across++) {
        const text = sliced(formula, place, this.references, { down, right: across });
        if (text === undefined) {
          this.slice = undefined;
          return undefined;
        }
        const at = { ...place, row: top + down, column: left + across };
        this.slice = { of: `${place.sheet.name}\n${cellAddress(top, left)}`, calls: 0 };
        const [only, ...more] = outerCalls(text);
        const isCall = only !== undefined && more.length === 0 && isWhole(only, text);
        const converted = isCall ? this.callInside(text, only, at, own) : this.expression(text, at, own);
        line.push(fitting('text' in converted ? converted.text : (converted.results[0]?.[0] ?? '')));
        notes.push(...converted.notes);
        looksUp ||= converted.looksUp;
      }
      formulas.push(line);
    }
    this.slice = undefined;
    return { formulas, spills: false, looksUp, notes };
  }

  /** An expression with the calls in it rewritten. */
  private expression(
    text: string,
    place: Place,
    manner: Manner,
  ): { text: string; looksUp: boolean; notes: readonly string[] } {
    const pieces: string[] = [];
    const notes: string[] = [];
    let looksUp = false;
    let at = 0;
    const plain = (piece: string): string =>
      manner.far ? this.references.qualified(piece, place) : this.references.withoutAnchors(piece, place);
    for (const call of outerCalls(text)) {
      pieces.push(plain(text.slice(at, call.start)));
      const converted = this.callInside(text, call, place, manner);
      notes.push(...converted.notes);
      looksUp ||= converted.looksUp;
      const [first = []] = converted.results;
      const isOne = converted.results.length === 1 && first.length === 1;
      if (isOne) pieces.push(manner.rows ? (first[0] ?? '') : `(${first[0] ?? ''})`);
      else {
        // A range of cells on another sheet, whose own texts name their sheets.
        const isFar = manner.far || manner.rows;
        const { results } = isFar ? converted : this.call(text, call, place, { ...manner, far: true });
        const says = 'Results that the formula reads as a range';
        pieces.push(
          this.helpers.placeResults({ ...headOf(place, text.slice(call.start, call.end)), says }, results),
        );
      }
      at = call.end;
    }
    pieces.push(plain(text.slice(at)));
    return { text: pieces.join(''), looksUp, notes };
  }

  /** What is refused as it stands is an error in the copy too; the formula around it may well not ask for it. */
  private callInside(text: string, call: Call, place: Place, manner: Manner): ConvertedCall {
    try {
      return this.call(text, call, place, manner);
    } catch (error) {
      if (!(error instanceof RefusedNow)) throw error;
      const says = `${NAMESPACE}.${call.id}: ${error.message}`;
      this.results.push(ERROR);
      this.settles = true;
      return {
        results: [[error.code === '#N/A' ? 'NA()' : 'VALUE("refused when shared")']],
        looksUp: false,
        notes: [says],
      };
    }
  }

  private call(formula: string, call: Call, place: Place, manner: Manner): ConvertedCall {
    if (call.id === 'SHOW.BASIS') return { results: [[`"${BASIS_TEXT}"`]], looksUp: false, notes: [] };
    if (!manner.rows) return this.inOneCell(formula, call, place, manner.far);
    const own: NativePart[] = [];
    const written = this.write(
      call,
      this.arguments(formula, call, place, { far: true, rows: true }, own),
      place,
    );
    const cells = written.calls.flat().length;
    if (cells > MOST_COLUMNS) {
      const converted = this.inOneCell(formula, call, place, manner.far);
      return { ...converted, notes: [...converted.notes, MANY] };
    }
    const text = formula.slice(call.start, call.end);
    const isSpill = this.values.spill(place.sheet, place.row, place.column) !== undefined;
    const head = {
      ...headOf(place, text),
      label: rowLabel(this.values, place.sheet, place.row, place.column),
    };
    // Calls of one formula that was filled along stand side by side, and so do the cells of one that spills.
    const group = this.slice
      ? `${this.slice.of}\n${++this.slice.calls}`
      : `${place.sheet.name}\n${cells > 1 ? head.cell : relativeText(text, place)}`;
    const results = written.calls.map((line, down) =>
      line.flatMap((native, right) => {
        const cell = isSpill ? cellAddress(place.row + down, place.column + right) : head.cell;
        const rows = rowsOf({ ...native, parts: [...own, ...native.parts] });
        const subject = putParts(
          native.subject,
          (name) => own.find((part) => part.name === name)?.text ?? '',
        );
        return this.helpers.placeRows({ ...head, cell, group, says: written.says, subject }, rows);
      }),
    );
    this.results.push(...results.flat());
    this.settles ||= written.settles;
    return { results, looksUp: written.looksUp, notes: written.notes };
  }

  private inOneCell(formula: string, call: Call, place: Place, far: boolean): ConvertedCall {
    const write = (own: Manner): WrittenCall =>
      this.write(call, this.arguments(formula, call, place, own), place);
    const { calls, looksUp, settles, notes, says } = write({ far, rows: false });
    this.results.push(ERROR);
    this.settles ||= settles;
    let distant: WrittenCall['calls'] | undefined;
    const head = { ...headOf(place, formula.slice(call.start, call.end)), says };
    const results = calls.map((line, down) =>
      line.flatMap((native, right) =>
        this.texts(native, head, () => {
          distant ??= far ? calls : write({ far: true, rows: false }).calls;
          return distant[down]?.[right] ?? native;
        }),
      ),
    );
    return { results, looksUp, notes };
  }

  private arguments(
    formula: string,
    { args }: Call,
    place: Place,
    manner: Manner,
    own: NativePart[] = [],
  ): Arguments {
    return args.map(({ start, end }) => this.argument(formula.slice(start, end), place, manner, own));
  }

  /** One argument as cells with their texts; undefined where it is left out. In rows an expression has a line. */
  private argument(text: string, place: Place, manner: Manner, own: NativePart[]): Reference | undefined {
    const trimmed = text.trim();
    if (trimmed === '') return undefined;
    const found = this.references.read(trimmed, place, manner.far);
    if (found) return found;
    const qualified = this.references.qualified(trimmed, place);
    const values = this.values.evaluate(qualified);
    if (values.length !== 1 || values[0]?.length !== 1)
      throw new ArrayArgument('an argument is an array made inside the formula');
    const value = values[0][0] ?? null;
    const inner = this.expression(trimmed, place, manner);
    if (manner.rows) {
      const name = `x${own.length + 1}`;
      own.push({
        name,
        symbol: '',
        text: inner.text,
        words: { role: 'input', says: 'An argument, as the formula has it', equation: trimmed, unit: '' },
      });
      return single(partMark(name), value, true);
    }
    if (inner.text.length <= SHORT_ARGUMENT) return single(`(${inner.text})`, value, true);
    const distant = manner.far ? inner : this.expression(trimmed, place, { ...manner, far: true });
    const head = { ...headOf(place, trimmed), says: 'An argument' };
    return single(this.helpers.placeResults(head, [[distant.text]]), value, true);
  }

  private write(call: Call, args: Arguments, place: Place): WrittenCall {
    if (call.id === 'UNIT.CONVERT') return this.conversion(args);
    if (call.id === 'UNIT.FORMULA')
      return {
        calls: [
          [
            {
              ...nativeFormula(args),
              subject: subjectOf(
                call.id,
                args.map((own) => own?.cells.flat()),
              ),
            },
          ],
        ],
        says: 'An equation with units.',
        looksUp: false,
        settles: true,
        notes: [],
      };
    const asked = ASKED[call.id];
    return asked === undefined
      ? this.definition(definitionOf(call.id), args, place)
      : this.judged(asked, args, place);
  }

  /** What a function that judges another says of it. */
  private judged(asked: Asked, [named, ...args]: Arguments, place: Place): WrittenCall {
    const id = named?.cells[0]?.[0]?.value;
    if (!named || named.varies || typeof id !== 'string')
      throw new Unconvertible('which function it asks about is not written in it');
    const definition = definitionOf(id);
    if (asked === 'margin' && (definition.type === 'lookup' || !definition.strength))
      throw new RefusedNow(`it is refused as it stands: ${id} knows no stress and metal together`, '#N/A');
    const written = this.definition(definition, args, place, asked);
    if (written.calls.flat().length > 1)
      throw new RefusedNow('it is refused as it stands: its arguments are ranges', '#VALUE!');
    return { ...written, says: JUDGES[asked] };
  }

  private conversion(args: Arguments): WrittenCall {
    const [value, from, to] = args;
    if (!value || !from || !to) throw new Unconvertible('an argument is missing');
    const shape = shapeOf([value, from, to].map((reference, i) => ({ name: String(i), reference })));
    const calls = eachPlace(shape, (row, column) => {
      const own = [value, from, to].map((one) => cellOf(one, row, column)) as [Cell, Cell, Cell];
      return { ...nativeConversion(...own, this.tables), subject: subjectOf('UNIT.CONVERT', own) };
    });
    const looksUp = from.varies || to.varies;
    return { calls, says: 'A value in another unit.', looksUp, settles: false, notes: [] };
  }

  private definition(definition: Definition, given: Arguments, place: Place, asked?: Asked): WrittenCall {
    const args: (Reference | undefined)[] = [...inPlaces(given, inputsOf(definition).length, valuesOf)];
    const inputs = [...inputsOf(definition), UNITS_PARAMETER];
    const isList = (i: number): boolean => {
      const input = inputsOf(definition)[i];
      return input !== undefined && takesRange(input.reading);
    };
    const shape = shapeOf(
      args.flatMap((reference, i) =>
        reference && !isList(i) ? [{ name: inputs[i]?.name ?? '', reference }] : [],
      ),
    );
    inputsOf(definition).forEach(({ reading }, i) => {
      const list = args[i];
      if (reading.as !== 'list' || !list?.cells.flat().some(({ value }) => typeof value === 'string')) return;
      args[i] = this.listOfTexts(list, reading.kind, args[inputs.length - 1], place);
    });
    args.forEach((reference, i) => {
      const words = i === inputs.length - 1 ? SYSTEMS : wordsOf(inputsOf(definition)[i]);
      if (reference?.place !== undefined && words) this.words.set(reference.place, words);
    });
    const at = (row: number, column: number): (CallArgument | undefined)[] =>
      args.map((reference, i) => {
        if (!reference) return undefined;
        if (isList(i)) return listArgument(reference);
        const { text, value } = cellOf(reference, row, column);
        return { text, cells: [value], varies: reference.varies };
      });
    const calls = eachPlace(shape, (row, column) => this.native(definition, at(row, column), asked));
    const all = calls.flat();
    return {
      calls,
      says: definition.summary,
      looksUp: all.some(({ looksUp }) => looksUp),
      settles: all.some(({ settles }) => settles),
      notes: [...new Set(all.flatMap(({ notes }) => notes))],
    };
  }

  /** A list with text in it, such as "4 N", as a range of numbers on the sheet of the working. */
  private listOfTexts(list: Reference, kind: Kind, units: Reference | undefined, place: Place): Reference {
    const [unitsCell] = units?.cells[0] ?? [];
    const unitsText = unitsCell?.text ?? '';
    if (isPart(unitsText)) throw new Unconvertible('a list with text in it has its units from an expression');
    const system = unitsCell ? readUnits(unitsCell.value) : 'in';
    const far = (text: string): string => this.references.qualified(text, place);
    const asked = { text: far(unitsText), varies: units?.varies ?? false, system };
    const entries = list.cells.flat().filter(({ value }) => value !== null && value !== '');
    const texts = entries.map(({ text, value }) => {
      const content = value instanceof CellError ? null : value;
      const entry = entryText(text === '' ? constantText(value) : far(text), content, kind, asked);
      if (entry === undefined)
        throw new RefusedNow(`it is refused as it stands: "${String(value)}" is no number`, '#VALUE!');
      return [entry];
    });
    const [first] = texts[0] ?? [];
    // What comes into a blank cell would be left out, and a cell that is cut out of the range would still be read.
    if (list.varies && first !== undefined)
      texts[0] = [`IF(COUNTA(${far(list.text)})<>${entries.length},${valueError('other entries')},${first})`];
    const head = { ...headOf(place, list.text), says: 'Entries of a list as numbers' };
    const key = JSON.stringify([head, texts]);
    const range = this.lists.get(key) ?? this.helpers.placeResults(head, texts);
    this.lists.set(key, range);
    // Read as numbers from now on, which they are in the range.
    return { text: range, varies: true, cells: entries.map(() => [{ text: range, value: 1 }]) };
  }

  private native(
    definition: Definition,
    args: readonly (CallArgument | undefined)[],
    asked?: Asked,
  ): WrittenOne {
    const read = nativeArguments(definition, args);
    if ('refused' in read) throw new RefusedNow(`it is refused as it stands: ${read.refused}`, read.code);
    const native = nativeCall(definition, read, this.tables, asked);
    if ('frozen' in native) throw new Unconvertible(native.frozen);
    return { ...native, subject: subjectOf(definition.name, args) };
  }

  /** The results' texts: in the cell itself where that is short enough, else with their working on its own sheet. */
  private texts(native: NativeCall, head: WorkingHead, distant: () => NativeCall): string[] {
    const { parts, results } = oneCell(native);
    if (this.options.let) {
      const texts = results.map((result) => letText(parts, result));
      if (texts.every((text) => text.length <= CELL_LIMIT)) return texts;
    }
    if (results.every((result) => inlineLength(parts, result) <= READABLE))
      return results.map((result) => inlineText(parts, result));
    const put = this.helpers.placeParts(head, oneCell(distant()).parts);
    return results.map((result) => fitting(putParts(result, put)));
  }
}

class ArrayArgument extends Unconvertible {}

function fitting(text: string): string {
  if (text.length > CELL_LIMIT) throw new Unconvertible('it would be longer than a cell takes');
  return text;
}

function definitionOf(id: string): Definition {
  try {
    return findDefinition(id);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Unconvertible(
      /^(?:TRY|SHOW)\./.test(id)
        ? `${id} runs or explains other functions, which only Moldsheet can`
        : `there is no function ${NAMESPACE}.${id}`,
    );
  }
}

const wordsOf = (input: AnyInput | undefined): readonly string[] | undefined =>
  input?.reading.as === 'choice' ? input.reading.words : undefined;

const valuesOf = ({ cells }: Reference): CellValue[][] => cells.map((line) => line.map(({ value }) => value));

const isWhole = (call: Call, formula: string): boolean =>
  formula.slice(0, call.start).trim() === '' && formula.slice(call.end).trim() === '';

const headOf = ({ sheet, row, column }: Place, text: string): Omit<WorkingHead, 'says'> => ({
  sheet: sheet.name,
  cell: cellAddress(row, column),
  what: `=${text.trim()}`,
});

/** A range that is read whole. */
function listArgument({ text, varies, cells }: Reference): CallArgument {
  const texts = cells.flat().map((cell) => cell.text);
  const each = varies && new Set(texts).size === texts.length;
  return {
    ...(each && { texts }),
    text,
    cells: cells.flat().map(({ value }) => value),
    varies,
    rows: cells.length,
  };
}

function shapeOf(args: readonly { name: string; reference: Reference }[]): Shape {
  try {
    return commonShape(
      args.map(({ name, reference: { cells } }) => ({
        name,
        shape: { rows: cells.length, columns: cells[0]?.length ?? 0 },
      })),
    );
  } catch (error) {
    if (error instanceof Refusal)
      throw new RefusedNow(`it is refused as it stands: ${error.message}`, error.code);
    throw error;
  }
}

interface Cell {
  readonly text: string;
  readonly value: CellValue;
  readonly varies: boolean;
}

const subjectOf = (name: string, args: readonly unknown[]): string => JSON.stringify([name, args]);

function cellOf({ cells, varies }: Reference, row: number, column: number): Cell {
  const line = cells[cells.length === 1 ? 0 : row] ?? [];
  const cell = line[line.length === 1 ? 0 : column] ?? { text: '0', value: null };
  // An entry of an array that is written out in the formula has no cell of its own.
  if (cell.text === '') return { text: constantText(cell.value), value: cell.value, varies: false };
  return { ...cell, varies };
}

const eachPlace = <T>({ rows, columns }: Shape, at: (row: number, column: number) => T): T[][] =>
  Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => at(row, column)));
