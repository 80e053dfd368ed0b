/** How the number in a cell came about, as HTML: each call of ours with its equations, inputs, steps, cautions, sources. */
import { inOwnSign } from '../cells/decimalSign';
import katex from 'katex';
import { NAMESPACE } from '../cells/namespace';
import { cellAddress } from '../cells/address';
import { CellError, type CellValue } from '../cells/value';
import { rangeOf, type TypesetLine } from '../derive/typeset';
import { SOURCE_KINDS } from '../derive/words';
import { callsIn, definitionOf } from './calls';
import { workOfCall, type CallWork } from './workOfCell';
import { escapeHtml } from '../render/html';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Cell, Sheet } from '../package/model';
import type { CellPlace } from '../sheet/book';
import type { CellView, Range } from '../workbook/cells';

/** A calculated workbook whose cells are explained. */
export interface Explained {
  readonly functions: readonly WorksheetFunction[];
  sheet(index: number): Sheet;
  /** The cell as the workbook has it. */
  original(place: CellPlace): Cell | undefined;
  /** By the name of the sheet, as it is now. */
  read(range: Range): Promise<CellView[][]>;
}

/** In MathML, which browsers set by themselves: the fonts of another typesetting would double the size of the page. */
const typeset = (tex: string): string =>
  katex.renderToString(`\\displaystyle ${tex}`, { output: 'mathml', throwOnError: false, strict: false });

/** Where the formula stands that fills a cell, which may be the cell itself; undefined where none does. */
function formulaPlace(desk: Explained, place: CellPlace): CellPlace | undefined {
  const { sheet, row, column } = place;
  if (desk.original(place)?.formula !== undefined) return place;
  const filler = desk
    .sheet(sheet)
    .cells.find(
      ({ spill }) =>
        spill && row >= spill.top && row <= spill.bottom && column >= spill.left && column <= spill.right,
    );
  return filler && { sheet, row: filler.row, column: filler.column };
}

/** Empty for a cell that no formula fills. */
export async function workHtml(desk: Explained, place: CellPlace): Promise<string> {
  const from = formulaPlace(desk, place);
  if (!from) return '';
  const formula = desk.original(from)?.formula ?? '';
  const around = {
    sheet: desk.sheet(from.sheet).name,
    read: async (range: Range) => (await desk.read(range)).map((line) => line.map(({ value }) => value)),
    functions: desk.functions,
  };
  const offset = { row: place.row - from.row, column: place.column - from.column };
  const parts: string[] = [];
  for (const call of callsIn(formula)) {
    const definition = definitionOf(call);
    const fn = desk.functions.find(({ id }) => id === call.id);
    const head = `<h3>${NAMESPACE}.${escapeHtml(call.id)}</h3><p>${escapeHtml(fn?.summary ?? '')}</p>`;
    parts.push(head + (definition ? callHtml(await workOfCall(call, definition, around, offset)) : ''));
  }
  const filled =
    from.row === place.row && from.column === place.column
      ? ''
      : `<p>Filled from ${cellAddress(from.row, from.column)}.</p>`;
  return `<p><code>=${escapeHtml(formula)}</code></p>${filled}${parts.join('')}`;
}

function callHtml(work: CallWork): string {
  if ('refusal' in work) return `<p class="refusal">${escapeHtml(work.refusal)}</p>`;
  const { definition, inputs, picture, sources } = work;
  const { lines, outside, cautions } = work.work;
  const steps = lines.filter(({ role, tex, words }) => role !== 'input' && (tex ?? words ?? '') !== '');
  const results = lines.filter(({ role }) => role === 'result');
  return [
    ...results.map(({ valueText, says }) => `<p><b>${escapeHtml(valueText)}</b> ${escapeHtml(says)}</p>`),
    ...outside.map((says) => `<p class="refusal">Out of range: ${escapeHtml(says)}</p>`),
    ...cautions.map((says) => `<p class="caution">${escapeHtml(says)}</p>`),
    // Drawn by our own code from numbers; every text in it is escaped there.
    picture === undefined ? '' : `<div class="picture">${picture}</div>`,
    list(
      'Inputs',
      inputs.map(
        ({ line, name, from, unusual }) =>
          `${line.gives === 'text' ? '' : `${typeset(line.symbolTex)} `}${escapeHtml(from === undefined ? line.says : name)}: <b>${escapeHtml(line.valueText)}</b>` +
          (from === undefined ? '' : `<br><small>${escapeHtml(line.says)} – ${escapeHtml(from)}</small>`) +
          (unusual === undefined ? '' : `<br><span class="caution">${escapeHtml(unusual)}</span>`),
      ),
    ),
    list('Steps', steps.map(stepHtml)),
    list(
      'Range of validity',
      rangeOf(definition).map(
        ({ tex, says }) =>
          `${tex === undefined ? '' : `${typeset(tex)} `}${escapeHtml(outside.includes(says) ? says : 'Holds with these values.')}`,
      ),
    ),
    list(
      'Sources',
      sources.map(({ kind, cites }) => `<b>${SOURCE_KINDS[kind]}</b> ${escapeHtml(cites)}`),
    ),
  ].join('');
}

function stepHtml(line: TypesetLine): string {
  const equations = [line.tex, line.numbersTex].flatMap((tex) =>
    tex === undefined ? [] : [`<div class="equation">${typeset(tex)}</div>`],
  );
  return [
    `<small>${escapeHtml(line.says)}</small>`,
    ...equations,
    line.words === undefined ? '' : `<div>${escapeHtml(line.words)}</div>`,
    line.numbersTex === undefined ? `<div><b>${escapeHtml(line.valueText)}</b></div>` : '',
    line.note === undefined ? '' : `<small>${escapeHtml(line.note)}</small>`,
  ].join('');
}

const list = (title: string, items: readonly string[]): string =>
  items.length === 0 ? '' : `<h4>${title}</h4><ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;

/** A value as a sentence says it. */
export function valueWords(value: CellValue): string {
  if (value === null || value === '') return 'blank';
  if (value instanceof CellError) return value.message === '' ? value.code : value.message;
  return typeof value === 'number' ? inOwnSign(String(Number(value.toPrecision(12)))) : String(value);
}
