import {
  inputsOf,
  type AnyInput,
  type Definition,
  type Formula,
  type Lookup,
  type NativeWriter,
  type Procedure,
} from '../../core/define';
import { answer, givesOf } from '../../core/evaluate';
import { nativeNumber, toNative } from '../../core/expr/native';
import { programFor } from '../../core/program';
import type { Kind } from '../../core/quantity';
import { Refusal } from '../../core/refusal';
import {
  ArgumentTexts,
  CannotBeNative,
  constantText,
  nameKey,
  UnitTexts,
  valueError,
  type Guard,
  type NativeArgument,
  type NativeUnits,
} from './arguments';
import type { NativePart } from './forms';
import { partMark } from './marks';
import { enumerated } from './enumerated';
import type { DataTables } from './tables';
import { chosenAmong, variantsOf } from './variants';

export type { Content, NativeArgument, NativeUnits } from './arguments';
export { arrayColumns, inlineLength, inlineText, letText, type NativePart } from './forms';
export { entryText } from './arguments';
export { putColumns, putParts, tablesIn } from './marks';
export { DataTables } from './tables';

/** A call in a worksheet's own functions. */
export interface NativeCall {
  readonly parts: readonly NativePart[];
  /** One text, or one for each cell of a row; with marks of parts and of tables. */
  readonly results: readonly string[];
  readonly looksUp: boolean;
  /** Sentences on what was settled when the call was written. */
  readonly notes: readonly string[];
}

/** Why a call has no native form. */
export interface Frozen {
  readonly frozen: string;
}

export interface CallArguments {
  /** In the order of the definition's inputs; undefined where left out. */
  readonly args: readonly (NativeArgument | undefined)[];
  readonly units: NativeUnits;
  /** Cells that are blank now, so that their arguments are left out; the native form refuses whatever is put there. */
  readonly leftOut?: readonly { readonly name: string; readonly text: string; readonly isList: boolean }[];
  /** Values of names that were left out, by input. */
  readonly defaults: readonly unknown[];
}

/** The worksheet-native form of a call, or why there is none. */
export function nativeCall(
  definition: Definition,
  call: CallArguments,
  tables: DataTables,
): NativeCall | Frozen {
  try {
    const listed = enumerated(definition, call, tables);
    if (listed) return listed;
    const parts: NativePart[] = [];
    const variants = variantsOf(definition, call);
    const write = (variant: CallArguments): NativeCall =>
      new CallWriter(definition, variant, tables, parts).write();
    const [only, ...more] = variants;
    if (only && more.length === 0) return write(only.call);
    const written = variants.map(({ when, call: own }) => ({ when, native: refusedOr(() => write(own)) }));
    return chosenAmong(written, parts);
  } catch (error) {
    if (error instanceof CannotBeNative) return { frozen: error.message };
    throw error;
  }
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

  constructor(
    private readonly definition: Definition,
    private readonly call: CallArguments,
    private readonly tables: DataTables,
    /** Those of the other variants of the call are used again. */
    private readonly parts: NativePart[],
  ) {
    this.inputs = inputsOf(definition);
    this.units = new UnitTexts(call.units);
    const part = (symbol: string, text: string): string => this.part(symbol, text);
    const make = (input: AnyInput, i: number): ArgumentTexts => {
      const present = this.texts[i];
      if (present) return present;
      const arg = call.args[i];
      const at = this.inputs.findIndex(({ name }) => name === input.sameAs);
      const follows = at >= 0 ? make(this.inputs[at] as AnyInput, at) : undefined;
      const made = new ArgumentTexts(input, arg, this.units, tables, part, follows);
      made.defaultValue = call.defaults[i];
      return (this.texts[i] = made);
    };
    this.inputs.forEach(make);
  }

  write(): NativeCall {
    const results = this.results();
    for (const text of this.texts) text.check();
    const guards = [
      ...this.units.guards(),
      ...(this.call.leftOut ?? []).map(({ name, text, isList }): Guard => ({
        when: isList ? `COUNTA(${text})>0` : `NOT(ISBLANK(${text}))`,
        code: '#VALUE!',
        says: `this copy leaves ${name} out`,
      })),
      ...this.texts.flatMap(({ guards: own }) => own),
      ...this.ownGuards,
    ];
    return {
      parts: this.parts,
      results: results.map((text) => guarded(guards, text)),
      looksUp: this.looksUp || this.texts.some(({ looksUp }) => looksUp),
      notes: this.texts.flatMap(({ notes }) => notes),
    };
  }

  private results(): string[] {
    const { definition } = this;
    switch (definition.type) {
      case 'formula':
        return [this.formula(definition as Formula)];
      case 'lookup':
        return [this.lookup(definition as Lookup)];
      case 'procedure':
        return this.procedure(definition as Procedure);
    }
  }

  private part(symbol: string, text: string): string {
    if (/^(?:\(-)?[\w.]+\)?$/.test(text) || /^PI\(\)$/.test(text)) return text;
    const same = this.parts.find((part) => part.symbol === symbol && part.text === text);
    if (same) return partMark(same.name);
    // Names in a LET do not tell capitals apart and must not look like cells.
    const name = `v${this.parts.length + 1}_${symbol.replace(/\W/g, '')}`;
    this.parts.push({ name, symbol, text });
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

  private formula(formula: Formula): string {
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
    const asks = (gates: typeof program.start): [string, string][] =>
      gates.map((gate) => [
        toNative(gate.test, cell),
        gate.type === 'words' ? constantText(gate.says) : valueError(refusalText(gate.argument, gate.says)),
      ]);
    const start = asks(program.start);
    const late: [string, string][] = [];
    for (const { symbol, expr, gates } of program.steps) {
      known.set(symbol, this.part(symbol, toNative(expr, cell)));
      late.push(...asks(gates));
    }
    const gives = (formula.steps[formula.result] as { gives: Kind }).gives;
    const result = this.units.fromSI(cell(formula.result), gives);
    return [...start, ...late].reduceRight((text, [when, then]) => `IF(${when},${then},${text})`, result);
  }

  private lookup(lookup: Lookup): string {
    const [row, property] = this.texts;
    const arg = this.call.args[0];
    if (!row || !arg) throw new CannotBeNative('the name is missing');
    const columns = Object.entries(lookup.columns);
    const word = property ? String(property.fixed()) : columns[0]?.[0];
    const [, column] = columns.find(([name]) => name === word) ?? [];
    if (!column) throw new CannotBeNative('no such column');
    const found = column.from(arg.value);
    if (found === undefined) throw new CannotBeNative(`the table has no ${column.says} for it`);
    const present = (text: string): string =>
      column.gives === 'text' ? text : this.units.fromSI(text, column.gives);
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
    return present(find(nameKey(arg.text), 1));
  }

  private procedure(procedure: Procedure): string[] {
    const parts = this.presented(procedure);
    const written = procedure.native?.(
      Object.fromEntries(this.inputs.map(({ name }, i) => [name, this.texts[i]])) as never,
      this.writer(),
    );
    if (written !== undefined) return parts(typeof written === 'string' ? [written] : written);
    return parts(this.discrete(procedure));
  }

  private presented(procedure: Procedure): (texts: readonly string[]) => string[] {
    return (texts) => {
      const gives = givesOf(procedure, this.valuesNow());
      const kinds = typeof gives === 'string' ? [gives] : gives.row.map((part) => part.gives);
      return texts.map((text, i) => {
        const kind = kinds[i] ?? 'text';
        return kind === 'text' ? text : this.units.fromSI(`(${text})`, kind);
      });
    };
  }

  private writer(): NativeWriter {
    return {
      step: (symbol, text) => this.part(symbol, `(${text})`),
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
        if (guard) this.ownGuards.push(guard);
        return this.units.system;
      },
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
    const found = answer(procedure, values, this.writer().system());
    const list = typeof found === 'object' ? found : [found];
    return list.map((value) => (typeof value === 'number' ? nativeNumber(value) : constantText(value)));
  }
}

const refusalText = (argument: string, says: string): string =>
  `${argument} ${says.replace(/\{(\w+)\}/g, '$1')}`;

/** Asks the guards in groups of one error kind, in their order. */
function guarded(guards: readonly Guard[], result: string): string {
  const groups: { code: Guard['code']; guards: Guard[] }[] = [];
  for (const guard of guards) {
    const last = groups.at(-1);
    if (last?.code === guard.code) last.guards.push(guard);
    else groups.push({ code: guard.code, guards: [guard] });
  }
  return groups.reduceRight((text, { code, guards: own }) => {
    const [one, ...more] = [...new Set(own.map(({ when }) => when))];
    const when = more.length > 0 ? anyOf([one ?? 'FALSE', ...more]) : one;
    const says = [...new Set(own.map((guard) => guard.says))];
    const error =
      code === '#N/A'
        ? 'NA()'
        : valueError(says.length > 3 ? 'an argument is out of its limits' : says.join('; '));
    return `IF(${when ?? 'FALSE'},${error},${text})`;
  }, result);
}

/** Old programs take at most 30 arguments. */
function anyOf(conditions: readonly string[]): string {
  if (conditions.length < 30) return `OR(${conditions.join(',')})`;
  const groups = Array.from({ length: Math.ceil(conditions.length / 29) }, (_, i) =>
    anyOf(conditions.slice(29 * i, 29 * (i + 1))),
  );
  return anyOf(groups);
}
