/** The decimal sign that a person chose in this browser. */
import { setDecimalSign, type DecimalSign } from '../cells/decimalSign';

const KEPT = 'moldsheet.decimalSign';

/** A page that is opened from a file may not be let into the browser's storage. */
function storage(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}

/** The one that was chosen here before, else that of the browser's language. */
export function readDecimalSign(): void {
  const own = new Intl.NumberFormat(navigator.language).formatToParts(1.5);
  const found = storage()?.getItem(KEPT) ?? own.find(({ type }) => type === 'decimal')?.value;
  setDecimalSign(found === ',' ? ',' : '.');
}

export function chooseDecimalSign(chosen: DecimalSign): void {
  setDecimalSign(chosen);
  storage()?.setItem(KEPT, chosen);
}
