import { fromMemory, type Source, secondHand } from '../core/define';
import type { Kind } from '../core/quantity';
import { Refusal } from '../core/refusal';
import { type Named, nameFinder } from './names';

/** Metals of molds, plates, pins and cutters, room temperature to 100 °C. */

const KINDS = {
  modulus: 'pressure',
  poisson: 'ratio',
  expansion: 'expansion',
  density: 'density',
  conductivity: 'conductivity',
  'specific heat': 'specificHeat',
  yield: 'pressure',
} as const satisfies Readonly<Record<string, Kind>>;

/** The property words of a worksheet. */
export type MetalProperty = keyof typeof KINDS;
export const METAL_PROPERTIES = Object.keys(KINDS) as readonly MetalProperty[];
export const metalKind = (property: MetalProperty): Kind => KINDS[property];

export interface Metal extends Named {
  /** Values in SI: Pa, –, 1/K, kg/m³, W/(m·K), J/(kg·K), Pa. Yield is absent where there is none to rely on. */
  readonly modulus: number;
  readonly poisson: number;
  readonly expansion: number;
  readonly density: number;
  readonly conductivity: number;
  readonly specificHeat: number;
  readonly yield: number | undefined;
  readonly note?: string;
}

const MEMORY = fromMemory('handbook values at room temperature');
const P20_SHEETS = secondHand(
  'P20 data sheets (scribd.com/document/183457132, round-bars.com, zanotowane.pl/1031/1712): E 205 GPa, expansion 12.2 to 12.8 e-6/K, k 29 to 34 W/(m·K), yield 827 to 862 MPa',
);

type Row = readonly [
  name: string,
  aliases: string,
  gigapascals: number,
  poisson: number,
  perMillionPerKelvin: number,
  kgPerCubicMetre: number,
  wattsPerMetreKelvin: number,
  joulesPerKgKelvin: number,
  yieldMegapascals: number | undefined,
  note?: string,
];

// Aliases that several metals share, such as `aluminium`, are refused by naming the metals.
// prettier-ignore
const ROWS: readonly Row[] = [
  ['P20', '1.2311|P20 30 HRC|prehard P20|tool steel|steel', 205, 0.29, 12.8, 7850, 29, 460, 830],
  ['H13', '1.2344|H13 hardened|H13 48 HRC|tool steel|steel', 210, 0.3, 11, 7800, 25, 460, 1400, 'at 48 HRC'],
  ['H13 annealed', '', 210, 0.3, 11, 7800, 25, 460, 380],
  ['420', '420 stainless|420SS|1.2083|stainless|stainless steel|steel', 200, 0.3, 10.5, 7740, 23, 460, 1400, 'at 50 HRC'],
  ['S7', 'S7 tool steel|tool steel|steel', 207, 0.29, 12.4, 7830, 28, 460, 1400],
  ['1018', 'C1018|AISI 1018|S50C|mild steel|plain carbon|low carbon steel|cold rolled steel|steel', 205, 0.29, 11.9, 7850, 50, 486, 350],
  ['6061-T6', '6061|aluminium|aluminum|Al', 68.9, 0.33, 23.6, 2700, 167, 896, 276],
  ['7075-T6', '7075|aluminium|aluminum|Al', 71.7, 0.33, 23.4, 2810, 130, 960, 503, 'loses strength above about 120 °C'],
  ['2024-T351', '2024|aluminium|aluminum|Al', 73.1, 0.33, 22.9, 2780, 121, 875, 324],
  ['brass', 'C360|C36000|360 brass|brass C360', 97, 0.31, 20.5, 8490, 115, 380, 310],
  ['beryllium copper', 'BeCu|C17200|C172|copper beryllium', 128, 0.3, 17, 8250, 110, 420, 1000],
  ['carbide', 'tungsten carbide|cemented carbide', 580, 0.22, 5.5, 14500, 90, 220, undefined, '10 % cobalt; modulus 550 to 650 GPa by grade'],
  ['HSS', 'M2|high speed steel', 210, 0.29, 11, 8160, 21, 420, undefined],
];

export const METALS: readonly Metal[] = ROWS.map(
  ([name, aliases, modulus, poisson, expansion, density, conductivity, specificHeat, limit, note]) => ({
    name,
    aliases: aliases === '' ? [] : aliases.split('|'),
    modulus: modulus * 1e9,
    poisson,
    expansion: expansion / 1e6,
    density,
    conductivity,
    specificHeat,
    yield: limit === undefined ? undefined : limit * 1e6,
    ...(note === undefined ? {} : { note }),
  }),
);

/** The metal of a name or a usual other name. */
export const findMetal = nameFinder('metal', METALS);

const READ_OF_P20: readonly MetalProperty[] = ['modulus', 'expansion', 'conductivity', 'yield'];

/** Where one value of a metal comes from. */
export const metalSource = ({ name }: Metal, property: MetalProperty): Source =>
  name === 'P20' && READ_OF_P20.includes(property) ? P20_SHEETS : MEMORY;

/** A property's value in SI, with where it comes from. */
export function metalValue(
  metal: Metal,
  property: MetalProperty,
): { readonly value: number; readonly source: Source } {
  const value = metal[property === 'specific heat' ? 'specificHeat' : property];
  if (value === undefined)
    throw new Refusal(`is ${property}, which is not in the tables for ${metal.name}`, 'property');
  return { value, source: metalSource(metal, property) };
}
