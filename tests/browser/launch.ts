import { chromium, type Browser } from 'playwright-core';

let started: Promise<Browser> | undefined;

/** The Chromium of all files, which share a process; it goes with that process, or a new one is started where it fell. */
export async function launch(): Promise<Browser> {
  const running = await started?.catch(() => undefined);
  if (running?.isConnected()) return running;
  started = start();
  return started;
}

const start = (): Promise<Browser> =>
  chromium.launch({
    executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });

/** Closes all that a file has opened. */
export async function leave(browser: Browser): Promise<void> {
  await Promise.all(browser.contexts().map((context) => context.close()));
}
