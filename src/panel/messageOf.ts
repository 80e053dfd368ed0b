import { isMissing, MISSING } from './missing';

/** What went wrong, for a person to read. */
export function messageOf(error: unknown): string {
  if (isMissing(error)) return MISSING;
  const code = typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;
  const inWords = typeof code === 'string' ? OF_CODE[code] : undefined;
  return inWords ?? (error instanceof Error ? error.message : String(error));
}

/** Excel's own words say too little of these: "You cannot perform the requested operation". */
const OF_CODE: Readonly<Record<string, string>> = {
  AccessDenied:
    'Excel refused: a sheet, or the workbook, is protected. Take the protection off (Review, Unprotect Sheet), then try again.',
  InvalidOperationInCellEditMode:
    'A cell is being edited. Finish it with Enter or leave it with Esc, then try again.',
};
