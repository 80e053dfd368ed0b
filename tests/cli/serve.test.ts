import { mkdtempSync, writeFileSync, mkdirSync } from 'node:fs';
import { request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { staticServer } from '../../src/cli/staticServer';

let server: Server;

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), 'moldsheet-'));
  mkdirSync(join(folder, 'page', 'samples'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  mkdirSync(join(folder, 'page-other'));
  writeFileSync(join(folder, 'page-other', 'secret.txt'), 'secret');
  writeFileSync(join(folder, 'page', 'index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'page', 'page.0123abcd.js'), '1');
  writeFileSync(join(folder, 'page', 'samples', 'a.xlsx'), 'PK');
  server = staticServer(join(folder, 'page'));
  await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
});
afterAll(() => {
  server.close();
});

/** The path goes to the server as it is: `fetch` would tidy it first. */
function ask(path: string, method = 'GET') {
  return new Promise<{ status: number; type: string; cache: string; body: string }>((resolve, reject) => {
    const { port } = server.address() as AddressInfo;
    request({ host: 'localhost', port, path, method }, (response) => {
      let body = '';
      response.on('data', (chunk: Buffer) => (body += chunk.toString()));
      response.on('end', () => {
        resolve({
          status: response.statusCode ?? 0,
          type: response.headers['content-type'] ?? '',
          cache: response.headers['cache-control'] ?? '',
          body,
        });
      });
    })
      .on('error', reject)
      .end();
  });
}

describe("the page's server", () => {
  it('serves the page at its address, and files by their type', async () => {
    expect(await ask('/')).toMatchObject({
      status: 200,
      type: 'text/html; charset=utf-8',
      body: '<p>page</p>',
    });
    expect((await ask('/samples/a.xlsx')).type).toContain('spreadsheetml');
    expect(await ask('/?from=mail', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  it('lets a browser keep only what carries a hash in its name', async () => {
    expect((await ask('/page.0123abcd.js')).cache).toContain('immutable');
    expect((await ask('/')).cache).toBe('no-cache');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/samples/../../secret.txt',
    '/../page-other/secret.txt',
    '//etc/passwd',
    '/samples',
    '/nothing',
    '/%',
    '/index.html%00.js',
  ])('hands out nothing for %s', async (path) => {
    expect(await ask(path)).toMatchObject({ status: 404, body: 'Not found\n' });
  });

  it('takes no other requests than reading', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
  });
});
