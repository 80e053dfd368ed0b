import { NAMESPACE } from '../cells/namespace';
import { inputsOf, takesRange, type AnyInput, type Definition } from '../core/define';
import type { System } from '../core/quantity';
import { DEFERS } from '../derive/help';
import { wordsOf } from '../derive/words';
import { whereItFits } from './fits';
import { entryRow, followingRow, joinedRow, listRows, quantityOf } from './entries';
import { givenIn, type Given } from './given';
import type { Ground, KnownInput } from './ground';
import { STYLES } from './looks';
import { cellName, label } from './names';
import type { FormPlan, Place } from './plan';
import { cautionRow, checkRow, knowsStrength, marginRow, resultRows, sourceRow } from './results';
import { Rows } from './rows';
import { hasUnits, systemSign } from './units';

export interface FormOptions {
  /** Where its first cell stands. */
  readonly at: Place;
  /** What its inputs are at first, by their names: as a rule the example of the help. Optional ones that are not here and have no default are left out. */
  readonly given: Given;
  /** Inputs that the workbook has and the form shares, by their names, or all that fit. */
  readonly join?: 'all' | readonly string[];
  /** Of the units cell that the form brings where the sheet has none; inches unless told. */
  readonly system?: System;
  /** Adds a row that tells the source. */
  readonly source?: boolean;
}

/** A form of a function: heading, a row for each input, result, margin, verdict, what to watch for. */
export function planForm(definition: Definition, ground: Ground, wanted: FormOptions): FormPlan {
  const system = ground.units?.system ?? wanted.system ?? 'in';
  const options = { ...wanted, given: givenIn(definition, wanted.given, system) };
  const plan = formAt(definition, ground, options, options.at);
  return whereItFits(plan, ground, 'form');
}

/** An input of a function, and the cell of the workbook that it could be. */
export interface Joinable {
  readonly input: string;
  readonly known: KnownInput;
}

/** The inputs of a function that the workbook has already: same name, same kind. */
export function joinable(definition: Definition, ground: Ground): readonly Joinable[] {
  return inputsOf(definition).flatMap((input) => {
    const known = knownFor(input, ground);
    return known ? [{ input: input.name, known }] : [];
  });
}

function formAt(definition: Definition, ground: Ground, options: FormOptions, place: Place): FormPlan {
  const rows = new Rows(ground, place, options.system ?? 'in');
  const heads = ground.hasHeads(place.column, place.row);
  rows.wide(`${NAMESPACE}.${definition.name}: ${definition.summary}`, STYLES.section);
  if (!heads) rows.heads();
  if (!rows.hasUnits) rows.unitsRow();
  const words = wordsOf(definition).parameters;
  const left: string[] = [];
  const texts = new Map<string, string>();
  inputsOf(definition).forEach((input, i) => {
    const parameter = words[i];
    if (!parameter) return;
    const first = options.given[input.name];
    const emptied = { follows: texts.get(input.sameAs ?? '') };
    const name = cellName(input.name);
    const known = isWanted(input, options.join) ? knownFor(input, ground) : undefined;
    if (known) texts.set(input.name, joinedRow(rows, input, known));
    else if (takesRange(input.reading)) {
      if (first !== undefined)
        texts.set(input.name, listRows(rows, input, parameter, [first].flat(), { name }));
      else left.push(leftOut(input));
    } else if (first !== undefined && typeof first !== 'object') {
      texts.set(input.name, entryRow(rows, input, parameter, first, { name, emptied }));
    } else if (input.default !== undefined) {
      texts.set(input.name, entryRow(rows, input, parameter, input.default, { name, emptied }));
    } else if (emptied.follows !== undefined) {
      texts.set(input.name, followingRow(rows, input, parameter, emptied.follows, { name }));
    } else left.push(leftOut(input));
  });
  if (left.length > 0) rows.wideText('Left out', `${left.join('; ')}.`, STYLES.note);
  const call = { definition, args: inputsOf(definition).map(({ name }) => texts.get(name) ?? '') };
  resultRows(rows, call);
  if (knowsStrength(definition)) marginRow(rows, call);
  checkRow(rows, call);
  cautionRow(rows, call);
  if (options.source) sourceRow(rows, call);
  rows.wide(DEFERS, STYLES.decide);
  return rows.plan();
}

const leftOut = ({ name, whenLeftOut }: AnyInput): string =>
  whenLeftOut === undefined ? label(name) : `${label(name)}: ${whenLeftOut}`;

const isWanted = ({ name }: AnyInput, join: FormOptions['join']): boolean =>
  join === 'all' || (join?.includes(name) ?? false);

function knownFor(input: AnyInput, ground: Ground): KnownInput | undefined {
  const wanted = cellName(input.name);
  const fits = ground.inputs.filter(({ name, ...known }) => isNameOf(name, wanted) && isKind(input, known));
  return fits.find(({ sheet }) => sheet === ground.sheet) ?? fits[0];
}

/** `draft` and `draft_2` are both a draft. */
const isNameOf = (name: string, wanted: string): boolean =>
  name.toLowerCase() === wanted || name.toLowerCase().replace(/_\d+$/, '') === wanted;

/** Whether the cell holds what the input takes, in a unit that its neighbor says. */
function isKind({ reading }: AnyInput, { value, unit }: Pick<KnownInput, 'value' | 'unit'>): boolean {
  const kind = quantityOf(reading);
  if (kind !== undefined)
    return (
      typeof value === 'number' &&
      (hasUnits(kind)
        ? unit === systemSign(kind, 'in') || unit === systemSign(kind, 'mm')
        : unit === '–' || unit === '')
    );
  if (typeof value !== 'string') return false;
  if (reading.as === 'choice') return reading.words.includes(value.toLowerCase());
  if (reading.as !== 'named') return false;
  try {
    reading.read(value, 'in', 'text');
    return true;
  } catch {
    return false;
  }
}
