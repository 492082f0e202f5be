import { readBlocks } from '../../files';
import type { TracedPair } from '../../trace';
import type { Result } from '../../words';

/** What the worker answers: the blocks or what is wrong with the drawing; a fault is none of the drawing's. */
export type DrawingAnswer = { readonly read: Result<TracedPair> } | { readonly fault: string };

const answer = (message: DrawingAnswer) => postMessage(message);

addEventListener('message', ({ data }: MessageEvent<string>) => {
  void readBlocks(data)
    .then((read) => answer({ read }))
    .catch((error: unknown) => answer({ fault: String(error) }));
});
