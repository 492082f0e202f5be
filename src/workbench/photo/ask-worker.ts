import type { OpenedPicture, PictureAnswer, PictureOrder } from './picture-worker';

/** One worker holds all photographs, so that opening them holds up no press. */
let worker: Worker | undefined;
let asked = 0;
const waiting = new Map<number, (answer: PictureAnswer) => void>();

function ask(order: Omit<PictureOrder, 'id'>) {
  worker ??= started();
  const to = worker;
  asked += 1;
  const id = asked;
  return new Promise<PictureAnswer>((resolve) => {
    waiting.set(id, resolve);
    to.postMessage({ id, ...order } satisfies PictureOrder);
  });
}

function started(): Worker {
  const fresh = new Worker(new URL('./picture-worker.ts', import.meta.url), { type: 'module' });
  fresh.onmessage = ({ data }: MessageEvent<PictureAnswer>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  };
  // Out of memory or not there: nothing that is waited for comes any more.
  fresh.onerror = () => forgetPictures();
  return fresh;
}

/**
 * Opens a photograph beside the screen and finds the printed marks on it.
 *
 * @returns or how many pixels it has, where those are too many
 * @throws where the file is no picture that this browser reads
 */
export async function openedPicture(file: File): Promise<OpenedPicture | { readonly tooMany: number }> {
  const answer = await ask({ file });
  if ('tooMany' in answer) return answer;
  if (!('opened' in answer)) throw new Error('fault' in answer ? answer.fault : 'no picture');
  return answer.opened;
}

/** Lets go of all photographs. */
export function forgetPictures(): void {
  worker?.terminate();
  worker = undefined;
  for (const [id, answer] of waiting) answer({ id, fault: 'ended' });
  waiting.clear();
}
