/** Writes the report of every check of every function: npm run validation. */
import { copyFileSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Checks } from '../src/core/checks';
import { helpPages } from './help/pages';

const folder = 'src/catalogue';
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.checks.ts'))
  .sort();
const checks = await Promise.all(
  files.map(
    async (file) =>
      ((await import(pathToFileURL(resolve(folder, file)).href)) as { default: Checks }).default,
  ),
);
const pages = await helpPages(checks);
mkdirSync('reports', { recursive: true });
copyFileSync('scripts/help/help.css', 'reports/help.css');
for (const [address, text] of pages)
  if (/validation\.(html|csv)$/.test(address)) writeFileSync(address.replace('help/', 'reports/'), text);
console.log('reports/validation.html, reports/validation.csv');
