import { isMissing, MISSING } from './missing';

/** What went wrong, for a person to read. */
export function messageOf(error: unknown): string {
  if (isMissing(error)) return MISSING;
  return error instanceof Error ? error.message : String(error);
}
