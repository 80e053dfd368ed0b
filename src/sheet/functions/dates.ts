import { CellError } from '../../cells/value';
import { numberInText, toNumber } from '../coerce';
import { raise, type Scalar, type Value } from '../values';
import {
  addMonths,
  checkedSerial,
  type Day,
  daysInMonth,
  dayOf,
  days360,
  isLeap,
  serialOf,
  weekdayOf,
} from './calendar';
import { strictNumber } from './numbersIn';
import { type Context, inContext, volatile } from './spec';

/** A day from a number or a text that is a date. */
const serial = (context: Context, value: Scalar): number =>
  Math.floor(checkedSerial(strictNumber(value, context.date1904), context.date1904));

const partOfDay = (name: string, part: (day: Day) => number) =>
  inContext(name, 'n', (context, value) => part(dayOf(value, context.date1904)));

/** Whole seconds within the day, rounded as a clock shows them. */
const secondsOf = (value: number): number =>
  value < 0 ? raise('#NUM!') : Math.round((value - Math.floor(value)) * 86_400) % 86_400;

/** Which day starts the week, 0 for Monday, by the number that WEEKDAY and WEEKNUM take for it. */
const FIRST_DAYS: Readonly<Record<number, number>> = {
  1: 6,
  2: 0,
  11: 0,
  12: 1,
  13: 2,
  14: 3,
  15: 4,
  16: 5,
  17: 6,
};

function weekday(value: number, type: number, date1904: boolean): number {
  const day = weekdayOf(checkedSerial(value, date1904), date1904);
  if (type === 3) return day;
  return ((day - (FIRST_DAYS[type] ?? raise('#NUM!')) + 7) % 7) + 1;
}

/** The week that holds the year's first Thursday is the first. */
function isoWeek(value: number, date1904: boolean): number {
  const thursday = Math.floor(value) - weekdayOf(value, date1904) + 3;
  if (thursday < 1) return 52;
  const start = serialOf(dayOf(thursday, date1904).year, 1, 1, date1904);
  return Math.floor((thursday - start) / 7) + 1;
}

function weekNumber(value: number, type: number, date1904: boolean): number {
  if (type === 21) return isoWeek(value, date1904);
  const first = FIRST_DAYS[type] ?? raise('#NUM!');
  const start = serialOf(dayOf(value, date1904).year, 1, 1, date1904);
  const lead = (weekdayOf(start, date1904) - first + 7) % 7;
  return Math.floor((Math.floor(value) - start + lead) / 7) + 1;
}

/** Which days of the week are free, Monday first. */
function freeDays(weekend: Scalar | undefined): readonly boolean[] {
  if (typeof weekend === 'string') {
    if (!/^[01]{7}$/.test(weekend)) return raise('#VALUE!');
    return Array.from(weekend, (sign) => sign === '1');
  }
  const code = weekend === undefined || weekend === null ? 1 : Math.trunc(toNumber(weekend));
  const free = new Array<boolean>(7).fill(false);
  if (code >= 1 && code <= 7) free[(code + 4) % 7] = free[(code + 5) % 7] = true;
  else if (code >= 11 && code <= 17) free[(code - 5) % 7] = true;
  else return raise('#NUM!');
  return free;
}

function holidaysOf(context: Context, value: Value | undefined): ReadonlySet<number> {
  const days = new Set<number>();
  if (value === undefined || value === null) return days;
  context.each(context.array(value), (one) => {
    if (one instanceof CellError) raise(one);
    if (one !== null) days.add(serial(context, one));
  });
  return days;
}

interface Week {
  isFree(day: number): boolean;
  readonly worked: number;
}
function weekOf(context: Context, weekend: Scalar | undefined, holidays: Value | undefined): Week {
  const free = freeDays(weekend);
  const days = holidaysOf(context, holidays);
  return {
    isFree: (day) => free[weekdayOf(day, context.date1904)] === true || days.has(day),
    worked: free.filter((one) => !one).length,
  };
}

function workdays(context: Context, from: number, to: number, week: Week): number {
  const [first, last] = from <= to ? [from, to] : [to, from];
  context.tick(last - first);
  let count = 0;
  for (let day = first; day <= last; day++) if (!week.isFree(day)) count++;
  return from <= to ? count : -count;
}

function workday(context: Context, from: number, count: number, week: Week): number {
  if (week.worked === 0) return raise('#VALUE!');
  const step = count < 0 ? -1 : 1;
  let day = from;
  for (let left = Math.abs(count); left > 0;) {
    day = checkedSerial(day + step, context.date1904);
    if (!week.isFree(day)) left--;
    context.tick();
  }
  return day;
}

/** The share of a year between two days, by the counting of days that a bond is traded by. */
export function yearFraction(from: number, to: number, basis: number, date1904: boolean): number {
  const [first, last] = from <= to ? [from, to] : [to, from];
  const a = dayOf(first, date1904);
  const b = dayOf(last, date1904);
  const days = last - first;
  switch (Math.trunc(basis)) {
    case 0:
      return yearFraction360(a, b);
    case 1:
      return days / yearLength(a, b, first, last, date1904);
    case 2:
      return days / 360;
    case 3:
      return days / 365;
    case 4:
      return days360(a, b, true) / 360;
    default:
      return raise('#NUM!');
  }
}

/** Months of 30 days, the last day of February a month's last only where both days are, or the first is. */
function yearFraction360(a: Day, b: Day): number {
  const isLast = (day: Day) => day.month === 2 && day.day === daysInMonth(day.year, 2);
  let from = a.day;
  let to = b.day;
  if (isLast(a) && isLast(b)) to = 30;
  if (isLast(a)) from = 30;
  if (to === 31 && from >= 30) to = 30;
  if (from === 31) from = 30;
  return ((b.year - a.year) * 360 + (b.month - a.month) * 30 + to - from) / 360;
}

function yearLength(a: Day, b: Day, first: number, last: number, date1904: boolean): number {
  const isWithinYear =
    a.year === b.year ||
    (b.year === a.year + 1 && (a.month > b.month || (a.month === b.month && a.day >= b.day)));
  if (!isWithinYear) {
    const start = serialOf(a.year, 1, 1, date1904);
    const end = serialOf(b.year + 1, 1, 1, date1904);
    return (end - start) / (b.year - a.year + 1);
  }
  if (a.year === b.year) return isLeap(a.year) ? 366 : 365;
  const leapDay = [a.year, b.year].find((year) => isLeap(year));
  if (leapDay === undefined) return 365;
  const serialOfLeapDay = serialOf(leapDay, 2, 29, date1904);
  return serialOfLeapDay >= first && serialOfLeapDay <= last ? 366 : 365;
}

function dateDifference(from: number, to: number, unit: string, date1904: boolean): number {
  if (from > to) return raise('#NUM!');
  const a = dayOf(from, date1904);
  const b = dayOf(to, date1904);
  const months = (b.year - a.year) * 12 + b.month - a.month - (b.day < a.day ? 1 : 0);
  switch (unit.toUpperCase()) {
    case 'D':
      return to - from;
    case 'M':
      return months;
    case 'Y':
      return Math.floor(months / 12);
    case 'YM':
      return months % 12;
    case 'MD':
      return b.day >= a.day ? b.day - a.day : to - serialOf(b.year, b.month - 1, a.day, date1904);
    case 'YD': {
      const year = b.month > a.month || (b.month === a.month && b.day >= a.day) ? b.year : b.year - 1;
      return to - serialOf(year, a.month, a.day, date1904);
    }
    default:
      return raise('#NUM!');
  }
}

/** Two-digit years and those of the first centuries count from 1900. */
function date(context: Context, year: number, month: number, day: number): number {
  const [y, m, d] = [Math.trunc(year), Math.trunc(month), Math.trunc(day)];
  if (y < 0 || y > 9999) return raise('#NUM!');
  if (context.date1904) return serialOf(y < 4 ? y + 1904 : y < 1904 ? y + 1900 : y, m, d, true);
  return serialOf(y < 1900 ? y + 1900 : y, m, d, false);
}

function time(hours: number, minutes: number, seconds: number): number {
  const all = Math.trunc(hours) * 3600 + Math.trunc(minutes) * 60 + Math.trunc(seconds);
  if (all < 0) return raise('#NUM!');
  return (all % 86_400) / 86_400;
}

/** A text that is no plain number but reads as a date, a time or both. */
const timeInText = (text: string, date1904: boolean): number =>
  /^\s*[-+]?[\d.,]*(e[-+]?\d+)?\s*%?\s*$/i.test(text)
    ? raise('#VALUE!')
    : (numberInText(text, date1904) ?? raise('#VALUE!'));

const shifted = (name: string, shift: (from: number, months: number, date1904: boolean) => number) =>
  inContext(name, 'ff', (context, from, months) =>
    shift(serial(context, from), Math.trunc(strictNumber(months, context.date1904)), context.date1904),
  );

export const dates = [
  inContext('DATE', 'nnn', date),
  inContext('TIME', 'nnn', (_, hours, minutes, seconds) => time(hours, minutes, seconds)),
  partOfDay('YEAR', ({ year }) => year),
  partOfDay('MONTH', ({ month }) => month),
  partOfDay('DAY', ({ day }) => day),
  inContext('HOUR', 'n', (_, value) => Math.floor(secondsOf(value) / 3600)),
  inContext('MINUTE', 'n', (_, value) => Math.floor(secondsOf(value) / 60) % 60),
  inContext('SECOND', 'n', (_, value) => secondsOf(value) % 60),
  inContext('DATEVALUE', 't', (context, text) => Math.floor(timeInText(text, context.date1904))),
  inContext('TIMEVALUE', 't', (context, text) => {
    const value = timeInText(text, context.date1904);
    return value - Math.floor(value);
  }),
  inContext('WEEKDAY', 'nn?', (context, value, type = 1) =>
    weekday(value, Math.trunc(type), context.date1904),
  ),
  inContext('WEEKNUM', 'ff?', (context, value, type = 1) =>
    weekNumber(serial(context, value), Math.trunc(strictNumber(type)), context.date1904),
  ),
  inContext('ISOWEEKNUM', 'n', (context, value) =>
    isoWeek(checkedSerial(value, context.date1904), context.date1904),
  ),
  inContext('DAYS', 'nn', (context, to, from) => {
    const [last, first] = [to, from].map((day) => Math.floor(checkedSerial(day, context.date1904)));
    return (last as number) - (first as number);
  }),
  inContext('DAYS360', 'ssb?', (context, from, to, isEuropean = false) => {
    const [a, b] = [from, to].map((one) => dayOf(toNumber(one, context.date1904), context.date1904));
    return days360(a as Day, b as Day, isEuropean);
  }),
  shifted('EDATE', addMonths),
  shifted('EOMONTH', (from, months, date1904) => {
    const { year, month } = dayOf(from, date1904);
    return serialOf(year, month + months + 1, 0, date1904);
  }),
  inContext('DATEDIF', 'nnt', (context, from, to, unit) =>
    dateDifference(Math.floor(from), Math.floor(to), unit, context.date1904),
  ),
  inContext('YEARFRAC', 'fff?', (context, from, to, basis = 0) =>
    yearFraction(serial(context, from), serial(context, to), strictNumber(basis), context.date1904),
  ),
  inContext('NETWORKDAYS', 'ffr?', (context, from, to, holidays) =>
    workdays(context, serial(context, from), serial(context, to), weekOf(context, 1, holidays)),
  ),
  inContext('NETWORKDAYS.INTL', 'sss?r?', (context, from, to, weekend, holidays) =>
    workdays(context, serial(context, from), serial(context, to), weekOf(context, weekend, holidays)),
  ),
  inContext('WORKDAY', 'ffr?', (context, from, count, holidays) =>
    workday(context, serial(context, from), Math.trunc(strictNumber(count)), weekOf(context, 1, holidays)),
  ),
  inContext('WORKDAY.INTL', 'sss?r?', (context, from, count, weekend, holidays) =>
    workday(
      context,
      serial(context, from),
      Math.trunc(strictNumber(count)),
      weekOf(context, weekend, holidays),
    ),
  ),
  volatile(inContext('NOW', '', (context) => context.now())),
  volatile(inContext('TODAY', '', (context) => Math.floor(context.now()))),
];
