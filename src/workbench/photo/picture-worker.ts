import { pictureSize } from '../../files';
import type { Point } from '../../plane';
import { type FollowedLine, type FoundMark, findMarks, followLine, type GreyPicture, greyPicture } from '../../trace';
import { type Picture, pictureOf } from './picture';

/** A photograph as it was opened, and the printed marks on it, in its pixels. */
export interface OpenedPicture {
  readonly picture: Picture;
  readonly found: readonly FoundMark[];
}

/** What is asked for of the photograph of a number: to open its file, or to follow a line on it. */
export type PictureOrder = { readonly id: number; readonly shot: number } & (
  | { readonly file: File }
  | { readonly places: readonly Point[]; readonly wide: number }
);

/** What the worker answers: a picture of more pixels than can be held is refused with their number, before it is decoded. */
export type PictureAnswer = { readonly id: number } & (
  | { readonly opened: OpenedPicture }
  | { readonly tooMany: number }
  | { readonly followed: FollowedLine }
  | { readonly fault: string }
);

/** A picture of more pixels than this is not decoded: it would take four bytes for each of them, and twice. */
const MOST_DECODED = 120e6;
/** More than this are not held; finer than that no click is. */
const MOST_HELD = 24e6;
/** So many bytes at the beginning of a file hold all that cameras write before the picture's size. */
const HEAD = 4e6;

/** A photograph in grey, and how many pixels of the photograph one of its pixels is, both ways. */
interface Held {
  readonly grey: GreyPicture;
  readonly x: number;
  readonly y: number;
}

const held = new Map<number, Held>();

addEventListener('message', ({ data }: MessageEvent<PictureOrder>) => {
  const { id } = data;
  const answered = 'file' in data ? opened(data.file, data.shot) : Promise.resolve(followed(data));
  void answered.then(
    (answer) => {
      const levels = 'opened' in answer ? answer.opened.picture.levels : [];
      postMessage({ id, ...answer }, { transfer: levels.map((level) => level.data.buffer) });
    },
    (error: unknown) => postMessage({ id, fault: String(error) }),
  );
});

/** Decodes a photograph; the browser turns it as the camera noted. */
async function opened(file: File, shot: number): Promise<{ opened: OpenedPicture } | { tooMany: number }> {
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
  held.set(shot, { grey, x, y });
  const found = findMarks(grey).map(
    ({ number, corners: [a, b, c, d] }): FoundMark => ({
      number,
      corners: [scaled(a, x, y), scaled(b, x, y), scaled(c, x, y), scaled(d, x, y)],
    }),
  );
  return { opened: { picture: pictureOf(width, height, { width: canvas.width, height: canvas.height, data }), found } };
}

const scaled = (p: Point, x: number, y: number): Point => ({ x: p.x * x, y: p.y * y });

function followed(order: { shot: number; places: readonly Point[]; wide: number }): { followed: FollowedLine } {
  const of = held.get(order.shot);
  if (!of) throw new Error('no picture');
  const { grey, x, y } = of;
  const line = followLine(
    grey,
    order.places.map((p) => scaled(p, 1 / x, 1 / y)),
    order.wide / x,
  );
  return { followed: { ...line, points: line.points.map((p) => scaled(p, x, y)) } };
}
