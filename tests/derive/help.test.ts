import { posix } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { helpEntries } from '../../scripts/help/entries';
import { helpPages } from '../../scripts/help/pages';
import { CellError, type CellValue, type Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { exampleCheck, exampleOf } from '../../src/call/example';
import { helpPage } from '../../src/call/helpPage';
import { catalogue } from '../../src/catalogue';
import type { Definition } from '../../src/core/define';
import { DEFERS, type HelpEntry } from '../../src/derive/help';
import { SOURCE_KINDS } from '../../src/derive/words';
import { calculateFormulas } from '../../src/workbook/calculateFormulas';
import { CHECKS } from '../support/checks';
import { runCheck } from '../support/runCheck';

let entries: readonly HelpEntry[];
let pages: ReadonlyMap<string, string>;
beforeAll(async () => {
  entries = await helpEntries(CHECKS);
  const files = [...(await helpPages(CHECKS))];
  pages = new Map(files.filter(([address]) => address.endsWith('.html')));
}, 120_000);

// An alias answers in cells and has no page of its own.
const ids = worksheetFunctions.flatMap(({ id, aliasOf }) => (aliasOf === undefined ? [id] : []));
const pageOf = (id: string): string => pages.get(helpPage(id)) ?? '';

describe('the help', () => {
  it('has a page for every function and nothing else but the index and the guide', () => {
    expect([...pages.keys()].filter((name) => !name.startsWith('help/guide/')).sort()).toEqual(
      ['help/excel.html', 'help/index.html', 'help/validation.html', ...ids.map(helpPage)].sort(),
    );
  });

  it.each(ids)('of %s leaves no gap', (id) => {
    const entry = entries.find((one) => one.id === id) as HelpEntry;
    const page = pageOf(id);
    expect(page).not.toMatch(/undefined|NaN|\[object/);
    expect(entry.summary).toMatch(/\.$/);
    for (const { name, says } of entry.parameters) {
      expect(says.length).toBeGreaterThan(3);
      expect(page).toContain(`<dt>${name}`);
    }
    for (const heading of ['Arguments', 'Example', 'Sources']) expect(page).toContain(`<h2>${heading}</h2>`);
    for (const { kind } of entry.sources) expect(page).toContain(`>${SOURCE_KINDS[kind]}</span>`);
    const definition = catalogue.find(({ name }) => name === id);
    if (definition && definition.type !== 'lookup') expect(page).toContain('<h2>Equation</h2>');
    if (definition?.type === 'lookup') expect(page).toContain('<h2>What it gives</h2>');
    expect(entry.example.answer.flat().join('')).not.toBe('');
  });

  it('leads only to pages that there are', () => {
    const wrong = [...pages].flatMap(([name, text]) =>
      [...text.matchAll(/href="([^"]+\.html)"/g)]
        .map(([, target]) => posix.join(posix.dirname(name), target ?? ''))
        .filter((target) => !pages.has(target))
        .map((target) => `${name} leads to ${target}`),
    );
    expect(wrong).toEqual([]);
  });

  it('defers to the machine’s manual, local codes and licensed practice at the end of every page', () => {
    for (const text of pages.values()) expect(text).toContain(`<footer>${DEFERS}</footer></body>`);
  });

  it('lists every function in the index', () => {
    const index = pages.get('help/index.html') ?? '';
    for (const id of ids) expect(index).toContain(`>MOLD.${id}</a>`);
  });

  it('leads from each question of the job to the functions that answer it', () => {
    const index = pages.get('help/index.html') ?? '';
    const asked = [...index.matchAll(/<a href="#(\w+)">([^<]+\?)<\/a>/g)].map(([, family]) => family);
    const ofFunctions = [...new Set(ids.map((id) => id.split('.')[0]))];
    expect([...asked].sort()).toEqual([...ofFunctions].sort());
    for (const family of asked) expect(index).toContain(`<section data-listed id="${family}">`);
  });

  it('asks nobody else for anything and runs no script but its own', () => {
    for (const text of pages.values()) {
      expect(text).not.toMatch(/(?:src|href)="(?:https?:)?\/\//);
      expect(text).not.toMatch(/<script(?! src="search\.js")/);
      expect(text).toContain("default-src 'none'");
    }
  });
});

describe('the examples of the help', () => {
  let answers: readonly Matrix[];
  beforeAll(async () => {
    answers = await calculateFormulas(
      entries.map(({ example }) => example.typed),
      worksheetFunctions,
    );
  }, 120_000);

  it.each(ids)('of %s gives an answer as it is typed', (id) => {
    const at = entries.findIndex((one) => one.id === id);
    const cells = (answers[at] ?? []).flat();
    expect(cells.length).toBeGreaterThan(0);
    const errors = cells.filter((cell): cell is CellError => cell instanceof CellError);
    expect(errors.map(({ code, message }) => `${code} ${message}`)).toEqual([]);
  });

  it.each(catalogue.map((definition) => [definition.name, definition] as const))(
    'of %s gives what its check expects',
    (id, definition: Definition) => {
      const check = exampleCheck(definition, CHECKS);
      const { system } = exampleOf(definition, check);
      const { wanted } = runCheck(definition, check, system);
      const got: readonly CellValue[] = answers[entries.findIndex((one) => one.id === id)]?.[0] ?? [];
      wanted.forEach((value, i) => {
        if (typeof value !== 'number') expect(got[i]).toBe(value);
        else
          expect(Math.abs((got[i] as number) - value)).toBeLessThanOrEqual(
            (check.within ?? 1e-12) * (Math.abs(value) || 1),
          );
      });
    },
  );
});
