/** What went wrong, for a person to read. */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
