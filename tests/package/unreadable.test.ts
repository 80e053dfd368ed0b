import { constants, deflateRawSync } from 'node:zlib';
import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { UnreadableWorkbook, readWorkbook } from '../../src/package';
import type { Files } from './packages';
import { rich, small, types, zip } from './packages';

const ROW = '<row r="1"><c r="A1"><v>1</v></c></row>';
const bytes = (text: string) => new TextEncoder().encode(text);

function refusal(file: Uint8Array): string {
  try {
    readWorkbook(file, []);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) return error.message;
    throw error;
  }
  return 'was opened';
}

const withPart = (part: string, text: string): Uint8Array => zip({ ...small(ROW), [part]: text });
const ole = (text: string) =>
  new Uint8Array([
    0xd0,
    0xcf,
    0x11,
    0xe0,
    0xa1,
    0xb1,
    0x1a,
    0xe1,
    ...new Uint8Array(600),
    ...new Uint8Array(new Uint16Array(Array.from(text, (c) => c.charCodeAt(0))).buffer),
  ]);

const MEGABYTE = 2 ** 20;

/** A workbook with one more part of that many megabytes of zeros, whose directory tells the size given. */
function zeros(megabytes: number, told: number): Uint8Array {
  // A block of deflate that ends on a whole byte may stand any number of times; an empty last block ends the row.
  const block = deflateRawSync(new Uint8Array(MEGABYTE), { finishFlush: constants.Z_FULL_FLUSH });
  const packed = Buffer.concat([...Array.from({ length: megabytes }, () => block), Buffer.from([3, 0])]);
  const name = Buffer.from('xl/zeros.xml');
  const rest = zip(small(ROW));
  const view = new DataView(rest.buffer, rest.byteOffset, rest.byteLength);
  const end = rest.length - 22;
  const directory = view.getUint32(end + 16, true);
  const local = Buffer.alloc(30);
  local.writeUInt32LE(0x04034b50, 0);
  local.writeUInt16LE(8, 8);
  local.writeUInt16LE(name.length, 26);
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(8, 10);
  entry.writeUInt32LE(packed.length, 20);
  entry.writeUInt32LE(told, 24);
  entry.writeUInt16LE(name.length, 28);
  entry.writeUInt32LE(directory, 42);
  const last = Buffer.from(rest.slice(end));
  last.writeUInt16LE(view.getUint16(end + 10, true) + 1, 10);
  last.writeUInt32LE(directory + 30 + name.length + packed.length, 16);
  const entries = rest.slice(directory, end);
  return Buffer.concat([rest.slice(0, directory), local, name, packed, entries, entry, name, last]);
}

function withWorkbookType(type: string, more: Files = {}): Uint8Array {
  return zip({ ...small(ROW), '[Content_Types].xml': types({ 'xl/workbook.xml': type }), ...more });
}

describe('a file that is no readable workbook', () => {
  it.each<[string, () => Uint8Array, RegExp]>([
    ['an empty file', () => new Uint8Array(0), /is empty/],
    ['a text file', () => bytes('Draft,10\n'), /text, such as/],
    ['only the first letters of a zip', () => bytes('PK\u0003\u0004'), /damaged: its end is missing/],
    ['a workbook cut off half-way', () => zip(rich()).slice(0, 3000), /damaged/],
    ['a zip without a workbook', () => zip({ 'readme.txt': 'hello' }), /without a workbook/],
    [
      'a zip whose workbook part is missing',
      () => zip({ '_rels/.rels': small(ROW)['_rels/.rels'] ?? '', '[Content_Types].xml': types({}) }),
      /without a workbook/,
    ],
    ['an old .xls file', () => ole('Workbook'), /old \.xls/],
    ['a workbook locked with a password', () => ole('EncryptedPackage'), /locked with a password/],
    [
      'an OpenDocument file',
      () => zip({ mimetype: 'application/vnd.oasis.opendocument.spreadsheet', 'content.xml': '<x/>' }),
      /OpenDocument/,
    ],
    [
      'a text document',
      () =>
        withWorkbookType('application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml'),
      /no workbook/,
    ],
    ['a template', () => withWorkbookType('template.main+xml'), /template/],
    ['a table of text', () => new TextEncoder().encode('a,b\n1,2\n'), /text, such as \.csv/],
    [
      'a page that calls itself a workbook',
      () => new TextEncoder().encode('<html><table/></html>'),
      /page or XML/,
    ],
    [
      'a binary workbook',
      () => withWorkbookType('application/vnd.ms-excel.sheet.binary.macroEnabled.main'),
      /\.xlsb/,
    ],
    [
      'an .xlsx with macros hidden in it',
      () =>
        withPart(
          'xl/_rels/workbook.xml.rels',
          (small(ROW)['xl/_rels/workbook.xml.rels'] ?? '').replace(
            '</Rel',
            '<Relationship Id="rId9" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Rel',
          ),
        ),
      /holds macros/,
    ],
    [
      'a document type in a sheet',
      () => withPart('xl/worksheets/sheet1.xml', '<!DOCTYPE x [<!ENTITY a "b">]><worksheet/>'),
      /document type or entities/,
    ],
    [
      'a document type in the list of relationships',
      () => withPart('_rels/.rels', '<!DOCTYPE x><Relationships/>'),
      /document type/,
    ],
    [
      'an undefined entity',
      () => withPart('xl/worksheets/sheet1.xml', '<worksheet>&boom;</worksheet>'),
      /not well-formed/,
    ],
    [
      'a sheet that breaks off',
      () => withPart('xl/worksheets/sheet1.xml', '<worksheet><sheetData>'),
      /not well-formed/,
    ],
    [
      'elements nested without end',
      () => withPart('xl/worksheets/sheet1.xml', '<a>'.repeat(5000) + '</a>'.repeat(5000)),
      /nested too deep/,
    ],
    [
      'text in another encoding',
      () =>
        zipSync({
          ...Object.fromEntries(Object.entries(small(ROW)).map(([n, t]) => [n, bytes(t)])),
          'xl/worksheets/sheet1.xml': new Uint8Array([0x3c, 0xff, 0xfe]),
        }),
      /not readable text/,
    ],
    [
      'a missing sheet',
      () =>
        zip(Object.fromEntries(Object.entries(small(ROW)).filter(([name]) => !name.endsWith('sheet1.xml')))),
      /"Main" is missing/,
    ],
    ['a row beyond the sheet', () => zip(small('<row r="99999999"/>')), /a row 99999999/],
    [
      'a cell beyond the sheet',
      () => zip(small('<row r="1"><c r="XFE1"/></row>')),
      /impossible place \(XFE1\)/,
    ],
    ['a cell in another row', () => zip(small('<row r="1"><c r="A2"/></row>')), /impossible place/],
    ['a name that climbs out', () => withPart('../../etc/x.xml', '<x/>'), /forbidden name/],
    ['an absolute name', () => withPart('/etc/x.xml', '<x/>'), /forbidden name/],
    ['a name with a drive', () => withPart('C:\\x.xml', '<x/>'), /forbidden name/],
    ['one part twice', () => withPart('XL/WORKSHEETS/SHEET1.XML', '<x/>'), /twice/],
    ['a part that unpacks to more than it says', () => zeros(50, 1000), /more than it declares/],
    ['a part that declares too much', () => zeros(1024, 1024 * MEGABYTE), /more than 256 MB/],
  ])('such as %s gets one sentence', (_, file, sentence) => {
    const message = refusal(file());
    expect(message).toMatch(sentence);
    expect(message).toMatch(/^[A-Z].*[.\])]$/);
    expect(message).not.toContain('\n');
  });

  it('is told from one with a single bad byte by its checksum', () => {
    const file = zip(rich());
    const at = 60;
    file[at] = (file[at] ?? 0) ^ 0xff;
    expect(refusal(file)).toMatch(/damaged/);
  });

  it.each([1000, 200 * MEGABYTE])(
    'takes little memory where a gigabyte of zeros is declared as %i bytes',
    (told) => {
      const file = zeros(1024, told);
      expect(file.length).toBeLessThan(3 * MEGABYTE);
      const before = process.memoryUsage().arrayBuffers;
      expect(refusal(file)).toMatch(/more than it declares/);
      expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(told + 100 * MEGABYTE);
    },
  );

  it('is refused where many parts together are too large', () => {
    expect(() => readWorkbook(zip(rich()), [], { entry: 10_000, total: 5_000, entries: 100 })).toThrow(
      /unpacks to more/,
    );
    expect(() => readWorkbook(zip(rich()), [], { entry: 10_000, total: 90_000, entries: 5 })).toThrow(
      /more than 5 parts/,
    );
  });

  it('never ends in another kind of error, wherever it is cut off', () => {
    const file = zip(rich());
    for (let length = 0; length < file.length; length += 97)
      expect(refusal(file.slice(0, length))).not.toBe('was opened');
  });
});
