import {
  inputsOf,
  type AnyInput,
  type Definition,
  type Formula,
  type Lookup,
  type NativeWriter,
  type Procedure,
} from '../../core/define';
import { answer, givesOf } from '../../core/answer';
import { toNative } from '../../core/expr/native';
import { toText } from '../../core/expr/text';
import type { Expr } from '../../core/expr/tree';
import { programFor } from '../../core/program';
import type { Kind, System } from '../../core/quantity';
import { Refusal } from '../../core/refusal';
import { ArgumentTexts, CannotBeNative, constantText, nameKey, UnitTexts, unitWord } from './arguments';
import type { CallArguments } from './callArguments';
import type { Guard } from './guard';
import { enumerated } from './enumerated';
import { partMark, putColumns, putParts } from './marks';
import type {
  NativeCall,
  NativeForm,
  NativeGate,
  NativePart,
  NativeResult,
  NativeVariant,
  PartMaker,
  PartWords,
} from './parts';
import type { DataTables } from './tables';
import { variantsOf } from './variants';
import { checkWords, marginNumber, nativeMargin, usualOnly, type Asked, type Judged } from './verdicts';

export type { Content, NativeArgument, NativeUnits } from './arguments';
export { allOf, arrayColumns, inlineLength, inlineText, letText, oneCell, type OneCell } from './forms';
export { entryText, valueError } from './arguments';
export type { CallArguments } from './callArguments';
export type { Guard } from './guard';
export type { NativeCall, NativePart, PartWords } from './parts';
export { ASKED, CHECK, rowsOf, type NativeRow, type NativeRows } from './rows';
export { isPart, partMark, putColumns, putParts, tablesIn } from './marks';
export { DataTables } from './tables';
export type { Asked } from './verdicts';

/** Why a call has no native form. */
export interface Frozen {
  readonly frozen: string;
}

/** The worksheet-native form of a call, or why there is none. */
export function nativeCall(
  definition: Definition,
  call: CallArguments,
  tables: DataTables,
  asked: Asked = 'result',
): NativeCall | Frozen {
  try {
    const listed = enumerated(definition, call, tables);
    if (listed) return asked === 'result' ? listed : judgedNames(definition, listed, asked);
    const parts: NativePart[] = [];
    const { variants, isWhole } = variantsOf(definition, call);
    const write = (variant: CallArguments): NativeCall => {
      const native = new CallWriter(definition, variant, tables, parts, asked).write();
      return isWhole ? native : { ...native, settles: true };
    };
    const [only, ...more] = variants;
    if (only && more.length === 0) return write(only.call);
    return together(
      parts,
      variants.map(({ when, call: own }) => ({ when, native: refusedOr(() => write(own)) })),
    );
  } catch (error) {
    if (error instanceof CannotBeNative) return { frozen: error.message };
    throw error;
  }
}

/** A call of names alone is in range wherever it has an answer. */
function judgedNames(definition: Definition, call: NativeCall, asked: Asked): NativeCall {
  const isJudged = inputsOf(definition).some(({ reading }) => reading.as === 'quantity' && reading.usual);
  if (asked === 'margin' || isJudged || hasRange(definition)) throw new CannotBeNative(NO_RANGE);
  const variants = call.variants.map(({ when, form }): NativeVariant =>
    typeof form === 'string'
      ? { when, form }
      : { when, form: { ...form, results: [inRangeWhere(form.results, '"in range"')] } },
  );
  return { ...call, variants };
}

/** Words on a call, which must have an answer to be judged. */
const inRangeWhere = ([first]: readonly NativeResult[], words: string): NativeResult => ({
  text: `IF(ISERROR(${first?.text ?? ''}),${first?.text ?? ''},${words})`,
  says: 'Whether the equation holds',
  unit: '""',
});

/** Whether a definition's range of validity is asked by a program of its own. */
const hasRange = (definition: Definition): boolean =>
  definition.type === 'procedure' && (definition.valid ?? []).length > 0;

const NO_RANGE = 'its range of validity is asked in steps that no worksheet formula has';

/** The variants as one call. */
function together(
  parts: readonly NativePart[],
  written: readonly { readonly when: NativeVariant['when']; readonly native: NativeCall | string }[],
): NativeCall {
  const calls = written.flatMap(({ native }) => (typeof native === 'string' ? [] : [native]));
  if (calls.length === 0) {
    const [why = ''] = written.flatMap(({ native }) => (typeof native === 'string' ? [native] : []));
    throw new CannotBeNative(why);
  }
  return {
    parts,
    variants: written.flatMap(({ when, native }): NativeVariant[] =>
      typeof native === 'string'
        ? [{ when, form: native }]
        : native.variants.map(({ form }) => ({ when, form })),
    ),
    looksUp: calls.some(({ looksUp }) => looksUp),
    settles: calls.some(({ settles }) => settles),
    notes: [...new Set(calls.flatMap(({ notes }) => notes))],
  };
}

/** Other words may be refused, or have no native form, where the present ones have: the copy then says so. */
function refusedOr(write: () => NativeCall): NativeCall | string {
  try {
    return write();
  } catch (error) {
    if (error instanceof Refusal) return refusalText(error.argument ?? '', error.message);
    if (error instanceof CannotBeNative) return error.message;
    throw error;
  }
}

class CallWriter {
  private readonly inputs: readonly AnyInput[];
  private readonly units: UnitTexts;
  private readonly texts: ArgumentTexts[] = [];
  private readonly ownGuards: Guard[] = [];
  private looksUp = false;
  private settles = false;

  constructor(
    private readonly definition: Definition,
    private readonly call: CallArguments,
    private readonly tables: DataTables,
    /** Those of the other variants of the call are used again. */
    private readonly parts: NativePart[],
    private readonly asked: Asked,
  ) {
    this.inputs = inputsOf(definition);
    const part: PartMaker = (symbol, text, words) => this.part(symbol, text, words);
    this.units = new UnitTexts(call.units, part);
    const make = (input: AnyInput, i: number): ArgumentTexts => {
      const present = this.texts[i];
      if (present) return present;
      const arg = call.args[i];
      const at = this.inputs.findIndex(({ name }) => name === input.sameAs);
      const follows = at >= 0 ? make(this.inputs[at] as AnyInput, at) : undefined;
      const blank = call.leftOut?.find(({ name }) => name === input.name)?.text;
      const made = new ArgumentTexts(input, arg, this.units, tables, part, follows, i, blank);
      made.defaultValue = call.defaults[i];
      return (this.texts[i] = made);
    };
    this.inputs.forEach(make);
  }

  write(): NativeCall {
    const { results, gates } = this.judged(this.results());
    for (const text of this.texts) text.check();
    const leftOut = (this.call.leftOut ?? []).filter(({ name }) => !this.asksItself(name));
    this.settles ||= leftOut.length > 0;
    const guards = [
      ...this.units.guards(),
      ...leftOut.map(({ name, text, isList }): Guard => ({
        when: isList ? `COUNTA(${text})>0` : `NOT(ISBLANK(${text}))`,
        code: '#VALUE!',
        says: `this copy leaves ${name} out`,
      })),
      ...this.texts.flatMap(({ guards: own }) => own),
      ...this.ownGuards,
    ];
    return {
      parts: this.parts,
      variants: [{ when: [], form: { guards, gates, results } }],
      looksUp: this.looksUp || this.texts.some(({ looksUp }) => looksUp),
      settles: this.settles || this.texts.some(({ settles }) => settles),
      notes: this.texts.flatMap(({ notes }) => notes),
    };
  }

  private asksItself(name: string): boolean {
    return this.texts[this.inputs.findIndex((input) => input.name === name)]?.asksWord === true;
  }

  private results(): Pick<NativeForm, 'results' | 'gates'> {
    const { definition } = this;
    switch (definition.type) {
      case 'formula':
        return this.formula(definition as Formula);
      case 'lookup':
        return { results: [this.lookup(definition as Lookup)], gates: [] };
      case 'procedure':
        return { results: this.procedure(definition as Procedure), gates: [] };
    }
  }

  /** What is asked of the results; of a formula it was written with its steps. */
  private judged(written: Pick<NativeForm, 'results' | 'gates'>): Pick<NativeForm, 'results' | 'gates'> {
    const { definition, asked } = this;
    if (asked === 'result' || definition.type === 'formula') return written;
    if (asked === 'margin' || hasRange(definition)) throw new CannotBeNative(NO_RANGE);
    return { ...written, results: [inRangeWhere(written.results, usualOnly(this.judge()))] };
  }

  private judge(): Judged {
    return {
      inputs: this.inputs,
      texts: this.texts,
      units: this.units,
      line: (says, equation, text) => this.part('', text, { role: 'step', says, equation, unit: '' }),
    };
  }

  private part(symbol: string, text: string, words: PartWords): string {
    const same = this.parts.find((part) => part.symbol === symbol && part.text === text);
    if (same) return partMark(same.name);
    // Names in a LET do not tell capitals apart and must not look like cells.
    const name = `v${this.parts.length + 1}_${symbol.replace(/\W/g, '')}`;
    this.parts.push({ name, symbol, text, words });
    return partMark(name);
  }

  /** What `programFor` asks: which inputs are given, and what words the choices are. */
  private valuesNow(): unknown[] {
    return this.inputs.map((input, i) => {
      const text = this.texts[i];
      if (!text?.given) return undefined;
      if (input.reading.as === 'choice') return text.fixed();
      return this.call.args[i]?.value ?? this.call.defaults[i] ?? 0;
    });
  }

  private formula(formula: Formula): Pick<NativeForm, 'results' | 'gates'> {
    const program = programFor(formula, this.valuesNow());
    const known = new Map<string, string>();
    const symbols = new Map(program.symbols.map(({ symbol, input }) => [symbol, input]));
    const cell = (symbol: string): string => {
      const step = known.get(symbol);
      if (step !== undefined) return step;
      const input = symbols.get(symbol) ?? -1;
      const text = this.texts[input];
      if (!text) throw new Error(`${formula.name} has no ${symbol}`);
      return this.inputs[input]?.reading.as === 'quantity' ? text.text : text.bound(symbol);
    };
    const asks = (gates: typeof program.start): NativeGate[] =>
      gates.map((gate) => ({
        when: toNative(gate.test, cell),
        says: gate.type === 'words' ? gate.says : refusalText(gate.argument, gate.says),
        refuses: gate.type === 'refuse',
      }));
    const gates = asks(program.start);
    for (const { symbol, step, written, expr, gates: late } of program.steps) {
      const words: PartWords = {
        role: 'step',
        says: step.says,
        equation: `${symbol} = ${toText(written)}`,
        unit: unitWord(step.gives),
      };
      known.set(symbol, this.part(symbol, toNative(expr, cell), words));
      gates.push(...asks(late));
    }
    const { gives, says } = formula.steps[formula.result] as { gives: Kind; says: string };
    const result = this.result(cell(formula.result), gives, says);
    if (this.asked === 'result') return { results: [result], gates };
    return this.judgedFormula(formula, program.valid, cell, { gates, results: [result] });
  }

  /** The words on a formula, or its margin. An answer in words goes before all that may be said of steps. */
  private judgedFormula(
    formula: Formula,
    valid: readonly { readonly test: Expr; readonly says: string }[],
    cell: (symbol: string) => string,
    { gates, results }: Pick<NativeForm, 'results' | 'gates'>,
  ): Pick<NativeForm, 'results' | 'gates'> {
    const judge = this.judge();
    const margin = nativeMargin(judge, formula.strength ?? [], cell);
    const inWords = gates.find(({ refuses }) => !refuses);
    const late = inWords ? gates.slice(gates.indexOf(inWords) + 1) : [];
    const asks = gates
      .filter((gate) => gate !== inWords)
      .map((gate) =>
        inWords && late.includes(gate) ? { ...gate, when: `IF(${inWords.when},FALSE,${gate.when})` } : gate,
      );
    const instead = (words: () => string, text: string): string =>
      inWords ? `IF(${inWords.when},${words()},${text})` : text;
    if (this.asked === 'margin') {
      if (!margin) throw new CannotBeNative('no metal that bears its stress is given');
      const text = instead(() => 'NA()', marginNumber(margin));
      return { gates: asks, results: [{ text, says: 'Margin against yield', unit: '""' }] };
    }
    const ranges = valid.map(({ test, says }) => ({ holds: toNative(test, cell), says }));
    const words = checkWords(judge, margin, ranges);
    const judged = inRangeWhere(results, words);
    return { gates: asks, results: [{ ...judged, text: instead(() => usualOnly(judge), judged.text) }] };
  }

  private result(si: string, gives: Kind | 'text', says: string): NativeResult {
    const text = gives === 'text' ? si : this.units.fromSI(si, gives);
    return { text, says, unit: this.units.symbolText(gives) };
  }

  private lookup(lookup: Lookup): NativeResult {
    const [row, property] = this.texts;
    const arg = this.call.args[0];
    if (!row || !arg) throw new CannotBeNative('the name is missing');
    const columns = Object.entries(lookup.columns);
    const word = property ? String(property.fixed()) : columns[0]?.[0];
    const [, column] = columns.find(([name]) => name === word) ?? [];
    if (!column) throw new CannotBeNative('no such column');
    const found = column.from(arg.value);
    if (found === undefined) throw new CannotBeNative(`the table has no ${column.says} for it`);
    const present = (text: string): NativeResult => this.result(text, column.gives, column.says);
    const { reading } = this.inputs[0] as AnyInput;
    const sizes = reading.as === 'named' && arg.varies ? sizesOf(lookup, reading.number?.means) : undefined;
    if (sizes) {
      this.looksUp = true;
      const at = this.tables.columns(
        { title: lookup.name, heads: ['size (m)', ...columns.map(([, { says }]) => says)] },
        sizes.map(([size, of]) => [size, ...columns.map(([, { from }]) => from(of) ?? NO_VALUE)]),
      );
      const size = row.size();
      const line = this.part('', `MATCH(${size}+${SAME_SIZE},${at(0)},1)`, {
        role: 'step',
        says: `Line of the table: ${lookup.name}`,
        equation: 'the size at or below it',
        unit: '',
      });
      this.ownGuards.push({
        when: `ABS(INDEX(${at(0)},${line})-${size})>${SAME_SIZE}`,
        code: '#N/A',
        says: `${this.inputs[0]?.name ?? ''}: a size of the table`,
      });
      const value = `INDEX(${at(1 + columns.findIndex(([, one]) => one === column))},${line})`;
      return present(column.gives === 'text' ? value : `(${value}*1)`);
    }
    if (typeof arg.content !== 'string' || arg.exact || !arg.varies) {
      row.fixed();
      return present(constantText(found));
    }
    this.looksUp = true;
    const find = this.tables.exact(
      { title: `${lookup.name} ${column.says}`, heads: [this.inputs[0]?.name ?? '', column.says] },
      [[arg.content.trim(), found]],
    );
    row.asksName(arg.text, false);
    return present(find.cell(row.rowOf(find.row, nameKey(arg.text), lookup.name), 1));
  }

  private procedure(procedure: Procedure): NativeResult[] {
    const parts = this.presented(procedure);
    const written = procedure.native?.(
      Object.fromEntries(this.inputs.map(({ name }, i) => [name, this.texts[i]])) as never,
      this.writer(),
    );
    if (written !== undefined) return parts(typeof written === 'string' ? [written] : written);
    return parts(this.discrete(procedure));
  }

  private presented(procedure: Procedure): (texts: readonly string[]) => NativeResult[] {
    return (texts) => {
      // To ask for the words of a call settles them.
      const { gives: told } = procedure;
      const gives = typeof told === 'object' && 'by' in told ? givesOf(procedure, this.valuesNow()) : told;
      const kinds = typeof gives === 'string' ? [{ gives, says: procedure.summary }] : gives.row;
      return texts.map((text, i) => {
        const { gives: kind, says } = kinds[i] ?? { gives: 'text', says: procedure.summary };
        return this.result(kind === 'text' ? text : `(${text})`, kind, says);
      });
    };
  }

  /** What a step of a native form says: as the shown work does where it has the step, else as the form writes it. */
  private stepWords(symbol: string, text: string): PartWords {
    const shown = (this.definition as Procedure).steps?.[symbol];
    const isFirst = !this.parts.some((part) => part.symbol === symbol);
    return {
      role: 'step',
      says: shown?.says ?? 'Working',
      equation: shown && isFirst ? shown.equation : `${symbol} = ${this.inSymbols(text)}`,
      unit: shown && shown.gives !== 'text' ? unitWord(shown.gives) : '',
    };
  }

  private inSymbols(text: string): string {
    const symbols = putParts(text, (name) => this.parts.find((part) => part.name === name)?.symbol ?? '');
    return putColumns(symbols, (id, at) => this.tables.tables.get(id)?.heads[at] ?? '');
  }

  private writer(): NativeWriter {
    return {
      step: (symbol, text) => this.part(symbol, `(${text})`, this.stepWords(symbol, text)),
      refuse: (when, says) => this.ownGuards.push({ when, code: '#VALUE!', says }),
      stepped: (title, heads, rows, at) => {
        this.looksUp = true;
        return this.tables.stepped({ title, heads }, rows)(at, 1);
      },
      columns: (title, heads, rows) => {
        this.looksUp = true;
        return this.tables.columns({ title, heads }, rows);
      },
      system: () => {
        const guard = this.units.fixedGuard();
        if (guard) {
          this.ownGuards.push(guard);
          this.settles = true;
        }
        return this.units.system;
      },
      bySystem: (inch, metric) => this.units.choose(inch, metric),
    };
  }

  /** A procedure of names and words, or of constants, is settled when the copy is made. */
  private discrete(procedure: Procedure): string[] {
    const values = this.inputs.map((input, i) => {
      const arg = this.call.args[i];
      const text = this.texts[i];
      const isNumber = input.reading.as === 'quantity' || input.reading.as === 'list';
      const isName = typeof arg?.content === 'string' && !isNumber;
      if (arg?.varies && !isName)
        throw new CannotBeNative('it is worked out in steps that no worksheet formula has');
      return text?.given ? text.fixed() : undefined;
    });
    this.looksUp = true;
    const texts = (system: System): readonly string[] => {
      const found = answer(procedure, values, system);
      return (typeof found === 'object' ? found : [found]).map((value) => constantText(value));
    };
    const [inch, metric] = [texts('in'), texts('mm')];
    return inch.map((text, i) => (text === metric[i] ? text : this.units.choose(text, metric[i] ?? text)));
  }
}

/** Sizes converted from one unit to another may lie a rounding error apart. */
const SAME_SIZE = 1e-7;
/** Text, so that no number can be made of it. */
const NO_VALUE = 'none';

/** The rows of a table whose things are found by a size in millimetres, by that size (m), the smallest first. */
function sizesOf(
  lookup: Lookup,
  means: ((si: number) => unknown) | undefined,
): readonly (readonly [size: number, of: unknown])[] | undefined {
  if (!means) return undefined;
  const rows = lookup.rows().map(([name, of]) => [Number(name) / 1000, of] as const);
  return rows.every(([size, of]) => size > 0 && means(size) === of)
    ? rows.sort(([a], [b]) => a - b)
    : undefined;
}

const refusalText = (argument: string, says: string): string =>
  `${argument} ${says.replace(/\{(\w+)\}/g, '$1')}`;
