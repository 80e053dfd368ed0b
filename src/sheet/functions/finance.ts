/** Money over time: annuities, rates of return, depreciation. */
import { CellError } from '../../cells/value';
import { toNumber } from '../coerce';
import { type ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import { addMonths, checkedSerial } from './calendar';
import { numbersIn, strictNumber } from './numbersIn';
import { roundTo } from './rounding';
import { type Context, inContext, plain } from './spec';

/** What one unit a period is worth at the end: ((1 + r)ⁿ − 1)/r, payments at the start of a period worth one interest more. */
const annuity = (rate: number, periods: number, atStart: boolean): number =>
  rate === 0 ? periods : ((growth(rate, periods) - 1) / rate) * (atStart ? 1 + rate : 1);
const growth = (rate: number, periods: number): number => (1 + rate) ** periods;
const isStart = (type: number): boolean => type !== 0;

const payment = (rate: number, periods: number, present: number, future: number, atStart: boolean): number =>
  periods === 0
    ? raise('#NUM!')
    : -(present * growth(rate, periods) + future) / annuityOf(rate, periods, atStart);
/** The same for rates below −100 %, where logarithms end. */
const annuityOf = (rate: number, periods: number, atStart: boolean): number =>
  rate > -1
    ? annuity(rate, periods, atStart)
    : ((growth(rate, periods) - 1) / rate) * (atStart ? 1 + rate : 1);
const futureValue = (
  rate: number,
  periods: number,
  paid: number,
  present: number,
  atStart: boolean,
): number => -(present * growth(rate, periods) + paid * annuityOf(rate, periods, atStart));
const presentValue = (
  rate: number,
  periods: number,
  paid: number,
  future: number,
  atStart: boolean,
): number => -(future + paid * annuityOf(rate, periods, atStart)) / growth(rate, periods);

function periodsOf(rate: number, paid: number, present: number, future: number, atStart: boolean): number {
  if (rate === 0) return paid === 0 ? raise('#NUM!') : -(present + future) / paid;
  const due = (paid * (atStart ? 1 + rate : 1)) / rate;
  return Math.log((due - future) / (due + present)) / Math.log1p(rate);
}

function interest(
  rate: number,
  period: number,
  periods: number,
  present: number,
  future: number,
  atStart: boolean,
): number {
  if (period < 1 || period >= periods + 1) return raise('#NUM!');
  if (atStart && period === 1) return 0;
  const paid = payment(rate, periods, present, future, atStart);
  const owed = futureValue(rate, period - 1 - (atStart ? 1 : 0), paid, present, atStart);
  return (atStart ? owed - paid : owed) * rate;
}

/** What of a payment pays back; worked out by itself, as the difference of payment and interest would lose digits. */
function repayment(
  rate: number,
  period: number,
  periods: number,
  present: number,
  future: number,
  atStart: boolean,
): number {
  if (rate === 0 || (atStart && period === 1)) return payment(rate, periods, present, future, atStart);
  const first = (-rate * (present + future)) / (growth(rate, periods) - 1);
  return first * growth(rate, period - (atStart ? 2 : 1));
}

function cumulated(
  loan: readonly Exclude<Scalar, CellError>[],
  part: (paid: number, interestOf: number) => number,
): number {
  const [rate = 0, periods = 0, present = 0, from = 0, to = 0, type = 0] = loan.map((one) =>
    strictNumber(one),
  );
  const [first, last] = [Math.ceil(from), Math.trunc(to)];
  if (rate <= 0 || periods <= 0 || present <= 0 || from < 1 || to < from || to > periods)
    return raise('#NUM!');
  if (type !== 0 && type !== 1) return raise('#NUM!');
  const atStart = type === 1;
  const paid = payment(rate, periods, present, 0, atStart);
  let sum = 0;
  for (let period = first; period <= last; period++) {
    sum += part(paid, interest(rate, period, periods, present, 0, atStart));
  }
  return sum;
}

/** Newton's steps to where a value is 0, from a guess; undefined where they do not settle. */
function settle(value: (rate: number) => number, guess: number): number | undefined {
  let rate = guess;
  for (let i = 0; i < 100; i++) {
    const here = value(rate);
    const width = 1e-6 * Math.max(1e-3, Math.abs(rate));
    const slope = (value(rate + width) - value(rate - width)) / (2 * width);
    if (!Number.isFinite(here) || !Number.isFinite(slope) || slope === 0)
      return here === 0 ? rate : undefined;
    const next = rate - here / slope;
    if (Math.abs(next - rate) <= 1e-14 * Math.max(1, Math.abs(next))) return next;
    rate = next <= -1 ? (rate - 1) / 2 : next;
  }
  return undefined;
}

/** Rates tried in turn where the steps from the guess do not settle. */
const GUESSES = [0.1, 0.01, 0.5, -0.1, -0.5, 1, -0.9, 3, 10, -0.99];

function rateOf(value: (rate: number) => number, guess: number): number {
  for (const start of [guess, ...GUESSES]) {
    const found = settle(value, start);
    if (found !== undefined && found > -1) return found;
  }
  return raise('#NUM!');
}

const worth = (flows: readonly number[], rate: number): number =>
  flows.reduceRight((sum, flow) => sum / (1 + rate) + flow, 0);

function internalRate(flows: readonly number[], guess: number): number {
  if (!flows.some((flow) => flow > 0) || !flows.some((flow) => flow < 0)) return raise('#NUM!');
  return rateOf((rate) => worth(flows, rate), guess);
}

interface Flow {
  readonly amount: number;
  readonly day: number;
}
function flowsOf(context: Context, amounts: ArrayValue, days: ArrayValue): Flow[] {
  const when = days.dense();
  if (amounts.size !== days.size) return raise('#NUM!');
  return amounts.dense().flatMap((amount, i) => {
    const day = when[i] ?? null;
    if (amount === null && day === null) return [];
    return {
      amount: strictNumber(amount, context.date1904),
      day: Math.floor(checkedSerial(strictNumber(day, context.date1904), context.date1904)),
    };
  });
}
const datedWorth = (flows: readonly Flow[], rate: number): number => {
  const first = flows[0]?.day ?? 0;
  return flows.reduce((sum, { amount, day }) => sum + amount / (1 + rate) ** ((day - first) / 365), 0);
};

function modifiedRate(flows: readonly number[], borrowing: number, lending: number): number {
  const n = flows.length;
  if (!flows.some((flow) => flow < 0)) return raise('#DIV/0!');
  let [gained, spent] = [0, 0];
  flows.forEach((flow, i) => {
    if (flow > 0) gained += flow * (1 + lending) ** (n - 1 - i);
    else spent += flow / (1 + borrowing) ** i;
  });
  return (gained / -spent) ** (1 / (n - 1)) - 1;
}

/** Depreciation by a fixed share of what is left; the share is rounded to three places, as ever. */
function fixedDeclining(cost: number, salvage: number, life: number, period: number, months: number): number {
  const month = Math.trunc(months);
  if (cost < 0 || salvage < 0 || life <= 0 || period < 1 || month < 1 || month > 12) return raise('#NUM!');
  if (Math.trunc(period) > life + (month < 12 ? 1 : 0)) return raise('#NUM!');
  if (cost === 0) return 0;
  const rate = roundTo(1 - (salvage / cost) ** (1 / life), 3);
  const first = (cost * rate * month) / 12;
  const which = Math.trunc(period);
  if (which === 1) return first;
  const left = (cost - first) * (1 - rate) ** (which - 2);
  return which > life ? (left * rate * (12 - month)) / 12 : left * rate;
}

function doubleDeclining(
  cost: number,
  salvage: number,
  life: number,
  period: number,
  factor: number,
): number {
  const rate = Math.min(1, factor / life);
  const before = rate === 1 ? (period === 1 ? cost : 0) : cost * (1 - rate) ** (period - 1);
  const after = rate === 1 ? 0 : cost * (1 - rate) ** period;
  return Math.max(0, after < salvage ? before - salvage : before - after);
}

/** What is written off from the start of life to a time, changing to equal parts once these are larger. */
function writtenOff(
  context: Context,
  cost: number,
  salvage: number,
  life: number,
  left: number,
  until: number,
  factor: number,
): number {
  const end = Math.ceil(until);
  let rest = cost - salvage;
  let equal: number | undefined;
  let sum = 0;
  for (let period = 1; period <= end; period++) {
    context.tick();
    let part = equal;
    if (part === undefined) {
      const declining = doubleDeclining(cost, salvage, life, period, factor);
      const linear = rest / (left - period + 1);
      if (linear > declining) part = equal = linear;
      else {
        part = declining;
        rest -= declining;
      }
    }
    sum += period === end ? part * (until + 1 - end) : part;
  }
  return sum;
}

function variableDeclining(
  context: Context,
  cost: number,
  salvage: number,
  life: number,
  from: number,
  to: number,
  factor: number,
  staysDeclining: boolean,
): number {
  if (cost < 0 || salvage < 0 || life <= 0 || from < 0 || to < from || to > life || factor < 0)
    return raise('#NUM!');
  if (staysDeclining) {
    let sum = 0;
    for (let period = Math.floor(from) + 1; period <= Math.ceil(to); period++) {
      context.tick();
      const share = Math.min(to, period) - Math.max(from, period - 1);
      sum += share * doubleDeclining(cost, salvage, life, period, factor);
    }
    return sum;
  }
  const off = (value: number, left: number, until: number) =>
    writtenOff(context, value, salvage, life, left, until, factor);
  const [first, last] = [Math.floor(from), Math.ceil(to)];
  let beyond = 0;
  if (from > first) beyond += (from - first) * off(cost - off(cost, life, first), life - first, 1);
  if (to < last) beyond += (last - to) * off(cost - off(cost, life, last - 1), life - last + 1, 1);
  return off(cost - off(cost, life, first), life - first, last - first) - beyond;
}

/** Bills of the treasury: a year of 360 days, a life of a year at most. */
function daysOfBill(context: Context, settlement: Value, maturity: Value): number {
  const [from, to] = [settlement, maturity].map((value) =>
    Math.floor(checkedSerial(strictNumber(value as never, context.date1904), context.date1904)),
  ) as [number, number];
  const days = to - from;
  return days <= 0 || to > addMonths(from, 12, context.date1904) ? raise('#NUM!') : days;
}

const positive = (value: number): number => (value <= 0 ? raise('#NUM!') : value);

const fractional = (
  name: string,
  convert: (whole: number, part: number, denominator: number, width: number) => number,
) =>
  plain(name, 'ff', (value, fraction) => {
    const number = strictNumber(value);
    const denominator = Math.trunc(strictNumber(fraction));
    if (denominator < 0) return raise('#NUM!');
    if (denominator === 0) return raise('#DIV/0!');
    const whole = Math.trunc(number);
    return convert(whole, number - whole, denominator, 10 ** Math.ceil(Math.log10(denominator)));
  });

/** Numbers as SUM sees them, row by row. */
const inOrder = (context: Context, value: Value): number[] =>
  numbersIn(context, [value instanceof Reference ? context.array(value) : value]);

/** Flows as they stand, of an array or of cells; text and truth values in cells are passed by. */
const flows = (context: Context, value: Value): number[] =>
  context
    .array(value)
    .dense()
    .flatMap((flow) => {
      if (flow instanceof CellError) return raise('#VALUE!');
      return typeof flow === 'number' ? [flow] : [];
    });

export const finance = [
  plain('PMT', 'nnnn?n?', (rate, periods, present, future = 0, type = 0) =>
    payment(rate, periods, present, future, isStart(type)),
  ),
  plain('FV', 'nnnn?n?', (rate, periods, paid, present = 0, type = 0) =>
    futureValue(rate, periods, paid, present, isStart(type)),
  ),
  plain('PV', 'nnnn?n?', (rate, periods, paid, future = 0, type = 0) =>
    presentValue(rate, periods, paid, future, isStart(type)),
  ),
  plain('NPER', 'nnnn?n?', (rate, paid, present, future = 0, type = 0) =>
    rate <= -1 ? raise('#NUM!') : periodsOf(rate, paid, present, future, isStart(type)),
  ),
  plain('RATE', 'nnnn?n?n?', (periods, paid, present, future = 0, type = 0, guess = 0.1) => {
    if (periods <= 0 || guess <= -1) return raise('#NUM!');
    return rateOf((rate) => futureValue(rate, periods, paid, present, isStart(type)) - future, guess);
  }),
  plain('IPMT', 'nnnnn?n?', (rate, period, periods, present, future = 0, type = 0) =>
    interest(rate, period, periods, present, future, isStart(type)),
  ),
  plain('PPMT', 'nnnnn?n?', (rate, period, periods, present, future = 0, type = 0) => {
    if (period < 1 || period >= periods + 1) return raise('#NUM!');
    return repayment(rate, period, periods, present, future, isStart(type));
  }),
  plain('CUMIPMT', 'ffffff', (...loan) => cumulated(loan, (_, part) => part)),
  plain('CUMPRINC', 'ffffff', (...loan) => cumulated(loan, (paid, part) => paid - part)),
  plain('ISPMT', 'nnnn', (rate, period, periods, present) =>
    periods === 0 ? raise('#DIV/0!') : -present * rate * (1 - period / periods),
  ),
  inContext('NPV', 'n(r)+', (context, rate, ...args) =>
    rate === -1
      ? raise('#DIV/0!')
      : worth(
          args.flatMap((arg) => inOrder(context, arg)),
          rate,
        ) /
        (1 + rate),
  ),
  inContext('IRR', 'An?', (context, values, guess = 0.1) =>
    guess <= -1 ? raise('#VALUE!') : internalRate(flows(context, values), guess),
  ),
  inContext('MIRR', 'Ann', (context, values, borrowing, lending) =>
    modifiedRate(flows(context, values), borrowing, lending),
  ),
  inContext('XNPV', 'faa', (context, yearly, amounts, days) => {
    const rate = strictNumber(yearly);
    const dated = flowsOf(context, amounts, days);
    if (rate <= 0 || dated.some(({ day }) => day < (dated[0]?.day ?? 0))) return raise('#NUM!');
    return datedWorth(dated, rate);
  }),
  inContext('XIRR', 'aan?', (context, amounts, days, guess = 0.1) => {
    const dated = flowsOf(context, amounts, days);
    if (guess <= -1 || dated.some(({ day }) => day < (dated[0]?.day ?? 0))) return raise('#NUM!');
    if (!dated.some(({ amount }) => amount > 0) || !dated.some(({ amount }) => amount < 0))
      return raise('#NUM!');
    return rateOf((rate) => datedWorth(dated, rate), guess);
  }),
  plain('SLN', 'nnn', (cost, salvage, life) => (life === 0 ? raise('#DIV/0!') : (cost - salvage) / life)),
  plain('SYD', 'nnnn', (cost, salvage, life, period) => {
    if (life <= 0 || period < 1 || period > life || salvage < 0) return raise('#NUM!');
    return ((cost - salvage) * (life - period + 1) * 2) / (life * (life + 1));
  }),
  plain('DB', 'nnnnn?', (cost, salvage, life, period, months = 12) =>
    fixedDeclining(cost, salvage, life, period, months),
  ),
  plain('DDB', 'nnnnn?', (cost, salvage, life, period, factor = 2) => {
    if (cost < 0 || salvage < 0 || life <= 0 || period < 1 || period > life || factor <= 0)
      return raise('#NUM!');
    return doubleDeclining(cost, salvage, life, period, factor);
  }),
  inContext('VDB', 'nnnnnn?b?', (context, cost, salvage, life, from, to, factor = 2, stays = false) =>
    variableDeclining(context, cost, salvage, life, from, to, factor, stays),
  ),
  plain('EFFECT', 'ff', (nominal, periods) => {
    const [rate, n] = [strictNumber(nominal), Math.trunc(strictNumber(periods))];
    return rate <= 0 || n < 1 ? raise('#NUM!') : (1 + rate / n) ** n - 1;
  }),
  plain('NOMINAL', 'ff', (effective, periods) => {
    const [rate, n] = [strictNumber(effective), Math.trunc(strictNumber(periods))];
    return rate <= 0 || n < 1 ? raise('#NUM!') : ((1 + rate) ** (1 / n) - 1) * n;
  }),
  plain(
    'PDURATION',
    'nnn',
    (rate, present, future) => Math.log(positive(future) / positive(present)) / Math.log1p(positive(rate)),
  ),
  plain('RRI', 'nnn', (periods, present, future) =>
    present === 0 ? raise('#NUM!') : (future / present) ** (1 / positive(periods)) - 1,
  ),
  plain('FVSCHEDULE', 'na', (principal, rates) =>
    rates.dense().reduce<number>((sum, rate) => {
      if (rate instanceof CellError) return raise(rate);
      return sum * (1 + (rate === null ? 0 : strictNumber(rate)));
    }, principal),
  ),
  fractional('DOLLARDE', (whole, part, denominator, width) => whole + (part * width) / denominator),
  fractional('DOLLARFR', (whole, part, denominator, width) => whole + (part * denominator) / width),
  inContext('TBILLPRICE', 'fff', (context, from, to, discount) => {
    const price = 100 * (1 - (positive(toNumber(discount)) * daysOfBill(context, from, to)) / 360);
    return price < 0 ? raise('#NUM!') : price;
  }),
  inContext('TBILLYIELD', 'fff', (context, from, to, price) => {
    const paid = positive(toNumber(price));
    return ((100 - paid) / paid) * (360 / daysOfBill(context, from, to));
  }),
  inContext('TBILLEQ', 'fff', (context, from, to, discount) => {
    const rate = positive(toNumber(discount));
    const days = daysOfBill(context, from, to);
    if (days <= 182) return (365 * rate) / (360 - rate * days);
    // Longer bills: the yield that pays interest twice a year.
    const price = (100 - (rate * days * 100) / 360) / 100;
    const year = days === 366 ? 366 : 365;
    const term = days / year;
    return (-2 * term + 2 * Math.sqrt(term ** 2 - (2 * term - 1) * (1 - 1 / price))) / (2 * term - 1);
  }),
];
