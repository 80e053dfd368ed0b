/** Serves the workbook page: `npm start`. Builds it first where that was not done since the last change. */
import { spawnSync } from 'node:child_process';
import { createReadStream, existsSync, writeFileSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isFresh } from './build.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const pageFolder = join(root, 'dist', 'page');

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.txt': 'text/plain; charset=utf-8',
};

/** The file that a request's path names, or undefined where it names none inside the folder. */
async function findFile(folder, urlPath) {
  let path;
  try {
    path = decodeURIComponent(urlPath);
  } catch {
    return undefined;
  }
  if (path.includes('\0')) return undefined;
  const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  if (!file.startsWith(folder + sep)) return undefined;
  const found = await stat(file).catch(() => undefined);
  return found?.isFile() ? { file, size: found.size } : undefined;
}

/** A server of the files in a folder, and of nothing else. */
export function staticServer(folder) {
  return createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const [path] = (request.url ?? '/').split('?');
    void findFile(folder, path).then((found) => {
      if (!found) {
        response.writeHead(404, { 'Content-Type': types['.txt'] }).end('Not found\n');
        return;
      }
      response.writeHead(200, {
        'Content-Type': types[extname(found.file)] ?? 'application/octet-stream',
        'Content-Length': found.size,
        'X-Content-Type-Options': 'nosniff',
        // Scripts and styles carry a hash of their content in the name; all else is asked for again.
        'Cache-Control': /\.[0-9a-f]{8}\.(js|css)$/.test(found.file)
          ? 'max-age=31536000, immutable'
          : 'no-cache',
      });
      if (request.method === 'HEAD') response.end();
      else
        createReadStream(found.file)
          .on('error', () => response.destroy())
          .pipe(response);
    });
  });
}

function main() {
  const port = Number(process.env.PORT ?? 3000);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    console.error(`PORT must be a whole number from 0 to 65535, not "${process.env.PORT}".`);
    process.exit(2);
  }
  process.chdir(root);
  const stamp = join(pageFolder, '.built');
  if (!existsSync(join(pageFolder, 'index.html')) || !(isFresh(stamp) || isFresh('dist/.built'))) {
    console.log('Building the workbook page; this takes about a minute.');
    const built = spawnSync('npm', ['run', '--silent', 'build:page'], {
      stdio: ['ignore', 'ignore', 'inherit'],
      shell: process.platform === 'win32',
    });
    if (built.status !== 0) {
      console.error('The page could not be built; `npm run build:page` says why.');
      process.exit(1);
    }
    writeFileSync(stamp, '');
  }
  const server = staticServer(pageFolder);
  server.on('error', (error) => {
    console.error(
      error.code === 'EADDRINUSE'
        ? `Port ${port} is taken. Close what uses it, or choose another: PORT=${port + 1} npm start`
        : `The server could not start: ${error.message}`,
    );
    process.exit(1);
  });
  server.listen(port, 'localhost', () => {
    console.log(`Moldsheet: open http://localhost:${server.address().port}`);
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
