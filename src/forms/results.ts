/** The rows of what a form's function answers. */
import { NAMESPACE } from '../cells/namespace';
import {
  inputsOf,
  type Column,
  type Definition,
  type Formula,
  type Lookup,
  type Procedure,
} from '../core/define';
import type { Kind } from '../core/quantity';
import { numberStyle, STYLES, valueFormat } from './looks';
import { cellName } from './names';
import type { RowCells, Rows } from './rows';
import { checkedFormula } from './scale';
import { systemSign } from './units';

/** A call of a function whose arguments are cells of the form. */
export interface FormCall {
  readonly definition: Definition;
  /** One text each, in the places of the inputs; empty where it is left out. */
  readonly args: readonly string[];
}

export interface ResultWords {
  readonly label?: string;
  readonly note?: string;
  readonly name?: string;
}

/** What a result is: of one kind, or of one that an argument decides by its word. */
type Outcome =
  | Kind
  | 'text'
  | { readonly byWord: string; readonly kinds: Readonly<Record<string, Kind | 'text'>> }
  | 'either';

interface Part {
  readonly says: string;
  readonly outcome: Outcome;
}

export const callText = ({ definition, args }: FormCall, units: string): string =>
  `${NAMESPACE}.${definition.name}(${[...args, units].join(',')})`;

const askText = (tool: string, { definition, args }: FormCall, units: string): string =>
  `${NAMESPACE}.SHOW.${tool}(${[`"${definition.name}"`, ...args, units].join(',')})`;

/** A row of a result, for those who refer to it. */
export interface WrittenResult {
  readonly name: string;
  readonly label: string;
  readonly cells: RowCells;
  /** Undefined where an argument decides it. */
  readonly kind: Kind | 'text' | undefined;
}

/** The results: more than one where the function gives a row. */
export function resultRows(rows: Rows, call: FormCall, own: ResultWords = {}): readonly WrittenResult[] {
  const { definition } = call;
  const text = callText(call, rows.units);
  const parts = partsOf(call);
  const wanted = own.name ?? cellName(definition.name);
  return parts.map(({ says, outcome }, i) => {
    const isFirst = i === 0;
    const title = isFirst && own.label !== undefined ? own.label : parts.length > 1 ? says : headOf(says);
    rows.words(title, isFirst ? (own.note ?? (title === says ? definition.summary : says)) : '');
    rows.blanks();
    const formula = parts.length === 1 ? text : `INDEX(${text},1,${i + 1})`;
    resultCells(rows, formula, outcome);
    rows.formulaText(`=${formula}`);
    const cells = rows.here();
    const name = rows.name(isFirst ? wanted : `${wanted}_${i + 1}`);
    rows.end();
    const kind = typeof outcome === 'string' && outcome !== 'either' ? outcome : undefined;
    return { name, label: title, cells, kind };
  });
}

export const knowsStrength = (definition: Definition): boolean =>
  definition.type !== 'lookup' && definition.strength !== undefined;

/** Of a function that knows load and metal. */
export function marginRow(rows: Rows, call: FormCall): void {
  rows.words(
    'Margin: yield over stress',
    'By typical yield at 20 °C; 1 yields. Divide by what your shop asks for.',
  );
  rows.blanks();
  const formula = askText('MARGIN', call, rows.units);
  rows.put('value', { formula, look: numberStyle(valueFormat('ratio')) });
  rows.put('unit', { value: '–', look: STYLES.unit });
  rows.formulaText(`=${formula}`);
  rows.end();
}

/** Whether the equation holds for these inputs, and the metal for the stress; gives the cell of the verdict. */
export function checkRow(rows: Rows, call: FormCall, title = 'Check'): string {
  const formula = askText('CHECK', call, rows.units);
  const { value } = rows.here();
  rows.words(title, '');
  rows.blanks();
  rows.noteFormula(formula, 'x'.repeat(120));
  rows.verdict(checkedFormula(rows.cell('note')));
  rows.formulaText(`=${formula}`, rows.cell('note'));
  rows.end();
  return value;
}

/** What to watch for with the values of the form. */
export function cautionRow(rows: Rows, call: FormCall): void {
  const { definition } = call;
  const all = (definition.cautions ?? []) as readonly { readonly says: string }[];
  const named = inputsOf(definition).some(({ reading }) => reading.as === 'named' && reading.notes);
  const mayYield = knowsStrength(definition);
  if (all.length === 0 && !named && !mayYield) return;
  const sample = all.map(({ says }) => says).join(' ') + 'x'.repeat(mayYield || named ? 120 : 0);
  rows.wideFormula('Watch for', askText('CAUTION', call, rows.units), sample, STYLES.caution);
}

export function sourceRow(rows: Rows, call: FormCall): void {
  const isTable = call.definition.type === 'lookup';
  const formula = isTable
    ? askText('SOURCE', call, rows.units)
    : `${NAMESPACE}.SHOW.SOURCE("${call.definition.name}")`;
  const sample = call.definition.sources.map(({ cites }) => cites).join('; ');
  rows.wideFormula('Source', formula, sample, STYLES.note);
}

function resultCells(rows: Rows, formula: string, outcome: Outcome): void {
  if (outcome === 'text') {
    rows.put('value', { formula, look: STYLES.words });
    rows.put('unit', { value: '–', look: STYLES.unit });
  } else if (typeof outcome === 'string' && outcome !== 'either') {
    rows.put('value', { formula, look: numberStyle(valueFormat(outcome)) });
    rows.put('unit', rows.unitOf(outcome));
  } else {
    rows.put('value', { formula, look: numberStyle('General') });
    rows.put('unit', {
      formula: outcome === 'either' ? '"–"' : unitByWord(rows, outcome),
      look: STYLES.unit,
    });
  }
}

/** The unit that belongs to the word in another cell. */
function unitByWord(rows: Rows, { byWord, kinds }: Exclude<Outcome, string>): string {
  const wordsOf = new Map<string, string[]>();
  for (const [word, kind] of Object.entries(kinds)) {
    const unit = kind === 'text' ? '"–"' : unitText(rows, kind);
    wordsOf.set(unit, [...(wordsOf.get(unit) ?? []), word]);
  }
  return [...wordsOf].reduceRight((otherwise, [unit, words]) => {
    const isOne = `OR(${words.map((word) => `${byWord}="${word}"`).join(',')})`;
    return `IF(${isOne},${unit},${otherwise})`;
  }, '"?"');
}

function unitText(rows: Rows, kind: Kind): string {
  const [inch, mm] = [systemSign(kind, 'in'), systemSign(kind, 'mm')];
  if (inch === mm) return `"${inch === '' ? '–' : inch}"`;
  return `IF(${rows.units}="mm","${mm}","${inch}")`;
}

function partsOf({ definition, args }: FormCall): readonly Part[] {
  const argOf = (name: string): string =>
    args[inputsOf(definition).findIndex((one) => one.name === name)] ?? '';
  switch (definition.type) {
    case 'formula': {
      const { steps, result } = definition as Formula;
      const step = steps[result];
      return step ? [{ says: step.says, outcome: step.gives }] : [];
    }
    case 'lookup': {
      const { columns, inputs, summary } = definition as Lookup;
      const all = Object.entries<Column<unknown>>(columns);
      const kinds = Object.fromEntries(all.map(([word, { gives }]) => [word, gives]));
      const choice = inputs[1];
      const [only] = all;
      if (!choice) return only ? [{ says: only[1].says, outcome: only[1].gives }] : [];
      return [{ says: summary, outcome: oneOf(kinds, argOf(choice.name)) }];
    }
    case 'procedure': {
      const { gives, summary } = definition as Procedure;
      if (typeof gives === 'string') return [{ says: summary, outcome: gives }];
      if ('row' in gives) return gives.row.map(({ gives: outcome, says }) => ({ says, outcome }));
      return [{ says: summary, outcome: gives.word ? 'either' : oneOf(gives.kinds, argOf(gives.by)) }];
    }
  }
}

/** The kind of a function's one number, where it does not depend on its arguments. */
export function kindOfResult(definition: Definition): Kind | undefined {
  const [part] = partsOf({ definition, args: [] });
  const outcome = part?.outcome;
  return typeof outcome === 'string' && outcome !== 'text' && outcome !== 'either' ? outcome : undefined;
}

function oneOf(kinds: Readonly<Record<string, Kind | 'text'>>, byWord: string): Outcome {
  const fixed = /^"(.*)"$/.exec(byWord)?.[1];
  const only = fixed === undefined ? undefined : kinds[fixed];
  if (only !== undefined) return only;
  const [first, ...others] = new Set(Object.values(kinds));
  return first !== undefined && others.length === 0 ? first : { byWord, kinds };
}

/** The first clause of a sentence: `Sink in injection less sink in milling`. */
const headOf = (says: string): string => says.split(/[:;.]\s|[:;.]$/)[0] ?? says;
