import { distance } from 'fastest-levenshtein';
import { foldName } from '../core/names';
import { Refusal } from '../core/refusal';

/** A name that stands in no table, with the nearest ones that do. */
export class UnknownName extends Refusal {
  constructor(
    /** What the table holds: `thread`. */
    what: string,
    readonly given: string,
    readonly nearest: readonly string[],
  ) {
    const hint = nearest.length === 0 ? '' : `; nearest: ${nearest.join(', ')}`;
    super(`is "${given}", but there is no such ${what}${hint}`, undefined, '#N/A');
  }
}

/** A name that means several rows of a table. */
export class AmbiguousName extends Refusal {
  constructor(
    what: string,
    readonly given: string,
    readonly choices: readonly string[],
  ) {
    super(
      `is "${given}", which names more than one ${what}: write ${choices.slice(0, -1).join(', ')} or ${choices.at(-1) ?? ''}`,
    );
  }
}

/** The `count` names nearest to what was typed, nearest first; equal ones in the table's order. */
export const nearestNames = (given: string, names: readonly string[], count = 3): string[] => {
  const key = foldName(given);
  return names
    .map((name) => ({ name, away: distance(key, foldName(name)) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, count)
    .map(({ name }) => name);
};

export interface Named {
  readonly name: string;
  /** Other names of the same row; one that several rows share is refused by naming them. */
  readonly aliases?: readonly string[];
}

/** Every name of the rows of a table. */
export const namesOf = (rows: readonly Named[]): string[] =>
  rows.flatMap(({ name, aliases = [] }) => [name, ...aliases]);

/** A finder whose index is made when it is first asked: to fold every name of every table takes a quarter of a start. */
export function lazily<T>(make: () => (given: string) => T): (given: string) => T {
  let find: ((given: string) => T) | undefined;
  return (given) => (find ??= make())(given);
}

/** Finds a row by its name or an alias. Throws `UnknownName` or `AmbiguousName`. */
export const nameFinder = <T extends Named>(what: string, rows: readonly T[]): ((given: string) => T) =>
  lazily(() => indexedByName(what, rows));

function indexedByName<T extends Named>(what: string, rows: readonly T[]): (given: string) => T {
  const byName = new Map<string, T>();
  const byAlias = new Map<string, T[]>();
  for (const row of rows) {
    byName.set(foldName(row.name), row);
    for (const alias of row.aliases ?? []) {
      const key = foldName(alias);
      // Spellings that are read alike count once.
      byAlias.set(key, [...new Set(byAlias.get(key)).add(row)]);
    }
  }
  return (given) => {
    const key = foldName(given);
    const named = byName.get(key);
    if (named) return named;
    const meant = byAlias.get(key) ?? [];
    const [only] = meant;
    if (only && meant.length === 1) return only;
    if (meant.length > 1)
      throw new AmbiguousName(
        what,
        given,
        meant.map((row) => row.name),
      );
    throw new UnknownName(
      what,
      given,
      nearestRows(given, rows).map((row) => row.name),
    );
  };
}

/** Nearest rows by name or alias, each once. */
function nearestRows<T extends Named>(given: string, rows: readonly T[], count = 3): T[] {
  const key = foldName(given);
  const away = (row: T) =>
    Math.min(...[row.name, ...(row.aliases ?? [])].map((name) => distance(key, foldName(name))));
  return rows
    .map((row) => ({ row, away: away(row) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, count)
    .map(({ row }) => row);
}
