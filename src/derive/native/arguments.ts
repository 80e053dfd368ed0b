import { amountSI, boundsOf } from '../../core/amount';
import type { AnyInput, Binding, NamedColumn, NativeInput, Reading } from '../../core/define';
import { nativeNumber } from '../../core/expr/native';
import { KINDS, SYSTEMS, systemUnit, toSI, type Kind, type System } from '../../core/quantity';
import { percentFrom, readQuantity } from '../../core/readQuantity';
import { Refusal } from '../../core/refusal';
import type { Unit } from '../../core/units';
import type { Guard } from './guard';
import { isPart } from './marks';
import { NO_CHOICE, type PartMaker, type PartWords } from './parts';
import { isPlainlyWritten, textQuantity } from './textQuantity';
import { keyOf, type DataTables, type TableCell } from './tables';

/** What stands in a cell, errors and blanks apart. */
export type Content = number | string | boolean | null;

/** An argument of a call as the worksheet has it. */
export interface NativeArgument {
  /** The worksheet's own text for it: `B3`, `5`, `"P20"`, `(B3*2)`, `B3:B9`. */
  readonly text: string;
  /** Whether another content may come into it: anything but a constant. */
  readonly varies: boolean;
  /** What it is now; of a list, every cell. */
  readonly content: Content | readonly Content[];
  /** What a name or a word is read as; whatever it is now for a quantity. */
  readonly value: unknown;
  /** Rows of a set, whose cells stand in `content` row by row. */
  readonly rows?: number;
  /** Of a list in cells of its own, the text of each, row by row. */
  readonly texts?: readonly string[];
  /** Names are told apart by their capitals. */
  readonly exact?: boolean;
  /** A number in text, which is what the units of the call make of it. */
  readonly byUnits?: boolean;
}

/** The argument `units`. */
export interface NativeUnits {
  readonly text: string;
  readonly varies: boolean;
  readonly system: System;
}

export class CannotBeNative extends Error {}

export const textOf = (value: string): string => `"${value.replaceAll('"', '""')}"`;

export const constantText = (value: Content): string => {
  if (typeof value === 'string') return textOf(value);
  if (typeof value === 'number') return nativeNumber(value);
  return value === null ? '0' : String(value).toUpperCase();
};

/** An expression in brackets, or one that has a row of its own, is never blank. */
export const isCell = (text: string): boolean => !text.startsWith('(') && !isPart(text);

/** Cells of a list that are asked one by one. */
const MOST_ASKED = 100;

/** Spreadsheets take no longer text inside a formula. */
const LONGEST_TEXT = 255;

export const valueError = (says: string): string => `VALUE(${textOf(says.slice(0, LONGEST_TEXT))})`;

/** Native texts of units: one factor, or a choice where a cell decides the system. */
export class UnitTexts {
  constructor(
    private readonly units: NativeUnits,
    private readonly part: PartMaker = (_, text) => text,
  ) {}

  get system(): System {
    return this.units.system;
  }

  toSI(text: string, kind: Kind): string {
    const { factor, offset } = this.both(kind);
    const scaled = factor === '1' ? `${text}*1` : `${text}*${factor}`;
    return offset === '0' ? `(${scaled})` : `(${scaled}+${offset})`;
  }

  fromSI(text: string, kind: Kind): string {
    const { factor, offset } = this.both(kind);
    const shifted = offset === '0' ? text : `(${text}-${offset})`;
    return factor === '1' ? shifted : `(${shifted}/${factor})`;
  }

  /** Whether a cell decides in which unit a plain number of this kind is. */
  decide(kind: Kind): boolean {
    return this.units.varies && systemUnit(kind, 'in') !== systemUnit(kind, 'mm');
  }

  /** The unit of a plain number, or both that a cell chooses from. */
  says(kind: Kind): string {
    const [inch, metric] = [systemUnit(kind, 'in').symbol, systemUnit(kind, 'mm').symbol];
    return this.decide(kind) ? `${inch} or ${metric}` : systemUnit(kind, this.system).symbol;
  }

  /** The same as worksheet text; of words nothing. */
  symbolText(kind: Kind | 'text'): string {
    if (kind === 'text') return textOf('');
    const symbol = (system: System): string => textOf(systemUnit(kind, system).symbol);
    return this.decide(kind)
      ? `IF(${this.units.text}="mm",${symbol('mm')},${symbol('in')})`
      : symbol(this.system);
  }

  /** One of two texts. */
  choose(inch: string, metric: string): string {
    if (!this.units.varies) return this.system === 'mm' ? metric : inch;
    return `IF(${this.units.text}="mm",${metric},${inch})`;
  }

  guards(): Guard[] {
    if (!this.units.varies) return [];
    const { text } = this.units;
    const says = 'units: in or mm';
    return [{ when: `AND(${text}<>"in",${text}<>"mm")`, code: '#VALUE!', says }];
  }

  fixedGuard(): Guard | undefined {
    const { varies, text, system } = this.units;
    if (!varies) return undefined;
    return { when: `${text}<>"${system}"`, code: '#VALUE!', says: `this copy is for units ${system}` };
  }

  private both(kind: Kind): { factor: string; offset: string } {
    const of = (part: 'factor' | 'offset'): string => {
      const value = (system: System): string => nativeNumber(systemUnit(kind, system)[part]);
      if (value('in') === value('mm') || !this.units.varies) return value(this.units.system);
      return this.part('', `IF(${this.units.text}="mm",${value('mm')},${value('in')})`, {
        role: 'unit',
        says: part === 'factor' ? `one ${this.says(kind)}` : `zero of ${this.says(kind)}`,
        equation: `chosen by ${this.units.text}`,
        unit: unitWord(kind),
      });
    };
    return { factor: of('factor'), offset: of('offset') };
  }
}

/** Reads one argument into native texts. What a text depends on is kept as guards and as notes for a person. */
export class ArgumentTexts implements NativeInput {
  readonly guards: Guard[] = [];
  /** Sentences on what was read when the copy was made. */
  readonly notes: string[] = [];
  looksUp = false;

  constructor(
    private readonly input: AnyInput,
    private readonly argument: NativeArgument | undefined,
    private readonly units: UnitTexts,
    private readonly tables: DataTables,
    /** Gives a text the name of a symbol, so that it is worked out once. */
    private readonly part: PartMaker,
    private readonly follows: ArgumentTexts | undefined,
    private readonly place: number,
    /** The cell of an argument that is left out because it is blank. */
    private readonly blank: string | undefined,
  ) {}

  /** A part that stands for what was given. */
  private own(symbol: string, text: string, kind: Kind, says = this.input.says): string {
    return this.part(symbol, text, { ...this.words(says), equation: this.told(kind), unit: unitWord(kind) });
  }

  private words(says: string): PartWords {
    return { role: 'input', says, equation: '', unit: '', input: this.place };
  }

  /** Where a number comes from, with the unit that it has there. */
  private told(kind: Kind): string {
    const { argument } = this;
    if (!argument) return 'left out';
    const unit = this.units.says(kind);
    const number = isPart(argument.text) ? 'the line above' : argument.text.replace(/^\((.*)\)$/, '$1');
    const isPlain = argument.varies || typeof argument.content === 'number';
    return isPlain && unit !== '' ? `${number} [${unit}]` : number;
  }

  get given(): boolean {
    return this.argument !== undefined || this.input.default !== undefined || this.follows !== undefined;
  }

  get text(): string {
    return (this.known ??= this.read());
  }
  private known: string | undefined;

  get count(): string {
    const text = this.text;
    if (this.counted === undefined) throw new Error(`${this.input.name} is no list: ${text}`);
    return this.counted;
  }
  private counted: string | undefined;

  /** The guards of an argument whose text nothing asked for count too. */
  check(): string {
    const { as } = this.input.reading;
    return this.given && (as === 'quantity' || as === 'list') ? this.text : '';
  }

  fixed = (): never => {
    const { argument, input } = this;
    if (!argument) return this.follows ? this.follows.fixed() : (this.defaultValue as never);
    if (argument.byUnits) this.holdUnits();
    if (argument.varies && !this.isFixed && input.reading.as === 'set') {
      this.isFixed = true;
      this.fixSet(argument);
    }
    if (argument.varies && !this.isFixed) {
      this.isFixed = true;
      const now = argument.content as Content;
      const same = typeof now === 'string' && argument.exact === true;
      const when = same
        ? `NOT(EXACT(${argument.text},${constantText(now)}))`
        : `${argument.text}<>${constantText(now)}`;
      const code = input.reading.as === 'named' ? '#N/A' : '#VALUE!';
      this.guards.push({ when, code, says: `this copy is for ${input.name} ${String(now)}` });
      this.notes.push(`${input.name} stays ${String(now)}; another one is refused`);
    }
    return argument.value as never;
  };
  private isFixed = false;

  /** Whether another content of its cell is refused. */
  get settles(): boolean {
    return this.isFixed || this.holdsUnits || (this.follows?.settles ?? false);
  }

  /** A set holds as it is now, entry by entry. */
  private fixSet({ text, content, rows = 1 }: NativeArgument): void {
    const cells = content as readonly Content[];
    const columns = cells.length / rows;
    // Cell by cell: compared as an array some programs take "1/4" for a date.
    const differs = cells.map((cell, i) => {
      const at = `INDEX(${text},${Math.floor(i / columns) + 1},${(i % columns) + 1})`;
      return `(${at}<>${cell === null ? '""' : constantText(cell)})`;
    });
    const says = `this copy is for ${this.input.name} as it was`;
    this.guards.push({ when: `${differs.join('+')}>0`, code: '#N/A', says });
    this.notes.push(`${this.input.name} stays as it was; another one is refused`);
    // Numbers in it are in the units that the call has now.
    if (cells.some((cell) => typeof cell === 'number')) this.holdUnits();
  }

  private holdsUnits = false;

  private holdUnits(): void {
    const guard = this.units.fixedGuard();
    if (!guard) return;
    this.holdsUnits = true;
    this.guards.push(guard);
  }

  /** The value of a name that was left out, as the boundary reads it. */
  defaultValue: unknown;

  bound = (symbol: string): string => {
    if (!this.argument && this.follows) return this.follows.bound(symbol);
    const known = this.boundTexts.get(symbol);
    if (known !== undefined) return known;
    const { binds } = this.input.reading as Extract<Reading, { as: 'named' }>;
    const bound = binds?.[symbol];
    const text = this.part(symbol, this.readBound(symbol), {
      ...this.words(bound?.says ?? this.input.says),
      equation: this.argument
        ? isPart(this.argument.text)
          ? 'of the line above'
          : `of ${this.argument.text}`
        : 'left out',
      unit: bound ? unitWord(bound.gives) : '',
    });
    this.boundTexts.set(symbol, text);
    return text;
  };
  private readonly boundTexts = new Map<string, string>();

  private read(): string {
    const { input, argument, follows } = this;
    const { reading } = input;
    if (!argument && follows) return follows.text;
    switch (reading.as) {
      case 'quantity': {
        if (!argument)
          return this.own(
            input.symbol,
            nativeNumber(amountSI(input.default ?? 0, reading.kind)),
            reading.kind,
          );
        return this.quantity(reading.kind, reading, input.symbol);
      }
      case 'list':
        return this.list(reading);
      case 'named': {
        const [only, ...more] = Object.keys(reading.binds ?? {});
        if (only === undefined || more.length > 0) throw new CannotBeNative(`${input.name} is no number`);
        return this.bound(only);
      }
      default:
        throw new CannotBeNative(`${input.name} is no number`);
    }
  }

  /** A quantity's SI text with the guards of its limits. */
  private quantity(
    kind: Kind,
    limits: Extract<Reading, { as: 'quantity' }> | object,
    symbol: string,
  ): string {
    const { argument, input } = this;
    if (!argument) throw new CannotBeNative(`${input.name} is missing`);
    const { text, varies, content } = argument;
    if (!varies) {
      const own = this.own(symbol, this.constant(content as Content, kind), kind);
      this.constantGuards(own, content as Content, limits, kind);
      return own;
    }
    const isText = typeof content === 'string';
    const live = kind === 'percent' ? this.percent(text) : this.units.toSI(text, kind);
    const leftOut = this.whenBlank(kind);
    let si = live;
    this.refuseTruth(text);
    if (isText) {
      const amount = kind === 'percent' ? undefined : this.amountInText(text, kind);
      const isLive = amount !== undefined && isPlainlyWritten(content);
      const error = valueError(`${input.name}: a number, or text with a unit`);
      const otherwise = amount === undefined ? error : `IFERROR(${amount},${error})`;
      const now = (): string => `IF(${text}=${textOf(content)},${this.constant(content, kind)},${otherwise})`;
      si = `IF(ISNUMBER(${text}),${live},${isLive ? otherwise : now()})`;
      if (!isLive)
        this.notes.push(`${input.name} "${content}" was read when the copy was made; numbers may replace it`);
    } else {
      const isNumber = `ISNUMBER(${text})`;
      const when = leftOut === undefined ? `NOT(${isNumber})` : `NOT(OR(${isNumber},ISBLANK(${text})))`;
      this.guards.push({ when, code: '#VALUE!', says: `${input.name}: a number` });
    }
    if (leftOut !== undefined) si = `IF(ISBLANK(${text}),${leftOut},${si})`;
    const mark = this.own(symbol, si, kind);
    // Zero is zero in every unit, and the cell itself reads better.
    const raw = systemUnit(kind, 'in').offset === 0 && !isText && leftOut === undefined ? text : undefined;
    this.limitGuards(mark, raw, limits, kind);
    return mark;
  }

  /** The SI value of a text with a unit, which another may replace: an error where it is none. */
  private amountInText(text: string, kind: Kind): string | undefined {
    const told = isPart(text) ? 'the line above' : text;
    return textQuantity(text, kind, this.tables, (piece, says) =>
      this.part('', piece, { ...this.words('Where an amount is typed'), equation: `${says} ${told}` }),
    );
  }

  /** Some programs take TRUE for the number 1. */
  private refuseTruth(text: string): void {
    // Of an expression LibreOffice tells by the look of what came before it, not by its value.
    if (!text.startsWith('('))
      this.guards.push({ when: `ISLOGICAL(${text})`, code: '#VALUE!', says: `${this.input.name}: a number` });
  }

  /** A blank cell counts as left out: what stands in for it. A text of its own is never blank. */
  private whenBlank(kind: Kind): string | undefined {
    const { argument, input, follows } = this;
    if (input.reading.as !== 'quantity' || (argument && !isCell(argument.text))) return undefined;
    if (follows) return follows.text;
    return input.default === undefined ? undefined : nativeNumber(amountSI(input.default, kind));
  }

  /** A percentage as percent or as the fraction that a cell formatted in percent holds. */
  private percent(text: string): string {
    const inEither = `OR(AND(${text}>=0.3,${text}<=1),AND(${text}>=30,${text}<=100))`;
    const says = `${this.input.name}: 30 to 100, or 0.3 to 1`;
    // A text is larger than any number; whether it may stand there is asked elsewhere.
    this.guards.push({ when: `AND(ISNUMBER(${text}),NOT(${inEither}))`, code: '#VALUE!', says });
    return `(${text}/IF(${text}>1,100,1))`;
  }

  private constantSI(content: Content, kind: Kind): number {
    const unit = systemUnit(kind, this.units.system);
    const plain = this.plainNumber(content, kind);
    if (plain !== undefined && kind === 'percent' && this.input.reading.as === 'quantity') {
      const share = percentFrom(plain);
      if (share === undefined) throw new CannotBeNative(`${this.input.name} is ${plain}`);
      return share;
    }
    if (typeof content === 'number') return toSI(content, unit);
    if (content === null) return toSI(0, unit);
    if (typeof content === 'boolean') throw new CannotBeNative(`${this.input.name} is no number`);
    const reading = readQuantity(content, kind);
    if (!reading.ok) throw new CannotBeNative(`${this.input.name} is "${content}"`);
    return reading.unit ? reading.si : toSI(reading.plain, unit);
  }

  /** A constant's SI text; a plain number is what the units make of it, and a cell may decide these. */
  private constant(content: Content, kind: Kind): string {
    const plain = this.plainNumber(content, kind);
    return plain === undefined || !this.units.decide(kind)
      ? nativeNumber(this.constantSI(content, kind))
      : this.units.toSI(nativeNumber(plain), kind);
  }

  /** The number of a content that names no unit. */
  private plainNumber(content: Content, kind: Kind): number | undefined {
    if (typeof content === 'number') return content;
    if (content === null) return 0;
    const reading = typeof content === 'string' ? readQuantity(content, kind) : undefined;
    return reading?.ok && !reading.unit ? reading.plain : undefined;
  }

  /** A constant is asked for its limits only where it is, or in the other units would be, beyond them. */
  private constantGuards(si: string, content: Content, limits: object, kind: Kind): void {
    const { low, lowIncluded, high, highIncluded } = boundsOf(limits, kind);
    const plain = this.plainNumber(content, kind);
    const values = (this.units.decide(kind) ? SYSTEMS : [this.units.system]).map((system) =>
      plain === undefined || kind === 'percent'
        ? this.constantSI(content, kind)
        : toSI(plain, systemUnit(kind, system)),
    );
    const holds = (value: number): boolean =>
      (lowIncluded ? value >= low : value > low) &&
      (highIncluded ? value <= high : value < high) &&
      (kind !== 'count' || Number.isInteger(value));
    if (!values.every(holds)) this.limitGuards(si, undefined, limits, kind);
  }

  private limitGuards(si: string, raw: string | undefined, limits: object, kind: Kind): void {
    const { low, lowIncluded, high, highIncluded } = boundsOf(limits, kind);
    const guard = (bound: number, sign: string): void => {
      if (!Number.isFinite(bound)) return;
      const text = bound === 0 && raw !== undefined ? `${raw}${sign}0` : `${si}${sign}${nativeNumber(bound)}`;
      this.guards.push({ when: text, code: '#VALUE!', says: `${this.input.name} out of its limits` });
    };
    guard(low, lowIncluded ? '<' : '<=');
    guard(high, highIncluded ? '>' : '>=');
    if (kind === 'count') {
      const text = raw ?? si;
      this.guards.push({
        when: `INT(${text})<>${text}`,
        code: '#VALUE!',
        says: `${this.input.name}: a whole number`,
      });
    }
  }

  private list({ kind, ...limits }: Extract<Reading, { as: 'list' }>): string {
    const { argument, input } = this;
    if (!argument) throw new CannotBeNative(`${input.name} is missing`);
    const { text, content, varies } = argument;
    const cells = content as readonly Content[];
    if (!varies || cells.some((cell) => typeof cell === 'string')) {
      if (varies) throw new CannotBeNative(`${input.name} holds text with units`);
      const entries = cells.filter((cell) => cell !== null && cell !== '');
      this.counted = String(entries.length);
      const arrayOf = (numbers: readonly number[]): string =>
        `{${numbers.map((one) => nativeNumber(one).replace(/[()]/g, '')).join(';')}}`;
      const plain = entries.flatMap((cell) => this.plainNumber(cell, kind) ?? []);
      if (this.units.decide(kind) && plain.length === entries.length)
        return this.units.toSI(arrayOf(plain), kind);
      if (this.units.decide(kind) && plain.length > 0)
        throw new CannotBeNative(`${input.name} holds text with units`);
      return arrayOf(entries.map((cell) => this.constantSI(cell, kind)));
    }
    this.counted = this.part(input.symbol, `COUNT(${text})`, {
      ...this.words(`${input.says}: so many`),
      equation: this.told(kind),
    });
    const says = `${input.name}: numbers in their limits`;
    this.guards.push({ when: `COUNT(${text})=0`, code: '#VALUE!', says });
    this.guards.push({ when: `COUNTA(${text})<>COUNT(${text})`, code: '#VALUE!', says });
    // Some programs count TRUE as a number.
    const cellTexts = argument.texts ?? [];
    for (const cell of cellTexts.slice(0, MOST_ASKED))
      this.guards.push({ when: `ISLOGICAL(${cell})`, code: '#VALUE!', says });
    const { rows = 1 } = argument;
    const [first, second] = cellTexts;
    // In a block, of rows and columns, a blank anywhere would shift what follows it.
    if (rows > 1 && rows < cells.length)
      this.guards.push({ when: `COUNT(${text})<>${cells.length}`, code: '#VALUE!', says });
    else if (first !== undefined && second !== undefined) {
      // A blank before an entry would shift it beside another list.
      const upTo = (from: string, to: string | undefined): string =>
        `${from}:${to?.replace(/^.*!/, '') ?? ''}`;
      const [before, after] = [upTo(first, cellTexts.at(-2)), upTo(second, cellTexts.at(-1))];
      this.guards.push({ when: `SUMPRODUCT((${before}="")*(${after}<>""))>0`, code: '#VALUE!', says });
    }
    const unit = systemUnit(kind, this.units.system);
    const { low, lowIncluded, high, highIncluded } = boundsOf(limits, kind);
    const count = (bound: number, sign: string): void => {
      if (!Number.isFinite(bound)) return;
      // Of a bound that is another number in other units.
      const isSame = bound === 0 || (unit.factor === 1 && !this.units.decide(kind));
      if (!isSame || unit.offset !== 0) throw new CannotBeNative(`${input.name} has limits of its own`);
      this.guards.push({ when: `COUNTIF(${text},"${sign}${bound}")>0`, code: '#VALUE!', says });
    };
    count(low, lowIncluded ? '<' : '<=');
    count(high, highIncluded ? '>' : '>=');
    return this.units.toSI(text, kind);
  }

  private readBound(symbol: string): string {
    const { input } = this;
    const reading = input.reading as NamedReading;
    const binding = reading.binds?.[symbol];
    if (!binding) throw new CannotBeNative(`${input.name} gives no ${symbol}`);
    return this.readNamed(binding, () => this.lookedUp(symbol, reading));
  }

  /** What is taken of a name, or of a number where one may stand; `lookUp` gives the text that looks a name up. */
  private readNamed({ from }: Taken, lookUp: () => string): string {
    const { argument, input } = this;
    const reading = input.reading as NamedReading;
    if (!argument) return constantText(from(this.defaultValue as never));
    const content = argument.content as Content;
    const number = reading.number;
    if (number && (typeof content === 'number' || (typeof content === 'string' && this.isAmount(content)))) {
      const found = argument.varies && reading.names && lookUp();
      const either = found ? this.eitherWay(from, number, found) : undefined;
      if (either !== undefined && (typeof content === 'number' || isPlainlyWritten(content))) return either;
      if (either !== undefined)
        return `IF(${argument.text}=${constantText(content)},${constantText(from(argument.value as never))},${either})`;
      if (typeof content === 'number') return this.boundNumber(from, number);
      if (argument.varies) this.fixed();
      return constantText(from(argument.value as never));
    }
    if (argument.byUnits && number) this.fixUnits(number.kind);
    const found = lookUp();
    if (!number || !argument.varies || argument.exact) return found;
    return this.eitherWay(from, number, found) ?? found;
  }

  /** A number where a name could stand: itself, or what it settles. */
  private boundNumber(from: Taken['from'], number: NonNullable<NamedReading['number']>): string {
    const { argument, input } = this;
    const { kind, means, ...limits } = number;
    if (!argument || (!argument.varies && !this.units.decide(kind)))
      return constantText(from(argument?.value as never));
    const at = (probe: number): number | string => from(means(probe) as never);
    // Numbers that any limits of the catalogue allow, so that what they settle shows.
    const now = toSI(argument.content as number, systemUnit(kind, this.units.system));
    const probes = [now, now * 0.9375];
    try {
      if (probes.every((probe) => at(probe) === probe))
        return this.quantity(kind, limits, `${input.name}_given`);
      if (probes.every((probe) => at(probe) === at(now))) return constantText(at(now));
    } catch {
      // Only certain numbers mean something, such as the sizes of a series.
    }
    this.fixed();
    this.fixUnits(kind);
    return constantText(from(argument.value as never));
  }

  /** A name or a number in the same cell; undefined where a number settles more than a copy can say. */
  private eitherWay(
    from: Taken['from'],
    { kind, means, ...limits }: NonNullable<NamedReading['number']>,
    found: string,
  ): string | undefined {
    const { argument, input } = this;
    if (!argument) return undefined;
    const { low, lowIncluded, high, highIncluded } = boundsOf(limits, kind);
    // Numbers that the limits allow, so that what they settle shows.
    const middle = Math.sqrt(Math.max(low, 1e-9) * Math.min(high, 1e9));
    const probes = [middle, middle * 0.9375, middle * 1.0625];
    let settles: (si: string) => string;
    const { text } = argument;
    this.refuseTruth(text);
    try {
      const [first = NaN, ...more] = probes.map((probe) => from(means(probe) as never));
      const rest = more.map((one, i) => [one, probes[i + 1] as number] as const);
      if (first === middle && rest.every(([one, probe]) => one === probe)) settles = (si) => si;
      else if (rest.every(([one]) => one === first)) settles = () => constantText(first);
      else if (rest.every(([one, probe]) => isShare(one, first, probe / middle)))
        settles = (si) => `${si}*${nativeNumber((first as number) / middle)}`;
      else return undefined;
    } catch {
      // Only certain numbers mean something, such as the sizes of a series.
      return undefined;
    }
    const live = this.units.toSI(text, kind);
    const amount = this.amountInText(text, kind);
    const si = this.part(
      '',
      amount === undefined ? live : `IF(ISNUMBER(${text}),${live},IFERROR(${amount},""))`,
      { ...this.words(input.says), equation: `${this.told(kind)}, if an amount`, unit: unitWord(kind) },
    );
    const outside = [
      ...(Number.isFinite(low) ? [`${si}${lowIncluded ? '<' : '<='}${nativeNumber(low)}`] : []),
      ...(Number.isFinite(high) ? [`${si}${highIncluded ? '>' : '>='}${nativeNumber(high)}`] : []),
    ];
    const error = valueError(`${input.name} out of its limits`);
    const given = settles(si);
    const number = outside.length === 0 ? given : `IF(OR(${outside.join(',')}),${error},${given})`;
    return `IF(ISNUMBER(${amount === undefined ? text : si}),${number},${found})`;
  }

  /** Of a number that was read when the copy was made: it holds in its units alone. */
  private fixUnits(kind: Kind): void {
    if (this.units.decide(kind)) this.holdUnits();
  }

  private lookedUp(symbol: string, reading: Extract<Reading, { as: 'named' }>): string {
    const { argument, input } = this;
    if (!argument) throw new CannotBeNative(`${input.name} is missing`);
    const binds = Object.entries<Binding<unknown>>(reading.binds ?? {});
    const content = argument.content;
    const text = typeof content === 'string' ? content.trim() : undefined;
    if (argument.exact) this.fixed();
    this.looksUp = true;
    const own =
      text === undefined ? [] : [[text, ...binds.map(([, { from }]) => from(argument.value))] as const];
    // A name that differs from another by its capitals alone is guarded above, and has a table of its own.
    const others = argument.varies && !argument.exact ? rowsOf(reading, this.units.system) : [];
    const find = this.tables.exact(
      {
        title: `${shortWhat(reading.what)}: ${binds.map(([, { gives }]) => KINDS[gives].says).join(', ')}`,
        heads: [
          shortWhat(reading.what),
          ...binds.map(([, { gives }]) => `${KINDS[gives].says} (${siUnit(gives)})`),
        ],
      },
      // The same rows again are known to be there.
      own.every((row) => others.some((other) => row.every((cell, i) => cell === other[i])))
        ? others
        : [...others, ...own],
    );
    const at = binds.findIndex(([name]) => name === symbol) + 1;
    if (argument.varies) this.asksName(argument.text, reading.number !== undefined);
    const key = argument.varies ? nameKey(argument.text) : textOf(text ?? '');
    return find.cell(this.rowOf(find.row, key, shortWhat(reading.what)), at);
  }

  /** The row of a table that a name stands in, found once for all that is read from it. */
  rowOf(row: (key: string) => string, key: string, what: string): string {
    const name = this.part('', key, {
      ...this.words(this.input.says),
      equation: this.toldName(),
    });
    return this.part('', row(name), { ...this.words(`Line of the table: ${what}`), equation: 'looked up' });
  }

  /** The number where names are never taken: of a series of sizes, in SI. */
  size(): string {
    const { argument, input } = this;
    const { number } = input.reading as NamedReading;
    if (!argument || !number) throw new CannotBeNative(`${input.name} is missing`);
    const { kind, ...limits } = number;
    return this.quantity(kind, limits, input.symbol);
  }

  private isAmount(content: string): boolean {
    const { number } = this.input.reading as NamedReading;
    const read = number && readQuantity(content, number.kind);
    return read?.ok === true && read.unit !== undefined;
  }

  /** Whether a cell may come to give another name of the table than the one of now. */
  private mayBeRenamed(): boolean {
    const { argument, input } = this;
    return (
      argument?.varies === true &&
      typeof argument.content === 'string' &&
      argument.byUnits !== true &&
      input.reading.as === 'named' &&
      input.reading.names !== undefined
    );
  }

  look = <const K extends string>(columns: Readonly<Record<K, NamedColumn<never>>>): Record<K, string> => {
    const entries = Object.entries<NamedColumn<never>>(columns);
    const { argument, input } = this;
    const texts = (of: (column: NamedColumn<never>, at: number) => string): Record<K, string> =>
      Object.fromEntries(entries.map(([name, column], i) => [name, of(column, i)])) as Record<K, string>;
    const reading = input.reading as NamedReading;
    if (!argument?.varies || argument.exact || !reading.names) {
      const value: never = this.fixed();
      return texts(({ from }) => constantText(from(value)));
    }
    const what = shortWhat(reading.what);
    const heads = entries.map(([, { head }]) => head);
    const rowOf = (name: string, value: never): readonly (readonly TableCell[])[] =>
      valueIfAny(() => [[name, ...entries.map(([, { from }]) => from(value))]]) ?? [];
    const { system } = this.units;
    let line: { readonly row: string; readonly cell: (row: string, at: number) => string } | undefined;
    const placed = (): NonNullable<typeof line> => {
      this.looksUp = true;
      const others = keptFor(reading, `${system} ${heads.join(', ')}`, () =>
        withoutDoubles(
          (reading.names?.() ?? []).flatMap(
            (name) => valueIfAny(() => rowOf(name, reading.read(name, system, 'text') as never)) ?? [],
          ),
        ),
      );
      const { content } = argument;
      const isName = typeof content === 'string' && !this.isAmount(content);
      const isListed = isName && others.some(([other]) => other === content.trim());
      const own = isName && !isListed ? rowOf(content.trim(), argument.value as never) : [];
      const rows = this.tables.exact(
        { title: `${what}: ${heads.join(', ')}`, heads: [what, ...heads] },
        // The same rows again are known to be there.
        own.length === 0 ? others : withoutDoubles([...others, ...own]),
      );
      this.asksName(argument.text, reading.number !== undefined);
      return { row: this.rowOf(rows.row, nameKey(argument.text), what), cell: rows.cell };
    };
    const find = (at: number): string => {
      line ??= placed();
      return line.cell(line.row, at + 1);
    };
    return texts((column, i) =>
      this.part(
        entries[i]?.[0] ?? '',
        this.readNamed(column, () => find(i)),
        {
          ...this.words(column.head),
          equation: `of ${this.toldName()}`,
        },
      ),
    );
  };

  written = (isKnown: (now: never) => boolean): string | undefined => {
    const { argument } = this;
    if (!argument || !this.mayBeRenamed() || !isKnown(argument.value as never)) return undefined;
    this.asksName(argument.text, false);
    return this.part('', nameKey(argument.text), {
      ...this.words(this.input.says),
      equation: this.toldName(),
    });
  };

  private toldName(): string {
    return this.argument && !isPart(this.argument.text) ? this.argument.text : 'the line above';
  }

  word = (whenOut: string): string => {
    const { argument, input, blank } = this;
    const { words } = input.reading as Extract<Reading, { as: 'choice' }>;
    if (argument && !argument.varies) return constantText(argument.content as Content);
    const text = argument?.text ?? blank;
    if (text === undefined) return whenOut;
    this.asksWord = true;
    const own = nameKey(text);
    const word = isCell(text) && input.optional ? `IF(ISBLANK(${text}),${whenOut},${own})` : own;
    const mark = this.part('', word, { ...this.words(input.says), equation: this.toldWord(text) });
    const known = words.map((one) => `${mark}=${constantText(one)}`);
    this.guards.push({
      when: `NOT(OR(${known.join(',')}))`,
      code: '#VALUE!',
      says: `${input.name}: ${NO_CHOICE}`,
    });
    return mark;
  };
  /** The cell of a word that is left out is asked itself. */
  asksWord = false;

  private toldWord(text: string): string {
    return isPart(text) ? 'the line above' : text;
  }

  /** What is no name, and what a look-up would take for a pattern, is refused. */
  asksName(text: string, orNumber: boolean): void {
    const { name } = this.input;
    const isName = orNumber ? `AND(NOT(ISNUMBER(${text})),NOT(ISTEXT(${text})))` : `NOT(ISTEXT(${text}))`;
    this.guards.push({ when: isName, code: '#VALUE!', says: `${name}: a name` });
    this.guards.push({ when: hasWildcard(text), code: '#N/A', says: `${name}: a name` });
  }
}

/** What a form takes of what an argument stands for. */
interface Taken {
  readonly from: (value: never) => number | string;
}

/** Whether two values are to one another as what they were made from, but for rounding. */
const isShare = (one: number | string, first: number | string, ratio: number): boolean =>
  typeof one === 'number' && typeof first === 'number' && Math.abs(one / (first * ratio) - 1) < 1e-14;

export const hasWildcard = (text: string): string => `COUNT(FIND({"*","?","~"},${text}))>0`;

/** What a cell names, without the blanks round it. */
export const nameKey = (text: string): string => `TRIM(${text})`;

type NamedReading = Extract<Reading, { as: 'named' }>;

const kept = new WeakMap<object, Map<string, unknown>>();

/** What is worked out of a reading once for all calls: its tables never change. */
export function keptFor<T>(reading: object, key: string, make: () => T): T {
  const own = kept.get(reading) ?? new Map<string, unknown>();
  kept.set(reading, own);
  const known = own.get(key) as T | undefined;
  if (known !== undefined) return known;
  const made = make();
  own.set(key, made);
  return made;
}

/** The row of every name that a table holds; what it has no numbers for is left out. */
const rowsOf = (reading: NamedReading, system: System): readonly (readonly TableCell[])[] =>
  keptFor(reading, `rows ${system}`, () => {
    const binds = Object.values<Binding<unknown>>(reading.binds ?? {});
    return withoutDoubles(
      (reading.names?.() ?? []).flatMap((name): (readonly TableCell[])[] => {
        const row = valueIfAny(() => {
          const value = reading.read(name, system, 'text');
          return [name, ...binds.map(({ from }) => from(value))];
        });
        return row ? [row] : [];
      }),
    );
  });

/** Names that differ by capitals alone and mean different things are left out: a worksheet cannot tell them apart. */
export function withoutDoubles(rows: readonly (readonly TableCell[])[]): readonly (readonly TableCell[])[] {
  const first = new Map<string, readonly TableCell[]>();
  const torn = new Set<string>();
  for (const row of rows) {
    const key = keyOf(row[0]);
    const known = first.get(key);
    if (!known) first.set(key, row);
    else if (known.slice(1).join('\n') !== row.slice(1).join('\n')) torn.add(key);
  }
  return [...first].flatMap(([key, row]) => (torn.has(key) ? [] : [row]));
}

export function valueIfAny<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** An entry of a list as a number in the units of the call; text with its own unit is read now. Undefined for other text. */
export function entryText(
  text: string,
  content: Content,
  kind: Kind,
  units: NativeUnits,
): string | undefined {
  if (typeof content !== 'string') return text;
  const reading = readQuantity(content, kind);
  if (!reading.ok) return undefined;
  const now = reading.unit
    ? new UnitTexts(units).fromSI(nativeNumber(reading.si), kind)
    : nativeNumber(reading.plain);
  const number = `IF(ISNUMBER(${text}),${text},IF(${text}=${textOf(content)},${now},${valueError('a number')}))`;
  return `IF(ISLOGICAL(${text}),${valueError('a number')},${number})`;
}

/** `the name of a metal such as "P20"` → `metal`. */
const shortWhat = (what: string): string =>
  what
    .replace(/^(?:the name of )?(?:an? )?/, '')
    .replace(/ (?:such as|\(|, ?or).*$/, '')
    .trim();

/** The unit in which the data sheet keeps a kind: that of SI. */
export const siUnit = (kind: Kind): string => {
  const found: Unit | undefined = KINDS[kind].units.find(
    ({ factor, offset }) => factor === 1 && offset === 0,
  );
  return found?.symbol === undefined || found.symbol === '' ? 'SI' : found.symbol;
};

/** The same where people read it: ratios have none. */
export const unitWord = (kind: Kind): string => {
  const symbol = siUnit(kind);
  return symbol === 'SI' ? '' : symbol;
};
