import type { Point } from '../../plane';
import type { FollowedLine } from '../../trace';
import type { OpenedPicture, PictureAnswer, PictureOrder } from './picture-worker';

/** One worker holds all photographs, so that opening them and following lines on them holds up no press. */
let worker: Worker | undefined;
let asked = 0;
const waiting = new Map<number, (answer: PictureAnswer) => void>();
/** The photographs that the worker holds, by their numbers. */
const opened = new Set<number>();

function ask(order: { shot: number } & ({ file: File } | { places: readonly Point[]; wide: number })) {
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
export async function openedPicture(file: File, shot: number): Promise<OpenedPicture | { readonly tooMany: number }> {
  opened.delete(shot);
  const answer = await ask({ shot, file });
  if ('tooMany' in answer) return answer;
  if (!('opened' in answer)) throw new Error('fault' in answer ? answer.fault : 'no picture');
  opened.add(shot);
  return answer.opened;
}

/** The line that is drawn on a photograph through some places; undefined where the photograph is not open. */
export async function followedLine(
  shot: number,
  places: readonly Point[],
  wide: number,
): Promise<FollowedLine | undefined> {
  if (!opened.has(shot)) return undefined;
  const answer = await ask({ shot, places, wide });
  return 'followed' in answer ? answer.followed : undefined;
}

/** Lets go of all photographs. */
export function forgetPictures(): void {
  worker?.terminate();
  worker = undefined;
  opened.clear();
  for (const [id, answer] of waiting) answer({ id, fault: 'ended' });
  waiting.clear();
}
