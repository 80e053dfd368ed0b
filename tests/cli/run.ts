import { main } from '../../src/cli/main';
import { CHECKS } from '../support/checks';

export interface Run {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** The command line, in this process. */
export async function run(...argv: string[]): Promise<Run> {
  const out: string[] = [];
  const err: string[] = [];
  const status = await main(argv, {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    checks: () => Promise.resolve(CHECKS),
  });
  return { status, out: out.join('\n'), err: err.join('\n') };
}
