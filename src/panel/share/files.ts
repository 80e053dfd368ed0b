import type { Workbook } from '../../package/model';

/** The files of the program that the panel stands in. */
export interface WorkbookFiles {
  /** The open workbook's file name, with its ending. */
  name(): string;
  /** The open workbook as it stands. */
  read(): Promise<Workbook>;
  /** Shows a file as a workbook of its own; absent where the program cannot. */
  readonly open?: {
    /** On the button. */
    readonly label: string;
    run(fileName: string, bytes: Uint8Array): Promise<void>;
  };
}

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** Hands bytes to the person as a file. */
export function download(fileName: string, bytes: Uint8Array, type = XLSX): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes as BlobPart], { type }));
  link.download = fileName;
  link.click();
  // The browser reads the address after the click; a minute is more than it needs.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}

/** Lets the person choose a workbook. */
export function chooseFile(chosen: (file: File) => void): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = `.xlsx,.xlsm,${XLSX}`;
  input.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file) chosen(file);
  });
  input.click();
}

/** `seat.xlsx` → `seat native.xlsx`; a copy of a workbook with macros holds them too, and its name must say so. */
export const renamed = (fileName: string, word: string): string =>
  `${fileName.replace(/\.xl\w+$/i, '')} ${word}${/\.xlsm$/i.test(fileName) ? '.xlsm' : '.xlsx'}`;
