import { describe, expect, it } from 'vitest';
import type { FunctionsJson } from '../../src/excel/functionsJson';
import { isBuilt, readBuilt } from './runtime';

describe.skipIf(!isBuilt)('the built panel page', () => {
  const page = isBuilt ? readBuilt('taskpane.html') : '';
  const tags = [...page.matchAll(/<script ([^>]*)>/g)].map(([, attributes]) => attributes);
  const [policy = ''] = /<meta[^>]*Content-Security-Policy[^>]*>/i.exec(page) ?? [];

  it('loads office.js, then the functions and the panel as deferred scripts, and nothing else', () => {
    expect(tags).toEqual([
      expect.stringMatching(
        /^src=(https:\/\/appsforoffice\.microsoft\.com\/lib\/1\/hosted|office)\/office\.js$/,
      ),
      'defer src=functions.js',
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

  it('has functions that need no further file, and a panel that fetches its large parts when they are shown', () => {
    // Both files share the loader, which stands in the first; only the panel may call it.
    const fetches = /\b\w+\.e\(\d+\)/;
    expect(readBuilt('functions.js')).not.toMatch(fetches);
    expect(readBuilt('taskpane.js')).toMatch(fetches);
    // Where the files are must not be found out by asking a page: Excel may load the functions without one.
    expect(readBuilt('functions.js')).not.toMatch(/currentScript|importScripts|[^.\w]import\(/);
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
