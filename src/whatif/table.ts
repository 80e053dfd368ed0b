import type { CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { numberText, withUnit } from '../core/format';
import type { CellInput } from '../workbook/cells';
import type { Heading } from './heading';
import { cellText } from './plan';
import type { Outcome } from './run';

/** Significant digits that a person reads. */
const DIGITS = 6;

/** The outcome as text and numbers: two lines of heading, then a line for every variation. */
export interface Table {
  readonly labels: readonly string[];
  readonly units: readonly string[];
  readonly rows: readonly (readonly CellValue[])[];
}

export function tableOf({ inputs, results, rows }: Outcome): Table {
  const columns = [...inputs, ...results];
  const isTwice = ({ label }: Heading) => columns.filter((other) => other.label === label).length > 1;
  return {
    labels: columns.map((column) =>
      isTwice(column) ? `${column.label}, ${cellText(column.cell)}` : column.label,
    ),
    units: columns.map(({ unit }) => unit),
    rows: rows.map((row) => [...row.inputs, ...row.results]),
  };
}

/** Headings of one line, each with its unit. */
export function headsOf(outcome: Outcome): string[] {
  const { labels, units } = tableOf(outcome);
  return labels.map((label, column) => (units[column] ? `${label} (${units[column]})` : label));
}

/** What was varied and read, for whoever finds the table later. */
export function notesOf(outcome: Outcome): string[] {
  const { inputs, results, rows, planned } = outcome;
  const reasons = new Set(
    rows.flatMap((row) =>
      row.results.flatMap((value) =>
        value instanceof CellError && value.message ? [`${value.code} ${value.message}`] : [],
      ),
    ),
  );
  return [
    ...inputs.map(
      (input) =>
        `Varied: ${named(input)}: ${valuesText(input.values)}. Outside of this table it is ${contentText(input.now, input.unit)}.`,
    ),
    `Read: ${results.map(named).join('; ')}.`,
    ...(rows.length < planned ? [`Stopped after ${rows.length} of ${planned} variations.`] : []),
    ...idle(outcome).map(({ label }) => `Nothing read changes with ${label}.`),
    ...reasons,
  ];
}

/** Inputs that make no difference to any result. */
function idle({ inputs, rows }: Outcome): Outcome['inputs'][number][] {
  return inputs.filter(({ values }, index) => {
    const seen = new Map<string, string>();
    return (
      values.length > 1 &&
      rows.every((row) => {
        const others = JSON.stringify(row.inputs.filter((_, other) => other !== index));
        const results = JSON.stringify(row.results.map(plainText));
        const before = seen.get(others);
        seen.set(others, results);
        return before === undefined || before === results;
      })
    );
  });
}

const named = ({ label, unit, cell }: Heading): string => {
  const address = cellText(cell);
  const inUnit = unit === '' ? '' : `, ${unit}`;
  return label === address ? `${address}${inUnit}` : `${label}${inUnit} (${address})`;
};

/** Long lists by their ends. */
function valuesText(values: readonly CellInput[]): string {
  const texts = values.map((value) => contentText(value, ''));
  return texts.length <= 8
    ? texts.join(', ')
    : `${texts.slice(0, 2).join(', ')}, … ${texts.at(-1) ?? ''} (${texts.length} values)`;
}

const contentText = (content: CellInput, unit: string): string => {
  if (content === null) return 'blank';
  if (typeof content === 'number') return withUnit(numberText(content), unit);
  return typeof content === 'boolean' ? String(content).toUpperCase() : content;
};

/** Format codes of the columns: inputs as typed, results with six digits of the largest. */
export function numberFormats({ inputs, results, rows }: Outcome): string[] {
  const formatOf = (column: number): string => {
    const sizes = rows.flatMap(({ results: row }) =>
      typeof row[column] === 'number' ? [Math.abs(row[column])] : [],
    );
    const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
    if (largest === 0 || largest >= 1e9 || largest < 1e-5) return 'General';
    const decimals = Math.max(0, DIGITS - 1 - Math.floor(Math.log10(largest)));
    return decimals === 0 ? '0' : `0.${'0'.repeat(decimals)}`;
  };
  return [...inputs.map(() => 'General'), ...results.map((_, column) => formatOf(column))];
}

/** Comma-separated, as RFC 4180 has it: one heading line, lines ended by CR and LF, quotes where needed. */
export function csvOf(outcome: Outcome): string {
  return separated(outcome, ',', /[",\r\n]/);
}

/** Tab-separated, as worksheets take it from the clipboard. */
export function clipboardOf(outcome: Outcome): string {
  return separated(outcome, '\t', /["\t\r\n]/);
}

function separated(outcome: Outcome, comma: string, needsQuotes: RegExp): string {
  const field = (value: CellValue): string => {
    const text = guarded(value);
    return needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return [headsOf(outcome), ...tableOf(outcome).rows]
    .map((row) => `${row.map(field).join(comma)}\r\n`)
    .join('');
}

/** A text that a spreadsheet program would take for a formula is marked as text; numbers stay numbers. */
function guarded(value: CellValue): string {
  const text = plainText(value);
  return typeof value === 'string' && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

/** All digits: for programs and other sheets. */
export function plainText(value: CellValue): string {
  if (value === null) return '';
  if (value instanceof CellError) return value.code;
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
}
