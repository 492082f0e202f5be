import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { Judged } from './judge';

/** Far beyond anything that ends, on a machine with much other work, ms. */
const PATIENCE = 60_000;

/** Judges damaged files of seeds one after another in a thread, which is ended where one never comes to an end. */
export interface Judge {
  readonly ask: (seed: number, byCommand: boolean) => Promise<Judged>;
  readonly close: () => Promise<unknown>;
}

/** A judge whose thread is started when it is first asked. */
export function openJudge(): Judge {
  let worker: Worker | undefined;
  const close = async () => {
    const ending = worker;
    worker = undefined;
    await ending?.terminate();
  };
  const started = async () => {
    worker = new Worker(fileURLToPath(new URL('./start-worker.mjs', import.meta.url)), { execArgv: [] });
    await once(worker, 'message');
    return worker;
  };
  const ask = async (seed: number, byCommand: boolean): Promise<Judged> => {
    const own = worker ?? (await started());
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), PATIENCE);
    try {
      own.postMessage({ seed, byCommand });
      const [answer] = (await once(own, 'message', { signal: stop.signal })) as [Judged];
      return answer;
    } catch (error) {
      await close();
      const seen = stop.signal.aborted ? 'never ends' : `the thread died: ${error}`;
      return { became: 'none', faults: [seen], millis: PATIENCE };
    } finally {
      clearTimeout(timer);
    }
  };
  return { ask, close };
}
