/** One file of a version. The revision is absent where the name itself changes with the content. */
export interface VersionedFile {
  readonly url: string;
  readonly revision: string | null;
  readonly integrity: string;
}

/** What the page says to a version that waits. */
export const TAKE_OVER = 'take over';
