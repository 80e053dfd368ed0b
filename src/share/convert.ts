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
import { inputsOf, takesRange, type Definition } from '../core/define';
import type { Kind } from '../core/quantity';
import { Refusal } from '../core/refusal';
import {
  entryText,
  inlineLength,
  inlineText,
  letText,
  nativeCall,
  oneCell,
  putParts,
  type DataTables,
  type NativeCall,
} from '../derive/native';
import { cellAddress, type Area } from '../cells/address';
import { outerCalls, type Call } from '../workbook/calls';
import { nativeFormula } from './convertFormula';
import { nativeConversion } from './convertUnits';
import type { HelperSheets } from './helperSheets';
import { sliced } from './slice';
import { RefusedNow, Unconvertible } from './unconvertible';
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

export interface ConvertedFormula {
  /** One formula for each cell that the result fills. */
  readonly formulas: readonly (readonly string[])[];
  /** The formula itself still spills: what it wraps has become a range. */
  readonly spills: boolean;
  readonly looksUp: boolean;
  readonly notes: readonly string[];
}

/** The results of one call, cell by cell. */
interface ConvertedCall {
  readonly results: readonly (readonly string[])[];
  readonly looksUp: boolean;
  readonly notes: readonly string[];
}

/** Rewrites formulas with our functions into formulas without them. */
export class Converter {
  private readonly references: References;

  constructor(
    workbook: ConstructorParameters<typeof References>[0],
    private readonly values: Values,
    private readonly tables: DataTables,
    private readonly helpers: HelperSheets,
    private readonly options: { readonly let: boolean },
  ) {
    this.references = new References(workbook, values);
  }

  /** @throws Unconvertible */
  formula(formula: string, place: Place): ConvertedFormula {
    const calls = outerCalls(formula);
    const [only] = calls;
    if (calls.length === 1 && only && isWhole(only, formula)) {
      try {
        const { results, ...rest } = this.call(formula, only, place, false);
        return { ...rest, formulas: results, spills: false };
      } catch (error) {
        if (!(error instanceof ArrayArgument)) throw error;
      }
    }
    const area = this.values.spill(place.sheet, place.row, place.column);
    const cells = area && this.cellByCell(formula, place, area);
    if (cells) return cells;
    const { text, looksUp, notes } = this.expression(formula, place, false);
    return { formulas: [[fitting(text)]], spills: area !== undefined, looksUp, notes };
  }

  /** A formula that works along ranges, written for each cell of its own. */
  private cellByCell(
    formula: string,
    place: Place,
    { top, left, bottom, right }: Area,
  ): ConvertedFormula | undefined {
    const formulas: string[][] = [];
    const notes: string[] = [];
    let looksUp = false;
    for (let down = 0; down <= bottom - top; down++) {
      const line: string[] = [];
      for (let across = 0; across <= right - left; across++) {
        const own = sliced(formula, place, this.references, { down, right: across });
        if (own === undefined) return undefined;
        const at = { ...place, row: top + down, column: left + across };
        const [only, ...more] = outerCalls(own);
        const isCall = only !== undefined && more.length === 0 && isWhole(only, own);
        const converted = isCall ? this.callInside(own, only, at, false) : this.expression(own, at, false);
        line.push(fitting('text' in converted ? converted.text : (converted.results[0]?.[0] ?? '')));
        notes.push(...converted.notes);
        looksUp ||= converted.looksUp;
      }
      formulas.push(line);
    }
    return { formulas, spills: false, looksUp, notes };
  }

  /** An expression with the calls in it rewritten; `far` where it will stand on another sheet. */
  private expression(
    text: string,
    place: Place,
    far: boolean,
  ): { text: string; looksUp: boolean; notes: readonly string[] } {
    const pieces: string[] = [];
    const notes: string[] = [];
    let looksUp = false;
    let at = 0;
    const plain = (piece: string): string =>
      far ? this.references.qualified(piece, place) : this.references.withoutAnchors(piece, place);
    for (const call of outerCalls(text)) {
      pieces.push(plain(text.slice(at, call.start)));
      const converted = this.callInside(text, call, place, far);
      notes.push(...converted.notes);
      looksUp ||= converted.looksUp;
      const [first = []] = converted.results;
      const isOne = converted.results.length === 1 && first.length === 1;
      if (isOne) pieces.push(`(${first[0] ?? ''})`);
      else {
        // A range of cells on another sheet, whose own texts name their sheets.
        const { results } = far ? converted : this.call(text, call, place, true);
        pieces.push(this.helpers.placeResults(whereText(place), `${NAMESPACE}.${call.id}`, results));
      }
      at = call.end;
    }
    pieces.push(plain(text.slice(at)));
    return { text: pieces.join(''), looksUp, notes };
  }

  /** What is refused as it stands is an error in the copy too; the formula around it may well not ask for it. */
  private callInside(text: string, call: Call, place: Place, far: boolean): ConvertedCall {
    try {
      return this.call(text, call, place, far);
    } catch (error) {
      if (!(error instanceof RefusedNow)) throw error;
      const says = `${NAMESPACE}.${call.id}: ${error.message}`;
      return {
        results: [[error.code === '#N/A' ? 'NA()' : 'VALUE("refused when shared")']],
        looksUp: false,
        notes: [says],
      };
    }
  }

  private call(formula: string, call: Call, place: Place, far: boolean): ConvertedCall {
    const args = this.arguments(formula, call, place, far);
    if (call.id === 'UNIT.CONVERT') return this.conversion(args);
    if (call.id === 'UNIT.FORMULA') return { results: [[nativeFormula(args)]], looksUp: false, notes: [] };
    if (call.id === 'SHOW.BASIS') return { results: [[`"${BASIS_TEXT}"`]], looksUp: false, notes: [] };
    return this.definition(definitionOf(call.id), args, call, formula, place, far);
  }

  private arguments(formula: string, { args }: Call, place: Place, far: boolean): (Reference | undefined)[] {
    return args.map(({ start, end }) => this.argument(formula.slice(start, end), place, far));
  }

  /** One argument as cells with their texts; undefined where it is left out. */
  private argument(text: string, place: Place, far: boolean): Reference | undefined {
    const trimmed = text.trim();
    if (trimmed === '') return undefined;
    const found = this.references.read(trimmed, place, far);
    if (found) return found;
    const qualified = this.references.qualified(trimmed, place);
    const values = this.values.evaluate(qualified);
    if (values.length !== 1 || values[0]?.length !== 1)
      throw new ArrayArgument('an argument is an array made inside the formula');
    const value = values[0][0] ?? null;
    const inner = this.expression(trimmed, place, far);
    if (inner.text.length <= SHORT_ARGUMENT) return single(`(${inner.text})`, value, true);
    const distant = far ? inner : this.expression(trimmed, place, true);
    return single(this.helpers.placeResults(whereText(place), 'an argument', [[distant.text]]), value, true);
  }

  private conversion(args: readonly (Reference | undefined)[]): ConvertedCall {
    const [value, from, to] = args;
    if (!value || !from || !to) throw new Unconvertible('an argument is missing');
    const shape = shapeOf([value, from, to].map((reference, i) => ({ name: String(i), reference })));
    return {
      results: eachPlace(shape, (row, column) => [
        nativeConversion(
          cellOf(value, row, column),
          cellOf(from, row, column),
          cellOf(to, row, column),
          this.tables,
        ),
      ]),
      looksUp: from.varies || to.varies,
      notes: [],
    };
  }

  private definition(
    definition: Definition,
    given: readonly (Reference | undefined)[],
    call: Call,
    formula: string,
    place: Place,
    far: boolean,
  ): ConvertedCall {
    const placed = (references: readonly (Reference | undefined)[]): (Reference | undefined)[] => [
      ...inPlaces(references, inputsOf(definition).length, valuesOf),
    ];
    const args = placed(given);
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
    let looksUp = false;
    const notes = new Set<string>();
    const distant = far ? [...args] : placed(this.arguments(formula, call, place, true));
    inputsOf(definition).forEach(({ reading }, i) => {
      const list = distant[i];
      if (reading.as !== 'list' || !list?.cells.flat().some(({ value }) => typeof value === 'string')) return;
      args[i] = distant[i] = this.listOfTexts(list, reading.kind, distant[inputs.length - 1], place);
    });
    const results = eachPlace(shape, (row, column) => {
      const at = (references: readonly (Reference | undefined)[]): (CallArgument | undefined)[] =>
        references.map((reference, i) => {
          if (!reference) return undefined;
          if (isList(i)) {
            const cells = reference.cells.flat().map(({ value }) => value);
            const inLine = reference.cells.length === 1 || reference.cells.every((line) => line.length === 1);
            const texts = reference.cells.flat().map((cell) => cell.text);
            const each = inLine && reference.varies && new Set(texts).size === texts.length;
            return {
              ...(each && { texts }),
              text: reference.text,
              cells,
              varies: reference.varies,
              rows: reference.cells.length,
            };
          }
          const { text, value } = cellOf(reference, row, column);
          return { text, cells: [value], varies: reference.varies };
        });
      const native = this.written(definition, at(args));
      looksUp ||= native.looksUp;
      for (const note of native.notes) notes.add(note);
      return this.texts(native, () => this.written(definition, at(distant)), definition, place, far);
    });
    return { results, looksUp, notes: [...notes] };
  }

  /** A list with text in it, such as "4 N", as a range of numbers on the sheet of the working. */
  private listOfTexts(list: Reference, kind: Kind, units: Reference | undefined, place: Place): Reference {
    const [unitsCell] = units?.cells[0] ?? [];
    const system = unitsCell ? readUnits(unitsCell.value) : 'in';
    const asked = { text: unitsCell?.text ?? '', varies: units?.varies ?? false, system };
    const entries = list.cells.flat().filter(({ value }) => value !== null && value !== '');
    const texts = entries.map(({ text, value }) => {
      const content = value instanceof CellError ? null : value;
      const entry = entryText(text === '' ? constantText(value) : text, content, kind, asked);
      if (entry === undefined)
        throw new RefusedNow(`it is refused as it stands: "${String(value)}" is no number`, '#VALUE!');
      return [entry];
    });
    const range = this.helpers.placeResults(whereText(place), 'entries of a list', texts);
    // Read as numbers from now on, which they are in the range.
    return { text: range, varies: true, cells: entries.map(() => [{ text: range, value: 1 }]) };
  }

  private written(definition: Definition, args: readonly (CallArgument | undefined)[]): NativeCall {
    const read = nativeArguments(definition, args);
    if ('refused' in read) throw new RefusedNow(`it is refused as it stands: ${read.refused}`, read.code);
    const native = nativeCall(definition, read, this.tables);
    if ('frozen' in native) throw new Unconvertible(native.frozen);
    return native;
  }

  /** The results' texts: in the cell itself where that is short enough, else with their working on its own sheet. */
  private texts(
    native: NativeCall,
    distant: () => NativeCall,
    definition: Definition,
    place: Place,
    far: boolean,
  ): string[] {
    const { parts, results } = oneCell(native);
    if (this.options.let) {
      const texts = results.map((result) => letText(parts, result));
      if (texts.every((text) => text.length <= CELL_LIMIT)) return texts;
    }
    if (results.every((result) => inlineLength(parts, result) <= READABLE))
      return results.map((result) => inlineText(parts, result));
    const away = far ? native : distant();
    const working = oneCell(away);
    const put = this.helpers.placeParts(whereText(place), `${NAMESPACE}.${definition.name}`, working.parts);
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

const valuesOf = ({ cells }: Reference): CellValue[][] => cells.map((line) => line.map(({ value }) => value));

const isWhole = (call: Call, formula: string): boolean =>
  formula.slice(0, call.start).trim() === '' && formula.slice(call.end).trim() === '';

const whereText = ({ sheet, row, column }: Place): string => `${sheet.name}!${cellAddress(row, column)}`;

function shapeOf(args: readonly { name: string; reference: Reference }[]): Shape {
  try {
    return commonShape(
      args.map(({ name, reference: { cells } }) => ({
        name,
        shape: { rows: cells.length, columns: cells[0]?.length ?? 0 },
      })),
    );
  } catch (error) {
    if (error instanceof Refusal) throw new Unconvertible(`it is refused as it stands: ${error.message}`);
    throw error;
  }
}

function cellOf(
  { cells, varies }: Reference,
  row: number,
  column: number,
): { text: string; value: CellValue; varies: boolean } {
  const line = cells[cells.length === 1 ? 0 : row] ?? [];
  const cell = line[line.length === 1 ? 0 : column] ?? { text: '0', value: null };
  // An entry of an array that is written out in the formula has no cell of its own.
  if (cell.text === '') return { text: constantText(cell.value), value: cell.value, varies: false };
  return { ...cell, varies };
}

const eachPlace = (
  { rows, columns }: Shape,
  at: (row: number, column: number) => readonly string[],
): string[][] =>
  Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => at(row, column)).flat(),
  );
