/** Tries what `npm run release` made in an empty folder, as a person who has only that: for `.ci/run`. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, posix, resolve } from 'node:path';
import { Script } from 'node:vm';
import { strFromU8, unzipSync } from 'fflate';

const folder = mkdtempSync(join(tmpdir(), 'moldsheet-release-'));
const file = (ending) =>
  resolve(
    'release',
    readdirSync('release').find((name) => name.endsWith(ending)),
  );
const windows = process.platform === 'win32';

function expect(what, holds) {
  if (!holds) throw new Error(`The release does not work: ${what}.`);
  console.log(`  ${what}`);
}

/** Whether a text is a whole script. */
function parses(text) {
  try {
    return text !== '' && Boolean(new Script(text));
  } catch {
    return false;
  }
}

function run(command, args) {
  const { stdout, status } = spawnSync(command, args, { cwd: folder, encoding: 'utf8', shell: windows });
  return status === 0 ? stdout.trim() : undefined;
}

try {
  run('npm', ['install', '--global', '--offline', '--prefix', folder, file('.tgz')]);
  const program = join(folder, ...(windows ? [] : ['bin']), 'moldsheet');
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect('the installed program tells its version', run(program, ['--version']) === version);
  expect('it calculates', Number(run(program, ['calc', '=MOLD.SEAT.CLEAR(10,10,"mm")'])) > 1.7);

  const server = spawn(program, ['serve', '--port', '0'], { cwd: folder, shell: windows });
  const address = await new Promise((found, failed) => {
    server.stdout.on('data', (text) => found(/http:\S+/.exec(String(text))?.[0]));
    server.on('exit', () => failed(new Error('The release does not work: serve ended at once.')));
  });
  const page = await (await fetch(address)).text();
  const script = /src="([^"]+\.js)"/.exec(page)?.[1];
  expect('it serves the page', script !== undefined && (await fetch(new URL(script, address))).ok);
  expect('it serves the help', (await fetch(new URL('help/index.html', address))).ok);
  server.kill();

  const files = unzipSync(new Uint8Array(readFileSync(file('.zip'))));
  const names = Object.keys(files);
  for (const name of ['page/index.html', 'excel/manifest.xml', 'excel/functions.json'])
    expect(`the zip holds ${name}`, names.includes(name));
  // The functions fetch the rest of the program by name, and the panel's page names all that it starts with.
  for (const name of ['page/index.html', 'excel/taskpane.html']) {
    const html = strFromU8(files[name]);
    const scripts = [...html.matchAll(/(?:src|href)="([^":]+\.js)"/g)].map(([, script]) =>
      posix.join(posix.dirname(name), script),
    );
    expect(
      `the zip holds all that ${name} starts with: ${scripts.map((script) => posix.basename(script)).join(', ')}`,
      scripts.length > 0 && scripts.every((script) => names.includes(script)),
    );
  }
  for (const name of ['excel/functions.js', 'excel/whole.js'])
    expect(`the zip holds ${name}, which can be read`, parses(strFromU8(files[name])));
  expect(
    'its names are plain on every system',
    names.every((name) => /^[\w./-]+$/.test(name)),
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
