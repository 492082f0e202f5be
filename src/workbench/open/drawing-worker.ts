import { type DrawingRead, readDrawing } from '../../files';
import { type DrawnSheet, drawnSheet, type TracedPair } from '../../trace';
import { type Result, say } from '../../words';

/** Two blocks by the names of their lines, or a drawing whose blocks are to be picked. */
export type DrawingBrought = { readonly pair: TracedPair } | { readonly sheet: DrawnSheet };

/** What the worker answers: what the drawing holds or what is wrong with it; a fault is none of the drawing's. */
export type DrawingAnswer = { readonly read: Result<DrawingBrought> } | { readonly fault: string };

const answer = (message: DrawingAnswer) => postMessage(message);

addEventListener('message', ({ data }: MessageEvent<string>) => {
  void readDrawing(data)
    .then((read) => answer({ read: read.ok ? brought(read.value) : read }))
    .catch((error: unknown) => answer({ fault: String(error) }));
});

function brought(read: DrawingRead): Result<DrawingBrought> {
  if ('pair' in read) return { ok: true, value: read };
  const sheet = drawnSheet(read.drawing);
  if (sheet.outlines.length > 1) return { ok: true, value: { sheet } };
  const phrase = say`has fewer than two closed outlines: draw a front and a back, each as a line that comes back to where it began.`;
  return { ok: false, problems: [{ field: 'file', value: sheet.outlines.length, phrase }] };
}
