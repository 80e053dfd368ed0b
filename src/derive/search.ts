import MiniSearch from 'minisearch';
import { stemmer } from 'stemmer';
import type { FamilyWords } from '../core/familyWords';
import { familyOf, type FunctionWords } from './words';

/** Search of the functions by the words of the shop: one index for the panel, the command line and the help. */

/** What is searched of one function, the most telling field first. */
export interface SearchDocument {
  readonly id: string;
  readonly name: string;
  /** What people call it. */
  readonly shop: string;
  readonly summary: string;
  readonly family: string;
  readonly parameters: string;
}

/** The ids that a search means, best first; all in their order where it has no words. */
export type Search = (text: string) => readonly string[];

const BOOST = { name: 1.5, shop: 3, summary: 2, family: 1, parameters: 0.7 };
const FIELDS = Object.keys(BOOST);

/** What comes out weaker than this part of the best is chance: one common word of several. */
const WEAKEST = 0.3;

export const searchDocuments = (
  functions: readonly FunctionWords[],
  families: Readonly<Record<string, FamilyWords>>,
): SearchDocument[] =>
  functions.map(({ id, summary, parameters }) => {
    const family = families[familyOf(id)];
    return {
      id,
      name: id,
      shop: family?.functions[id] ?? '',
      summary,
      family: family ? [family.title, family.question, family.also].join(' ') : '',
      parameters: parameters.map(({ name, says }) => `${apart(name)} ${says}`).join(' '),
    };
  });

export function searchOf(documents: readonly SearchDocument[]): Search {
  // Made by the first search: most who see the list of all functions never search it.
  let index: MiniSearch<SearchDocument> | undefined;
  const all = documents.map(({ id }) => id);
  return (text) => {
    const words = text.replace(/^\s*=?\s*(?:mold\.)?/i, '');
    if (words.trim() === '') return all;
    const typed = words.trim().toUpperCase().replace(/\($/, '');
    const named = all.filter((id) => id.startsWith(typed));
    index ??= indexOf(documents);
    const found = index.search(words);
    const least = (found[0]?.score ?? 0) * WEAKEST;
    const meant = found.filter(({ score }) => score >= least).map(({ id }) => id as string);
    return [...new Set([...named, ...meant])];
  };
}

function indexOf(documents: readonly SearchDocument[]): MiniSearch<SearchDocument> {
  const index = new MiniSearch<SearchDocument>({
    fields: FIELDS,
    processTerm,
    searchOptions: {
      boost: BOOST,
      prefix: (term) => term.length > 2,
      fuzzy: (term) => (term.length > 4 ? 0.2 : false),
      weights: { prefix: 0.4, fuzzy: 0.2 },
    },
  });
  index.addAll(documents);
  return index;
}

/** `seatRadius` as `seat Radius`. */
const apart = (name: string): string => name.replace(/(?<=[a-z])(?=[A-Z])/g, ' ');

/** Words of every question, which tell nothing of what is asked. */
const COMMON = new Set(
  (
    'a an and any are as at be been by can could did do does for from get gets give gives got had has have how i if in into is it its ' +
    'me my need needs no not of on or our per should so some than that the their them then there they this to ' +
    'too up us want was we what when where which who why will with would you your much many'
  ).split(' '),
);

/** Words that the trade uses for one another; each is looked for as the first of its line. */
const SAME = new Map(
  [
    'force load',
    'push shove',
    'bend deflect flex bow',
    'resin plastic polymer',
    'melt molten',
    'largest biggest maximum max',
    'smallest least minimum min',
    'stick stuck jam',
    'cutter endmill',
    'tons tonnage',
    'fraction share percent percentage',
    'drift shift',
    'lift rise',
    'diameter dia',
    'bolt screw',
    'mold tool die',
  ].flatMap((line) => {
    const [first = '', ...others] = line.split(' ').map(stemmer);
    return others.map((other) => [other, first] as const);
  }),
);

function processTerm(term: string): string | null {
  const word = term.toLowerCase();
  if (COMMON.has(word)) return null;
  const stem = stemmer(american(word));
  return SAME.get(stem) ?? stem;
}

const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/^mould/, 'mold'],
  [/centre/, 'center'],
  [/aluminium/, 'aluminum'],
  [/colour/, 'color'],
  [/^grey$/, 'gray'],
  [/^(milli|centi|kilo)?metre/, '$1meter'],
  [/litre/, 'liter'],
  [/fibre/, 'fiber'],
  [/sulph/, 'sulf'],
];

const american = (word: string): string =>
  SPELLINGS.reduce((text, [british, spelling]) => text.replace(british, spelling), word);
