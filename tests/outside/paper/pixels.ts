import { INK } from '../../../src/drawing';
import { PIXELS_PER_MM, type Picture } from './render';

/** A place on a page or on the joined drawing, millimetres. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

type Ink = keyof typeof INK;
type Channels = readonly [number, number, number];

const channels = (colour: string): Channels => [
  Number.parseInt(colour.slice(1, 3), 16),
  Number.parseInt(colour.slice(3, 5), 16),
  Number.parseInt(colour.slice(5, 7), 16),
];

const INKS = Object.fromEntries(Object.entries(INK).map(([name, colour]) => [name, channels(colour)])) as Record<
  Ink,
  Channels
>;

/** A pixel of an ink differs from it by no more than this in each channel; paler ones are the rims of lines. */
const SAME_INK = 8;
/** A red of more than this is paper: all inks are darker where they cover half a pixel. */
const PAPER = 235;

/** The pixels of a page that are not paper, in order: on a pattern one in a hundred, which is why they are sought first. */
export function inkedPixels({ data, width, height }: Picture): readonly number[] {
  const found: number[] = [];
  const end = width * height * 3;
  for (let at = 0; at < end; at += 3) if ((data[at] as number) < PAPER) found.push(at / 3);
  return found;
}

/** Whether an ink wholly covers a pixel: the rims of a line are paler and belong to no ink for certain. */
function isInk({ data }: Picture, pixel: number, ink: Ink): boolean {
  const [r, g, b] = INKS[ink];
  const at = pixel * 3;
  return (
    Math.abs((data[at] as number) - r) <= SAME_INK &&
    Math.abs((data[at + 1] as number) - g) <= SAME_INK &&
    Math.abs((data[at + 2] as number) - b) <= SAME_INK
  );
}

/** The middles of the pixels that one ink wholly covers, in millimetres. */
export function inkPlaces(picture: Picture, inked: readonly number[], ink: Ink): readonly Place[] {
  return inked
    .filter((pixel) => isInk(picture, pixel, ink))
    .map((pixel) => ({
      x: ((pixel % picture.width) + 0.5) / PIXELS_PER_MM,
      y: (Math.floor(pixel / picture.width) + 0.5) / PIXELS_PER_MM,
    }));
}

/** How much of a pixel is covered by the marks' ink, 0…1; 0 for every other ink, told by its hue. */
export function markCover({ data }: Picture, pixel: number): number {
  const [r, g, b] = INKS.mark;
  const red = 255 - (data[pixel * 3] as number);
  if (red < 20) return 0;
  const green = (255 - (data[pixel * 3 + 1] as number)) / red;
  const blue = (255 - (data[pixel * 3 + 2] as number)) / red;
  const like = Math.abs(green - (255 - g) / (255 - r)) < 0.12 && Math.abs(blue - (255 - b) / (255 - r)) < 0.12;
  return like ? Math.min(1, red / (255 - r)) : 0;
}

/** How dark a pixel is against the darkest ink, 0…1. */
export const darkness = ({ data }: Picture, pixel: number): number =>
  Math.min(1, (255 - (data[pixel * 3] as number)) / (255 - INKS.cut[0]));
