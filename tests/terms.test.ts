import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tools } from '../src/call/tools';
import { catalogue } from '../src/catalogue';
import { wordsOf } from '../src/derive/words';

/** One word for one thing, and American spelling, wherever a person reads: what is not said, and what is said for it. */
const SAID: readonly (readonly [RegExp, string])[] = [
  [/\b(?:safety factor|factor of safety)/i, 'margin'],
  [/\beffort\b/i, 'push'],
  [/\bplastics?\b/i, 'resin'],
  [/\bwork material/i, 'metal'],
  [/\bstep-over/i, 'stepover'],
  [/\b(?:ridge|cusp|stair)s?\b/i, 'scallop'],
  [/\bhigh-speed steel/i, 'high speed steel'],
  [/\bour functions/i, 'MOLD functions'],
  [/aluminium/i, 'aluminum'],
  [/colour/i, 'color'],
  [/\bcentr(?:e|ed|ing)\b/i, 'center'],
  [/mould/i, 'mold'],
  [/neighbour/i, 'neighbor'],
  [/\blitres?\b|\b(?:milli|centi)?metres?\b/i, 'liter, meter'],
  [/sulph/i, 'sulf'],
  [/\bgrey\b/i, 'gray'],
];

const faultsOf = (place: string, text: string): string[] =>
  // Words in quotes are what a table or a choice is called by, and stay as sheets have them.
  SAID.filter(([word]) => word.test(text.replace(/"[^"]*"/g, ''))).map(
    ([, say]) => `${place} says "${text}": say ${say}`,
  );

/** Every text of a definition but the names of its sources, wherever it stands. */
function texts(value: unknown, key = ''): string[] {
  if (typeof value === 'string')
    return ['summary', 'says', 'method', 'notes', 'whenLeftOut'].includes(key) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one) => texts(one, key));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => texts(one, name));
}

describe('one word for one thing', () => {
  it('in everything that a function says', () => {
    const all = [
      ...catalogue.flatMap((definition) => texts(definition).map((text) => [definition.name, text] as const)),
      ...catalogue.flatMap((definition) =>
        wordsOf(definition).parameters.map(({ says }) => [definition.name, says] as const),
      ),
      ...tools.flatMap((tool) =>
        [...texts(tool), ...(tool.cautions ?? [])].map((text) => [tool.name, text] as const),
      ),
    ];
    expect(all.length).toBeGreaterThan(1000);
    expect(all.flatMap(([name, text]) => faultsOf(name, text))).toEqual([]);
  });

  it('in the texts of panel, page, command line and samples', () => {
    const root = resolve(import.meta.dirname, '..');
    const files = [
      'src/panel',
      'src/page',
      'src/excel',
      'src/cli',
      'src/share',
      'src/forms',
      'src/render',
      'samples',
    ].flatMap((folder) => filesIn(join(root, folder)));
    expect(files.length).toBeGreaterThan(50);
    const faults = files.flatMap((file) =>
      literalsOf(readFileSync(file, 'utf8')).flatMap((text) => faultsOf(file.slice(root.length + 1), text)),
    );
    expect(faults).toEqual([]);
  });
});

function filesIn(folder: string): string[] {
  try {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(folder, name));
  } catch {
    // A room that is not built yet.
    return [];
  }
}

/** Texts in quotes that hold more than one word: names of parts are not for people. */
const literalsOf = (code: string): string[] =>
  [...code.matchAll(/'((?:[^'\\\n]|\\.)*)'|`((?:[^`\\]|\\.)*)`|>([^<>{}=;]+)</g)]
    .map(([, plain, template, element]) => plain ?? template ?? element ?? '')
    .filter((text) => /[a-z] /i.test(text));
