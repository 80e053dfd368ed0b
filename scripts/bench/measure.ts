/** Each round lasts about this long, so that the clock and the collector weigh little. */
const ROUND_MS = 60;
const ROUNDS = 5;

/** Time of this program alone in milliseconds, whatever else the machine does. */
export function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Nanoseconds a call, the median of several rounds; `call` gets a running number to vary its inputs by. */
export function nanoseconds(call: (turn: number) => unknown, roundMs = ROUND_MS): number {
  let count = 256;
  let kept: unknown;
  const round = (): number => {
    const start = cpu();
    for (let turn = 0; turn < count; turn++) kept = call(turn);
    return cpu() - start;
  };
  for (let ms = round(); ms < roundMs; ms = round())
    count = Math.ceil(count * Math.min(8, (1.2 * roundMs) / Math.max(ms, 0.1)));
  const rounds = Array.from({ length: ROUNDS }, round).sort((a, b) => a - b);
  // Read, so that the calls cannot be left out.
  if (kept === undefined) throw new Error('The function gives nothing.');
  return ((rounds[ROUNDS >> 1] as number) / count) * 1e6;
}
