/** Lines that a text takes in a column of so many characters, broken at spaces. */
export function linesOf(text: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    const needed = used === 0 ? word.length : used + 1 + word.length;
    if (needed <= width) used = needed;
    else {
      lines += used === 0 ? 0 : 1;
      lines += Math.floor((word.length - 1) / width);
      used = word.length % width;
    }
  }
  return lines;
}
