import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tools } from '../src/call/tools';
import { catalogue } from '../src/catalogue';
import type { Change } from '../src/core/define';
import { worksheetFunctions } from '../src/call/functions';
import { BASIS } from '../src/call/version';
import { version } from '../package.json';

const changelog = readFileSync('CHANGELOG.md', 'utf8');

it('the changelog names every function', () => {
  const listed = new Set(
    [...changelog.matchAll(/\b([A-Z]+)(?::|(?=\.))([^;]*?)(?=;|\n-|\n\n|$)/g)].flatMap(
      ([, family = '', names = '']) =>
        [...names.matchAll(/[A-Z0-9]{2,}/g)].map(([name]) => `${family}.${name}`),
    ),
  );
  expect(worksheetFunctions.map(({ id }) => id).filter((id) => !listed.has(id))).toEqual([]);
});

it('the changelog has a section for this version and basis', () => {
  expect(changelog).toContain(`## ${version}, basis ${BASIS}`);
});

describe('results that change with this basis', () => {
  const [, section = ''] = changelog.split(`## ${version}, basis ${BASIS}`);
  const [, entries = ''] = (section.split(/^## /m)[0] ?? '').split('### Results that change');
  const ids = worksheetFunctions.map(({ id }) => id);
  // Before the colon stand the functions that changed; after it others may be named.
  const listed = entries
    .split(/^- /m)
    .slice(1)
    .flatMap((entry) => (entry.split(/:\s/)[0] ?? '').match(/[A-Z]+\.[A-Z]+/g) ?? []);
  const ofThis = (changes: readonly Change[] = []): boolean =>
    changes.some(({ basis, says }) => basis === BASIS && says !== '');
  // A table that many functions read is one entry of the changelog.
  const own = [...catalogue, ...tools].flatMap(({ name, changes }) => (ofThis(changes) ? [name] : []));
  const withReason = new Set(worksheetFunctions.flatMap(({ id, changes }) => (ofThis(changes) ? [id] : [])));

  it('have an entry here for each function with a reason of its own', () => {
    expect(own.length).toBeGreaterThan(5);
    expect(own.filter((id) => !listed.includes(id))).toEqual([]);
  });

  it('have a reason, beside the function or what it reads, for each entry here', () => {
    expect(listed.length).toBeGreaterThan(5);
    expect(listed.filter((id) => !withReason.has(id))).toEqual([]);
  });

  it('name functions that there are', () => {
    expect(listed.filter((id) => !ids.includes(id))).toEqual([]);
  });
});
