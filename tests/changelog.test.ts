import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
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
