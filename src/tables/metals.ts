import { fromMemory, secondHand, type Source } from '../core/define';
import type { Kind } from '../core/quantity';
import { Refusal } from '../core/refusal';
import { materialFinder, type SpelledMaterial } from './materialName';

/** Metals of molds, plates, pins and cutters, room temperature to 100 °C. Every value has its own source, the letter after it. */
const SOURCES: Readonly<Record<string, Source>> = {
  m: fromMemory('handbook values at room temperature'),
  p: secondHand(
    'P20 data sheets (scribd.com/document/183457132, round-bars.com, zanotowane.pl/1031/1712): E 205 GPa, expansion 12.2 to 12.8 e-6/K, k 29 to 34 W/(m·K), yield 827 to 862 MPa',
  ),
  c: secondHand(
    'W. D. Callister, Fundamentals of Materials Science and Engineering, appendix B, as copied at cupdf.com, scribd.com and issuhub.com',
  ),
  f: secondHand('makeitfrom.com, the page of the metal and state'),
  w: secondHand('theworldmaterial.com, the page of the steel'),
  o: secondHand('O1 at coltmaterials.co.uk; the same at blog.thepipingmart.com'),
  d: secondHand('D2 at sharpimpex.in, which agrees with coltmaterials.co.uk'),
  h: secondHand(
    'H13 at coltmaterials.co.uk, hardened and tempered: yield 1000 to 1380, tensile 1200 to 1590 MPa',
  ),
  q: secondHand('4140 normalized to 302 HB in a copy of a matweb.com sheet (rhythmusic.net)'),
  s: secondHand(
    '42CrMo4 +QT, 40 to 100 mm, minimum of EN 10083 by a maker’s sheet (scribd.com/doc/301385379); kooz.si agrees',
  ),
  a: secondHand(
    '4140 annealed: victor-industrial.com (415 and 655 MPa); an appendix at scribd.com/document/403205949 agrees',
  ),
  k: secondHand('chrome molybdenum and stainless steels at mikipulley.co.jp, technical data'),
  t: secondHand(
    'cold drawn and turned bars, estimated minimum, a metal dealer’s list (scribd.com/doc/293076924)',
  ),
  n: secondHand('C50, 1.0540, at ninesteel-cs.com; E and density agree with S50C at tokkin.co.jp'),
  l: secondHand('S50C normalized at luokaiweisteel.com: yield 350 to 490, tensile 600 to 750 MPa'),
  r: secondHand('420 annealed and hardened at beartechalloys.com; hxjsmetal.com agrees'),
  b: secondHand('5083-O at btimetals.com'),
  y: secondHand('5083-H32 in a copy of an asm.matweb.com sheet'),
  z: secondHand('C93200 at spectrummachine.com; makeitfrom.com agrees within 5 %'),
  u: secondHand('C18000 at moldmakingtechnology.com: conductivity above 200 W/(m·K)'),
};

const KINDS = {
  modulus: 'pressure',
  poisson: 'ratio',
  expansion: 'expansion',
  density: 'density',
  conductivity: 'conductivity',
  'specific heat': 'specificHeat',
  yield: 'pressure',
  tensile: 'pressure',
} as const satisfies Readonly<Record<string, Kind>>;

/** The property words of a worksheet. */
export type MetalProperty = keyof typeof KINDS;
export const METAL_PROPERTIES = Object.keys(KINDS) as readonly MetalProperty[];
export const metalKind = (property: MetalProperty): Kind => KINDS[property];

/** How a printed value becomes SI; printed as GPa, –, 1e-6/K, kg/m³, W/(m·K), J/(kg·K), MPa, MPa. */
const SCALE: Readonly<Record<MetalProperty, (printed: number) => number>> = {
  modulus: (printed) => printed * 1e9,
  poisson: (printed) => printed,
  expansion: (printed) => printed / 1e6,
  density: (printed) => printed,
  conductivity: (printed) => printed,
  'specific heat': (printed) => printed,
  yield: (printed) => printed * 1e6,
  tensile: (printed) => printed * 1e6,
};

type Properties = Readonly<
  Record<Exclude<MetalProperty, 'specific heat'> | 'specificHeat', number | undefined>
>;

export interface Metal extends SpelledMaterial, Properties {
  /** In SI. Elastic values, expansion and density are known of every row. */
  readonly modulus: number;
  readonly poisson: number;
  readonly expansion: number;
  readonly density: number;
  /** Where each value comes from. */
  readonly sources: Readonly<Partial<Record<MetalProperty, Source>>>;
  /** What to know of the row: the state that its strength is of. */
  readonly note?: string;
}

const STEEL = ['steel', 'aisi', 'sae', 'alloy', 'plate', 'bar'];
const TOOL_STEEL = [...STEEL, 'tool', 'mold'];
const STAINLESS = [...STEEL, 'stainless', 'ss', 'mold'];
const ALUMINUM = ['aluminum', 'alu', 'al', 'alloy', 'aa', 'en', 'aw', 'plate', 'bar'];
const COPPER = ['copper', 'cu', 'alloy', 'uns', 'cda', 'plate', 'bar'];

type Row = readonly [names: string, beside: readonly string[], values: string, note?: string];

// Name and other names; words that may stand beside; modulus, Poisson's ratio, expansion, density, conductivity, specific heat,
// yield and tensile strength, `-` where there is none to rely on; note. A name that several rows have is a family, and refused by
// naming them; so is a bare steel whose state is not known, unless its note says which state it is taken for.
// prettier-ignore
const ROWS: readonly Row[] = [
  ['P20 prehard|P20|1.2311|P20 30 HRC|prehard P20|P20 prehardened|P20 prehard 30 HRC|AISI P20|tool steel|stock steel', TOOL_STEEL,
   '205p 0.29m 12.8p 7850m 29p 460m 830p 965m', 'P20 is taken as prehard, about 30 HRC.'],
  ['H13 annealed|H13|H13 soft|annealed H13|tool steel', TOOL_STEEL,
   '210m 0.3m 11m 7800m 25m 460m 330f 690f', 'H13 without its state is taken as annealed, about 200 HB; hardened it is "H13 48 HRC".'],
  ['H13 48 HRC|H13 hardened|hardened H13|1.2344 hardened|H13 hard|tool steel', TOOL_STEEL,
   '210m 0.3m 11m 7800m 25m 460m 1380h 1590h', 'Strength is that at about 48 HRC.'],
  ['420|420 hardened|420 50 HRC|420 stainless|420SS|1.2083|hardened 420|stainless|stainless steel|tool steel', [...STAINLESS, 'tool'],
   '200r 0.3m 10.5m 7740m 23m 460m 1345r 1586r', '420 is taken as hardened, about 50 HRC; soft it is "420 annealed".'],
  ['420 annealed|420 soft|annealed 420|stainless|stainless steel|tool steel', [...STAINLESS, 'tool'],
   '200r 0.3m 10.5m 7740m 25m 460m 345r 655r', 'Strength is that of the annealed bar, about 200 HB.'],
  ['S7|S-7|1.2355|tool steel', TOOL_STEEL,
   '207m 0.29m 12.4m 7830m 28m 460m 1410w 1895w', 'Strength is that at about 53 HRC; annealed its yield is about 380 MPa (55 ksi).'],
  ['O1|1.2510|oil hardening|oil hardening O1|tool steel', TOOL_STEEL,
   '193o 0.29f 10.6o 7810o 33m 460m 370m 650m', 'Strength is that of the annealed bar, about 190 HB.'],
  ['A2|1.2363|air hardening A2|tool steel', TOOL_STEEL,
   '190w 0.29f 10.7w 7860w 26w 460w 350f 710f', 'Strength is that of the annealed bar, about 210 HB.'],
  ['D2|1.2379|tool steel', TOOL_STEEL,
   '205m 0.28f 10.4d 7700d 20m 460m 470f 760f', 'Strength is that of the annealed bar, about 220 HB.'],
  ['4140 annealed|4140|1.7225|42CrMo4|annealed 4140|4140 soft', STEEL,
   '205q 0.29q 12.3k 7850c 42.7k 475m 415a 655a', '4140 without its state is taken as annealed, about 200 HB; prehard it is "4140 prehard".'],
  ['4140 prehard|4140PH|4140HT|4140 HT|4140 prehardened|prehard 4140|4140 30 HRC|4140 28-32 HRC|4140 QT|42CrMo4 QT|42CrMo4 +QT', STEEL,
   '205q 0.29q 12.3k 7850c 42.7k 475m 650s 900s', 'Strength is the least of bars of 40 to 100 mm, quenched and tempered to 28 to 32 HRC.'],
  ['1045|C1045|C45|1.0503|S45C|1045 hot rolled|1045 HR|1045 HRS', [...STEEL, 'carbon', 'medium'],
   '205m 0.29m 11.5m 7850m 49.8m 486m 310t 565t', '1045 without its state is taken as hot rolled or turned.'],
  ['1045 cold drawn|1045 CD|1045 CRS|1045 cold rolled|1045 cold finished', [...STEEL, 'carbon', 'medium'],
   '205m 0.29m 11.5m 7850m 49.8m 486m 530t 627t', 'Strength is the least of bars of 20 to 30 mm.'],
  ['S50C|1050|C50|C50E|1.1210|1.0540|AISI 1050', [...STEEL, 'carbon', 'medium'],
   '205n 0.29m 11.5n 7850n 48m 480n 350l 600l', 'Strength is that of the normalized plate.'],
  ['1018|C1018|1018 CRS|1018 cold drawn|1018 CD|1018 cold rolled|1018 cold finished|CRS|cold rolled steel|mild steel|low carbon steel|plain carbon steel',
   [...STEEL, 'carbon', 'low', 'mild'],
   '205m 0.29m 11.9m 7850m 50m 486m 370t 440t', '1018 is taken as cold drawn; hot rolled it is "1018 hot rolled".'],
  ['1018 hot rolled|1018 HR|1018 HRS|HRS|hot rolled steel', [...STEEL, 'carbon', 'low', 'mild'],
   '205m 0.29m 11.9m 7850m 50m 486m 220t 400t'],
  ['304|1.4301|304L|18-8|SUS304|stainless|stainless steel', [...STAINLESS, 'austenitic'],
   '193c 0.29m 17.3k 8000c 16.2m 500m 206k 520k', 'Galls against itself and cannot be hardened by heat.'],
  ['17-4PH|17-4|17-4PH H1025|630|1.4542|S17400|stainless|stainless steel', [...STAINLESS, 'ph'],
   '197m 0.272m 11.2m 7800m 18m 460m 1000m 1070m', '17-4PH without its state is taken as aged H1025; solution annealed or overaged (H1150) it is weaker.'],
  ['17-4PH H900|17-4 H900|630 H900|stainless|stainless steel', [...STAINLESS, 'ph'],
   '197m 0.272m 10.8m 7800m 18m 460m 1170m 1310m', 'Strength is that aged H900, about 42 HRC.'],
  ['steel', ['carbon', 'tool', 'mold'],
   '205m 0.29m 11.7m 7850m - - - -', 'Steel of any kind: modulus, Poisson’s ratio, expansion and density alone.'],
  ['cast iron|gray iron|gray cast iron|class 30|class 30 gray iron|GG20|EN-GJL-200|FC200|G3000', ['iron', 'cast', 'gray', 'astm', 'a48'],
   '101c 0.26m 10.5f 7200f 46f 490f - 207c', 'Class 30 of gray iron: brittle, so it has no yield; E falls as the stress grows.'],
  ['6061-T6|6061|6061-T651|6061-T6511|AA6061|AA6061-T6|AL6061|aluminum|alu|al|aluminum alloy', ALUMINUM,
   '68.9m 0.33m 23.6m 2700m 167m 896m 276c 310c'],
  ['7075-T6|7075|7075-T651|aluminum|alu|al|aluminum alloy', ALUMINUM,
   '71.7m 0.33m 23.4m 2810m 130m 960m 503m 572c', '7075 loses strength above about 120 °C (250 °F).'],
  ['2024-T351|2024|2024-T3|2024-T4|aluminum|alu|al|aluminum alloy', ALUMINUM,
   '73.1m 0.33m 22.9m 2780m 121m 875m 324m 470c'],
  ['5083 cast plate|5083|cast 5083|5083 cast|cast aluminum|cast aluminum plate|cast tooling plate|aluminum|alu|al|aluminum alloy', [...ALUMINUM, 'tooling', 'precision'],
   '70.3b 0.33y 23.8y 2660b 117b 900b 110m 240m', 'Cast plate is stable but soft: not for threads that are used often.'],
  ['brass|C360|C36000|360|brass 360|free cutting brass|CuZn39Pb3', [...COPPER, 'brass', 'free', 'machining'],
   '97m 0.31m 20.5m 8490m 115m 380m 310m 400m', 'Strength is that of half hard bar, C36000.'],
  ['bronze|C932|C93200|SAE 660|660 bronze|bearing bronze|CuSn7Zn4Pb7', [...COPPER, 'bronze', 'bearing'],
   '100z 0.35f 18z 8910z 58z 377z 138z 241z', 'Bearing bronze C93200, continuous cast.'],
  ['beryllium copper|BeCu|C17200|C172|copper beryllium|CuBe2|copper alloy', [...COPPER, 'beryllium', 'high', 'strength'],
   '128c 0.3m 17m 8250m 110m 420m 1000m 1240m', 'The dust of beryllium copper harms the lungs: cut it wet, never grind it dry, follow its safety data sheet.'],
  ['C18000|beryllium-free copper|beryllium free copper|CuNi2SiCr|copper nickel silicon|2.0855|copper alloy', [...COPPER, 'chromium'],
   '130m 0.33m 17.5m 8840m 208u 390m 515m 690m', 'Copper with nickel, silicon and chromium, aged; about 94 HRB.'],
  ['carbide|tungsten carbide|cemented carbide|hard metal', [],
   '580m 0.22m 5.5m 14500m 90m 220m - -', 'With 10 % cobalt; the modulus is 550 to 650 GPa by grade. It breaks and does not yield.'],
  ['HSS|M2|high speed steel|1.3343', TOOL_STEEL,
   '210m 0.29m 11m 8160m 21m 420m - -'],
];

function metalOf([names, beside, cells, note]: Row): Metal {
  const [name = '', ...aliases] = names.split('|');
  const values: Partial<Record<MetalProperty, number>> = {};
  const sources: Partial<Record<MetalProperty, Source>> = {};
  cells.split(/ +/).forEach((cell, i) => {
    const property = METAL_PROPERTIES[i] as MetalProperty;
    const source = SOURCES[cell.slice(-1)];
    if (!source) return;
    values[property] = SCALE[property](Number(cell.slice(0, -1)));
    sources[property] = source;
  });
  const {
    'specific heat': specificHeat,
    modulus = NaN,
    poisson = NaN,
    expansion = NaN,
    density = NaN,
    ...rest
  } = values;
  return {
    name,
    aliases,
    beside,
    modulus,
    poisson,
    expansion,
    density,
    conductivity: rest.conductivity,
    specificHeat,
    yield: rest.yield,
    tensile: rest.tensile,
    sources,
    ...(note === undefined ? {} : { note }),
  };
}

export const METALS: readonly Metal[] = ROWS.map(metalOf);

/** The metal of a name as shops write it: `P20`, `T6 6061`, `1018 CRS`. */
export const findMetal = materialFinder('metal', METALS);

/** Where one value of a metal comes from. */
export const metalSource = ({ sources }: Metal, property: MetalProperty): Source =>
  sources[property] ?? (SOURCES.m as Source);

/** A property's value in SI, with where it comes from; refused by naming metals that have it, where the row has none. */
export function metalValue(
  metal: Metal,
  property: MetalProperty,
): { readonly value: number; readonly source: Source } {
  const value = propertyOf(metal, property);
  if (value === undefined) throw new Refusal(missingOf(metal, property), 'property', '#N/A');
  return { value, source: metalSource(metal, property) };
}

export const propertyOf = (metal: Metal, property: MetalProperty): number | undefined =>
  metal[property === 'specific heat' ? 'specificHeat' : property];

/** Steels, for the word that means any of them. */
const STEELS = METALS.filter(({ beside, name }) => beside.includes('steel') && name !== 'steel').map(
  ({ name }) => name,
);

/** Why a row has no such value, and what to name instead. */
export const missingOf = ({ name }: Metal, property: MetalProperty): string =>
  name === 'steel'
    ? `is ${property}, which differs from steel to steel: name it: ${STEELS.join(', ')}`
    : `is ${property}, which is not in the tables for ${name}`;
