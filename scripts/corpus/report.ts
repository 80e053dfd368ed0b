import { basename } from 'node:path';
import { table } from '../../src/cli/table';
import { KNOWN } from './known';
import { VERDICTS, type Scored } from './score';

export interface Scores {
  readonly file: string;
  readonly scored: readonly Scored[];
}
type Entry = readonly [file: string, one: Scored];

const isBad = ({ verdict }: Scored): boolean => verdict !== 'agree' && verdict !== 'kept';

interface Tally {
  formulas: number;
  roots: number;
  readonly verdicts: Map<string, number>;
}

function tally(entries: readonly Entry[], keysOf: (entry: Entry) => readonly string[]): Map<string, Tally> {
  const tallies = new Map<string, Tally>();
  for (const entry of entries) {
    for (const key of keysOf(entry)) {
      const one = tallies.get(key) ?? { formulas: 0, roots: 0, verdicts: new Map<string, number>() };
      tallies.set(key, one);
      const { verdict, isRoot } = entry[1];
      one.formulas++;
      one.roots += isRoot ? 1 : 0;
      one.verdicts.set(verdict, (one.verdicts.get(verdict) ?? 0) + 1);
    }
  }
  return tallies;
}

const percent = (part: number, all: number): string =>
  all === 0 ? '–' : `${((100 * part) / all).toFixed(2)} %`;

function rows(tallies: Iterable<readonly [string, Tally]>): string {
  return table(
    ['', 'formulas', ...VERDICTS, 'roots', 'agree', 'or kept'],
    [...tallies].map(([key, { formulas, roots, verdicts }]) => {
      const [agree = 0, , , , kept = 0] = VERDICTS.map((verdict) => verdicts.get(verdict) ?? 0);
      return [
        key.slice(0, 32),
        formulas,
        ...VERDICTS.map((verdict) => verdicts.get(verdict) ?? 0),
        roots,
        percent(agree, formulas),
        percent(agree + kept, formulas),
      ];
    }),
  );
}

const badOf = ({ verdicts, formulas }: Tally): number =>
  formulas - (verdicts.get('agree') ?? 0) - (verdicts.get('kept') ?? 0);

/** One example a function: a root before others, a value lost before others, few functions, a short formula. */
function example(entries: readonly Entry[], name: string): string {
  const weight = ({ isRoot, verdict, functions, formula }: Scored): number =>
    (isRoot ? 0 : 1e6) +
    (verdict === 'value → error' ? 0 : 1e5) +
    functions.length * 1e4 +
    Math.min(formula.length, 9999);
  const found = entries.filter(([, one]) => isBad(one) && one.functions.includes(name));
  const best = found.reduce((a, b) => (weight(b[1]) < weight(a[1]) ? b : a), found[0] as Entry);
  const [file, { verdict, sheet, cell, formula, stored, now }] = best;
  return `  ${name}: ${verdict}, ${basename(file)} ${sheet}!${cell} =${formula.slice(0, 120)} : stored ${stored}, now ${now}`;
}

/** What differs for a known reason, by reason, and how many differ for none. */
function known(entries: readonly Entry[]): string {
  const bad = entries.filter(([, one]) => isBad(one));
  const reasonOf = ([, one]: Entry): string =>
    KNOWN.find(({ holds }) => holds(one))?.reason ?? 'not looked into';
  const reasons = [...tally(bad, (entry) => [reasonOf(entry)])].map(([reason, { formulas }]) => [
    reason,
    formulas,
  ]);
  return `what differs\n${table(['reason', 'formulas'], reasons)}`;
}

export interface ReportOptions {
  readonly top: number;
  /** The origins, the first part of a file's name, that are tests of functions; all others are workbooks. */
  readonly functionTests: ReadonlySet<string>;
}

const originOf = (file: string): string => /^([a-z]+)-\d/i.exec(basename(file))?.[1] ?? 'workbooks';

export function report(files: readonly Scores[], { top, functionTests }: ReportOptions): string {
  const entries = files.flatMap(({ file, scored }) => scored.map((one): Entry => [file, one]));
  const splitOf = (file: string) => (functionTests.has(originOf(file)) ? 'function tests' : 'workbooks');
  const parts = [
    rows(tally(entries, ([file]) => [splitOf(file), 'all'])),
    rows([...tally(entries, ([file]) => [originOf(file)])].sort(([a], [b]) => a.localeCompare(b))),
  ];
  const lost = entries.filter(([, { verdict }]) => verdict === 'value → error');
  const alone = lost.filter(([, { isErrorElsewhere }]) => !isErrorElsewhere);
  parts.push(`stored values that became errors: ${lost.length}, in LibreOffice not: ${alone.length}`);
  parts.push(known(entries));
  for (const split of ['workbooks', 'function tests']) {
    const own = entries.filter(([file]) => splitOf(file) === split);
    const worst = [...tally(own, ([, { functions }]) => functions)]
      .filter(([, one]) => badOf(one) > 0)
      .sort(([, a], [, b]) => b.roots - a.roots || badOf(b) - badOf(a))
      .slice(0, top);
    if (worst.length === 0) continue;
    parts.push(`${split}, worst first\n${rows(worst)}`, worst.map(([name]) => example(own, name)).join('\n'));
  }
  const reasons = tally(
    entries.filter(([, { verdict }]) => verdict === 'kept'),
    ([, { kept = '' }]) => [kept.slice(0, 60)],
  );
  if (reasons.size > 0) {
    const most = [...reasons].sort(([, a], [, b]) => b.formulas - a.formulas).slice(0, top);
    parts.push(
      `kept\n${table(
        ['reason', 'formulas'],
        most.map(([reason, { formulas }]) => [reason, formulas]),
      )}`,
    );
  }
  return parts.join('\n\n');
}

/** One line a cell that does not agree, for looking through. */
export const badCells = (files: readonly Scores[]): string =>
  files
    .flatMap(({ file, scored }) =>
      scored
        .filter(isBad)
        .map(({ sheet, cell, verdict, isRoot, isErrorElsewhere, formula, stored, now }) =>
          [
            basename(file),
            sheet,
            cell,
            verdict,
            isRoot ? 'root' : '',
            formula,
            stored,
            now,
            isErrorElsewhere ? 'error elsewhere too' : '',
          ]
            .map((text) => text.replace(/\s/g, ' '))
            .join('\t'),
        ),
    )
    .join('\n');
