/** Days as serial numbers, with the leap day of 1900 that spreadsheets have and the calendar has not. */
import { DAYS_1904 } from '../coerce';
import { raise } from '../values';

export interface Day {
  readonly year: number;
  /** From 1. */
  readonly month: number;
  readonly day: number;
}

const MS_A_DAY = 86_400_000;
/** The serial number of 1970-01-01. */
const EPOCH = 25_569;
/** 9999-12-31 */
const LAST = 2_958_465;

/** Days of the proleptic calendar; months and days may overflow. */
function daysOf(year: number, month: number, day: number): number {
  const date = new Date(Date.UTC(2000, month - 1, day));
  date.setUTCFullYear(year + (date.getUTCFullYear() - 2000), date.getUTCMonth(), date.getUTCDate());
  return Math.round(date.getTime() / MS_A_DAY);
}

/** The serial number of a day; months and days may overflow. Raises `#NUM!` outside the calendar of the workbook. */
export function serialOf(year: number, month: number, day: number, date1904: boolean): number {
  const months = year * 12 + month - 1;
  const first = daysOf(Math.floor(months / 12), (((months % 12) + 12) % 12) + 1, 1);
  const firstSerial = first + EPOCH < 61 ? first + EPOCH - 1 : first + EPOCH;
  const shift = date1904 ? DAYS_1904 : 0;
  checkedSerial(firstSerial - shift, date1904);
  return checkedSerial(firstSerial + day - 1 - shift, date1904);
}

export function checkedSerial(serial: number, date1904: boolean): number {
  return serial < 0 || serial >= LAST + 1 - (date1904 ? DAYS_1904 : 0) ? raise('#NUM!') : serial;
}

/** The day of a serial number; raises `#NUM!` outside the calendar of the workbook. */
export function dayOf(value: number, date1904: boolean): Day {
  const serial = Math.floor(checkedSerial(value, date1904)) + (date1904 ? DAYS_1904 : 0);
  if (serial === 60) return { year: 1900, month: 2, day: 29 };
  if (serial === 0) return { year: 1900, month: 1, day: 0 };
  const date = new Date((serial - EPOCH + (serial < 60 ? 1 : 0)) * MS_A_DAY);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

export const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

export const daysInMonth = (year: number, month: number): number =>
  month === 2
    ? isLeap(year)
      ? 29
      : 28
    : month === 4 || month === 6 || month === 9 || month === 11
      ? 30
      : 31;

/** Months on, the day at most the month's last. */
export function addMonths(serial: number, months: number, date1904: boolean): number {
  const { year, month, day } = dayOf(serial, date1904);
  const all = year * 12 + month - 1 + months;
  const toYear = Math.floor(all / 12);
  const toMonth = (((all % 12) + 12) % 12) + 1;
  return serialOf(toYear, toMonth, Math.min(day, daysInMonth(toYear, toMonth)), date1904);
}

/** 0 for Monday to 6 for Sunday. */
export const weekdayOf = (serial: number, date1904: boolean): number =>
  (((Math.floor(serial) + (date1904 ? DAYS_1904 : 0) + 5) % 7) + 7) % 7;

/** Days between two dates of months of 30 days each. */
export function days360(from: Day, to: Day, isEuropean: boolean): number {
  let fromDay = from.day;
  let toDay = to.day;
  if (isEuropean) {
    fromDay = Math.min(fromDay, 30);
    toDay = Math.min(toDay, 30);
  } else {
    const fromIsLast = from.month === 2 && from.day >= daysInMonth(from.year, 2);
    if (fromIsLast || fromDay === 31) fromDay = 30;
    if (toDay === 31 && fromDay === 30) toDay = 30;
  }
  return (to.year - from.year) * 360 + (to.month - from.month) * 30 + toDay - fromDay;
}
