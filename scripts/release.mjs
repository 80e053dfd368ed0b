/**
 * `npm run release`: what people who only use Moldsheet get, in release/. One package that `npm install -g` takes
 * (command line and page, nothing to build, nothing else to install), and one zip of static files for any web server.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { zipSync } from 'fflate';
import { buildIfStale } from './build.mjs';

const OUT = 'release';
const MOST_BYTES = 15e6;

const { name, version, description, license, engines } = JSON.parse(readFileSync('package.json', 'utf8'));

/** The files of a folder by their names in a zip; `.built` and the like stay behind. */
function filesOf(folder, under) {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => !entry.name.startsWith('.'))
    .flatMap((entry) => {
      const [from, to] = [join(folder, entry.name), posix.join(under, entry.name)];
      return entry.isDirectory() ? filesOf(from, to) : [[to, new Uint8Array(readFileSync(from))]];
    });
}

function writePackage() {
  const folder = join(OUT, 'package');
  mkdirSync(folder, { recursive: true });
  const files = ['moldsheet.cjs', 'cli', 'page'];
  for (const file of files) {
    cpSync(join('dist', file), join(folder, file), {
      recursive: true,
      filter: (path) => !path.endsWith('.built'),
    });
  }
  for (const file of ['LICENSE', 'NOTICE', 'CHANGELOG.md']) cpSync(file, join(folder, file));
  cpSync(join('scripts', 'release.md'), join(folder, 'README.md'));
  const manifest = {
    name,
    version,
    description,
    license,
    engines,
    bin: { moldsheet: 'moldsheet.cjs' },
    files,
  };
  writeFileSync(join(folder, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  const packed = spawnSync('npm', ['pack', '--silent', '--pack-destination', '..'], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (packed.status !== 0) throw new Error('npm pack failed.');
  rmSync(folder, { recursive: true });
  return join(OUT, `${name}-${version}.tgz`);
}

function writeZip() {
  const files = Object.fromEntries([
    ...filesOf(join('dist', 'page'), 'page'),
    ...filesOf(join('dist', 'excel'), 'excel'),
    ['README.md', new Uint8Array(readFileSync(join('scripts', 'release.md')))],
    ...['LICENSE', 'NOTICE'].map((file) => [file, new Uint8Array(readFileSync(file))]),
  ]);
  const file = join(OUT, `${name}-web-${version}.zip`);
  writeFileSync(file, zipSync(files, { level: 9 }));
  return file;
}

if (!(await buildIfStale())) process.exit(1);
rmSync(OUT, { recursive: true, force: true });
for (const file of [writePackage(), writeZip()]) {
  const { size } = statSync(file);
  console.log(`${file}: ${(size / 1e6).toFixed(1)} MB`);
  if (size > MOST_BYTES) throw new Error(`${file} is larger than ${MOST_BYTES / 1e6} MB.`);
}
