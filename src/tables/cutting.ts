import { commonPractice, type Source, secondHand } from '../core/define';
import { Refusal } from '../core/refusal';
import { materialFinder, type SpelledMaterial } from './materialName';

/** What cutting asks of a work material: starting speeds and specific cutting force. */

export const SPEED_SOURCES = {
  handbook: secondHand(
    'handbook table of HSS drilling and reaming speeds, as reproduced at vm68.com/stuff/sfpm.html and protocutter.com/cutting-speeds-in-feet-per-minute',
  ),
  practice: commonPractice(
    'speeds of small shops for milling and tapping, and for drilling and reaming what the handbook table does not have',
  ),
} as const satisfies Readonly<Record<string, Source>>;

export const KIENZLE_SOURCE: Source = secondHand(
  'VDI 3323 material groups with kc1.1 and mc, as listed in a cutting tool catalogue of 2017 without title at docs.steelcam.org',
);

type Range = readonly [low: number, high: number];

export interface WorkMaterial extends SpelledMaterial {
  /** VDI 3323 group. */
  readonly group?: number;
  /** Drilling with HSS, reaming with HSS and with carbide, ft/min. */
  readonly sfm?: readonly [drill: number, ream: number, carbideReam: number];
  /** The row that these are of, where a bare name borrows them. */
  readonly sfmOf?: string;
  /** What a bare name is taken for, and what to watch for. */
  readonly note?: string;
  /** Milling, m/min; chip load a tooth in percent of the cutter's diameter. */
  readonly mill?: { readonly HSS?: Range; readonly carbide: Range; readonly chip: Range };
  /** Drilling and reaming, m/min, where the handbook's row does not say. */
  readonly drill?: { readonly HSS?: Range; readonly carbide: Range };
  readonly ream?: { readonly HSS: Range };
  /** Tapping, m/min. */
  readonly tap?: { readonly cut: Range; readonly form?: Range };
}

const ALUMINUM_WORDS = ['aluminum', 'alu', 'al', 'alloy', 'aa', 'en', 'aw', 'plate'];
const ALUMINUM = {
  group: 22,
  mill: { HSS: [60, 120], carbide: [150, 400], chip: [0.5, 1.5] },
  drill: { HSS: [60, 90], carbide: [100, 250] },
  ream: { HSS: [30, 60] },
  tap: { cut: [12, 25], form: [15, 30] },
} as const;

const STEEL = ['steel', 'tool', 'aisi', 'sae', 'mold'];
const PREHARD = {
  group: 7,
  mill: { HSS: [15, 20], carbide: [60, 120], chip: [0.3, 0.7] },
  drill: { carbide: [40, 70] },
  tap: { cut: [4, 8] },
} as const;
/** The handbook's row of P20 and P21 annealed to 150 to 200 HB. */
const P20_ANNEALED = { sfm: [60, 40, 200] } as const;
const MEDIUM_CARBON = {
  group: 2,
  mill: { HSS: [22, 30], carbide: [80, 150], chip: [0.3, 0.8] },
  drill: { HSS: [20, 28], carbide: [55, 90] },
  ream: { HSS: [10, 15] },
  tap: { cut: [7, 12], form: [8, 15] },
} as const;

// A row's name says the state that its values are of. A bare name that is taken for a state says so in its note; one that could be
// several is refused by naming them.
// prettier-ignore
export const WORK_MATERIALS: readonly WorkMaterial[] = [
  { name: 'P20', aliases: ['1.2311', 'tool steel'], beside: STEEL, ...PREHARD, ...P20_ANNEALED, sfmOf: 'P20 annealed',
    note: 'P20 without its state: drilling and reaming from the handbook are those of P20 annealed to 150 to 200 HB, the rest those of P20 prehard at 30 HRC.' },
  { name: 'P20 prehard', aliases: ['P20 30 HRC', 'prehard P20', 'P20 prehardened', 'P20 prehard 30 HRC', 'P20 at 30 HRC'], beside: STEEL, ...PREHARD },
  { name: 'P20 annealed', aliases: ['P20 soft', 'P20 200 HB'], beside: STEEL, group: 6, ...P20_ANNEALED },
  { name: 'H13 annealed', aliases: ['H13', 'H13 soft', '1.2344', 'tool steel'], beside: STEEL, group: 10, sfm: [60, 40, 200],
    mill: { HSS: [18, 25], carbide: [70, 130], chip: [0.3, 0.8] }, drill: { carbide: [40, 70] }, tap: { cut: [5, 9] },
    note: 'H13 without its state is taken as annealed; hardened it is "H13 48 HRC".' },
  { name: 'H13 225 HB', beside: STEEL, group: 10, sfm: [50, 30, 150] },
  { name: 'H13 350 HB', beside: STEEL, group: 11, sfm: [30, 20, 100] },
  { name: 'H13 48 HRC', aliases: ['H13 hardened', 'H13 hard'], beside: STEEL, mill: { carbide: [40, 90], chip: [0.2, 0.5] } },
  { name: '420 annealed', aliases: ['420', '420 stainless', '420SS', 'stainless', '420 soft'], beside: [...STEEL, 'stainless'], group: 12, sfm: [75, 50, 225],
    mill: { HSS: [18, 25], carbide: [60, 120], chip: [0.3, 0.8] }, drill: { carbide: [40, 60] }, tap: { cut: [4, 7], form: [4, 8] } },
  { name: '420 200 HB', aliases: ['420', '420 stainless', '420SS', 'stainless'], beside: [...STEEL, 'stainless'], group: 12, sfm: [65, 45, 200] },
  { name: '420 300 HB', aliases: ['420', '420 stainless', '420SS', 'stainless'], beside: [...STEEL, 'stainless'], sfm: [40, 25, 125] },
  { name: '304', aliases: ['stainless', '1.4301', 'SUS304'], beside: [...STEEL, 'stainless'], group: 14,
    mill: { HSS: [15, 22], carbide: [60, 120], chip: [0.3, 0.7] }, drill: { HSS: [9, 15], carbide: [30, 50] }, tap: { cut: [4, 6], form: [4, 6] },
    note: 'Hardens under a dull edge: keep the feed up and never rub.' },
  { name: '1018', aliases: ['mild steel', 'C1018', 'low carbon steel', 'plain carbon steel', '1018 CRS', '1018 cold drawn', 'CRS', 'cold rolled steel'],
    beside: [...STEEL, 'carbon', 'mild', 'low'], group: 1,
    mill: { HSS: [25, 35], carbide: [90, 180], chip: [0.3, 0.8] }, drill: { HSS: [24, 33], carbide: [60, 100] }, ream: { HSS: [12, 18] },
    tap: { cut: [8, 15], form: [10, 20] } },
  { name: 'S50C', aliases: ['1050', 'C50', '1.1210'], beside: [...STEEL, 'carbon', 'medium'], ...MEDIUM_CARBON },
  { name: '1045', aliases: ['C45', 'S45C', '1.0503', 'C1045'], beside: [...STEEL, 'carbon', 'medium'], ...MEDIUM_CARBON },
  { name: '4140 annealed', aliases: ['4140', '42CrMo4', '1.7225', '4140 soft'], beside: [...STEEL, 'alloy'], group: 6,
    mill: { HSS: [20, 28], carbide: [80, 140], chip: [0.3, 0.8] }, drill: { HSS: [18, 25], carbide: [50, 80] }, tap: { cut: [6, 10] },
    note: '4140 without its state is taken as annealed; prehard it is "4140 prehard".' },
  { name: '4140 prehard', aliases: ['4140PH', '4140HT', '4140 30 HRC', 'prehard 4140', '4140 prehardened'], beside: [...STEEL, 'alloy'], ...PREHARD, group: 8 },
  { name: 'cast iron', aliases: ['gray iron', 'gray cast iron', 'class 30', 'GG20'], beside: ['iron', 'cast', 'gray'], group: 17,
    mill: { HSS: [18, 25], carbide: [80, 150], chip: [0.4, 1] }, drill: { HSS: [20, 30], carbide: [60, 100] }, tap: { cut: [6, 12] } },
  { name: '6061-T6', aliases: ['6061', '6061-T651', 'aluminum', 'alu', 'al'], beside: ALUMINUM_WORDS, ...ALUMINUM },
  { name: '7075-T6', aliases: ['7075', '7075-T651', 'aluminum', 'alu', 'al'], beside: ALUMINUM_WORDS, ...ALUMINUM },
  { name: 'brass', aliases: ['C360', 'C36000', '360', 'free cutting brass'], beside: ['brass', 'copper', 'alloy', 'free', 'machining'], group: 26,
    mill: { HSS: [45, 90], carbide: [120, 250], chip: [0.5, 1.2] }, drill: { HSS: [45, 90], carbide: [90, 150] }, ream: { HSS: [25, 50] },
    tap: { cut: [12, 20], form: [10, 20] } },
];

/** The work material of a name: `P20`, `H13 annealed`, `6061`. */
export const findWorkMaterial = materialFinder('work material', WORK_MATERIALS);

// VDI 3323 group: kc1.1 in MPa at a chip 1 mm thick and wide, and the exponent mc of thickness.
// prettier-ignore
const KIENZLE: Readonly<Record<number, readonly [kc: number, mc: number]>> = {
  1: [1350, 0.21], 2: [1500, 0.22], 3: [1675, 0.24], 4: [1700, 0.24], 5: [1900, 0.24], 6: [1775, 0.24], 7: [1675, 0.24],
  8: [1725, 0.24], 9: [1800, 0.24], 10: [2450, 0.23], 11: [2500, 0.23], 12: [1875, 0.21], 13: [1875, 0.21], 14: [2150, 0.2],
  17: [1225, 0.25], 21: [700, 0.25], 22: [800, 0.25], 26: [700, 0.27], 27: [700, 0.27],
};

/** Specific cutting force kc1.1 in Pa and its exponent mc: kc = kc1.1·h^(−mc), h in mm. */
export function kienzle({ name, group }: WorkMaterial): { readonly kc: number; readonly mc: number } {
  const row = group === undefined ? undefined : KIENZLE[group];
  if (!row)
    throw new Refusal(
      `is ${name}, for which the tables have no specific cutting force: give it as a pressure`,
      'metal',
    );
  return { kc: row[0] * 1e6, mc: row[1] };
}

export const TOOLS = ['HSS', 'carbide'] as const;
export const OPERATIONS = ['mill', 'drill', 'ream', 'tap', 'form tap'] as const;
export type Tool = (typeof TOOLS)[number];
export type Operation = (typeof OPERATIONS)[number];

/** Speed of the handbook's table, ft/min. */
function handbookSpeed({ sfm }: WorkMaterial, tool: Tool, operation: Operation): number | undefined {
  if (operation === 'drill') return tool === 'HSS' ? sfm?.[0] : undefined;
  return operation === 'ream' ? sfm?.[tool === 'HSS' ? 1 : 2] : undefined;
}

/** Low end of the range that shops use, m/min. */
function shopSpeed(work: WorkMaterial, tool: Tool, operation: Operation): number | undefined {
  const { mill, drill, ream, tap } = work;
  switch (operation) {
    case 'mill':
      return mill?.[tool]?.[0];
    case 'drill':
      return drill?.[tool]?.[0];
    case 'ream':
      return tool === 'HSS' ? ream?.HSS[0] : undefined;
    case 'tap':
      return tool === 'HSS' ? tap?.cut[0] : undefined;
    case 'form tap':
      return tool === 'HSS' ? tap?.form?.[0] : undefined;
  }
}

interface CuttingSpeed {
  /** m/s */
  readonly speed: number;
  /** Name of the row that it is read from, with its state. */
  readonly row: string;
  readonly source: Source;
}

const FOOT = 0.3048;

function tabulated(work: WorkMaterial, tool: Tool, operation: Operation): CuttingSpeed | undefined {
  const handbook = handbookSpeed(work, tool, operation);
  if (handbook !== undefined)
    return { speed: (handbook * FOOT) / 60, row: work.sfmOf ?? work.name, source: SPEED_SOURCES.handbook };
  const shop = shopSpeed(work, tool, operation);
  return shop === undefined
    ? undefined
    : {
        speed: shop / 60,
        row: work.sfmOf === undefined ? work.name : `${work.name} prehard`,
        source: SPEED_SOURCES.practice,
      };
}

/** Starting cutting speed: the low end of a range. Where the tables have none, it refuses by naming what they have. */
export function cuttingSpeed(work: WorkMaterial, tool: Tool, operation: Operation): CuttingSpeed {
  const found = tabulated(work, tool, operation);
  if (found) return found;
  const has = TOOLS.flatMap((t) => OPERATIONS.filter((o) => tabulated(work, t, o)).map((o) => `${t} ${o}`));
  throw new Refusal(
    `is ${operation} with ${tool}; for ${work.name} the tables have ${has.length > 0 ? has.join(', ') : 'no speeds'}`,
    'operation',
  );
}
