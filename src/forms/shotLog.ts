/** The rows of trial shots, and of the number of a design that they fit. */
import { argumentNamed, findDefinition } from '../call/findDefinition';
import { NAMESPACE } from '../cells/namespace';
import { inputsOf, type Amount, type AnyInput, type Limits } from '../core/define';
import type { Kind } from '../core/quantity';
import { takenNumber, type TakenNumber } from '../core/takenNumber';
import { wordsOf } from '../derive/words';
import { acceptsFormula } from './bounds';
import { entryRow, limitsOf, quantityOf, typed } from './entries';
import { convertedStyle, numberStyle, STYLES, valueFormat } from './looks';
import { cellName, label } from './names';
import { callText, kindOfResult } from './results';
import type { Rows } from './rows';
import type { Section, Shots } from './sections/section';
import { entered, hasUnits, roundedIn } from './units';

/** Fewer than these fit nothing. */
const LEAST_SHOTS = 2;
/** Rows that stay empty, for further shots. */
const SPARE_ROWS = 4;
const DIGITS = 3;

/** Names of the cells of one log, by the key of the value that it is for. */
export const logNames = (key: string) => {
  const value = cellName(key);
  const fitted = `fitted_${value}`;
  return {
    value,
    /** As the design has it without shots. */
    without: `${value}_without_shots`,
    fitted,
    error: `${fitted}_error`,
    miss: `${fitted}_miss`,
    share: `${fitted}_share`,
    shots: `${fitted}_shots`,
    low: `${fitted}_low`,
    high: `${fitted}_high`,
  };
};

/** The sections with only those logs whose value the design has; without any such, with all of them. */
export function withItsLogs(sections: readonly Section[]): {
  readonly sections: readonly Section[];
  /** Keys whose value shots give. */
  readonly fed: ReadonlyMap<string, Shots>;
} {
  const keys = new Set(
    sections.flatMap(({ inputs, parts }) => [
      ...Object.keys(inputs),
      ...parts.flatMap((part) => (part.type === 'use' || part.type === 'worked' ? [part.key] : [])),
    ]),
  );
  const fed = new Map(
    sections
      .flatMap(({ parts }) => parts.filter((part) => part.type === 'shots'))
      .filter(({ fits }) => keys.has(fits))
      .map((part) => [part.fits, part]),
  );
  if (fed.size === 0) return { sections, fed };
  return {
    fed,
    sections: sections.map((section) => {
      const parts = section.parts.filter((part) => part.type !== 'shots' || fed.has(part.fits));
      if (parts.length === section.parts.length) return section;
      const needed = new Set(
        parts.flatMap((part) => (part.type === 'shots' ? heldIn(part).map(([, key]) => key) : [])),
      );
      const inputs = Object.entries(section.inputs).filter(([key]) => needed.has(key));
      return { ...section, parts, inputs: Object.fromEntries(inputs) };
    }),
  };
}

/** The arguments that are the same in all shots, each with its key. */
export const heldIn = ({ fn, argument, varied, with: bound }: Shots): readonly [AnyInput, string][] =>
  inputsOf(findDefinition(fn)).flatMap((input): [AnyInput, string][] => {
    const { name, optional } = input;
    const key = bound[name] ?? (optional ? undefined : name);
    return key === undefined || name === argument || name === varied ? [] : [[input, key]];
  });

/** What stands for a log elsewhere on the sheet. */
export interface WrittenLog {
  readonly value: string;
  readonly unit: string;
  readonly label: string;
  readonly kind: Kind;
  /** Formula that is true where nothing rests on the shots yet. */
  readonly tooFew: string;
  /** Formula that is true where the shots bear out what is predicted. */
  readonly agrees: string;
}

/** Table of the shots, the value that fits them, its scatter, and what the design takes. */
export function logRows(
  rows: Rows,
  part: Shots,
  texts: ReadonlyMap<string, string>,
  exampleShots: boolean,
): WrittenLog {
  const definition = findDefinition(part.fn);
  const names = logNames(part.fits);
  const varied = argumentNamed(definition, part.varied).input;
  const variedKind = quantityOf(varied.reading);
  const measuredKind = kindOfResult(definition);
  const { kind } = soughtIn(part);
  if (variedKind === undefined || measuredKind === undefined)
    throw new Error(`A log of ${part.fn} needs quantities`);

  const held = heldRows(rows, part, texts);
  const shots = shotTable(rows, part, {
    variedKind,
    measuredKind,
    limits: varied.reading as Limits,
    texts,
    exampleShots,
  });
  const low = endRow(rows, part, 0);
  const high = endRow(rows, part, 1);

  const fit = `${NAMESPACE}.TRY.MATCH(${[`"${part.fn}"`, held, `"${part.argument}"`, `"${part.varied}"`, shots.set, shots.measured, low, high, rows.units].join(',')})`;
  const fromShots = (formula: string): string => `IF(${names.shots}<${LEAST_SHOTS},"–",${formula})`;
  const resultRow = (called: string, note: string, formula: string, of: Kind, name: string) => {
    rows.words(called, note);
    rows.blanks();
    rows.put('value', { formula, look: numberStyle(of === kind ? 'General' : valueFormat(of)) });
    rows.put('unit', rows.unitOf(of));
    rows.formulaText(`=${formula}`);
    const here = rows.here();
    rows.name(name);
    rows.end();
    return here;
  };
  resultRow(
    'Shots with both',
    'Set and measured; a fit takes at least two.',
    `SUMPRODUCT((${shots.set}<>"")*(${shots.measured}<>""))`,
    'count',
    names.shots,
  );
  const fitted = resultRow(
    `${part.label}, fitted`,
    `By least squares over the shots, through ${NAMESPACE}.${part.fn}.`,
    fromShots(`INDEX(${fit},1,1)`),
    kind,
    names.fitted,
  );
  resultRow(
    'Its standard error',
    'How far the scatter of the shots leaves it open.',
    fromShots(`INDEX(${fit},1,2)`),
    kind,
    names.error,
  );
  resultRow(
    'Largest miss',
    'Measured less predicted.',
    fromShots(`INDEX(${fit},1,3)`),
    measuredKind,
    names.miss,
  );
  resultRow(
    'Largest miss, of the largest measured',
    'A function that does not describe the trials shows here, whatever the error says.',
    fromShots(`ABS(${names.miss})/MAX(${shots.measured})`),
    'ratio',
    names.share,
  );
  return {
    value: fitted.value,
    unit: fitted.unit,
    label: `${part.label}, fitted`,
    kind,
    tooFew: `${names.shots}<${LEAST_SHOTS}`,
    agrees: `${names.share}<=${MOST_APART}`,
  };
}

/** In place of a verdict, which such a log cannot give. */
export const NO_SHOTS = 'fewer than two shots';

export const SHOTS_NOTE =
  'Within a tenth of the largest measured. If it does not hold: look at the shot that is off, or do not build on the prediction.';

/** Part of the largest measured value by which a prediction may be off: our own line, no standard’s. */
const MOST_APART = 0.1;

/** What the design goes on with: the fitted value, or the one above; and how far to trust it, beside it. */
export function takenRow(rows: Rows, part: Shots, called: string): string {
  const names = logNames(part.fits);
  const { kind } = soughtIn(part);
  rows.words(`${called}: taken from`, '');
  rows.put('entry', { value: 'shots', look: STYLES.typedWords });
  rows.choose('entry', ['shots', 'above'], 'Shots or above');
  rows.put('entryUnit', { value: '–', look: STYLES.blank });
  const choice = rows.here().entry;
  const unit = rows.here().unit;
  rows.value(
    `IF(AND(${choice}="shots",${names.shots}>=${LEAST_SHOTS}),${names.fitted},${names.without})`,
    valueFormat(kind),
  );
  rows.put('unit', rows.unitOf(kind));
  const said = `${names.shots}&" shots, ± "&${short(names.error)}&${hasUnits(kind) ? `" "&${unit}&` : ''}"; measured up to "&${short(`100*${names.share}`)}&" % from the prediction"`;
  rows.noteFormula(
    `IF(${names.shots}<${LEAST_SHOTS},"As above: the shot log has fewer than two shots.",IFERROR(IF(${choice}="shots",${said}&"; above: "&${short(names.without)},"As above; by "&${said}&": "&${short(names.fitted)}),"The shots give no value: see the shot log."))`,
    'x'.repeat(110),
  );
  rows.noFormula();
  const name = rows.name(names.value);
  rows.end();
  return name;
}

/** A number in a sentence, in few digits. */
const short = (x: string): string => `ROUND(${x},${DIGITS - 1}-INT(LOG10(MAX(ABS(${x}),1E-12))))`;

/** The number that is sought: a quantity, or what may stand for a name. */
function soughtBy({ name, reading }: AnyInput): TakenNumber {
  const taken = takenNumber(reading);
  if (!taken) throw new Error(`${name} is no number`);
  return taken;
}

export const soughtIn = ({ fn, argument }: Shots) =>
  soughtBy(argumentNamed(findDefinition(fn), argument).input);

/** The arguments that did not change, as names beside values; gives their cells. */
function heldRows(rows: Rows, part: Shots, texts: ReadonlyMap<string, string>): string {
  rows.tableHeads(
    [
      { value: 'Held in all shots' },
      { value: '' },
      { value: 'Argument' },
      { value: 'Value' },
      { value: 'Unit' },
    ],
    'Note',
  );
  const first = rows.here();
  let last = first;
  for (const [input, key] of heldIn(part)) {
    last = rows.here();
    const kind = quantityOf(input.reading);
    rows.words(label(key), `${input.says}.`);
    rows.put('entry', { look: STYLES.blank });
    rows.put('entryUnit', { value: input.name, look: STYLES.blank });
    rows.value(texts.get(key) ?? '', kind === undefined ? 'General' : valueFormat(kind), kind === undefined);
    rows.put('unit', kind === undefined ? { value: '–', look: STYLES.unit } : rows.unitOf(kind));
    rows.noFormula();
    rows.end();
  }
  return `${first.entryUnit}:${last.value}`;
}

interface Table {
  readonly variedKind: Kind;
  readonly measuredKind: Kind;
  readonly limits: Limits;
  readonly texts: ReadonlyMap<string, string>;
  readonly exampleShots: boolean;
}

/** A row a shot; gives the cells of what was set and measured, in the units of the sheet. */
function shotTable(
  rows: Rows,
  part: Shots,
  { variedKind, measuredKind, limits, texts, exampleShots }: Table,
) {
  rows.tableHeads(
    [
      { value: part.title },
      { value: part.set },
      { value: part.measured },
      { value: part.set },
      { value: part.measured },
    ],
    'Other settings, and what was seen',
    'Prediction',
  );
  const units = rows.here();
  rows.words('Unit of the column', 'Of the yellow numbers below; beside them the units of the sheet.');
  const columns = [
    { typed: 'entry', shown: 'value', kind: variedKind, limits },
    { typed: 'entryUnit', shown: 'unit', kind: measuredKind, limits: {} },
  ] as const;
  for (const [i, { typed: column, shown, kind }] of columns.entries()) {
    const amounts = part.shots.map((shot) => (i === 0 ? shot[1] : shot[2]));
    rows.columnUnit(column, kind, unitOfAll(amounts, kind, rows));
    rows.put(shown, rows.unitOf(kind));
  }
  rows.noFormula();
  rows.end();
  const first = rows.here();
  let last = first;
  for (let n = 0; n < part.shots.length + SPARE_ROWS; n++) {
    const shot = exampleShots ? part.shots[n] : undefined;
    const here = rows.here();
    last = here;
    rows.put('label', { ...(shot && { value: shot[0] }), look: STYLES.typedName });
    for (const [i, { typed: column, shown, kind, limits: within }] of columns.entries()) {
      const amount = shot && numberOf(i === 0 ? shot[1] : shot[2], kind, rows);
      const [cell, unit] = [here[column], units[column]];
      rows.put(column, { ...(amount !== undefined && { value: amount }), look: STYLES.typedNumber });
      rows.rule(column, {
        takes: {
          accepts: acceptsFormula(within, kind, cell, hasUnits(kind) ? absoluteRow(unit) : undefined),
        },
        strict: true,
        title: i === 0 ? part.set : part.measured,
        text: 'A number, in the unit at the top of the column.',
      });
      rows.put(shown, {
        formula: typed(
          cell,
          hasUnits(kind)
            ? `${NAMESPACE}.UNIT.CONVERT(${cell},${absoluteRow(unit)},${absoluteRow(units[shown])})`
            : cell,
        ),
        look: convertedStyle(valueFormat(kind)),
      });
    }
    rows.put('note', { ...(shot && { value: shot[3] }), look: STYLES.typedName });
    rows.put('formula', { formula: predictionText(rows, part, texts, here), look: STYLES.formula });
    rows.end();
  }
  const range = (column: 'value' | 'unit'): string => `${first[column]}:${last[column]}`;
  return { set: range('value'), measured: range('unit') };
}

/** What is predicted for a shot with the fitted value, in words. */
function predictionText(
  rows: Rows,
  part: Shots,
  texts: ReadonlyMap<string, string>,
  { value: set, unit: measured }: { readonly value: string; readonly unit: string },
): string {
  const definition = findDefinition(part.fn);
  const held = new Map(heldIn(part).map(([{ name }, key]) => [name, texts.get(key) ?? '']));
  const args = inputsOf(definition).map(({ name }) => {
    if (name === part.varied) return set;
    return name === part.argument ? logNames(part.fits).fitted : (held.get(name) ?? '');
  });
  const predicted = callText({ definition, args }, rows.units);
  return `IF(OR(${set}="",${measured}=""),"",IFERROR("predicted "&${short(predicted)}&", measured less predicted "&${short(`(${measured}-${predicted})`)},"not predicted: no value fits"))`;
}

/** `B40` as further rows refer to it. */
const absoluteRow = (cell: string): string => cell.replace(/(\d+)$/, '$$$1');

/** The unit that the first amounts are written in. */
const unitOfAll = ([first = 0]: readonly Amount[], kind: Kind, rows: Rows): string =>
  entered(roundedIn(first, kind, rows.system), kind, rows.system).unit;

const numberOf = (amount: Amount, kind: Kind, rows: Rows): number =>
  entered(roundedIn(amount, kind, rows.system), kind, rows.system).value;

/** An end of where the value is looked for. */
function endRow(rows: Rows, { fn, argument, fits, look }: Shots, end: 0 | 1): string {
  const definition = findDefinition(fn);
  const { input, index } = argumentNamed(definition, argument);
  const { kind, limits } = soughtBy(input);
  const words = wordsOf(definition).parameters[index];
  if (!words) throw new Error(`${fn} has no ${argument}`);
  const names = logNames(fits);
  return entryRow(
    rows,
    { ...input, reading: { as: 'quantity', kind, ...limits } },
    words,
    roundedIn(look[end], kind, rows.system),
    {
      label: end === 0 ? 'Look for it from' : 'to',
      note:
        end === 0
          ? 'Where the best value lies at an end, the fit says so: look further then.'
          : limitsOf(words),
      name: end === 0 ? names.low : names.high,
    },
  );
}
