/**
 * `npm run excel`: builds the add-in, serves it by https and loads it into Excel, as far as this system can.
 * `-- --port 4443` serves on another port; `-- --document https://…` loads it into that workbook in Excel on the web.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:https';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { parseNumber } from 'office-addin-cli';
import { generateCertificates, installCaCertificate } from 'office-addin-dev-certs';
import { OfficeAddinManifest } from 'office-addin-manifest';
import { staticServer } from '../../src/cli/staticServer';
import { DEVELOPMENT_ORIGIN } from './manifest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = join(root, 'dist', 'excel');
const manifest = join(folder, 'manifest.xml');
/** Where office-addin-dev-settings starts Excel. */
const HAS_EXCEL = process.platform === 'win32' || process.platform === 'darwin';

const main = async (): Promise<void> => {
  const { values } = parseArgs({ options: { port: { type: 'string' }, document: { type: 'string' } } });
  const port = readPort(values.port);
  const origin = `https://localhost:${port}`;

  run('npx', ['webpack', '--mode', 'production', '--config-name', 'excel', '--env', `origin=${origin}`]);
  const { displayName = '', version = '' } = await OfficeAddinManifest.readManifestFile(manifest);
  console.log(`\n${displayName} ${version}`);

  await serve(port);
  console.log(`Served at ${origin}. Ctrl+C ends it.\n`);

  const load = values.document
    ? ['web', '--document', values.document]
    : HAS_EXCEL
      ? ['desktop', '--app', 'Excel']
      : undefined;
  if (!load) {
    console.log(stepsForTheWeb(origin));
    return;
  }
  // Not a dependency of the project: it brings some hundred packages that only this step needs.
  const loaded = spawn('npx', ['--yes', 'office-addin-dev-settings', 'sideload', manifest, ...load]);
  if (!loaded) {
    console.log(`Excel could not be started with the add-in. By hand:\n\n${stepsByHand()}`);
  }
};

const readPort = (given: string | undefined): number => {
  const port = parseNumber(given, 'The port must be a number.') ?? Number(new URL(DEVELOPMENT_ORIGIN).port);
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    throw new Error(`The port must be a whole number from 1 to 65535, not ${port}.`);
  }
  return port;
};

const spawn = (command: string, args: readonly string[]): boolean =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;

const run = (command: string, args: readonly string[]): void => {
  if (!spawn(command, args)) throw new Error(`"${command} ${args.join(' ')}" failed; see above.`);
};

const serve = async (port: number): Promise<void> => {
  const files = staticServer(folder);
  const server = createServer(await certificate(), (request, response) => {
    // Excel on the web reads the manifest's files from a page of Microsoft's.
    response.setHeader('Access-Control-Allow-Origin', '*');
    files.emit('request', request, response);
  });
  return new Promise((resolve, reject) => {
    server.on('error', (error: NodeJS.ErrnoException) => {
      const taken = `Port ${port} is taken. Close what uses it, or choose another: npm run excel -- --port ${port + 1}`;
      reject(error.code === 'EADDRINUSE' ? new Error(taken) : error);
    });
    server.listen(port, 'localhost', () => {
      resolve();
    });
  });
};

const DAYS_VALID = 30;

/** A certificate for localhost, made for this machine and trusted by it where that can be asked for. */
const certificate = async (): Promise<{ cert: Buffer; key: Buffer }> => {
  const place = join(homedir(), '.moldsheet');
  const [authority, cert, key] = ['ca.crt', 'localhost.crt', 'localhost.key'].map((name) =>
    join(place, name),
  ) as [string, string, string];
  const isFresh = existsSync(cert) && Date.now() - statSync(cert).mtimeMs < (DAYS_VALID - 1) * 86_400_000;
  if (!isFresh) {
    await generateCertificates(authority, cert, key, DAYS_VALID, ['localhost', '127.0.0.1']);
    if (HAS_EXCEL) {
      console.log(
        'Your system will ask whether to trust the certificate: Excel loads add-ins from trusted servers only.',
      );
      await installCaCertificate(authority);
    } else {
      console.log(`To let your browser trust the server, import ${authority} as a certificate authority.`);
    }
  }
  return { cert: readFileSync(cert), key: readFileSync(key) };
};

const stepsForTheWeb = (
  origin: string,
): string => `Excel itself does not run on this system. In Excel on the web:

  1. Open ${origin}/taskpane.html in the same browser and accept the certificate, if it asks.
  2. Open a workbook in Excel on the web.
  3. Home > Add-ins > More Add-ins > My Add-ins > Upload My Add-in, and choose
     ${manifest}
  4. Type =MOLD. in a cell: the functions should be listed.

Or in one step: npm run excel -- --document <address of a workbook in Excel on the web>
`;

const stepsByHand = (): string =>
  process.platform === 'darwin'
    ? `  1. Copy ${manifest} into
     ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the folder if it is missing).
  2. Start Excel again, open a workbook, then Home > Add-ins and choose Moldsheet.
`
    : `  1. Share the folder ${folder} and add it in Excel under
     File > Options > Trust Center > Trust Center Settings > Trusted Add-in Catalogs (tick Show in Menu).
  2. Start Excel again, open a workbook, then Home > Add-ins > Advanced > Shared Folder and choose Moldsheet.
`;

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : String(error));
  process.exit(1);
});
