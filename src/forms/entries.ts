/** The rows of a form's inputs. */
import type { Amount, AnyInput, Limits, Reading } from '../core/define';
import { leftOutText, type ParameterWords } from '../derive/words';
import type { Kind } from '../core/quantity';
import { acceptsFormula } from './bounds';
import type { KnownInput } from './ground';
import { STYLES, typedStyle, valueFormat } from './looks';
import { label } from './names';
import { namesOffered } from './namedWords';
import { quotedSheet, type Rows } from './rows';
import { entered, hasUnits, systemSign, unitChoices } from './units';
import { cellAddress } from '../cells/address';

/** How an input is called in the form, where that is not derived from its name. */
export interface EntryWords {
  readonly label?: string;
  readonly note?: string;
}

/** That a cell may be emptied, and which other value it then follows, if it does not take its default. */
interface Emptied {
  readonly follows: string | undefined;
}

/**
 * What counts for an optional input whose cell was emptied. It is said in the form: Excel hands a blank cell over as zero,
 * and an empty text is no number.
 */
function defaultText(rows: Rows, { default: standard, reading }: AnyInput): string | undefined {
  if (standard === undefined) return undefined;
  const kind = quantityOf(reading);
  if (kind === undefined) return `"${String(standard).replaceAll('"', '""')}"`;
  const { value, unit } = entered(standard, kind, rows.system);
  return unitChoices(kind).length < 2
    ? String(value)
    : `MOLD.UNIT.CONVERT(${value},"${unit}",${rows.here().unit})`;
}

/** An input and what stands in its row at first; gives the text that stands for it in formulas. */
export function entryRow(
  rows: Rows,
  input: AnyInput,
  words: ParameterWords,
  first: Amount,
  own: EntryWords & { readonly name: string; readonly emptied?: Emptied },
): string {
  const { reading } = input;
  const title = own.label ?? label(input.name);
  const blank = own.emptied ? leftOutText(input) : '';
  rows.words(title, `${own.note ?? noteOf(input, words)}${blank === '' ? '' : ` Blank: ${blank}.`}`);
  const kind = quantityOf(reading);
  const otherwise = own.emptied && (own.emptied.follows ?? defaultText(rows, input));
  if (kind !== undefined) {
    const { value, unit } = entered(first, kind, rows.system);
    quantityCells(
      rows,
      reading as Limits,
      kind,
      title,
      limitsOf(words),
      { value },
      { value: unit },
      otherwise,
    );
  } else {
    rows.word(String(first), reading.as === 'choice' ? reading.words : namesOffered(reading), title);
    wordCells(rows, otherwise);
  }
  const name = rows.name(own.name);
  rows.end();
  return name;
}

/** An input that is the same as another one until something else is typed: `other` is its value in the units of the sheet. */
export function followingRow(
  rows: Rows,
  input: AnyInput,
  words: ParameterWords,
  other: string,
  own: EntryWords & { readonly name: string },
): string {
  const kind = quantityOf(input.reading);
  if (kind === undefined) throw new Error(`${input.name} follows another input, but is no quantity`);
  const title = own.label ?? label(input.name);
  rows.words(title, own.note ?? noteOf(input, words));
  const unit = rows.unitOf(kind);
  quantityCells(
    rows,
    input.reading as Limits,
    kind,
    title,
    limitsOf(words),
    { formula: other },
    unit.formula === undefined ? { value: String(unit.value) } : { formula: unit.formula },
    other,
  );
  const name = rows.name(own.name);
  rows.end();
  return name;
}

/** An input that the workbook has already; on another sheet its units may be others. */
export function joinedRow(rows: Rows, input: AnyInput, known: KnownInput): string {
  const kind = quantityOf(input.reading);
  const isHere = known.sheet === rows.sheet;
  const from = isHere ? '' : `${quotedSheet(known.sheet)}!`;
  rows.words(
    label(input.name),
    `Shared: typed at ${isHere ? '' : `${known.sheet}!`}${cellAddress(known.row, known.column)}.`,
  );
  rows.blanks();
  rows.noFormula();
  rows.put('unit', kind === undefined ? { value: '–', look: STYLES.unit } : rows.unitOf(kind));
  const converts = !isHere && kind !== undefined && hasUnits(kind);
  const unitThere = `${from}${cellAddress(known.row, known.column + 1)}`;
  rows.value(
    typed(
      known.name,
      converts ? `MOLD.UNIT.CONVERT(${known.name},${unitThere},${rows.here().unit})` : known.name,
    ),
    kind === undefined ? 'General' : valueFormat(kind),
    kind === undefined,
  );
  // Excel hands a blank cell over as zero, so a cell that may be emptied is asked by way of the row.
  const text = isHere && !known.isTyped ? known.name : rows.here().value;
  rows.end();
  return text;
}

/** Rows that stay empty at the end of a list, to type more into. */
const SPARE_ROWS = 2;

/** One row an entry, and a few to grow into: the range of their values is the argument. */
export function listRows(
  rows: Rows,
  input: AnyInput,
  words: ParameterWords,
  first: readonly Amount[],
  own: EntryWords & { readonly name: string },
): string {
  const { reading } = input;
  const count = first.length + SPARE_ROWS;
  const title = own.label ?? label(input.name);
  const name = rows.name(own.name, count);
  const kind = reading.as === 'list' ? reading.kind : undefined;
  for (let i = 0; i < count; i++) {
    const amount = first[i];
    rows.words(`${title} ${i + 1}`, i === 0 ? (own.note ?? noteOf(input, words)) : '');
    if (kind === undefined) {
      rows.put('entry', { ...(amount !== undefined && { value: amount }), look: STYLES.typedWords });
      wordCells(rows);
    } else {
      const { value, unit } =
        amount === undefined
          ? { value: undefined, unit: systemSign(kind, rows.system) }
          : entered(amount, kind, rows.system);
      quantityCells(
        rows,
        reading as Limits,
        kind,
        title,
        limitsOf(words),
        value === undefined ? {} : { value },
        { value: unit },
      );
    }
    rows.end();
  }
  return name;
}

export const quantityOf = (reading: Reading): Kind | undefined =>
  reading.as === 'quantity' ? reading.kind : undefined;

export const limitsOf = ({ limits }: ParameterWords): string => limits ?? 'A number.';

/** What it means, without the units that stand beside it, and what it usually is. */
function noteOf({ says }: AnyInput, { limits }: ParameterWords): string {
  return limits === undefined ? `${says}.` : `${says}. ${limits}`;
}

/** A blank cell is nothing typed, and must not come out as zero. */
export const typed = (entry: string, value = entry, otherwise = '""'): string =>
  `IF(${entry}="",${otherwise},${value})`;

function quantityCells(
  rows: Rows,
  limits: Limits,
  kind: Kind,
  title: string,
  says: string,
  entry: { readonly value?: number; readonly formula?: string },
  unit: { readonly value: string } | { readonly formula: string },
  otherwise?: string,
): void {
  const { entry: cell, unit: shown } = rows.here();
  const besides = rows.entryUnit(kind, unit);
  rows.put('entry', { ...entry, look: typedStyle });
  rows.rule('entry', {
    takes: { accepts: acceptsFormula(limits, kind, cell, besides) },
    strict: true,
    title,
    text: says,
  });
  rows.put('unit', rows.unitOf(kind));
  rows.value(
    typed(cell, besides === undefined ? cell : `MOLD.UNIT.CONVERT(${cell},${besides},${shown})`, otherwise),
    valueFormat(kind),
  );
  rows.noFormula();
}

function wordCells(rows: Rows, otherwise?: string): void {
  rows.put('entryUnit', { value: '–', look: STYLES.blank });
  const { entry } = rows.here();
  rows.value(typed(entry, entry, otherwise), 'General', true);
  rows.put('unit', { value: '–', look: STYLES.unit });
  rows.noFormula();
}
