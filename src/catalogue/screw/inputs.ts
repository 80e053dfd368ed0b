import { commonPractice, constant, input, named, type NativeInput } from '../../core/define';
import {
  FASTENER_SOURCES,
  findStrengthClass,
  STRENGTH_CLASSES,
  strengthOf,
  type StrengthClass,
} from '../../tables/fasteners';
import { Refusal } from '../../core/refusal';
import { namesOf } from '../../tables/names';
import { THREADS, type Thread } from '../../tables/threads';

/** What the functions of screws share. */

export const torqueFactor = input('k', 'K', 'ratio', {
  above: 0,
  default: 0.2,
  usual: [0.08, 0.35],
  says: 'Torque factor: 0.2 plain and dry, 0.15 to 0.18 oiled, 0.12 with molybdenum disulfide',
});

export const strengthClass = named(
  'strengthClass',
  'strengthClass',
  {
    what: 'a strength class such as "8.8", "12.9", "grade 5" or "A574"',
    read: findStrengthClass,
    names: () => namesOf(STRENGTH_CLASSES),
  },
  { says: 'Strength class of the screw' },
);
/** Proof stress of a class as worksheet text, for a size that is the text `d`; beyond the class’s sizes an error. */
export function nativeProof(of: NativeInput<StrengthClass>, d: string): string {
  const band = (row: StrengthClass, at: number): { upTo: number; proof: number } => {
    const { bands, metric } = row;
    const [upTo] = bands[Math.min(at, bands.length - 1)] ?? [0];
    const size = (upTo + 1e-9) * (metric ? 0.001 : 0.0254);
    return { upTo: size, proof: strengthOf(row, size - 1e-9).proof };
  };
  const { upTo, proof, upToNext, proofNext } = of.look({
    upTo: { head: 'Up to size (m)', from: (row) => band(row, 0).upTo },
    proof: { head: 'Proof stress (Pa)', from: (row) => band(row, 0).proof },
    upToNext: { head: 'Up to the next size (m)', from: (row) => band(row, 1).upTo },
    proofNext: { head: 'Proof stress there (Pa)', from: (row) => band(row, 1).proof },
  });
  return `IF(${d}<=${upTo},${proof},IF(${d}<=${upToNext},${proofNext},NA()))`;
}

export const CLASS_SOURCES = [FASTENER_SOURCES.iso898, FASTENER_SOURCES.j429, FASTENER_SOURCES.a574] as const;

export const classOfItsSystem = {
  holds: ({
    thread,
    strengthClass: of,
  }: {
    readonly thread: Thread;
    readonly strengthClass: StrengthClass;
  }): boolean => of.metric === (thread.system === 'ISO'),
  says: 'The class is of the other system: ISO 898-1 is about metric threads, SAE J429 and ASTM A574 about inch threads.',
} as const;

export const TORQUE_FACTOR = commonPractice(
  'T = K d F with K = 0.2 for plain screws, as the torque tables of screw makers use it',
);

export const SCATTER = {
  says:
    'The preload scatters by ± 30 % at the same torque, more with used or dirty screws. Oil on a thread that was meant dry raises it by a third. ' +
    'Tighten in two rounds, crosswise, with the mold cold and no pressure on it.',
} as const;

/** 12.9 and A574 are proved at 970 and 965 MPa. */
export const strongest = {
  R_p: constant('pressure', '970 MPa', 'Proof stress of the strongest class, 12.9'),
} as const;
/** Beyond this no screw in the shop is elastic. */
export const elastic = {
  holds: 'F <= R_p*A_s',
  says: 'The preload is above the proof load of the strongest class, 12.9: the screw stretches for good or breaks.',
} as const;

export const stressed = {
  says: 'Tensile stress area',
  gives: 'area',
  equation: 'π/4 (d - 0.9382 P)² for ISO, π/4 (d - 0.9743 P)² for UN threads',
} as const;

/** The threads for which a table has a row. */
export const rowsWith = (row: (thread: Thread) => unknown): (readonly [string, Thread])[] =>
  THREADS.filter((thread) => {
    try {
      return row(thread) !== undefined;
    } catch (error) {
      if (error instanceof Refusal) return false;
      throw error;
    }
  }).map((thread) => [thread.name, thread] as const);
