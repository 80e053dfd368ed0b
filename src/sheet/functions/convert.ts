/**
 * CONVERT's units. Its codes are the spreadsheet's own; what a code stands for comes from the project's units where
 * these have it, else from the definition that stands beside it.
 */
import { convert } from '../../core/quantity';
import { UNITS } from '../../core/units';
import { ERRORS, raise } from '../values';
import { strictNumber } from './numbersIn';
import { plain } from './spec';

interface Unit {
  readonly kind: string;
  readonly factor: number;
  readonly offset: number;
  /** May stand behind a prefix; its power, as a prefix of an area counts twice. */
  readonly power: number;
  readonly isBinary: boolean;
}

const known = (symbol: string): number => {
  for (const units of Object.values(UNITS)) {
    const found = units.find((unit) => unit.symbol === symbol);
    if (found !== undefined) return found.factor;
  }
  throw new Error(`The unit ${symbol} is not known.`);
};

const INCH = known('in');
const FOOT = known('ft');
const YARD = 3 * FOOT;
const MILE = 5280 * FOOT;
const SURVEY_MILE = 5280 * (1200 / 3937);
const NAUTICAL = 1852;
const LIGHT_YEAR = 299_792_458 * 365.25 * 86_400;
const PARSEC = (149_597_870_700 * 648_000) / Math.PI;
const POUND_FORCE = known('lbf');
const GRAVITY = known('kgf');
const POUND = known('lb');
const ANGSTROM = 1e-10;
const PICA = INCH / 72;
const GALLON = 231 * INCH ** 3;
const IMPERIAL_GALLON = 4.54609e-3;
const HORSEPOWER = 550 * FOOT * POUND_FORCE;
const HOUR = 3600;

const units = new Map<string, Unit>();

type Entry = readonly [codes: string, factor: number, offset?: number];

/** `power` 0: no prefixes. Codes of one unit stand in one text, with blanks between them. */
function add(kind: string, power: number, entries: readonly Entry[], isBinary = false): void {
  for (const [codes, factor, offset = 0] of entries) {
    for (const code of codes.split(' ')) units.set(code, { kind, factor, offset, power, isBinary });
  }
}

add('mass', 1, [
  ['g', 1e-3],
  ['u', 1.660538782e-27], // CODATA 2006, as the spreadsheet has it; memory
]);
add('mass', 0, [
  ['sg', POUND_FORCE / FOOT],
  ['lbm', POUND],
  ['ozm', POUND / 16],
  ['grain', POUND / 7000],
  ['cwt shweight', 100 * POUND],
  ['uk_cwt lcwt hweight', 112 * POUND],
  ['stone', 14 * POUND],
  ['ton', 2000 * POUND],
  ['uk_ton LTON brton', 2240 * POUND],
]);
const lengths: readonly Entry[] = [
  ['m', 1],
  ['ang', ANGSTROM],
];
add('length', 1, [...lengths, ['ly', LIGHT_YEAR], ['parsec pc', PARSEC]]);
add('length', 0, [
  ['mi', MILE],
  ['Nmi', NAUTICAL],
  ['in', INCH],
  ['ft', FOOT],
  ['yd', YARD],
  ['ell', 45 * INCH],
  ['Picapt Pica', PICA],
  ['pica', INCH / 6],
  ['survey_mi', SURVEY_MILE],
]);
add('time', 1, [['sec s', 1]]);
add('time', 0, [
  ['yr', 365.25 * 86_400],
  ['day d', 86_400],
  ['hr', HOUR],
  ['mn min', 60],
]);
add('pressure', 1, [
  ['Pa p', 1],
  ['atm at', 101_325],
  ['mmHg', 133.322],
]);
add('pressure', 0, [
  ['psi', POUND_FORCE / INCH ** 2],
  ['Torr', 101_325 / 760],
]);
add('force', 1, [
  ['N', 1],
  ['dyn dy', 1e-5],
  ['pond', GRAVITY / 1000],
]);
add('force', 0, [['lbf', POUND_FORCE]]);
add('energy', 1, [
  ['J', 1],
  ['e', 1e-7],
  ['c', 4.184],
  ['cal', 4.1868],
  ['eV ev', 1.602176487e-19], // CODATA 2006, as the spreadsheet has it; memory
  ['Wh wh', HOUR],
]);
add('energy', 0, [
  ['HPh hh', HORSEPOWER * HOUR],
  ['flb', FOOT * POUND_FORCE],
  ['BTU btu', 1055.05585262],
]);
add('power', 1, [['W w', 1]]);
add('power', 0, [
  ['HP h', HORSEPOWER],
  ['PS', 75 * GRAVITY],
]);
add('magnetism', 1, [
  ['T', 1],
  ['ga', 1e-4],
]);
add('temperature', 1, [['K kel', 1]]);
add('temperature', 0, [
  ['C cel', 1, 273.15],
  ['F fah', 5 / 9, 459.67 * (5 / 9)],
  ['Rank', 5 / 9],
  ['Reau', 1.25, 273.15],
]);
add('volume', 1, [
  ['l L lt', 1e-3],
  ['uk_pt', IMPERIAL_GALLON / 8],
]);
add(
  'volume',
  3,
  lengths.map(([codes, factor]): Entry => [raised(codes, 3), factor ** 3]),
);
add('volume', 0, [
  ['tsp', GALLON / 768],
  ['tspm', 5e-6],
  ['tbs', GALLON / 256],
  ['oz', GALLON / 128],
  ['cup', GALLON / 16],
  ['pt us_pt', GALLON / 8],
  ['qt', GALLON / 4],
  ['uk_qt', IMPERIAL_GALLON / 4],
  ['gal', GALLON],
  ['uk_gal', IMPERIAL_GALLON],
  ['barrel', 42 * GALLON],
  ['bushel', 2150.42 * INCH ** 3],
  [raised('ft', 3), FOOT ** 3],
  [raised('in', 3), INCH ** 3],
  [raised('mi', 3), MILE ** 3],
  [raised('ly', 3), LIGHT_YEAR ** 3],
  [raised('yd', 3), YARD ** 3],
  [raised('Nmi', 3), NAUTICAL ** 3],
  [raised('Picapt Pica', 3), PICA ** 3],
  ['GRT regton', 100 * FOOT ** 3],
  ['MTON', 40 * FOOT ** 3],
]);
add(
  'area',
  2,
  lengths.map(([codes, factor]): Entry => [raised(codes, 2), factor ** 2]),
);
add('area', 1, [['ar', 100]]);
add('area', 0, [
  ['uk_acre', 4840 * YARD ** 2],
  ['us_acre', SURVEY_MILE ** 2 / 640],
  ['ha', 1e4],
  [raised('ft', 2), FOOT ** 2],
  [raised('in', 2), INCH ** 2],
  [raised('yd', 2), YARD ** 2],
  [raised('mi', 2), MILE ** 2],
  [raised('ly', 2), LIGHT_YEAR ** 2],
  [raised('Nmi', 2), NAUTICAL ** 2],
  [raised('Picapt Pica', 2), PICA ** 2],
  ['Morgen', 2500],
]);
add(
  'information',
  1,
  [
    ['bit', 1],
    ['byte', 8],
  ],
  true,
);
add('speed', 1, [
  ['m/s m/sec', 1],
  ['m/h m/hr', 1 / HOUR],
  ['mph', MILE / HOUR],
]);
add('speed', 0, [
  ['admkn', (6080 * FOOT) / HOUR],
  ['kn', NAUTICAL / HOUR],
]);

/** ft → ft2 ft^2 */
function raised(codes: string, power: number): string {
  return codes
    .split(' ')
    .flatMap((code) => [`${code}${power}`, `${code}^${power}`])
    .join(' ');
}

const PREFIXES: Readonly<Record<string, number>> = {
  Y: 1e24,
  Z: 1e21,
  E: 1e18,
  P: 1e15,
  T: 1e12,
  G: 1e9,
  M: 1e6,
  k: 1e3,
  h: 1e2,
  da: 10,
  e: 10,
  d: 0.1,
  c: 1e-2,
  m: 1e-3,
  u: 1e-6,
  n: 1e-9,
  p: 1e-12,
  f: 1e-15,
  a: 1e-18,
  z: 1e-21,
  y: 1e-24,
};
const BINARY: Readonly<Record<string, number>> = Object.fromEntries(
  ['ki', 'Mi', 'Gi', 'Ti', 'Pi', 'Ei', 'Zi', 'Yi'].map((prefix, i) => [prefix, 1024 ** (i + 1)]),
);

/** All that a code may stand for: "pc" is a parsec, but also a pico-calorie. */
function unitsOf(code: string): Unit[] {
  const found: Unit[] = [];
  const whole = units.get(code);
  if (whole !== undefined) found.push(whole);
  for (const length of [1, 2]) {
    const unit = units.get(code.slice(length));
    const prefix = code.slice(0, length);
    if (unit === undefined || unit.power === 0) continue;
    const size = PREFIXES[prefix] ?? (unit.isBinary ? BINARY[prefix] : undefined);
    if (size !== undefined) found.push({ ...unit, factor: unit.factor * size ** unit.power });
  }
  return found;
}

export const CONVERT = plain('CONVERT', 'ftt', (given, from, to) => {
  const value = strictNumber(given);
  const targets = unitsOf(to);
  for (const source of unitsOf(from)) {
    const target = targets.find(({ kind }) => kind === source.kind);
    if (target === undefined) continue;
    if (from === to) return value;
    const result = convert(value, source, target);
    return Number.isFinite(result) ? result : raise('#NUM!');
  }
  return ERRORS['#N/A'];
});
