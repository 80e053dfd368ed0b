/** A file that cannot be opened. The message is one sentence for the person who tried. */
export class UnreadableWorkbook extends Error {
  override readonly name = 'UnreadableWorkbook';
}
