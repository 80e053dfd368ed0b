import { fromMemory, type Source, secondHand } from '../core/define';
import type { Kind } from '../core/quantity';
import { type Named, nameFinder } from './names';

/**
 * Resins. Every value has its own source, the letter after it. Shrinkage is measured at a 3.2 mm wall: it falls with packing
 * pressure and rises with the wall, so a low-pressure press sits at or above the top of the range. Diffusivity is the effective
 * one and not k/(ρ·c): the two differ by half to one and a half times, as latent heat is folded in.
 */
const SOURCES: Readonly<Record<string, Source>> = {
  g: secondHand('general molding guide, plastic-industry.com/processing-guidelines'),
  c: secondHand(
    'R. J. Crawford, Plastics Engineering, table of properties, read as a scan with damaged digits',
  ),
  v: secondHand('vent depths, viewmold.com venting standards'),
  t: secondHand('table of plastics, greensutra.in/greenpedia'),
  m: fromMemory('handbook ranges (Rosato, Menges, Osswald)'),
};

/** A property: kind of quantity, and how its printed value becomes SI: times, over, plus. */
interface Column {
  readonly kind: Kind;
  readonly times?: number;
  readonly over?: number;
  readonly plus?: number;
}

// In the order of a row; printed in %, kg/m³, W/(m·K), J/(kg·K), mm²/s, °C, MPa, –, mm, MPa, 1e-6/K, –.
const COLUMNS = {
  shrinkage: { kind: 'ratio', over: 100 },
  density: { kind: 'density' },
  meltDensity: { kind: 'density' },
  conductivity: { kind: 'conductivity' },
  specificHeat: { kind: 'specificHeat' },
  diffusivity: { kind: 'diffusivity', over: 1e6 },
  melt: { kind: 'temperature', plus: 273.15 },
  mold: { kind: 'temperature', plus: 273.15 },
  eject: { kind: 'temperature', plus: 273.15 },
  noFlow: { kind: 'temperature', plus: 273.15 },
  modulus: { kind: 'pressure', times: 1e6 },
  ejectModulus: { kind: 'pressure', times: 1e6 },
  friction: { kind: 'ratio' },
  vent: { kind: 'length', over: 1000 },
  cavityPressure: { kind: 'pressure', times: 1e6 },
  expansion: { kind: 'expansion', over: 1e6 },
  flowRatio: { kind: 'ratio' },
} as const satisfies Readonly<Record<string, Column>>;

export type ResinColumn = keyof typeof COLUMNS;
const NAMES = Object.keys(COLUMNS) as ResinColumn[];

export interface ResinRange {
  /** SI; equal where the source prints one value. */
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

export interface Resin extends Named {
  readonly structure: string;
  readonly values: Readonly<Record<ResinColumn, ResinRange>>;
  readonly note?: string;
}

// name and aliases; structure; shrinkage, density, melt density, k, c, diffusivity, melt, mold, eject, no-flow, modulus at 23 °C
// and at ejection, friction, vent, cavity pressure, expansion, flow length over thickness; note.
// prettier-ignore
const ROWS: readonly (readonly [names: string, structure: string, values: string, note?: string])[] = [
  ['PP|polypropylene', 'semi-crystalline',
   '1.2..2.4g 905c  740m  0.2c  2000c 0.065c 191..274g 21..49g  90m  130..165m 1500m  500m  0.2..0.5m   0.0127..0.0305v 20..45m 81..100t 150..300m',
   'Diffusivity is 0.59 of k/(ρ·c): latent heat is folded in.'],
  ['HDPE|PE|polyethylene|high density polyethylene', 'semi-crystalline',
   '1.5..5g   950c  750m  0.25c 2200c 0.157c 182..274g 16..43g  80m  115..130m 1000m  250m  0.1..0.4m   0.0127..0.0305v 20..45m 120c    150..250m',
   'The guide has one row for all PE; handbooks give 1.5 to 3 % for HDPE and an effective diffusivity of 0.07 to 0.09 mm²/s.'],
  ['LDPE|PE|polyethylene|low density polyethylene', 'semi-crystalline',
   '1.5..5g   920c  760m  0.24c 2200c 0.117c 182..274g 16..43g  65m  95..110m  200m   60m   0.2..0.6m   0.0127..0.0305v 15..35m 200c    200..300m',
   'Handbooks give 1.5 to 3 %.'],
  ['PS|GPPS|polystyrene|styrene', 'amorphous',
   '0.3..0.5g 1050c 950m  0.15c 1300c 0.06c  204..249g 21..49g  80m  95..110m  3200m  1800m 0.3..0.5m   0.0178..0.0305v 25..45m 80c     150..250m'],
  ['HIPS|high impact polystyrene', 'amorphous',
   '0.5..0.8g 1050g 945m  0.16m 1400m 0.08m  204..246g 16..82g  80m  95..110m  2000m  1200m 0.3..0.5m   0.0203..0.0305v 25..45m 90m     150..220m'],
  ['ABS', 'amorphous',
   '0.5..0.9g 1040c 940m  0.25c 1300c 0.17c  199..282g 38..82g  85m  105..120m 2300m  1500m 0.3..0.5m   0.0254..0.0381v 30..55m 90c     120..200m',
   'Practice takes 0.08 to 0.10 mm²/s for the effective diffusivity.'],
  ['SAN', 'amorphous',
   '0.3..0.7m 1080c 970m  0.17c 1300c 0.081c 200..260m 40..80m  85m  105..120m 3600m  2000m 0.3..0.5m   0.0254..0.0381v 30..55m 70c     120..180m'],
  ['PMMA|acrylic', 'amorphous',
   '0.2..0.8g 1180c 1070m 0.2c  1500c 0.109c 216..266g 66..93g  85m  105..120m 3200m  1800m 0.4..0.6m   0.0381..0.0508v 40..70m 70c     100..150m'],
  ['PC|polycarbonate', 'amorphous',
   '0.5..0.8g 1200g 1050m 0.2c  1200c 0.147c 271..321g 66..107g 125m 145..155m 2350m  1700m 0.35..0.55m 0.0381..0.0635v 40..80m 65c     60..120m'],
  ['PC/ABS|PCABS|ABS/PC', 'amorphous',
   '0.6..0.9g 1130g 1000m 0.22m 1300m 0.12m  252..294g 60..99g  105m 125..135m 2400m  1600m 0.35..0.5m  0.0254..0.0381m 35..70m 75m     80..150m'],
  ['PA6|nylon 6|nylon|polyamide|PA', 'semi-crystalline',
   '1.5..2.5g 1130g 960m  0.25m 1700m 0.08m  238..288g 71..104g 110m 180..200m 2800m  600m  0.3..0.5m   0.0076..0.0127v 30..60m 85m     150..300m',
   'Dry as molded.'],
  ['PA66|nylon 66|nylon 6/6|nylon|polyamide|PA', 'semi-crystalline',
   '1.5..2.2g 1140c 970m  0.24c 1700c 0.101m 271..304g 71..116g 120m 215..235m 3000m  700m  0.3..0.5m   0.0076..0.0127v 30..60m 90c     150..300m'],
  ['PA66-GF30|nylon 66 GF30|PA66 30GF', 'semi-crystalline, filled',
   '0.2..0.6m 1380c 1190m 0.52c 1600c 0.133c 275..300m 80..110m 160m 215..235m 9500m  4500m 0.3..0.5m   0.0076..0.0127v 40..80m 30c     100..200m',
   'Shrinkage depends on direction: 0.2 to 0.4 % along the flow, 0.6 to 1.0 % across; the source has 33 % glass.'],
  ['POM|acetal|polyacetal', 'semi-crystalline',
   '1.8..2.5g 1410c 1200m 0.2c  1500c 0.072c 193..221g 82..104g 110m 145..160m 2800m  1200m 0.2..0.35m  0.0127..0.0254v 40..80m 95c     100..200m',
   'Decomposes to formaldehyde above 230 °C: the upper melt temperature is a limit and not a target.'],
  ['PBT', 'semi-crystalline',
   '0.1..2.3g 1310g 1120m 0.25m 1600m 0.09m  232..254g 66..121g 120m 200..215m 2500m  900m  0.3..0.45m  0.0127..0.0178v 35..70m 90m     120..200m',
   'The shrinkage range spans unfilled (1.5 to 2.3 %) and filled (0.1 to 0.8 %).'],
  ['PET|polyester', 'semi-crystalline',
   '0.1..2.3g 1360c 1160m 0.2c  1000c 0.09m  271..310g 88..121g 120m 220..240m 2800m  1000m 0.3..0.45m  0.0127..0.0178v 35..70m 90c     100..200m',
   'The shrinkage range spans filled and unfilled; amorphous from a cold mold 0.2 to 0.5 %.'],
  ['TPU|polyurethane', 'elastomer',
   '0.5..2m   1200m 1080m 0.2m  1800m 0.09m  190..225m 20..50m  50m  90..120m  50m    20m   0.5..1m     0.0102..0.0203v 20..50m 150m    100..200m'],
  ['TPE|TPE (SEBS)|SEBS', 'elastomer',
   '0.8..5g   900m  780m  0.18m 1900m 0.09m  177..260g 16..79g  50m  80..110m  10m    5m    0.6..1.2m   0.0127..0.0178v 15..40m 150m    150..250m',
   'Density 0.875 to 1.34 g/cm³ by grade.'],
  ['LCP', 'liquid crystal, filled',
   '0..0.8g   1620m 1500m 0.4m  1000m 0.2m   349..377g 29..138g 200m 270..300m 12000m 6000m 0.2..0.4m   0.0127..0.0178v 30..70m 10m     200..400m',
   'Flashes above about 0.013 mm; its melt temperature is beyond most bench barrels.'],
  ['PVC|rigid PVC|PVC rigid', 'amorphous',
   '0.2..0.6m 1400c 1260m 0.16c 900c  0.116m 170..205m 20..60m  65m  75..85m   2900m  1800m 0.4..0.6m   0.0152..0.0254v 40..80m 70c     80..150m',
   'Gives off hydrochloric acid when overheated: use stainless steel, and air.'],
];

function range(column: ResinColumn, cell: string): ResinRange {
  const { times = 1, over = 1, plus = 0 }: Column = COLUMNS[column];
  const [low = NaN, high = low] = cell
    .slice(0, -1)
    .split('..')
    .map((value) => (Number(value) * times) / over + plus);
  return { low, high, source: SOURCES[cell.slice(-1)] as Source };
}

export const RESINS: readonly Resin[] = ROWS.map(([names, structure, cells, note]) => {
  const [name = '', ...aliases] = names.split('|');
  const values = cells
    .split(/ +/)
    .map((cell, i) => [NAMES[i], range(NAMES[i] as ResinColumn, cell)] as const);
  return {
    name,
    aliases,
    structure,
    values: Object.fromEntries(values) as Readonly<Record<ResinColumn, ResinRange>>,
    ...(note === undefined ? {} : { note }),
  };
});

/** The resin of a name: `PP`, `nylon 6`, `acetal`. */
export const findResin = nameFinder('resin', RESINS);

/** Which value of a range a word means; `middle` where the design value lies between. */
type End = 'low' | 'high' | 'middle';

/** The property words of a worksheet. A range has a word for its design value and one for each end. */
// prettier-ignore
const PROPERTIES = {
  'shrinkage': ['shrinkage', 'middle'], 'shrinkage low': ['shrinkage', 'low'], 'shrinkage high': ['shrinkage', 'high'],
  'density': ['density', 'low'], 'melt density': ['meltDensity', 'low'],
  'conductivity': ['conductivity', 'low'], 'specific heat': ['specificHeat', 'low'], 'diffusivity': ['diffusivity', 'low'],
  'melt temperature': ['melt', 'low'], 'melt temperature high': ['melt', 'high'],
  'mold temperature': ['mold', 'low'], 'mold temperature high': ['mold', 'high'],
  'eject temperature': ['eject', 'low'], 'no-flow temperature': ['noFlow', 'low'],
  'modulus': ['modulus', 'low'], 'eject modulus': ['ejectModulus', 'low'],
  'friction': ['friction', 'middle'], 'friction low': ['friction', 'low'], 'friction high': ['friction', 'high'],
  'vent depth': ['vent', 'low'], 'vent depth high': ['vent', 'high'],
  'cavity pressure': ['cavityPressure', 'middle'], 'cavity pressure low': ['cavityPressure', 'low'],
  'cavity pressure high': ['cavityPressure', 'high'],
  'expansion': ['expansion', 'middle'], 'flow ratio': ['flowRatio', 'low'],
} as const satisfies Readonly<Record<string, readonly [ResinColumn, End]>>;

export type ResinProperty = keyof typeof PROPERTIES;
export const RESIN_PROPERTIES = Object.keys(PROPERTIES) as readonly ResinProperty[];
export const resinKind = (property: ResinProperty): Kind => COLUMNS[PROPERTIES[property][0]].kind;

/** A property's value in SI, with where it comes from. */
export function resinValue(
  resin: Resin,
  property: ResinProperty,
): { readonly value: number; readonly source: Source } {
  const [column, end] = PROPERTIES[property];
  const { low, high, source } = resin.values[column];
  return { value: end === 'middle' ? (low + high) / 2 : end === 'low' ? low : high, source };
}
