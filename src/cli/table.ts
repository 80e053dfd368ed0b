/** Rows of text in columns; a column of numbers is set to the right. */
export function table(heads: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const widths = heads.map((head, column) =>
    Math.max(head.length, ...rows.map((row) => String(row[column] ?? '').length)),
  );
  const isNumber = heads.map(
    (_, column) => rows.length > 0 && rows.every((row) => typeof row[column] === 'number'),
  );
  const line = (cells: readonly (string | number)[]) =>
    cells
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return isNumber[column] ? String(cell).padStart(width) : String(cell).padEnd(width);
      })
      .join('  ')
      .trimEnd();
  return [line(heads), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n');
}

/** Text broken at spaces into lines of at most `width`, each indented. */
export function wrap(text: string, width = 78, indent = ''): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(/\s+/)) {
    if (line.length > indent.length && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent;
    }
    line += (line.length > indent.length ? ' ' : '') + word;
  }
  return [...lines, line].join('\n');
}
