import { zlibSync } from 'fflate';

/** Encodes rows of 8-bit RGBA as a PNG. */
export const png = (size: number, rgba: Uint8Array): Uint8Array => {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, size);
  view.setUint32(4, size);
  header.set([8, 6], 8); // bits a channel, color with alpha
  const rows = new Uint8Array(size * (size * 4 + 1)); // each row after its filter byte, 0: none
  for (let y = 0; y < size; y++)
    rows.set(rgba.subarray(y * size * 4, (y + 1) * size * 4), y * (size * 4 + 1) + 1);
  return join([
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    chunk('IHDR', header),
    chunk('IDAT', zlibSync(rows, { level: 9 })),
    chunk('IEND', new Uint8Array()),
  ]);
};

const chunk = (type: string, data: Uint8Array): Uint8Array => {
  const body = join([new TextEncoder().encode(type), data]);
  return join([bigEndian(data.length), body, bigEndian(crc32(body))]);
};

const bigEndian = (value: number): Uint8Array => {
  const bytes = new Uint8Array(4);
  new DataView(bytes.buffer).setUint32(0, value);
  return bytes;
};

/** CRC-32 of ISO 3309, as the PNG specification asks. */
const crc32 = (bytes: Uint8Array): number => {
  let crc = ~0;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return ~crc >>> 0;
};

const join = (parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};
