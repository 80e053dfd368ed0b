import { fromMemory, type Source, secondHand } from '../core/define';
import { type Named, nameFinder } from './names';

/** Spring wires, and factors of wave springs. */

const SHIGLEY = fromMemory('Shigley, Table 10-4 (A and m) and Table 10-5 (moduli)');
const SHIGLEY_READ = secondHand(
  'A and m of music wire in both systems: solutions of Shigley’s problems 10-2 and 10-3, read at a public page; moduli from memory of its Table 10-5',
);
const EN_10270 = fromMemory('fit of EN 10270-1 used with EN 13906-1; the tables of the standard govern');

/** Minimum tensile strength A/d^m: each system has constants of its own, which do not convert into each other exactly. */
interface PowerLaw {
  readonly m: number;
  readonly kpsi: number;
  readonly MPa: number;
  /** Wire diameters that the constants cover, mm. */
  readonly from: number;
  readonly upTo: number;
}

/** Minimum tensile strength a − b·log10(d), MPa with d in mm. */
interface LogLaw {
  readonly a: number;
  readonly b: number;
  readonly from: number;
  readonly upTo: number;
}

export interface Wire extends Named {
  readonly laws: readonly (PowerLaw | LogLaw)[];
  /** Shear and elastic modulus, GPa, up to a wire diameter in inches. */
  readonly moduli: readonly (readonly [upTo: number, shear: number, elastic: number])[];
  /** Yield in shear over tensile strength, static service. */
  readonly shearYield: number;
  readonly source: Source;
}

const ANY = Infinity;

// prettier-ignore
export const WIRES: readonly Wire[] = [
  { name: 'music wire', aliases: ['A228', 'ASTM A228', 'piano wire', 'music'], shearYield: 0.45, source: SHIGLEY_READ,
    laws: [{ m: 0.145, kpsi: 201, MPa: 2211, from: 0.1, upTo: 6.5 }],
    moduli: [[0.033, 82.7, 203.4], [0.064, 81.7, 200], [0.126, 81, 196.5], [ANY, 80, 193]] },
  { name: 'oil-tempered', aliases: ['A229', 'ASTM A229', 'oil tempered wire'], shearYield: 0.5, source: SHIGLEY,
    laws: [{ m: 0.187, kpsi: 147, MPa: 1855, from: 0.5, upTo: 12.7 }],
    moduli: [[ANY, 77.2, 196.5]] },
  { name: 'hard-drawn', aliases: ['A227', 'ASTM A227', 'hard drawn wire'], shearYield: 0.45, source: SHIGLEY,
    laws: [{ m: 0.19, kpsi: 140, MPa: 1783, from: 0.7, upTo: 12.7 }],
    moduli: [[0.033, 80.7, 198.6], [0.064, 80, 197.9], [0.126, 79.3, 197.2], [ANY, 78.6, 196.5]] },
  { name: 'chrome-vanadium', aliases: ['A232', 'ASTM A232', 'CrV', 'chrome vanadium wire'], shearYield: 0.5, source: SHIGLEY,
    laws: [{ m: 0.168, kpsi: 169, MPa: 2005, from: 0.8, upTo: 11.1 }],
    moduli: [[ANY, 77.2, 203.4]] },
  { name: 'chrome-silicon', aliases: ['A401', 'ASTM A401', 'CrSi', 'chrome silicon wire'], shearYield: 0.5, source: SHIGLEY,
    laws: [{ m: 0.108, kpsi: 202, MPa: 1974, from: 1.6, upTo: 9.5 }],
    moduli: [[ANY, 77.2, 203.4]] },
  { name: '302 stainless', aliases: ['302', 'A313', 'ASTM A313', 'stainless', 'stainless wire'], shearYield: 0.35, source: SHIGLEY,
    laws: [
      { m: 0.146, kpsi: 169, MPa: 1867, from: 0.33, upTo: 2.5 },
      { m: 0.263, kpsi: 128, MPa: 2065, from: 2.5, upTo: 5 },
    ],
    moduli: [[ANY, 69, 193]] },
  { name: 'EN 10270-1 SL', aliases: ['SL'], shearYield: 0.56, source: EN_10270,
    laws: [{ a: 1720, b: 660, from: 1, upTo: 10 }], moduli: [[ANY, 81.5, 206]] },
  { name: 'EN 10270-1 SM', aliases: ['SM', 'DM', 'EN 10270-1 DM'], shearYield: 0.56, source: EN_10270,
    laws: [{ a: 1980, b: 740, from: 0.3, upTo: 20 }], moduli: [[ANY, 81.5, 206]] },
  { name: 'EN 10270-1 SH', aliases: ['SH', 'DH', 'EN 10270-1 DH'], shearYield: 0.56, source: EN_10270,
    laws: [{ a: 2220, b: 820, from: 0.3, upTo: 20 }], moduli: [[ANY, 81.5, 206]] },
];

/** The spring wire of a name: `music wire`, `A228`, `chrome-silicon`. */
export const findWire = nameFinder('spring wire', WIRES);

/** The law that covers a wire diameter in mm; beyond all of them, the nearest. */
function lawFor({ laws }: Wire, mm: number): PowerLaw | LogLaw {
  return (laws.find(({ upTo }) => mm <= upTo) ?? laws[laws.length - 1]) as PowerLaw | LogLaw;
}

const KPSI = 4.4482216152605e3 / 0.0254 ** 2;

/** Minimum tensile strength, Pa, by the constants of a system of units; diameter in m. */
export function wireStrength(wire: Wire, diameter: number, system: 'in' | 'mm'): number {
  const law = lawFor(wire, diameter * 1000);
  if ('a' in law) return (law.a - law.b * Math.log10(diameter * 1000)) * 1e6;
  return system === 'in'
    ? (law.kpsi * KPSI) / (diameter / 0.0254) ** law.m
    : (law.MPa * 1e6) / (diameter * 1000) ** law.m;
}

/** Wire diameters that the strength constants cover, m. */
export function wireRange({ laws }: Wire): readonly [from: number, upTo: number] {
  return [Math.min(...laws.map(({ from }) => from)) / 1000, Math.max(...laws.map(({ upTo }) => upTo)) / 1000];
}

/** Shear and elastic modulus, Pa, of a wire of a diameter in m. */
export function wireModuli(
  { moduli }: Wire,
  diameter: number,
): { readonly shear: number; readonly elastic: number } {
  const [, shear, elastic] = moduli.find(([upTo]) => diameter / 0.0254 < upTo) as (typeof moduli)[number];
  return { shear: shear * 1e9, elastic: elastic * 1e9 };
}

/** The diameters, m, from which on each pair of moduli holds. */
export const wireSteps = ({ moduli }: Wire): readonly number[] =>
  moduli.map((_, i) => (i === 0 ? 0 : (moduli[i - 1]?.[0] ?? 0) * 0.0254));

export const WAVE_SOURCE: Source = secondHand(
  'wave spring formula sheet without author or title, scribd.com/document/454858826',
);

/**
 * Factor K of crest-to-crest wave springs by waves per turn, which come in halves. It steps where the number of waves does, so a
 * spring at a step's edge is less certain.
 */
export const WAVE_FACTORS: readonly (readonly [from: number, upTo: number, factor: number])[] = [
  [2, 4, 3.88],
  [4.5, 6.5, 2.9],
  [7, 9.5, 2.3],
  [10, 99, 2.13],
];

/** K for a number of waves per turn; between two rows the next row's; nothing below two waves. */
export const waveFactor = (wavesPerTurn: number): number | undefined =>
  wavesPerTurn < 2 ? undefined : WAVE_FACTORS.find(([, upTo]) => wavesPerTurn <= upTo)?.[2];
