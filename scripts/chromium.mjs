import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome.exe'];

/** The browser that the browser tests drive: the one named in CHROMIUM, or the first found on the path. */
export function findChromium() {
  if (process.env.CHROMIUM) return process.env.CHROMIUM;
  const folders = (process.env.PATH ?? '').split(delimiter);
  return folders
    .flatMap((folder) => NAMES.map((name) => join(folder, name)))
    .find((file) => existsSync(file));
}
