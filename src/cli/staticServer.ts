import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import platformPath, { extname, type PlatformPath } from 'node:path';

const TEXT = 'text/plain; charset=utf-8';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.txt': TEXT,
};

/** The file in a folder that a request's path names, whether it is there or not; undefined where it leads outside. */
export function fileWithin(
  folder: string,
  urlPath: string,
  at: PlatformPath = platformPath,
): string | undefined {
  let path: string;
  try {
    path = decodeURIComponent(urlPath);
  } catch {
    return undefined;
  }
  // A colon is a drive or a second stream of a file on Windows, and in no name of ours.
  if (/[\0:]/.test(path)) return undefined;
  const file = at.resolve(at.join(folder, path.endsWith('/') ? `${path}index.html` : path));
  return file.startsWith(at.resolve(folder) + at.sep) ? file : undefined;
}

async function findFile(
  folder: string,
  urlPath: string,
): Promise<{ readonly file: string; readonly size: number } | undefined> {
  const file = fileWithin(folder, urlPath);
  if (file === undefined) return undefined;
  const found = await stat(file).catch(() => undefined);
  return found?.isFile() ? { file, size: found.size } : undefined;
}

/** A server of the files in a folder, and of nothing else. */
export function staticServer(folder: string): Server {
  return createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const [path = '/'] = (request.url ?? '/').split('?');
    void findFile(folder, path).then((found) => {
      if (!found) {
        response.writeHead(404, { 'Content-Type': TEXT }).end('Not found\n');
        return;
      }
      response.writeHead(200, {
        'Content-Type': TYPES[extname(found.file)] ?? 'application/octet-stream',
        'Content-Length': found.size,
        'X-Content-Type-Options': 'nosniff',
        // Scripts and styles carry a hash of their content in the name; all else is asked for again.
        'Cache-Control': /\.[0-9a-f]{8}\.(js|css)$/.test(found.file)
          ? 'max-age=31536000, immutable'
          : 'no-cache',
      });
      if (request.method === 'HEAD') response.end();
      else {
        createReadStream(found.file)
          .on('error', () => response.destroy())
          .pipe(response);
      }
    });
  });
}
