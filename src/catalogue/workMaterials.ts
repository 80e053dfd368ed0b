import { named, type Step } from '../core/define';
import { findWorkMaterial, kienzle, WORK_MATERIALS, type WorkMaterial } from '../tables/cutting';
import { namesOf } from '../tables/names';

export const WORK_MATERIAL = {
  what: 'the name of a metal such as "P20" or "6061-T6"',
  changes: [
    {
      basis: 2,
      says: 'Rows of the cutting tables say their state: S50C is a medium carbon steel of its own, P20 at 30 HRC has no speed of the annealed row.',
    },
  ],
} as const;

/** What to watch for with a row of the cutting tables. */
export const notesOfWork = ({
  note,
}: {
  readonly note?: WorkMaterial['note'] | undefined;
}): readonly string[] => (note === undefined ? [] : [note]);

/**
 * What is cut, by name, or its specific cutting force as a number, then the same at every chip thickness. Gives the
 * symbols `k_c1` and `m_c` of Kienzle’s law.
 */
export const cutMetal = named(
  'metal',
  'metal',
  {
    ...WORK_MATERIAL,
    read: (text) => {
      const work = findWorkMaterial(text);
      return { ...kienzle(work), note: work.note };
    },
    notes: notesOfWork,
    names: () => namesOf(WORK_MATERIALS),
    number: {
      kind: 'pressure',
      says: 'its specific cutting force',
      above: '0 MPa',
      means: (kc) => ({ kc, mc: 0, note: undefined }),
    },
    binds: {
      k_c1: {
        gives: 'pressure',
        says: 'Specific cutting force at a chip 1 mm thick and wide',
        from: ({ kc }) => kc,
      },
      m_c: {
        gives: 'ratio',
        says: 'Exponent by which it falls with thickness',
        from: ({ mc }) => mc,
      },
    },
  },
  { says: 'Metal that is cut' },
);

/** Kienzle’s law, after an input or step `h`, the chip thickness. */
export const specificForce = {
  k_c: {
    gives: 'pressure',
    expr: 'k_c1*h^(-m_c)',
    fitted: { units: { k_c1: 'MPa', h: 'mm' }, out: 'MPa' },
    says: 'Specific cutting force by Kienzle, higher for thin chips; h in mm',
  },
} as const satisfies Record<string, Step>;
