import { number, type Result, say } from '../../words';
import type { DrawingAnswer, DrawingBrought } from './drawing-worker';

/** A drawing of blocks is read in a moment; what takes longer is stopped, ms. */
const PATIENCE = 10_000;

/**
 * Reads a drawing of blocks beside the screen, so that no drawing can hold up the page.
 *
 * @param text of the file
 * @throws a fault of the program
 */
export function readDrawing(text: string): Promise<Result<DrawingBrought>> {
  const worker = new Worker(new URL('./drawing-worker.ts', import.meta.url), { type: 'module' });
  return new Promise<Result<DrawingBrought>>((resolve, reject) => {
    const late = say`takes longer to read than ${number(PATIENCE / 1000, 0)} seconds, far more than a drawing of blocks.`;
    const stop = setTimeout(
      () => resolve({ ok: false, problems: [{ field: 'file', value: undefined, phrase: late }] }),
      PATIENCE,
    );
    worker.onmessage = ({ data }: MessageEvent<DrawingAnswer>) => {
      clearTimeout(stop);
      if ('read' in data) resolve(data.read);
      else reject(new Error(data.fault));
    };
    worker.onerror = ({ message }) => {
      clearTimeout(stop);
      reject(new Error(message));
    };
    worker.postMessage(text);
  }).finally(() => worker.terminate());
}
