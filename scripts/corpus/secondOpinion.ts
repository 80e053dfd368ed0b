/** LibreOffice's results for the files of a folder, made once and kept in the temporary folder. */
import { createHash } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { LibreOffice } from '../libreoffice';

const KEPT = join(tmpdir(), 'moldsheet-second-opinion');
const BATCH = 12;
const SECONDS_A_FILE = 40;

export const fingerprint = (bytes: Uint8Array): string =>
  createHash('sha256').update(bytes).digest('hex').slice(0, 16);

/** Where LibreOffice's own copy of a file lies; undefined where it made none. */
export function secondOpinion(bytes: Uint8Array): string | undefined {
  const file = join(KEPT, `${fingerprint(bytes)}.xlsx`);
  return existsSync(file) ? file : undefined;
}

/** Recalculates what was not recalculated before. */
export async function askForSecondOpinions(files: readonly string[]): Promise<void> {
  mkdirSync(KEPT, { recursive: true });
  const work = mkdtempSync(join(tmpdir(), 'moldsheet-ask-'));
  const office = new LibreOffice();
  try {
    const waiting = new Map<string, string>();
    for (const file of files) {
      const id = fingerprint(readFileSync(file));
      if (existsSync(join(KEPT, `${id}.xlsx`)) || existsSync(join(KEPT, `${id}.none`))) continue;
      waiting.set(join(work, `${id}.xlsx`), file);
    }
    const copies = [...waiting.keys()];
    for (const [copy, file] of waiting) copyFileSync(file, copy);
    for (let at = 0; at < copies.length; at += BATCH) {
      const batch = copies.slice(at, at + BATCH);
      const left = await office.recalculate(batch, KEPT, SECONDS_A_FILE * 2);
      // One that breaks the program takes its neighbours with it, so each of them again by itself.
      for (const one of left) {
        if ((await office.recalculate([one], KEPT, SECONDS_A_FILE)).length > 0)
          writeFileSync(join(KEPT, one.slice(work.length + 1).replace('.xlsx', '.none')), '');
      }
      process.stderr.write(
        `\rLibreOffice: ${Math.min(at + BATCH, copies.length)} of ${copies.length} files `,
      );
    }
    if (copies.length > 0) process.stderr.write('\n');
  } finally {
    office.dispose();
    rmSync(work, { recursive: true, force: true });
  }
}
