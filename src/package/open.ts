/** Is this an .xlsx workbook that can be opened safely? Everything that is not gets one sentence that says why. */
import type { Parts } from './relationships';
import { TYPES, contentType, relatedPart, relationshipsOf } from './relationships';
import { UnreadableWorkbook } from './unreadable';
import type { ZipLimits } from './zip';
import { readZip } from './zip';

const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml.';
export const WORKBOOK_TYPE = `${SPREADSHEET}sheet.main+xml`;
const OLE_SIGNATURE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

export function openPackage(bytes: Uint8Array, limits?: ZipLimits): Parts {
  if (bytes.length === 0) throw new UnreadableWorkbook('The file is empty.');
  if (OLE_SIGNATURE.every((byte, at) => bytes[at] === byte)) throw refuseOle(bytes);
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) {
    throw new UnreadableWorkbook('The file is not an .xlsx workbook: it is no zip archive inside.');
  }
  const parts = readZip(bytes, limits);
  workbookPart(parts);
  return parts;
}

/** Name of the part that lists the sheets. */
export function workbookPart(parts: Parts): string {
  if (parts.has('content.xml') && parts.has('mimetype')) {
    throw new UnreadableWorkbook(
      'The file is an OpenDocument file; save it as .xlsx from a spreadsheet program first.',
    );
  }
  const part = parts.has(TYPES) ? relatedPart(parts, '', 'officeDocument') : undefined;
  if (part === undefined || !parts.has(part)) {
    throw new UnreadableWorkbook('The file is a zip archive without a workbook in it.');
  }
  const type = contentType(parts, part) ?? '';
  if (/macroEnabled|binary/i.test(type) || holdsMacros(parts, part)) {
    throw new UnreadableWorkbook(
      'The workbook holds macros (.xlsm or alike). Moldsheet does not open them, since saving could break them: save a copy as .xlsx.',
    );
  }
  if (type === `${SPREADSHEET}template.main+xml`) {
    throw new UnreadableWorkbook(
      'The file is a template (.xltx); open it in a spreadsheet program and save it as .xlsx.',
    );
  }
  if (type !== WORKBOOK_TYPE)
    throw new UnreadableWorkbook('The file is an office document, but no workbook.');
  return part;
}

function holdsMacros(parts: Parts, part: string): boolean {
  return relationshipsOf(parts, part).some((one) =>
    ['vbaProject', 'xlMacrosheet', 'xlIntlMacrosheet'].includes(one.kind),
  );
}

function refuseOle(bytes: Uint8Array): UnreadableWorkbook {
  const name = Array.from('EncryptedPackage', (letter) => letter.charCodeAt(0));
  const isEncrypted = bytes.some((_, at) =>
    name.every((code, i) => bytes[at + 2 * i] === code && bytes[at + 2 * i + 1] === 0),
  );
  return new UnreadableWorkbook(
    isEncrypted
      ? 'The workbook is locked with a password; open it in Excel, take the password away and save it again.'
      : 'The file is an old .xls workbook; open it in a spreadsheet program and save it as .xlsx.',
  );
}
