import { randomUUID } from 'node:crypto';
import { readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { Failure } from './command';

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

/** Writes beside the file first, so that a failure half-way leaves what was there before. */
export async function writeBytes(path: string, bytes: Uint8Array): Promise<void> {
  const beside = join(dirname(path), `.${basename(path)}.${randomUUID()}`);
  try {
    await writeFile(beside, bytes, { flag: 'wx' });
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw new Failure(`${path} cannot be written: ${reason(error)}.`);
  }
}
