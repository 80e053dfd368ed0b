/** Is this an .xlsx workbook that can be opened safely? Everything that is not gets one sentence that says why. */
import type { Parts } from './relationships';
import { TYPES, contentType, relatedPart, relationshipsOf } from './relationships';
import { UnreadableWorkbook } from './unreadable';
import type { ZipLimits } from './zip';
import { readZip } from './zip';

const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml.';
export const WORKBOOK_TYPE = `${SPREADSHEET}sheet.main+xml`;
const MACRO_WORKBOOK_TYPE = 'application/vnd.ms-excel.sheet.macroEnabled.main+xml';
const OLE_SIGNATURE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

export function openPackage(bytes: Uint8Array, limits?: ZipLimits): Parts {
  if (bytes.length === 0) throw new UnreadableWorkbook('The file is empty.');
  if (OLE_SIGNATURE.every((byte, at) => bytes[at] === byte)) throw refuseOle(bytes);
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) throw refuseOther(bytes);
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
  if (/binary/i.test(type))
    throw new UnreadableWorkbook(
      'The file is a binary workbook (.xlsb); open it in a spreadsheet program and save it as .xlsx.',
    );
  if (/template/i.test(type))
    throw new UnreadableWorkbook(
      'The file is a template (.xltx or .xltm); open it in a spreadsheet program and save it as .xlsx.',
    );
  if (/addin/i.test(type))
    throw new UnreadableWorkbook('The file is an add-in of a spreadsheet program (.xlam), not a workbook.');
  if (type !== WORKBOOK_TYPE && type !== MACRO_WORKBOOK_TYPE)
    throw new UnreadableWorkbook('The file is an office document, but no workbook.');
  if (type === WORKBOOK_TYPE && holdsMacros(parts, part))
    throw new UnreadableWorkbook(
      'The workbook holds macros though it says it is an .xlsx; open it in a spreadsheet program and save it anew.',
    );
  return part;
}

const holdsMacros = (parts: Parts, part: string): boolean =>
  relationshipsOf(parts, part).some(({ kind }) => kind === 'vbaProject');

/** The ending that a file of these parts must have: spreadsheet programs refuse a workbook whose name and kind differ. */
export const fileEnding = (parts: Parts): '.xlsx' | '.xlsm' =>
  contentType(parts, workbookPart(parts)) === MACRO_WORKBOOK_TYPE ? '.xlsm' : '.xlsx';

/** Neither a zip archive nor an old binary file. */
function refuseOther(bytes: Uint8Array): UnreadableWorkbook {
  const start = new TextDecoder().decode(bytes.subarray(0, 4096));
  if (/^\s*(?:<\?xml|<html|<!doctype)/i.test(start))
    return new UnreadableWorkbook(
      'The file is no .xlsx workbook: it is a page or XML that a spreadsheet program can read; open it there and save it as .xlsx.',
    );
  // eslint-disable-next-line no-control-regex
  const isText = !/[\u0000-\u0008\u000e-\u001f\ufffd]/.test(start.slice(0, -4));
  return new UnreadableWorkbook(
    isText
      ? 'The file is text, such as .csv; open it in a spreadsheet program and save it as .xlsx.'
      : 'The file is not an .xlsx workbook: it is no zip archive inside.',
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
