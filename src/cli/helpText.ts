import { withUnit } from '../core/format';
import { columnTable, DEFERS, type HelpEntry } from '../derive/help';
import { SOURCE_KINDS, type ParameterWords } from '../derive/words';
import { table, wrap } from './table';

const WIDTH = 78;
const INDENT = '  ';

const listed = (text: string): string => wrap(text, WIDTH, INDENT);
const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

function section(heading: string, blocks: readonly string[], between = '\n'): string[] {
  return blocks.length === 0 ? [] : [`${heading}\n${blocks.join(between)}`];
}

/** The help of one function as text: what the page of help says, but for its pictures. */
export function helpText(entry: HelpEntry): string {
  const {
    signature,
    summary,
    notes,
    parameters,
    method,
    equations,
    constants,
    range,
    cautions,
    sources,
    related,
  } = entry;
  return [
    signature,
    [summary, ...notes].map((text) => wrap(text)).join('\n\n'),
    ...section('Arguments', parameters.map(parameterText), '\n\n'),
    ...section('What it gives', columnLines(entry)),
    ...section('Equation', [
      ...(method === undefined ? [] : [listed(method)]),
      ...equations.flatMap(equationLines),
      ...constants.map(({ symbol, is, says }) => listed(`${symbol} = ${is}: ${says}`)),
    ]),
    ...section('Example', exampleLines(entry)),
    ...section(
      'Range of validity',
      range.map(({ text, says }) => listed(text === undefined ? says : `${text}. Otherwise: ${says}`)),
    ),
    ...section(
      'Cautions',
      cautions.map(({ says, whenText }) =>
        listed(whenText === undefined ? says : `Where ${whenText}: ${says}`),
      ),
    ),
    ...section(
      'Sources',
      sources.map(({ kind, cites }) => listed(`${SOURCE_KINDS[kind]}: ${cites}`)),
    ),
    ...section('See also', related.length === 0 ? [] : [listed(related.join(', '))]),
    wrap(DEFERS),
  ].join('\n\n');
}

function parameterText({ name, says, limits, optional }: ParameterWords): string {
  const text = `${sentence(says)}${limits === undefined ? '' : ` ${limits}`}`;
  return `  ${name}${optional ? ' (optional)' : ''}\n${wrap(text, WIDTH, '      ')}`;
}

function columnLines({ columns }: HelpEntry): string[] {
  if (columns.length === 0) return [];
  const { heads, rows } = columnTable(columns);
  return [table(heads, rows)];
}

function equationLines({ says, unit, cases, note }: HelpEntry['equations'][number]): string[] {
  return [
    listed(`${says}${unit === '' ? '' : ` (${unit})`}`),
    ...cases.map(({ when, text }) => wrap(when === undefined ? text : `${when}: ${text}`, WIDTH, '      ')),
    ...(note === undefined ? [] : [wrap(note, WIDTH, '      ')]),
  ];
}

function exampleLines({ example: { typed, answer, unit, from } }: HelpEntry): string[] {
  const [[only = ''] = []] = answer;
  const isOne = answer.length === 1 && answer[0]?.length === 1;
  const shown = isOne ? withUnit(only, unit) : answer.map((row) => row.join('  ')).join(`\n${INDENT}`);
  return [
    `${INDENT}${typed}`,
    `${INDENT}gives${isOne ? ' ' : `\n${INDENT}`}${shown}`,
    ...(from === undefined ? [] : [listed(`Checked against: ${from}`)]),
  ];
}
