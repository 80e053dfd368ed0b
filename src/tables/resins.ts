import { commonPractice, fromMemory, secondHand, type Source } from '../core/define';
import type { Kind } from '../core/quantity';
import { materialFinder, type SpelledMaterial } from './materialName';

/**
 * Resins. Every value has its own source, the letter after it. Shrinkage is measured at a 3.2 mm wall: it falls with packing
 * pressure and rises with the wall, so a low-pressure press sits at or above the top of the range. Diffusivity is the effective
 * one and not k/(ρ·c): latent heat and the fall of conduction in the melt are folded in.
 */
const SOURCES: Readonly<Record<string, Source>> = {
  g: secondHand('general molding guide, plastic-industry.com/processing-guidelines'),
  c: secondHand('R. J. Crawford, Plastics Engineering, Table 1.8, read as a scan with damaged digits'),
  v: secondHand('vent depths, viewmold.com venting standards'),
  t: secondHand('table of plastics, greensutra.in/greenpedia'),
  s: secondHand('shrinkage values of an injection molding reference guide, stelray.com/shrinkage_value.htm'),
  k: secondHand(
    'shrinkage and density by resin and filler, diamondmold.com; the same table at scribd.com/document/525435392',
  ),
  a: secondHand(
    'maker’s sheet of a PBT with 30 % glass, akro-plastic.com: ISO 294-4, along the flow and across',
  ),
  f: secondHand('makeitfrom.com, 30 % glass fiber PET'),
  e: commonPractice(
    'effective diffusivity that the cooling of molded parts shows: 0.08 to 0.10 mm²/s for ABS, 0.07 to 0.09 for HDPE; no text that measured it was read',
  ),
  h: fromMemory('usual heat from melt to ejection; sources differ by a third either way'),
  m: fromMemory('handbook ranges (Rosato, Menges, Osswald)'),
};

/** A property: kind of quantity, and how its printed value becomes SI: times, over, plus. */
interface Column {
  readonly kind: Kind;
  readonly times?: number;
  readonly over?: number;
  readonly plus?: number;
}

// In the order of a row; printed in %, kg/m³, W/(m·K), J/(kg·K), mm²/s, °C, MPa, –, mm, MPa, 1e-6/K, –, J/g.
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
  heatContent: { kind: 'heatContent', times: 1000 },
} as const satisfies Readonly<Record<string, Column>>;

export type ResinColumn = keyof typeof COLUMNS;
const NAMES = Object.keys(COLUMNS) as ResinColumn[];

export interface ResinRange {
  /** SI; equal where the source prints one value. */
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

export interface Resin extends SpelledMaterial {
  readonly structure: string;
  readonly values: Readonly<Record<ResinColumn, ResinRange>>;
  /** What to watch for: cautions of every function that uses the row. */
  readonly notes: readonly string[];
}

const FORMALDEHYDE =
  'Above about 230 °C, or held long in the barrel, POM breaks down into formaldehyde gas under pressure: ventilate, keep faces away from the nozzle, purge before a stop, and never let it meet PVC.';

/** Words that say that there is nothing in it. */
const PLAIN = ['unfilled', 'natural', 'neat', 'virgin', 'resin', 'plastic'];
const DRY = (what: string, why: string): string => `Dry ${what} before molding: wet pellets ${why}.`;

// Names, the first the row's own and one that several rows share a family; structure; shrinkage, density, melt density, k, c,
// diffusivity, melt, mold, eject, no-flow, modulus at 23 °C and at ejection, friction, vent, cavity pressure, expansion, flow length
// over thickness, heat content; notes.
// prettier-ignore
const ROWS: readonly (readonly [names: string, structure: string, values: string, ...notes: string[]])[] = [
  ['PP|polypropylene|PP homopolymer|PP homo|PP-H|polypropylene homopolymer', 'semi-crystalline',
   '1.2..2.4g 905c  740m  0.2c  2000c 0.065c 204..260g 21..49g  90m  130..165m 1500m  500m  0.2..0.5m   0.0127..0.0305v 20..45m 81..100t 150..300m 480h'],
  ['PP copolymer|PP copo|PP-C|PP-B|PP-R|polypropylene copolymer|PP impact copolymer|PP random copolymer|impact PP', 'semi-crystalline',
   '1.2..2.4g 900g  740m  0.2m  2000m 0.065m 191..274g 21..49g  85m  125..160m 1100m  350m  0.2..0.5m   0.0127..0.0305v 20..45m 81..100m 150..300m 470h'],
  ['PP-GF30|PP 30% GF|PP 30 GF|PP GF 30|30% glass filled PP', 'semi-crystalline, filled',
   '0.2..0.8k 1130m 950m  0.3m  1600m 0.1m   204..260m 30..60m  110m 130..165m 6000m  3000m 0.2..0.5m   0.0127..0.0305m 25..55m 35m     100..200m 360h',
   'Shrinks less along the flow than across it.'],
  ['HDPE|PE-HD|PEHD|high density polyethylene|high density PE|polyethylene high density|PE|polyethylene|polythene', 'semi-crystalline',
   '1.5..3s   950c  750m  0.25c 2200c 0.08e  182..274g 16..43g  80m  115..130m 1000m  250m  0.1..0.4m   0.0127..0.0305v 20..45m 120c    150..250m 560h'],
  ['LDPE|PE-LD|PELD|low density polyethylene|low density PE|polyethylene low density|PE|polyethylene|polythene', 'semi-crystalline',
   '1.5..3.5s 920c  760m  0.24c 2200c 0.09m  182..274g 16..43g  65m  95..110m  200m   60m   0.2..0.6m   0.0127..0.0305v 15..35m 200c    200..300m 500h'],
  ['PS|GPPS|polystyrene|styrene|crystal styrene|general purpose polystyrene', 'amorphous',
   '0.3..0.5g 1050c 950m  0.15c 1300c 0.06c  204..249g 21..49g  80m  95..110m  3200m  1800m 0.3..0.5m   0.0178..0.0305v 25..45m 80c     150..250m 300h'],
  ['HIPS|high impact polystyrene|impact polystyrene|high impact styrene', 'amorphous',
   '0.5..0.8g 1050g 945m  0.16m 1400m 0.08m  204..246g 16..82g  80m  95..110m  2000m  1200m 0.3..0.5m   0.0203..0.0305v 25..45m 90m     150..220m 300h'],
  ['ABS|acrylonitrile butadiene styrene', 'amorphous',
   '0.5..0.9g 1040c 940m  0.25c 1300c 0.09e  199..282g 38..82g  85m  105..120m 2300m  1500m 0.3..0.5m   0.0254..0.0381v 30..55m 90c     120..200m 330h',
   DRY('ABS', 'streak')],
  ['SAN|styrene acrylonitrile', 'amorphous',
   '0.3..0.7m 1080c 970m  0.17c 1300c 0.081c 200..260m 40..80m  85m  105..120m 3600m  2000m 0.3..0.5m   0.0254..0.0381v 30..55m 70c     120..180m 310h'],
  ['PMMA|acrylic|polymethyl methacrylate', 'amorphous',
   '0.2..0.8g 1180c 1070m 0.2c  1500c 0.09m  216..266g 66..93g  85m  105..120m 3200m  1800m 0.4..0.6m   0.0381..0.0508v 40..70m 70c     100..150m 350h',
   DRY('PMMA', 'bubble and streak')],
  ['PC|polycarbonate', 'amorphous',
   '0.5..0.8g 1200g 1050m 0.2c  1200c 0.105m 271..321g 66..107g 125m 145..155m 2350m  1700m 0.35..0.55m 0.0381..0.0635v 40..80m 65c     60..120m 400h',
   DRY('PC', 'break its chains in the melt, and the part is brittle without looking so')],
  ['PC-GF20|PC 20% GF|PC 20 GF|PC GF 20|20% glass filled PC|20% glass filled polycarbonate', 'amorphous, filled',
   '0.1..0.5k 1350k 1180m 0.25m 1100m 0.12m  280..320m 80..120m 130m 145..155m 6000m  4500m 0.35..0.55m 0.0381..0.0635m 50..90m 27m     50..100m 350h',
   'Shrinks 0.1 to 0.3 % along the flow and 0.3 to 0.5 % across it.', DRY('PC', 'break its chains in the melt, and the part is brittle without looking so')],
  ['PC/ABS|PCABS|ABS/PC|PC ABS blend', 'amorphous',
   '0.6..0.9g 1130g 1000m 0.22m 1300m 0.1m   252..294g 60..99g  105m 125..135m 2400m  1600m 0.35..0.5m  0.0254..0.0381m 35..70m 75m     80..150m 360h',
   DRY('PC/ABS', 'streak and make it brittle')],
  ['PA6|PA 6|nylon 6|polyamide 6|nylon|polyamide|PA', 'semi-crystalline',
   '1.5..2.5g 1130g 960m  0.25m 1700m 0.08m  238..288g 71..104g 110m 180..200m 2800m  600m  0.3..0.5m   0.0076..0.0127v 30..60m 85m     150..300m 500h',
   'Values are dry as molded; the part grows as it takes up moisture.', DRY('PA', 'foam at the nozzle and spit')],
  ['PA6-GF30|PA6 30% GF|PA6 30 GF|PA6 30GF|nylon 6 GF30|nylon 6 30% glass|30% glass filled nylon 6|glass filled nylon|GF nylon|PA-GF|PA GF30|nylon GF30', 'semi-crystalline, filled',
   '0.3..1k   1360k 1170m 0.3m  1500m 0.11m  250..290m 80..110m 150m 180..200m 9000m  4200m 0.3..0.5m   0.0076..0.0127m 40..80m 30m     100..200m 390h',
   'Shrinks about 0.3 % along the flow and 1.0 % across it.', DRY('PA', 'foam at the nozzle and spit')],
  ['PA66|PA 66|PA 6/6|PA6/6|PA6.6|PA 6.6|nylon 66|nylon 6/6|nylon6/6|nylon 6.6|polyamide 66|polyamide 6/6|nylon|polyamide|PA', 'semi-crystalline',
   '1.5..2.2g 1140c 970m  0.24c 1700c 0.101m 271..304g 71..116g 120m 215..235m 3000m  700m  0.3..0.5m   0.0076..0.0127v 30..60m 90c     150..300m 560h',
   'Values are dry as molded; the part grows as it takes up moisture.', DRY('PA', 'foam at the nozzle and spit')],
  ['PA66-GF30|PA66 30% GF|PA66 30 GF|PA66 30GF|PA66-GF33|nylon 66 GF30|nylon 6/6 GF30|nylon 66 30% glass|30% glass filled nylon 66|glass filled nylon 6/6|glass filled nylon|GF nylon|PA-GF|PA GF30|nylon GF30', 'semi-crystalline, filled',
   '0.2..0.6m 1380c 1190m 0.52c 1600c 0.133c 275..300m 80..110m 160m 215..235m 9500m  4500m 0.3..0.5m   0.0076..0.0127v 40..80m 30c     100..200m 400h',
   'Shrinks 0.2 to 0.4 % along the flow and 0.6 to 1.0 % across it; density, conduction and expansion are of 33 % glass.', DRY('PA', 'foam at the nozzle and spit')],
  ['POM|acetal|polyacetal|acetal copolymer|POM copolymer|POM-C|polyoxymethylene', 'semi-crystalline',
   '1.8..2.5g 1410c 1200m 0.2c  1500c 0.072c 193..221g 82..104g 110m 145..160m 2800m  1200m 0.2..0.35m  0.0127..0.0254v 40..80m 95c     100..200m 420h',
   FORMALDEHYDE],
  ['POM homopolymer|acetal homopolymer|POM-H', 'semi-crystalline',
   '1.8..2.2m 1420c 1200m 0.2c  1500c 0.07c  200..221m 82..104m 115m 150..165m 3100m  1300m 0.2..0.35m  0.0127..0.0254m 40..80m 80c     100..200m 420h',
   FORMALDEHYDE],
  ['PBT|polybutylene terephthalate|polyester PBT|polyester', 'semi-crystalline',
   '1..2s     1310g 1120m 0.25m 1600m 0.09m  232..254g 66..121g 120m 200..215m 2500m  900m  0.3..0.45m  0.0127..0.0178v 35..70m 90m     120..200m 400h',
   DRY('PBT', 'make it brittle')],
  ['PBT-GF30|PBT 30% GF|PBT 30 GF|PBT GF 30|30% glass filled PBT|glass filled polyester', 'semi-crystalline, filled',
   '0.2..1a   1530a 1310m 0.3m  1400m 0.11m  240..265m 70..120m 150m 200..215m 10000a 4500m 0.3..0.45m  0.0127..0.0178m 45..85m 30m     100..180m 310h',
   'Shrinks 0.2 to 0.4 % along the flow and 0.8 to 1.0 % across it.', DRY('PBT', 'make it brittle')],
  ['PET|polyethylene terephthalate|polyester PET|polyester', 'semi-crystalline',
   '1.2..2m   1360c 1160m 0.2c  1000c 0.09m  271..310g 88..121g 120m 220..240m 2800m  1000m 0.3..0.45m  0.0127..0.0178v 35..70m 90c     100..200m 430h',
   'From a cold mold it stays amorphous and shrinks 0.2 to 0.5 % only.', DRY('PET', 'break its chains in the melt, and the part is brittle without looking so')],
  ['PET-GF30|PET 30% GF|PET 30 GF|PET GF 30|30% glass filled PET|glass filled polyester', 'semi-crystalline, filled',
   '0.1..0.2s 1600f 1370m 0.3m  1020f 0.11m  275..300m 90..130m 160m 220..240m 11000f 5000m 0.3..0.45m  0.0127..0.0178m 45..85m 25m     80..160m 320h',
   'That shrinkage is along the flow; across it, expect several times as much.', DRY('PET', 'break its chains in the melt, and the part is brittle without looking so')],
  ['TPU|polyurethane|thermoplastic polyurethane|TPUR', 'elastomer',
   '0.5..2m   1200m 1080m 0.2m  1800m 0.09m  190..225m 20..50m  50m  90..120m  50m    20m   0.5..1m     0.0102..0.0203v 20..50m 150m    100..200m 350h',
   DRY('TPU', 'bubble')],
  ['TPE|TPE-S|SEBS|TPE (SEBS)|thermoplastic elastomer', 'elastomer',
   '0.8..5g   900m  780m  0.18m 1900m 0.09m  177..260g 16..79g  50m  80..110m  10m    5m    0.6..1.2m   0.0127..0.0178v 15..40m 150m    150..250m 380h',
   'Density is 0.875 to 1.34 g/cm³ by grade.'],
  ['LCP|liquid crystal polymer', 'liquid crystal, filled',
   '0..0.8g   1620m 1500m 0.4m  1000m 0.2m   349..377g 29..138g 200m 270..300m 12000m 6000m 0.2..0.4m   0.0127..0.0178v 30..70m 10m     200..400m 330h',
   'Flashes above about 0.013 mm; its melt temperature is beyond most bench barrels.'],
  ['PVC|rigid PVC|PVC-U|uPVC|polyvinyl chloride', 'amorphous',
   '0.2..0.6m 1400c 1260m 0.16c 900c  0.1m   170..205m 20..60m  65m  75..85m   2900m  1800m 0.4..0.6m   0.0152..0.0254v 40..80m 70c     80..150m 200h',
   'Overheated PVC gives off hydrochloric acid: ventilate, use stainless steel, purge before a stop, and never let it meet POM in the barrel.'],
];

function range(column: ResinColumn, cell: string): ResinRange {
  const { times = 1, over = 1, plus = 0 }: Column = COLUMNS[column];
  const [low = NaN, high = low] = cell
    .slice(0, -1)
    .split('..')
    .map((value) => (Number(value) * times) / over + plus);
  return { low, high, source: SOURCES[cell.slice(-1)] as Source };
}

export const RESINS: readonly Resin[] = ROWS.map(([names, structure, cells, ...notes]) => {
  const [name = '', ...aliases] = names.split('|');
  const values = cells
    .split(/ +/)
    .map((cell, i) => [NAMES[i], range(NAMES[i] as ResinColumn, cell)] as const);
  return {
    name,
    aliases,
    structure,
    values: Object.fromEntries(values) as Readonly<Record<ResinColumn, ResinRange>>,
    beside: structure.includes('filled') ? ['resin', 'plastic', 'fiber'] : PLAIN,
    notes,
  };
});

/** The resin of a name as shops write it: `PP copo`, `nylon 6/6`, `PA66-GF30`. */
export const findResin = materialFinder('resin', RESINS);

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
  'expansion': ['expansion', 'middle'], 'flow ratio': ['flowRatio', 'low'], 'heat content': ['heatContent', 'low'],
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
