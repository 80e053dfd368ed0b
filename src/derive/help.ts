import { EXCEL_HELP } from './excelWords';
import type { Source } from '../core/define';
import type { FamilyWords } from '../core/familyWords';
import { withUnit } from '../core/format';
import type { System } from '../core/quantity';
import { differenceText, onDerivationAlone, type CheckLine } from './validation';
import type { GeneralEquation, NamedConstant, RangeCondition, TypesetLine } from './typeset';
import { familyOf, SOURCE_KINDS, type ParameterWords } from './words';

/** All that the page of help of one function says; written to HTML by `helpHtml`. */
export interface HelpEntry {
  readonly id: string;
  /** As it is typed: `MOLD.SEAT.FORCE`. */
  readonly title: string;
  readonly summary: string;
  readonly signature: string;
  readonly parameters: readonly HelpParameter[];
  readonly notes: readonly string[];
  readonly equations: readonly GeneralEquation[];
  /** Numbers that the equations name. */
  readonly constants: readonly NamedConstant[];
  /** How it is found, where an equation does not say it. */
  readonly method?: string;
  /** What a table gives, by the word that asks for it. */
  readonly columns: readonly { readonly word: string; readonly says: string; readonly unit: string }[];
  readonly example: HelpExample;
  /** SVG text. */
  readonly pictures: readonly string[];
  readonly range: readonly RangeCondition[];
  readonly sources: readonly Source[];
  readonly cautions: readonly HelpCaution[];
  readonly related: readonly string[];
  /** What it is tested by; none for a tool. */
  readonly checks?: readonly CheckLine[];
}

export interface HelpParameter extends ParameterWords {
  /** Of the equations; absent where they do not name it. */
  readonly symbolTex?: string;
}

/** A caution, and where it holds: always, or under a condition. */
export interface HelpCaution {
  readonly says: string;
  readonly whenTex?: string;
  /** The same for where nothing can be typeset. */
  readonly whenText?: string;
}

export interface HelpExample {
  /** With its `=`. */
  readonly typed: string;
  /** The cells that it fills, as text. */
  readonly answer: readonly (readonly string[])[];
  readonly unit: string;
  readonly lines: readonly TypesetLine[];
  /** The units of the lines. */
  readonly system?: System;
  /** What the answer was checked against. */
  readonly from?: string;
}

/** What the writer of pages needs from outside: TeX as HTML, and the address of a page from another one. */
export interface HelpTools {
  readonly typeset: (tex: string) => string;
  readonly address: (id: string) => string;
}

/** The last line of every page of help. */
export const DEFERS =
  'Figures to plan by: the machine’s manual, local codes and licensed practice come first, above all where people can get hurt.';

const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const list = (tag: 'ul' | 'ol', items: readonly string[]): string =>
  `<${tag}>${items.map((item) => `<li>${item}</li>`).join('')}</${tag}>`;

const section = (heading: string, body: string): string =>
  body === '' ? '' : `<section><h2>${escape(heading)}</h2>${body}</section>`;

/** The page of help of one function. */
export function helpHtml(entry: HelpEntry, tools: HelpTools): string {
  const { title, summary, signature, notes, method, pictures, related } = entry;
  const body = [
    `<p class="summary">${escape(summary)}</p>`,
    `<pre>${escape(signature)}</pre>`,
    ...notes.map((note) => `<p>${escape(note)}</p>`),
    section('Arguments', parametersHtml(entry, tools)),
    section('What it gives', columnsHtml(entry)),
    section(
      entry.equations.length > 0 || method !== undefined ? 'Equation' : '',
      (method === undefined ? '' : `<p>${escape(method)}</p>`) +
        equationsHtml(entry, tools) +
        constantsHtml(entry, tools),
    ),
    section('Picture', pictures.map((svg) => `<div class="picture">${svg}</div>`).join('')),
    section('Example', exampleHtml(entry.example, tools)),
    section('Range of validity', rangeHtml(entry, tools)),
    section('Cautions', cautionsHtml(entry, tools)),
    section('Checked against', checksHtml(entry.checks ?? [])),
    section(
      'Sources',
      list(
        'ul',
        entry.sources.map(
          ({ kind, cites }) => `<span class="kind">${SOURCE_KINDS[kind]}</span> ${escape(cites)}`,
        ),
      ),
    ),
    section(
      'See also',
      related.length === 0
        ? ''
        : list(
            'ul',
            related.map((id) => `<a href="${tools.address(id)}">${escape(id)}</a>`),
          ),
    ),
  ].join('');
  return pageHtml(title, `<p><a href="index.html">All functions</a></p>`, body);
}

function parametersHtml({ parameters }: HelpEntry, { typeset }: HelpTools): string {
  if (parameters.length === 0) return '<p>None.</p>';
  const entries = parameters.map(({ name, symbolTex, says, limits, optional }) => {
    const symbol = symbolTex === undefined ? '' : ` <span class="symbol">${typeset(symbolTex)}</span>`;
    return (
      `<dt>${escape(name)}${symbol}${optional ? ' <small>optional</small>' : ''}</dt>` +
      `<dd>${escape(says)}${limits === undefined ? '' : `<br><small>${escape(limits)}</small>`}</dd>`
    );
  });
  return `<dl>${entries.join('')}</dl>`;
}

const CHECK_HEADS = ['Given', 'Expected', 'Ours', 'Unit', 'Difference', 'Kind', 'Source'] as const;

const checkRow = (line: CheckLine, before = ''): string =>
  `<tr>${before}${[
    line.given,
    line.expected,
    line.ours,
    line.unit,
    differenceText(line),
    SOURCE_KINDS[line.kind],
    line.from,
  ]
    .map((cell) => `<td>${escape(cell)}</td>`)
    .join('')}</tr>`;

const checkTable = (label: string, heads: readonly string[], rows: readonly string[]): string =>
  `<div class="scroll" tabindex="0" role="group" aria-label="${escape(label)}"><table><thead><tr>${heads
    .map((head) => `<th scope="col">${escape(head)}</th>`)
    .join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;

function checksHtml(lines: readonly CheckLine[]): string {
  if (lines.length === 0) return '';
  const alone = onDerivationAlone(lines).length > 0;
  return (
    (alone
      ? '<p>All of these are worked out from the equation itself: no table or text from outside stands behind this function.</p>'
      : '') +
    checkTable(
      'Checks',
      CHECK_HEADS,
      lines.map((line) => checkRow(line)),
    )
  );
}

/** The report of every check of every function, counted by how its expected value was come by. */
export function validationHtml(lines: readonly CheckLine[], { address }: Pick<HelpTools, 'address'>): string {
  const kinds = Object.keys(SOURCE_KINDS) as Source['kind'][];
  const counts = kinds.map(
    (kind) =>
      `<tr><td>${escape(SOURCE_KINDS[kind])}</td><td>${lines.filter((line) => line.kind === kind).length}</td></tr>`,
  );
  const link = (id: string): string => `<a href="${address(id)}">${escape(id)}</a>`;
  const alone = onDerivationAlone(lines);
  return pageHtml(
    'Validation',
    '<p><a href="index.html">All functions</a></p>',
    [
      `<p class="summary">Every check of every function: ${lines.length} of them. The same numbers for a spreadsheet: <a href="validation.csv">validation.csv</a>.</p>`,
      section('By kind of source', checkTable('Checks by kind of source', ['Kind', 'Checks'], counts)),
      section(
        'On derivation alone',
        `<p>${alone.length} functions are checked by values worked out from their equation and by limiting cases only; no table or text from outside stands behind them: ${alone.map(link).join(', ')}.</p>`,
      ),
      section(
        'Checks',
        checkTable(
          'Checks',
          ['Function', ...CHECK_HEADS],
          lines.map((line) => checkRow(line, `<td>${link(line.id)}</td>`)),
        ),
      ),
    ].join(''),
  );
}

function columnsHtml({ columns }: HelpEntry): string {
  if (columns.length === 0) return '';
  const { heads, rows } = columnTable(columns);
  const head = heads.map((one) => `<th scope="col">${escape(one)}</th>`).join('');
  const body = rows.map((row) => `<tr>${row.map((cell) => `<td>${escape(cell)}</td>`).join('')}</tr>`);
  return `<table><thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

/** What a table gives, by word; a meaning that only repeats the word is not shown. */
export function columnTable(columns: HelpEntry['columns']) {
  const isPlain = columns.every(({ word, says }) => says === word);
  return {
    heads: isPlain ? ['Word', 'Unit'] : ['Word', 'Meaning', 'Unit'],
    rows: columns.map(({ word, says, unit }) => (isPlain ? [word, unit] : [word, says, unit])),
  };
}

function equationsHtml({ equations }: HelpEntry, { typeset }: HelpTools): string {
  const items = equations.map(({ says, unit, cases, note, symbolTex }) => {
    const lines = cases.map(({ when, tex, words }) => {
      const equation = tex === undefined ? `${typeset(symbolTex)}: ${escape(words ?? '')}` : typeset(tex);
      return `<div class="equation" tabindex="0" role="group" aria-label="${escape(says)}">${when === undefined ? '' : `<small>${escape(when)}:</small> `}${equation}</div>`;
    });
    return `${escape(says)}${unit === '' ? '' : ` <small>(${escape(unit)})</small>`}${lines.join('')}${note === undefined ? '' : `<small>${escape(note)}</small>`}`;
  });
  return items.length === 0 ? '' : list('ol', items);
}

function constantsHtml({ constants }: HelpEntry, { typeset }: HelpTools): string {
  const items = constants.map(
    ({ symbolTex, is, says }) => `<dt>${typeset(symbolTex)} = ${escape(is)}</dt><dd>${escape(says)}</dd>`,
  );
  return items.length === 0 ? '' : `<dl>${items.join('')}</dl>`;
}

function exampleHtml({ typed, answer, unit, lines, from }: HelpExample, { typeset }: HelpTools): string {
  const [[only = ''] = []] = answer;
  const shown =
    answer.length === 1 && answer[0]?.length === 1
      ? `<p>gives <strong>${escape(withUnit(only, unit))}</strong></p>`
      : `<div class="scroll" tabindex="0" role="group" aria-label="Answer"><table><tbody>${answer.map((row) => `<tr>${row.map((cell) => `<td>${escape(cell)}</td>`).join('')}</tr>`).join('')}</tbody></table></div>`;
  const steps = lines
    .filter(({ role, numbersTex }) => role !== 'input' && numbersTex !== undefined)
    .map(
      ({ says, numbersTex }) =>
        `${escape(says)}<div class="equation" tabindex="0" role="group" aria-label="${escape(says)}, with numbers">${typeset(numbersTex ?? '')}</div>`,
    );
  return [
    `<pre>${escape(typed)}</pre>`,
    shown,
    steps.length === 0 ? '' : list('ol', steps),
    from === undefined ? '' : `<p><small>Checked against: ${escape(from)}</small></p>`,
  ].join('');
}

function rangeHtml({ range }: HelpEntry, { typeset }: HelpTools): string {
  if (range.length === 0) return '';
  return list(
    'ul',
    range.map(({ tex, says }) =>
      tex === undefined ? escape(says) : `${typeset(tex)}<br>Otherwise: ${escape(says)}`,
    ),
  );
}

function cautionsHtml({ cautions }: HelpEntry, { typeset }: HelpTools): string {
  if (cautions.length === 0) return '';
  return list(
    'ul',
    cautions.map(({ whenTex, says }) =>
      whenTex === undefined ? escape(says) : `${escape(says)} <small>Where ${typeset(whenTex)}.</small>`,
    ),
  );
}

/** The list of all functions by the questions of the job, with a search. */
export function indexHtml(
  entries: readonly HelpEntry[],
  words: Readonly<Record<string, FamilyWords>>,
  { address }: Pick<HelpTools, 'address'>,
): string {
  const families = [...new Set(entries.map(({ id }) => familyOf(id)))];
  const groups = families.map((family) => {
    const members = entries
      .filter(({ id }) => familyOf(id) === family)
      .map(
        ({ id, title, summary }) =>
          `<li data-function="${escape(id)}"><a href="${address(id)}">${escape(title)}</a><br>${escape(summary)}</li>`,
      );
    const { title = family, question = '' } = words[family] ?? {};
    return `<section data-listed id="${escape(family)}"><h2>${escape(title)}</h2><p>${escape(question)}</p><ul class="functions">${members.join('')}</ul></section>`;
  });
  const questions = Object.entries(words)
    .filter(([family]) => families.includes(family))
    .map(
      ([family, { title, question }]) =>
        `<li><a href="#${escape(family)}">${escape(question)}</a> <span>${escape(title)}</span></li>`,
    );
  const asked = `<nav data-listed aria-labelledby="questions"><h2 id="questions">What the job asks</h2><ul class="questions">${questions.join('')}</ul></nav>`;
  const search =
    '<p><label for="search">Search by the words of the shop</label> <input id="search" type="search" autocomplete="off"></p><p id="found" role="status"></p><ul id="results" class="functions" hidden></ul>';
  return pageHtml(
    'Functions',
    '<p><a href="guide/index.html">Guide: a mold, from drawing to first shot</a> · <a href="validation.html">What every function was checked against</a> · <a href="excel.html">In Excel</a></p>',
    `${search}${asked}${groups.join('')}<script src="search.js"></script>`,
  );
}

/** What a person meets in Excel, by what they see. */
export const excelHtml = (): string =>
  pageHtml(
    'In Excel',
    '<p><a href="index.html">All functions</a></p>',
    EXCEL_HELP.map(
      ([heading, ...says]) =>
        `<h2>${escape(heading)}</h2>${says.map((text) => `<p>${escape(text)}</p>`).join('')}`,
    ).join(''),
  );

/** KaTeX places its parts by style attributes; nothing else inline is allowed, and nothing from elsewhere. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline'; font-src 'self'; img-src 'self' data:";

/** A page of help; `up` leads from its folder to that of the others. */
export const pageHtml = (title: string, above: string, body: string, up = ''): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="data:,">
<link rel="stylesheet" href="${up}katex.css">
<link rel="stylesheet" href="${up}help.css">
<title>${escape(title)} – Moldsheet</title>
</head>
<body><main>${above}<h1>${escape(title)}</h1>${body}</main><footer>${escape(DEFERS)}</footer></body>
</html>
`;
