/** Names of threads and drills, such as 10-24 or 1/4, that a worksheet makes dates of as they are typed. */
import type { Reading } from '../core/define';

/** Whether what an argument names may look like a date to a worksheet: no name of a stiffness or an expansion does. */
export const mayBeDate = (reading: Reading): boolean =>
  (reading.as === 'named' || reading.as === 'set') && (!reading.number || reading.number.kind === 'length');

/** Days as a worksheet counts them, from 1930 to 2099: what two figures typed with a hyphen or a slash can become. */
const EARLIEST = 10_959;
const LATEST = 73_050;

export const isLikelyDate = (serial: number): boolean =>
  Number.isInteger(serial) && serial >= EARLIEST && serial <= LATEST;

const DAY = 86_400_000;

/** What may have been typed for a date: month and day of this year, or month and year. */
function likelyTyped(serial: number): string[] {
  const date = new Date(Date.UTC(1899, 11, 30) + serial * DAY);
  const [year, month, day] = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()];
  const years = day === 1 ? [String(year % 100).padStart(2, '0')] : [];
  const seconds = year < 2000 ? [...years, String(day)] : [String(day), ...years];
  return seconds.flatMap((second) => [`${month}-${second}`, `${month}/${second}`]);
}

/** The name that was typed most likely where a worksheet made a date of it: the first that `find` does not refuse. */
export function typedForDate(serial: number, find: (name: string) => unknown): string {
  const names = likelyTyped(serial);
  const isName = (name: string): boolean => {
    try {
      find(name);
      return true;
    } catch {
      return false;
    }
  };
  return names.find(isName) ?? names[0] ?? '';
}

/** Why a date is refused, and how to type what was meant. */
export function dateRefusal(serial: number, find: (name: string) => unknown): string {
  const typed = typedForDate(serial, find);
  return `is ${serial}, a date; was ${typed} typed? Type '${typed}`;
}
