import { argumentText, signature } from '../../src/panel/argumentText';
import { catalogue } from '../../src/catalogue';
import { CellError, type Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { NAMESPACE } from '../../src/cells/namespace';
import { tools } from '../../src/call/tools';
import type { Tool } from '../../src/call/tools/tool';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { boundsOf } from '../../src/core/amount';
import { inputsOf, type AnyInput, type Column, type Definition, type Formula } from '../../src/core/define';
import { parseEquation } from '../../src/core/expr/parse';
import { prune } from '../../src/core/expr/fold';
import { symbolTex, toTex } from '../../src/core/expr/tex';
import { numberText, quantityText } from '../../src/core/format';
import { KINDS, SYSTEMS, systemUnit, type Kind } from '../../src/core/quantity';
import type { HelpEntry, HelpParameter } from '../../src/derive/help';
import { pictureOf } from '../../src/derive/pictures';
import { seatChartPicture } from '../../src/derive/pictures/seatChart';
import { equationsOf, rangeOf } from '../../src/derive/typeset';
import { calculateFormulas } from '../../src/workbook/engine/calculateFormulas';
import { exampleOf, type Example } from './example';

/** The functions whose choice of a draft the chart of the seat helps with. */
const WITH_SEAT_CHART = ['SEAT.SINK', 'SEAT.RELEASE', 'SEAT.HEIGHT', 'SEAT.FREEDRAFT'];

/** What the help says of every function, examples calculated as they are typed. */
export async function helpEntries(): Promise<HelpEntry[]> {
  const examples = catalogue.map(exampleOf);
  const typed = [
    ...examples.map((example) => example.typed),
    ...tools.map(({ example }) => `=${NAMESPACE}.${example}`),
  ];
  const answers = await calculateFormulas(typed, worksheetFunctions);
  return [
    ...catalogue.map((definition, i) =>
      definitionEntry(definition, examples[i] as Example, answers[i] ?? []),
    ),
    ...tools.map((tool, i) => toolEntry(tool, answers[catalogue.length + i] ?? [])),
  ];
}

const functionOf = (id: string): WorksheetFunction => {
  const fn = worksheetFunctions.find((one) => one.id === id);
  if (!fn) throw new Error(`There is no function ${id}`);
  return fn;
};

/** The answer's cells as text. An example in error is a fault of its definition. */
function answerText(answer: Matrix, typed: string): string[][] {
  return answer.map((row) =>
    row.map((cell) => {
      if (cell instanceof CellError) throw new Error(`${typed} gives ${cell.code} ${cell.message}`);
      return typeof cell === 'number' ? numberText(cell) : String(cell ?? '');
    }),
  );
}

function common(id: string) {
  const fn = functionOf(id);
  return {
    id,
    title: `${NAMESPACE}.${id}`,
    family: fn.family,
    summary: fn.summary,
    signature: signature(fn),
  };
}

const plainParameters = (id: string): HelpParameter[] =>
  functionOf(id).parameters.map((parameter) => ({
    name: parameter.name,
    says: argumentText(parameter),
    optional: parameter.optional,
  }));

function definitionEntry(definition: Definition, example: Example, answer: Matrix): HelpEntry {
  const { work, system, typed, from } = example;
  const picture = pictureOf(definition.name, work.lines, system);
  const results = work.lines.filter(({ role }) => role === 'result');
  const [only] = results;
  return {
    ...common(definition.name),
    parameters: plainParameters(definition.name).map((parameter, i) => {
      const input = inputsOf(definition)[i];
      return input ? { ...parameter, ...detailsOf(input) } : parameter;
    }),
    notes: definition.notes ?? [],
    equations: equationsOf(definition),
    ...(definition.type === 'procedure' ? { method: definition.method } : {}),
    columns: columnsOf(definition),
    example: {
      typed,
      answer: answerText(answer, typed),
      unit:
        results.length === 1 && only && only.gives !== 'text' && typeof only.value === 'number'
          ? systemUnit(only.gives, system).symbol
          : '',
      lines: work.lines,
      from,
    },
    pictures: [
      ...(picture === undefined ? [] : [picture]),
      ...(WITH_SEAT_CHART.includes(definition.name) ? [seatChartPicture()] : []),
    ],
    range: rangeOf(definition),
    sources: definition.sources,
    cautions: cautionsOf(definition),
    related: definition.related ?? [],
  };
}

function detailsOf(input: AnyInput): Partial<HelpParameter> {
  const limits = limitsText(input);
  const isSymbol = input.reading.as === 'quantity' || input.reading.as === 'list';
  return {
    ...(isSymbol ? { symbolTex: symbolTex(input.symbol) } : {}),
    ...(limits === undefined ? {} : { limits }),
  };
}

/** The limits of an argument in both systems of units. */
function limitsText({ reading }: AnyInput): string | undefined {
  if (reading.as !== 'quantity' && reading.as !== 'list') return undefined;
  const { kind } = reading;
  const { low, lowIncluded, high, highIncluded } = boundsOf(reading, kind);
  const text = (si: number): string =>
    [...new Set(SYSTEMS.map((system) => quantityText(si, kind, system)))].join(' or ');
  const parts = [
    ...(low > -Infinity ? [`${lowIncluded ? 'at least' : 'above'} ${low === 0 ? '0' : text(low)}`] : []),
    ...(high < Infinity ? [`${highIncluded ? 'at most' : 'below'} ${text(high)}`] : []),
  ];
  return parts.length === 0 ? undefined : `Must be ${parts.join(' and ')}.`;
}

function columnsOf(definition: Definition): HelpEntry['columns'] {
  if (definition.type !== 'lookup') return [];
  return Object.entries(definition.columns as Readonly<Record<string, Column<unknown>>>).map(
    ([word, { says, gives }]) => ({ word, says, unit: gives === 'text' ? '' : unitsText(gives) }),
  );
}

const unitsText = (kind: Kind): string => {
  const { in: inch, mm } = KINDS[kind].system;
  return inch === mm ? inch : `${inch} or ${mm}`;
};

function cautionsOf(definition: Definition): HelpEntry['cautions'] {
  if (definition.type !== 'formula')
    return (definition.cautions ?? []).map(({ says }: { readonly says: string }) => ({ says }));
  return ((definition as Formula).cautions ?? []).map(({ when, says }) => ({
    says,
    ...(when === undefined ? {} : { whenTex: toTex(prune(parseEquation(when, () => true))) }),
  }));
}

function toolEntry({ name, example, sources, notes, cautions, related }: Tool, answer: Matrix): HelpEntry {
  const typed = `=${NAMESPACE}.${example}`;
  return {
    ...common(name),
    parameters: plainParameters(name),
    notes: notes ?? [],
    equations: [],
    columns: [],
    example: { typed, answer: answerText(answer, typed), unit: '', lines: [] },
    pictures: [],
    range: [],
    sources,
    cautions: (cautions ?? []).map((says) => ({ says })),
    related: related ?? [],
  };
}
