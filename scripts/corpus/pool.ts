/** Two workers, each given one file at a time; one that takes too long or dies costs its file and no other. */
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { Result } from './worker';

export interface Outcome extends Result {
  readonly failed?: string;
}

const WORKERS = 2;

export async function recalculateAll(
  files: readonly string[],
  seconds: number,
  asksSecond: boolean,
): Promise<Outcome[]> {
  const waiting = [...files];
  const outcomes: Outcome[] = [];
  const work = async (): Promise<void> => {
    let worker: Worker | undefined;
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      worker ??= new Worker(fileURLToPath(import.meta.url), {
        resourceLimits: { maxOldGenerationSizeMb: 3000 },
      });
      const outcome = await ask(worker, file, seconds, asksSecond);
      outcomes.push(outcome);
      if (outcome.failed === undefined) continue;
      await worker.terminate();
      worker = undefined;
    }
    await worker?.terminate();
  };
  await Promise.all(Array.from({ length: WORKERS }, work));
  return outcomes.sort((a, b) => (a.file < b.file ? -1 : 1));
}

function ask(worker: Worker, file: string, seconds: number, asksSecond: boolean): Promise<Outcome> {
  return new Promise((resolve) => {
    const end = (outcome: Outcome): void => {
      clearTimeout(timer);
      worker.off('message', end);
      worker.off('error', onError);
      worker.off('exit', onExit);
      resolve(outcome);
    };
    const fail = (failed: string): void => {
      end({ file, scored: [], milliseconds: seconds * 1000, failed });
    };
    const onError = (error: unknown): void => {
      fail(String(error));
    };
    const onExit = (): void => {
      fail('the calculation ended the process');
    };
    const timer = setTimeout(fail, seconds * 1000, `no end within ${seconds} s`);
    worker.on('message', end);
    worker.on('error', onError);
    worker.on('exit', onExit);
    worker.postMessage({ file, asksSecond });
  });
}
