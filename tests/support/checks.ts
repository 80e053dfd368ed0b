/// <reference types="vite/types/importMeta.d.ts" />
import type { Check, Checks } from '../../src/core/checks';
import type { Definition } from '../../src/core/define';

const files = import.meta.glob<Checks>('../../src/catalogue/**/*.checks.ts', {
  eager: true,
  import: 'default',
});

/** What stands in the files of checks. */
export const CHECKS: readonly Checks[] = Object.values(files);

const byName = new Map(CHECKS.map(({ of, checks }) => [of, checks]));

/** The checks of a definition; none where its file is missing, which the test of the catalogue says. */
export const checksOf = ({ name }: Definition): readonly Check[] => byName.get(name) ?? [];
