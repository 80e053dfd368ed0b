import { NAMESPACE } from '../cells/namespace';
import { CellError, type Matrix } from '../cells/value';
import type { Check } from '../core/checks';
import { inputsOf, type AnyInput, type Column, type Definition, type Formula } from '../core/define';
import { prune } from '../core/expr/fold';
import { parseEquation } from '../core/expr/parse';
import { symbolTex, toTex } from '../core/expr/tex';
import { numberText } from '../core/format';
import { systemUnit } from '../core/quantity';
import type { HelpCaution, HelpEntry, HelpParameter } from '../derive/help';
import { constantsOf, equationsOf, inLetters, rangeOf } from '../derive/typeset';
import { signature, unitsOfKind, wordsOf, type FunctionWords } from '../derive/words';
import { exampleOf } from './example';
import type { Tool } from './tools/tool';

/** What the help says of a function, once its example is calculated. */
export interface HelpDraft {
  /** The example as it is typed, with its `=`. */
  readonly typed: string;
  /** Refuses an answer in error: that is a fault of the definition. */
  readonly entry: (answer: Matrix) => HelpEntry;
}

/** The help of a function of the catalogue; the check is its example. */
export function definitionHelp(definition: Definition, check: Check): HelpDraft {
  const { work, system, typed, from } = exampleOf(definition, check);
  const results = work.lines.filter(({ role }) => role === 'result');
  const [only] = results;
  const unit =
    results.length === 1 && only && only.gives !== 'text' && typeof only.value === 'number'
      ? systemUnit(only.gives, system).symbol
      : '';
  const words = wordsOf(definition);
  return {
    typed,
    entry: (answer) => ({
      ...heading(words),
      parameters: words.parameters.map((parameter, i): HelpParameter => {
        const input = inputsOf(definition)[i];
        return input && isInEquations(input)
          ? { ...parameter, symbolTex: symbolTex(input.symbol) }
          : parameter;
      }),
      notes: definition.notes ?? [],
      equations: equationsOf(definition),
      constants: constantsOf(definition),
      ...(definition.type === 'procedure' ? { method: definition.method } : {}),
      columns: columnsOf(definition),
      example: { typed, answer: answerText(answer, typed), unit, lines: work.lines, system, from },
      pictures: [],
      range: rangeOf(definition),
      sources: definition.sources,
      cautions: cautionsOf(definition),
      related: definition.related ?? [],
    }),
  };
}

/** The help of a function about functions. */
export function toolHelp(tool: Tool): HelpDraft {
  const typed = `=${NAMESPACE}.${tool.example}`;
  const { sources, notes = [], cautions = [], related = [] } = tool;
  return {
    typed,
    entry: (answer) => ({
      ...heading({ ...tool, id: tool.name }),
      parameters: tool.parameters,
      notes,
      equations: [],
      constants: [],
      columns: [],
      example: { typed, answer: answerText(answer, typed), unit: '', lines: [] },
      pictures: [],
      range: [],
      sources,
      cautions: cautions.map((says) => ({ says })),
      related,
    }),
  };
}

const heading = (words: Pick<FunctionWords, 'id' | 'summary' | 'parameters'>) => ({
  id: words.id,
  title: `${NAMESPACE}.${words.id}`,
  summary: words.summary,
  signature: signature(words),
});

const isInEquations = ({ reading }: AnyInput): boolean => reading.as === 'quantity' || reading.as === 'list';

function answerText(answer: Matrix, typed: string): string[][] {
  return answer.map((row) =>
    row.map((cell) => {
      if (cell instanceof CellError) throw new Error(`${typed} gives ${cell.code} ${cell.message}`);
      return typeof cell === 'number' ? numberText(cell) : String(cell ?? '');
    }),
  );
}

function columnsOf(definition: Definition): HelpEntry['columns'] {
  if (definition.type !== 'lookup') return [];
  return Object.entries(definition.columns as Readonly<Record<string, Column<unknown>>>).map(
    ([word, { says, gives }]) => ({ word, says, unit: gives === 'text' ? '' : unitsOfKind(gives) }),
  );
}

function cautionsOf(definition: Definition): HelpCaution[] {
  if (definition.type !== 'formula')
    return (definition.cautions ?? []).map(({ says }: { readonly says: string }) => ({ says }));
  return ((definition as Formula).cautions ?? []).map(({ when, says }) => ({
    says,
    ...(when === undefined
      ? {}
      : { whenTex: toTex(prune(parseEquation(when, () => true))), whenText: inLetters(when) }),
  }));
}
