/**
 * The zip container. The directory is read here and only the inflating left to fflate, because a file from
 * somebody else may lie about its sizes: what comes out is counted while it is inflated.
 */
import { Inflate, zipSync } from 'fflate';
import { UnreadableWorkbook } from './unreadable';

export interface ZipLimits {
  /** Bytes of one entry, inflated. */
  readonly entry: number;
  /** Bytes of all entries together, inflated. */
  readonly total: number;
  readonly entries: number;
}

/** Some ten times the largest workbook that the page and the command line are made for. */
export const ZIP_LIMITS: ZipLimits = { entry: 256 * 2 ** 20, total: 512 * 2 ** 20, entries: 10_000 };

/** Compressed bytes handed over at a time: at deflate's best of about 1000:1 that makes 16 MB before we look. */
const STEP = 16 * 1024;

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_HEADER = 0x04034b50;
const ZIP64_EXTRA = 0x0001;
const IN_ZIP64 = 0xffffffff;

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly offset: number;
}

const damaged = (what: string) =>
  new UnreadableWorkbook(
    `The file is damaged: ${what}. It was perhaps cut off while it was copied or downloaded.`,
  );

/** Name → inflated bytes, in the order of the file. */
export function readZip(bytes: Uint8Array, limits: ZipLimits = ZIP_LIMITS): Map<string, Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries = readDirectory(bytes, view, limits);
  const declared = entries.reduce((sum, entry) => sum + entry.size, 0);
  if (declared > limits.total) throw tooLarge(limits.total);
  const files = new Map<string, Uint8Array>();
  for (const entry of entries) files.set(entry.name, inflateEntry(bytes, view, entry));
  return files;
}

/**
 * The same parts always give the same bytes: one fixed date, no owner. Level 4 takes half the time of level 6, and
 * sheets come out 1.4 % larger.
 */
export function writeZip(files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  return zipSync(Object.fromEntries(files), { level: 4, mtime: new Date(1980, 0, 1, 0, 0, 0) });
}

function readDirectory(bytes: Uint8Array, view: DataView, limits: ZipLimits): Entry[] {
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  if (count > limits.entries)
    throw new UnreadableWorkbook(
      `The file holds more than ${limits.entries} parts; a workbook has far fewer.`,
    );
  let at = view.getUint32(end + 16, true);
  const entries: Entry[] = [];
  const seen = new Set<string>();
  for (let i = 0; i < count; i++) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== DIRECTORY_ENTRY)
      throw damaged('its table of contents is broken');
    const nameLength = view.getUint16(at + 28, true);
    const extraLength = view.getUint16(at + 30, true);
    const next = at + 46 + nameLength + extraLength + view.getUint16(at + 32, true);
    if (next > view.byteLength) throw damaged('its table of contents is broken');
    // Some programs of Windows part the folders of a name as their own system does.
    const name = new TextDecoder()
      .decode(bytes.subarray(at + 46, at + 46 + nameLength))
      .replaceAll('\\', '/');
    if ((view.getUint16(at + 8, true) & 1) !== 0) {
      throw new UnreadableWorkbook(
        'The file is a zip archive locked with a password; unpack or unlock it first.',
      );
    }
    const entry = {
      name,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      ...zip64Sizes(view, at, nameLength, extraLength),
    };
    checkName(name);
    if (entry.size > limits.entry) throw tooLarge(limits.entry);
    const key = name.toLowerCase();
    if (seen.has(key))
      throw new UnreadableWorkbook(
        `The file holds the part "${shown(name)}" twice, so it is not clear which one counts.`,
      );
    seen.add(key);
    if (!name.endsWith('/')) entries.push(entry);
    at = next;
  }
  return entries;
}

function findEnd(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= lowest; at--) {
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  }
  throw damaged('its end is missing');
}

/** Sizes and place; programs that write as they go put them into the zip64 field even for small files. */
function zip64Sizes(view: DataView, at: number, nameLength: number, extraLength: number) {
  const sizes = {
    size: view.getUint32(at + 24, true),
    packed: view.getUint32(at + 20, true),
    offset: view.getUint32(at + 42, true),
  };
  let field = at + 46 + nameLength;
  const end = field + extraLength;
  while (field + 4 <= end) {
    const id = view.getUint16(field, true);
    const length = view.getUint16(field + 2, true);
    if (id === ZIP64_EXTRA) {
      let value = field + 4;
      for (const key of ['size', 'packed', 'offset'] as const) {
        if (sizes[key] !== IN_ZIP64 || value + 8 > field + 4 + length || value + 8 > end) continue;
        sizes[key] = Number(view.getBigUint64(value, true));
        value += 8;
      }
    }
    field += 4 + length;
  }
  return sizes;
}

/** Nothing here is ever written to disk, but a name that climbs out of its folder means that the file is no honest workbook. */
function checkName(name: string): void {
  const steps = name.split('/');
  const bad =
    name === '' ||
    name.startsWith('/') ||
    /[\\:\p{Cc}]/u.test(name) ||
    steps.includes('..') ||
    steps.includes('.');
  if (bad)
    throw new UnreadableWorkbook(
      `The file holds a part with a forbidden name, "${shown(name)}"; no spreadsheet program writes such a file.`,
    );
}

function inflateEntry(bytes: Uint8Array, view: DataView, entry: Entry): Uint8Array {
  const { offset, packed, size } = entry;
  if (offset + 30 > view.byteLength || view.getUint32(offset, true) !== LOCAL_HEADER)
    throw damaged(`the part "${shown(entry.name)}" is missing`);
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packed > view.byteLength) throw damaged(`the part "${shown(entry.name)}" is cut off`);
  const data = bytes.subarray(start, start + packed);
  const result = entry.method === 0 ? data.slice() : inflate(data, entry);
  if (result.length !== size || crc32(result) !== entry.crc)
    throw damaged(`the part "${shown(entry.name)}" does not add up`);
  return result;
}

function inflate(data: Uint8Array, entry: Entry): Uint8Array {
  if (entry.method !== 8)
    throw new UnreadableWorkbook(
      `The part "${shown(entry.name)}" is packed in a way that workbooks do not use.`,
    );
  const chunks: Uint8Array[] = [];
  let length = 0;
  const inflater = new Inflate((chunk) => {
    length += chunk.length;
    if (length > entry.size)
      throw new UnreadableWorkbook(
        `The part "${shown(entry.name)}" unpacks to more than it declares; the file is not to be trusted.`,
      );
    chunks.push(chunk);
  });
  try {
    for (let at = 0; at < data.length; at += STEP)
      inflater.push(data.subarray(at, at + STEP), at + STEP >= data.length);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw error;
    throw damaged(`the part "${shown(entry.name)}" cannot be unpacked`);
  }
  const result = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    result.set(chunk, at);
    at += chunk.length;
  }
  return result;
}

const tooLarge = (limit: number) =>
  new UnreadableWorkbook(
    `The file unpacks to more than ${Math.round(limit / 2 ** 20)} MB; no design sheet needs that, so it was not opened.`,
  );

function shown(name: string): string {
  return name.replace(/\p{Cc}/gu, '?').slice(0, 60);
}

/** Signed, since V8 counts with small integers only up to 2^31. */
const CRC_TABLE = Int32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = (crc & 1) !== 0 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});

function crc32(bytes: Uint8Array): number {
  let crc = -1;
  for (let at = 0; at < bytes.length; at++)
    crc = (CRC_TABLE[(crc ^ (bytes[at] as number)) & 0xff] as number) ^ (crc >>> 8);
  return ~crc >>> 0;
}
