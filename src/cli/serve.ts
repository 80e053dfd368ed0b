import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Command } from './command';
import { Failure } from './command';
import { pageFolder } from './pageFolder';
import { staticServer } from './staticServer';

const PORT = 3000;

export const serve: Command = {
  usage: ['[--port PORT]'],
  summary: 'Serve the workbook page to the browser of this computer.',
  details: [
    'The page is reached from this computer alone and asks for nothing but its own files. Ctrl+C ends it.',
  ],
  options: {
    port: {
      type: 'string',
      value: 'PORT',
      says: `The port; ${PORT} unless told, or what the environment variable PORT says.`,
    },
  },
  takes: [0, 0],
  async run(args, output) {
    const folder = pageFolder();
    if (!existsSync(join(folder, 'index.html')))
      throw new Failure(`The workbook page is missing: ${folder} should hold it.`);
    await servePage(folder, args.text('port') ?? process.env.PORT, (line) => {
      output.out(line);
    });
    return 0;
  },
};

/** Serves until it is told to stop. */
export async function servePage(
  folder: string,
  port: string | undefined,
  say: (line: string) => void,
): Promise<void> {
  const chosen = port === undefined ? PORT : readPort(port);
  const server = staticServer(folder);
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject).listen(chosen, 'localhost', resolve);
  }).catch((error: unknown) => {
    throw cannotListen(error, chosen);
  });
  say(`Moldsheet: open http://localhost:${(server.address() as AddressInfo).port}`);
  await new Promise<void>((resolve) => {
    const stop = (): void => {
      server.closeAllConnections();
      server.close(() => {
        resolve();
      });
    };
    process.once('SIGINT', stop).once('SIGTERM', stop);
  });
}

/** 0 lets the system choose. */
function readPort(text: string): number {
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65535) return port;
  throw new Failure(`A port is a whole number from 0 to 65535, not "${text}".`);
}

function cannotListen(error: unknown, port: number): Failure {
  const { code, message } = error as NodeJS.ErrnoException;
  if (code === 'EADDRINUSE')
    return new Failure(`Port ${port} is taken. Close what uses it, or choose another: --port ${port + 1}`);
  if (code === 'EACCES') return new Failure(`Port ${port} may not be used here; choose one above 1023.`);
  return new Failure(`The server could not start: ${message}`);
}
