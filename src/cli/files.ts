import type { BigIntStats } from 'node:fs';
import { chmod, readFile, readlink, rename, rm, stat, writeFile } from 'node:fs/promises';
import platformPath, { dirname, resolve, type PlatformPath } from 'node:path';
import { Failure } from './command';

const MOST_LINKS = 40;

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder',
  ENOTDIR: 'part of the path is no folder',
  EACCES: 'access is denied',
  EPERM: 'access is denied',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EBUSY: 'another program has it open',
};

function reason(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}

export async function readBytes(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch (error) {
    throw new Failure(`${path} cannot be read: ${reason(error)}.`);
  }
}

/** A hidden file in the folder of another, of which it cannot be too long a name. */
export const besideOf = (target: string, mark: string, at: PlatformPath = platformPath): string =>
  at.join(at.dirname(target), `.${at.basename(target).slice(0, 100)}.${mark}`);

/**
 * Writes beside the file first, so that a failure half-way leaves what was there before. A link stays a link and its
 * target is written; a file keeps its mode; what is no file, such as a device, is never replaced.
 */
export async function writeBytes(path: string, bytes: Uint8Array): Promise<void> {
  let beside: string | undefined;
  try {
    const target = await linkTarget(path);
    const former = await stat(target).catch(absent);
    if (former && !former.isFile())
      throw new Failure(
        `${path} cannot be written: it is ${former.isDirectory() ? 'a folder' : 'no ordinary file'}.`,
      );
    beside = besideOf(target, crypto.randomUUID());
    await writeFile(beside, bytes, { flag: 'wx', ...(former && { mode: former.mode }) });
    // The mask of the process may have taken bits away from the mode.
    if (former) await chmod(beside, former.mode);
    await rename(beside, target);
  } catch (error) {
    if (beside !== undefined) await rm(beside, { force: true });
    throw error instanceof Failure ? error : new Failure(`${path} cannot be written: ${reason(error)}.`);
  }
}

/** Refuses to begin a new file where another stands already. */
export async function refuseTaken(path: string): Promise<void> {
  if (await present(path))
    throw new Failure(
      `${path} is there already and would be lost: name another file, or take it away first.`,
    );
}

/** Refuses a copy that would take the place of what it is made from, under whatever path. */
export async function refuseSame(source: string, target: string): Promise<void> {
  const [one, other] = await Promise.all([present(source), present(target)]);
  if (one && other && one.dev === other.dev && one.ino === other.ino)
    throw new Failure(
      `${target} is the workbook itself, and its formulas would be lost: give the copy another name.`,
    );
}

/** What cannot be looked at counts as not there: to read or write it tells why. */
async function present(path: string): Promise<BigIntStats | undefined> {
  return await stat(path, { bigint: true }).catch(() => undefined);
}

/** Where a chain of links ends, also at a file that is not there yet. */
async function linkTarget(path: string): Promise<string> {
  let target = path;
  for (let links = 0; links < MOST_LINKS; links++) {
    const link = await readlink(target).catch(() => undefined);
    if (link === undefined) return target;
    target = resolve(dirname(target), link);
  }
  throw new Failure(`${path} cannot be written: its links lead round in a circle.`);
}

function absent(error: unknown): undefined {
  if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
  throw error;
}
