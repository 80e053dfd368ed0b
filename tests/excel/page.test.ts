import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import type { FunctionsJson } from '../../src/excel/functionsJson';
import { isBuilt, readBuilt } from './runtime';

describe.skipIf(!isBuilt)('the built panel page', () => {
  const page = isBuilt ? readBuilt('taskpane.html') : '';
  const tags = [...page.matchAll(/<script ([^>]*)>/g)].map(([, attributes = '']) =>
    attributes.replaceAll('"', '').replace('defer=defer', 'defer'),
  );
  const [policy = ''] = /<meta[^>]*Content-Security-Policy[^>]*>/i.exec(page) ?? [];

  it('loads office.js, then the functions and the panel as deferred scripts, and nothing else', () => {
    expect(tags).toEqual([
      expect.stringMatching(
        /^src=(https:\/\/appsforoffice\.microsoft\.com\/lib\/1\/hosted|office)\/office\.js$/,
      ),
      'defer src=functions.js',
      'defer src=whole.js',
      'defer src=taskpane.js',
    ]);
  });

  it('allows scripts from itself and Microsoft only, no inline script and no eval', () => {
    const [, scripts = ''] = /script-src ([^;]*)/.exec(policy) ?? [];
    expect(scripts.split(' ').filter((source) => source !== 'https://appsforoffice.microsoft.com')).toEqual([
      "'self'",
    ]);
    expect(policy).toContain("default-src 'self'");
    expect(page).not.toMatch(/<script(?![^>]*src=)[^>]*>/);
  });

  it('has functions that fetch their texts alone, and a panel that fetches its large parts when they are shown', () => {
    const fetched = (name: string): number => new Set(readBuilt(name).match(/\b\w+\.e\(\d+\)/g)).size;
    expect(fetched('functions.js')).toBeLessThanOrEqual(2);
    expect(fetched('taskpane.js')).toBeGreaterThan(2);
    // Where the files are must not be found out by asking a page: Excel may load the functions without one.
    expect(readBuilt('functions.js')).not.toMatch(/currentScript|importScripts|[^.\w]import\(/);
  });

  it('has functions without the texts of their help and without a parser', () => {
    const functions = readBuilt('functions.js');
    for (const { summary } of worksheetFunctions) expect(functions).not.toContain(summary);
    expect(functions).not.toMatch(/second hand|secondhand|Unexpected operator|ConditionalNode/i);
  });

  it('has no equations to typeset among its functions', () => {
    expect(readBuilt('functions.js')).not.toContain('katex');
    expect(readBuilt('taskpane.js')).not.toContain('mord');
  });

  it('has the page of help that functions.json names for each function', () => {
    const { functions } = JSON.parse(readBuilt('functions.json')) as FunctionsJson;
    for (const { id, helpUrl, description } of functions) {
      // Another name leads to the page of the function itself.
      const name = /^Another name of (\S+)\./.exec(description)?.[1] ?? id;
      expect(readBuilt(`help/${helpUrl.split('/help/')[1] ?? ''}`)).toContain(`<h1>MOLD.${name}</h1>`);
    }
    expect(readBuilt('help/index.html')).toContain(functions[0]?.id);
  });
});
