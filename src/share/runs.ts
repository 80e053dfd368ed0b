/** Numbers that follow one another, as runs. */
export function runsOf(numbers: readonly number[]): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run?.to === number - 1) run.to = number;
    else runs.push({ from: number, to: number });
  }
  return runs;
}
