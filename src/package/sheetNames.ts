/** Names of sheets are one whatever their case, and 31 characters at most. */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const known = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n++) {
    const tail = n === 1 ? '' : ` ${n}`;
    const name = wanted.slice(0, 31 - tail.length) + tail;
    if (!known.has(name.toLowerCase())) return name;
  }
}
