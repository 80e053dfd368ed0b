/// <reference types="office-js" />
import { worksheetFunctions } from '../call/functions';
import type { WorkbookFiles } from '../panel/share/files';
import type { Workbook } from '../package/model';

/** The most that Excel hands over at once. */
const SLICE = 4 * 1024 * 1024;

/** The open workbook's file as it would be saved now. */
export async function readFile(): Promise<Uint8Array> {
  const file = await given<Office.File>((callback) => {
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize: SLICE }, callback);
  });
  try {
    const bytes = new Uint8Array(file.size);
    let at = 0;
    for (let index = 0; index < file.sliceCount; index++) {
      const slice = await given<Office.Slice>((callback) => {
        file.getSliceAsync(index, callback);
      });
      const data = slice.data as ArrayLike<number>;
      bytes.set(data, at);
      at += data.length;
    }
    return bytes;
  } finally {
    // Excel keeps at most two files open for an add-in.
    file.closeAsync();
  }
}

/** The open workbook with the values that Excel shows. The library that reads it comes when it is first needed. */
export async function readOpenWorkbook(): Promise<Workbook> {
  const [{ readWorkbook }, bytes] = await Promise.all([
    import(/* webpackChunkName: "workbook" */ '../package'),
    readFile(),
  ]);
  return readWorkbook(
    bytes,
    worksheetFunctions.map(({ id }) => id),
  );
}

/** The files of Excel, for sharing. */
export const excelFiles: WorkbookFiles = {
  name: () => {
    const [name = ''] = /[^\\/]*$/.exec(Office.context.document.url) ?? [];
    return decoded(name) || 'workbook.xlsx';
  },
  read: readOpenWorkbook,
  open: {
    label: 'Open as a new workbook',
    run: (_fileName, bytes) => Excel.createWorkbook(base64(bytes)),
  },
};

export const base64 = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
};

/** On the web the name stands in an address; on the desktop it may hold a `%` of its own. */
const decoded = (name: string): string => {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
};

const given = <T>(ask: (callback: (result: Office.AsyncResult<T>) => void) => void): Promise<T> =>
  new Promise((resolve, reject) => {
    ask(({ status, value, error }) => {
      if (status === Office.AsyncResultStatus.Succeeded) resolve(value);
      else reject(new Error(error.message));
    });
  });
