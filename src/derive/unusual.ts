import { boundsOf, inBounds } from '../core/amount';
import { inputsOf, type AnyInput, type Definition } from '../core/define';
import { quantityText } from '../core/format';
import { rangeInSystem } from './words';
import { fromSI, SYSTEMS, systemUnit, toSI, type System } from '../core/quantity';

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
  const usually = `usually ${rangeInSystem(reading.usual, kind, system)}`;
  const other = SYSTEMS.find((one) => one !== system) ?? system;
  const [unit, otherUnit] = [systemUnit(kind, system), systemUnit(kind, other)];
  const fits = isPlain && unit !== otherUnit && inBounds(toSI(fromSI(value, unit), otherUnit), bounds);
  return fits
    ? {
        says: `${usually}; the number would be usual in ${otherUnit.symbol}: is the unit as meant?`,
        fitsOther: true,
      }
    : { says: usually, fitsOther: false };
}

/** Every input of a calculation that lies outside of what is usual: `friction 0: usually 0.05 to 0.6.` */
export function unusualInputs(definition: Definition, values: readonly unknown[], system: System): string[] {
  return inputsOf(definition).flatMap((input, i) => {
    const says = unusualText(input, values[i], system);
    if (says === undefined || input.reading.as !== 'quantity') return [];
    const shown = quantityText(values[i] as number, input.reading.kind, system);
    return [`${input.name} ${shown}: ${says}${says.endsWith('?') ? '' : '.'}`];
  });
}
