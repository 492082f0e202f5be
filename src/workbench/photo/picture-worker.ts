import { pictureSize } from '../../files';
import type { Point } from '../../plane';
import { type FoundMark, findMarks, greyPicture } from '../../trace';
import { type Picture, pictureOf } from './picture';

/** A photograph as it was opened, and the printed marks on it, in its pixels. */
export interface OpenedPicture {
  readonly picture: Picture;
  readonly found: readonly FoundMark[];
}

/** The file of a photograph that is to be opened. */
export interface PictureOrder {
  readonly id: number;
  readonly file: File;
}

/** What the worker answers: a picture of more pixels than can be held is refused with their number, before it is decoded. */
export type PictureAnswer = { readonly id: number } & (
  | { readonly opened: OpenedPicture }
  | { readonly tooMany: number }
  | { readonly fault: string }
);

/** A picture of more pixels than this is not decoded: it would take four bytes for each of them, and twice. */
const MOST_DECODED = 120e6;
/** More than this are not held; finer than that no click is. */
const MOST_HELD = 24e6;
/** So many bytes at the beginning of a file hold all that cameras write before the picture's size. */
const HEAD = 4e6;

addEventListener('message', ({ data }: MessageEvent<PictureOrder>) => {
  const { id, file } = data;
  void opened(file).then(
    (answer) => {
      const levels = 'opened' in answer ? answer.opened.picture.levels : [];
      postMessage({ id, ...answer }, { transfer: levels.map((level) => level.data.buffer) });
    },
    (error: unknown) => postMessage({ id, fault: String(error) }),
  );
});

/** Decodes a photograph; the browser turns it as the camera noted. */
async function opened(file: File): Promise<{ opened: OpenedPicture } | { tooMany: number }> {
  const told = pictureSize(new Uint8Array(await file.slice(0, HEAD).arrayBuffer()));
  if (told && told.width * told.height > MOST_DECODED) return { tooMany: told.width * told.height };
  const bitmap = await createImageBitmap(file);
  const { width, height } = bitmap;
  const shrink = Math.min(1, Math.sqrt(MOST_HELD / (width * height)));
  const canvas = new OffscreenCanvas(Math.round(width * shrink), Math.round(height * shrink));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no canvas');
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
  const [x, y] = [width / canvas.width, height / canvas.height];
  const grey = greyPicture(canvas.width, canvas.height, data);
  const found = findMarks(grey).map(
    ({ number, corners: [a, b, c, d] }): FoundMark => ({
      number,
      corners: [scaled(a, x, y), scaled(b, x, y), scaled(c, x, y), scaled(d, x, y)],
    }),
  );
  return { opened: { picture: pictureOf(width, height, { width: canvas.width, height: canvas.height, data }), found } };
}

const scaled = (p: Point, x: number, y: number): Point => ({ x: p.x * x, y: p.y * y });
