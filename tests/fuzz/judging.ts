import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { find } from './find';
import type { Judged } from './judge';
import type { Task } from './judge-worker';
import type { RawDraw } from './projects';

/** A project with what came of it. */
export interface Outcome extends Judged {
  /** Undefined where not even the draw ended. */
  readonly project: RawDraw | undefined;
}

/** Judges one thing after another, each within its time. */
export interface Judge {
  /** @param patience milliseconds after which it is taken for endless */
  readonly ask: (task: Task, patience?: number) => Promise<Outcome>;
  readonly close: () => Promise<unknown>;
}

/** Far beyond anything that ends: a draw takes tens of milliseconds, on a machine with other work some more. */
const PATIENCE = 20_000;
/** The same where sheets are laid and files written, too. */
const PATIENCE_WITH_PAPERS = 90_000;

/**
 * A judge who sits in a thread of its own: what never ends is ended there and recorded, and the next one asked for is
 * judged by a new thread.
 */
export function openJudge(): Judge {
  let worker: Promise<Worker> | undefined;
  const close = async () => {
    const ending = worker;
    worker = undefined;
    await (await ending)?.terminate();
  };
  const ask = async (task: Task, asked?: number): Promise<Outcome> => {
    const patience = asked ?? (typeof task.look === 'object' ? PATIENCE_WITH_PAPERS : PATIENCE);
    worker ??= startedWorker();
    const outcome = await answer(await worker, task, patience);
    if (outcome.finds.some(({ kind }) => kind === ENDLESS || kind === DIED)) await close();
    return outcome;
  };
  return { ask, close };
}

export const ENDLESS = 'never ends';
const DIED = 'the thread died';

/** A thread that has read all the code: only then its time begins. */
async function startedWorker(): Promise<Worker> {
  const worker = new Worker(fileURLToPath(new URL('./start-worker.mjs', import.meta.url)), { execArgv: [] });
  await once(worker, 'message');
  return worker;
}

function answer(worker: Worker, task: Task, patience: number): Promise<Outcome> {
  return new Promise((resolve) => {
    let project: RawDraw | undefined = 'project' in task ? task.project : undefined;
    const done = (judged: Judged) => {
      clearTimeout(timer);
      worker.off('message', onMessage).off('error', onError).off('exit', onExit);
      resolve({ ...judged, project });
    };
    const lost = (kind: string, seen: string) =>
      done({ finds: [find(kind, seen)], refused: undefined, millis: patience });
    const onMessage = (told: { readonly project?: RawDraw; readonly judged?: Judged }) => {
      if (told.project) project = told.project;
      if (told.judged) done(told.judged);
    };
    const onError = (error: unknown) => lost(DIED, String(error));
    const onExit = (code: number) => lost(DIED, `exit code ${code}`);
    const timer = setTimeout(() => lost(ENDLESS, `within ${patience / 1000} s`), patience);
    worker.on('message', onMessage).on('error', onError).on('exit', onExit);
    worker.postMessage(task);
  });
}
