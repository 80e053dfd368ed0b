import { boundsOf, inBounds } from '../core/amount';
import { inputsOf, type Amount, type AnyInput, type Definition } from '../core/define';
import { quantityText } from '../core/format';
import { rangeInSystem } from './words';
import { fromSI, systemUnit, toSI, type Kind, type System } from '../core/quantity';

/** What is to be said of a value outside of the range that is usual in this trade. */
export interface Unusual {
  readonly says: string;
  /** The number would be usual in the other system of units. */
  readonly fitsOther: boolean;
}

export const unusualText = (input: AnyInput, value: unknown, system: System): string | undefined =>
  unusual(input, value, system)?.says;

/** The value is in SI; only of a plain number it may be asked whether its unit is as meant. */
export function unusual(
  { reading }: AnyInput,
  value: unknown,
  system: System,
  isPlain = true,
): Unusual | undefined {
  if (reading.as !== 'quantity' || !reading.usual || typeof value !== 'number') return undefined;
  const { kind } = reading;
  const bounds = boundsOf({ min: reading.usual[0], max: reading.usual[1] }, kind);
  if (inBounds(value, bounds)) return undefined;
  const words = usualWords(reading.usual, kind, system);
  const [unit, otherUnit] = [systemUnit(kind, system), systemUnit(kind, otherThan(system))];
  const fitsOther =
    words.question !== undefined && isPlain && inBounds(toSI(fromSI(value, unit), otherUnit), bounds);
  return { says: fitsOther ? `${words.usually}; ${words.question}` : words.usually, fitsOther };
}

export const otherThan = (system: System): System => (system === 'in' ? 'mm' : 'in');

/** What is said of an unusual value, and what where the number would be usual in the units of the other system. */
export function usualWords(
  range: readonly [Amount, Amount],
  kind: Kind,
  system: System,
): { readonly usually: string; readonly question?: string } {
  const usually = `usually ${rangeInSystem(range, kind, system)}`;
  const other = systemUnit(kind, otherThan(system));
  if (other === systemUnit(kind, system)) return { usually };
  return { usually, question: `the number would be usual in ${other.symbol}: is the unit as meant?` };
}

/** Every input of a calculation that lies outside of what is usual: `friction 0: usually 0.05 to 0.6.` */
export function unusualInputs(definition: Definition, values: readonly unknown[], system: System): string[] {
  return inputsOf(definition).flatMap((input, i) => {
    const says = unusualText(input, values[i], system);
    if (says === undefined || input.reading.as !== 'quantity') return [];
    const shown = quantityText(values[i] as number, input.reading.kind, system);
    return [unusualWords(input.name, shown, says.endsWith('?') ? says : `${says}.`)];
  });
}

export const unusualWords = (name: string, shown: string, says: string): string =>
  `${name} ${shown}: ${says}`;
