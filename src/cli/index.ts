import { faultLine, main } from './main';

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
  ...(process.stderr.isTTY && { progress: (text: string) => process.stderr.write(`\r\x1b[K${text}`) }),
  checks: async () => (await import('./allChecks')).allChecks,
}).then((status) => {
  process.exitCode = status;
});
