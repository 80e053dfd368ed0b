import type { Checks } from '../core/checks';
import { faultLine, main } from './main';

declare global {
  interface ImportMeta {
    /** Webpack's: the modules of a folder. */
    webpackContext(
      folder: string,
      options: { readonly recursive: true; readonly regExp: RegExp },
    ): { keys(): readonly string[]; (key: string): unknown };
  }
}

/** Read when the help is asked for, and not before. */
function checks(): readonly Checks[] {
  const files = import.meta.webpackContext('../catalogue', { recursive: true, regExp: /\.checks\.ts$/ });
  return files.keys().map((key) => (files(key) as { readonly default: Checks }).default);
}

// A reader that stops early, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

// The formula engine works in the background, where a failure of its own would end in a stack trace.
process.on('unhandledRejection', (error) => {
  process.stderr.write(`${faultLine(error)}\n`);
  process.exit(2);
});

void main(process.argv.slice(2), {
  out: (text) => process.stdout.write(`${text}\n`),
  err: (text) => process.stderr.write(`${text}\n`),
  checks,
}).then((status) => {
  process.exitCode = status;
});
