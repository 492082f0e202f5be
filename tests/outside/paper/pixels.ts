import { INK } from '../../../src/files';
import { PIXELS_PER_MM, type Picture } from './render';

/** A place on a page or on the joined drawing, millimetres. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

const channels = (colour: string): readonly [number, number, number] => [
  Number.parseInt(colour.slice(1, 3), 16),
  Number.parseInt(colour.slice(3, 5), 16),
  Number.parseInt(colour.slice(5, 7), 16),
];

/** Whether a pixel is wholly covered by an ink: the rims of a line are paler and belong to no ink for certain. */
export function isInk(picture: Picture, pixel: number, colour: string, within = 8): boolean {
  const [r, g, b] = channels(colour);
  const at = pixel * 3;
  const { data } = picture;
  return (
    Math.abs((data[at] as number) - r) <= within &&
    Math.abs((data[at + 1] as number) - g) <= within &&
    Math.abs((data[at + 2] as number) - b) <= within
  );
}

/** The middles of all pixels that one ink wholly covers, in millimetres. */
export function inkPlaces(picture: Picture, colour: string): Place[] {
  const found: Place[] = [];
  for (let pixel = 0; pixel < picture.width * picture.height; pixel += 1) {
    if (!isInk(picture, pixel, colour)) continue;
    const x = (pixel % picture.width) + 0.5;
    const y = Math.floor(pixel / picture.width) + 0.5;
    found.push({ x: x / PIXELS_PER_MM, y: y / PIXELS_PER_MM });
  }
  return found;
}

/** How much of a pixel is covered by the marks' ink, 0…1; 0 for every other ink, told by its hue. */
export function markCover({ data }: Picture, pixel: number): number {
  const [r, g, b] = channels(INK.mark);
  const red = 255 - (data[pixel * 3] as number);
  if (red < 20) return 0;
  const green = (255 - (data[pixel * 3 + 1] as number)) / red;
  const blue = (255 - (data[pixel * 3 + 2] as number)) / red;
  const like = Math.abs(green - (255 - g) / (255 - r)) < 0.12 && Math.abs(blue - (255 - b) / (255 - r)) < 0.12;
  return like ? Math.min(1, red / (255 - r)) : 0;
}

/** How dark a pixel is against the darkest ink, 0…1. */
export function darkness({ data }: Picture, pixel: number): number {
  const [r] = channels(INK.cut);
  return Math.min(1, (255 - (data[pixel * 3] as number)) / (255 - r));
}
