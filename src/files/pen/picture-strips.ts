import { INK } from '../../drawing';
import type { Mm } from '../../length';
import type { Box } from '../../plane';
import type { PagePicture, Passage } from './passage';
import { drawStrips, joinedStrip, type Strip, stripsHeight } from './strip';
import { type Measure, textStrips } from './text-strips';
import { SPACE, TYPE } from './type-scale';

type Gallery = Extract<Passage, { kind: 'gallery' }>;

/** The size of a picture in a column, as large as it may be there. */
function pictureSize(
  { ratio, widest = Number.POSITIVE_INFINITY, tallest = Number.POSITIVE_INFINITY }: PagePicture,
  width: Mm,
): { readonly width: Mm; readonly height: Mm } {
  const wide = Math.min(width, widest, tallest / ratio);
  return { width: wide, height: wide * ratio };
}

const boxAt = (left: Mm, top: Mm, size: { readonly width: Mm; readonly height: Mm }): Box => ({
  left,
  top,
  right: left + size.width,
  bottom: top + size.height,
});

/** A picture in the middle of its column, with its words under it. */
export function pictureStrip(picture: PagePicture, width: Mm, widthOf: Measure): Strip {
  const size = pictureSize(picture, width);
  const words = captionStrips(picture, width, widthOf);
  return {
    above: SPACE.picture,
    height: size.height + stripsHeight(words),
    draw: (pen, left, top) => {
      picture.draw(pen, boxAt(left + (width - size.width) / 2, top, size));
      drawStrips(pen, words, left, top + size.height);
    },
  };
}

/** A picture's words, and the white between. */
const captionStrips = ({ caption = '' }: PagePicture, width: Mm, widthOf: Measure): readonly Strip[] =>
  caption === ''
    ? []
    : [
        { above: 0, height: SPACE.underHead, draw: () => {} },
        ...textStrips(caption, width, widthOf, { type: TYPE.small, colour: INK.quietWords }),
      ];

/** A picture at the left of strips: they are as high together as the higher of the two. */
export function besideStrip(drawn: Strip, share: number, width: Mm, strips: readonly Strip[]): Strip {
  const words = joinedStrip(strips);
  return {
    above: SPACE.picture,
    height: Math.max(drawn.height, words.height),
    draw: (pen, left, top) => {
      drawn.draw(pen, left, top);
      words.draw(pen, left + besideInset(width, share), top);
    },
  };
}

/** Where what stands beside a picture begins. */
export const besideInset = (width: Mm, share: number): Mm => share * width + 2 * SPACE.picture;

/** Rows of small pictures, each with its words under it; a row is never torn apart. */
export function galleryStrips({ across, ratio, pictures }: Gallery, width: Mm, widthOf: Measure): readonly Strip[] {
  const step = (width + 2 * SPACE.picture) / across;
  const cell = step - 2 * SPACE.picture;
  const tallest = cell * ratio;
  const rows = Array.from({ length: Math.ceil(pictures.length / across) }, (_, row) =>
    pictures.slice(row * across, (row + 1) * across).map((picture) => ({
      picture,
      size: pictureSize({ ...picture, tallest }, cell),
      words: captionStrips(picture, cell, widthOf),
    })),
  );
  return rows.map((row) => ({
    above: SPACE.picture,
    height: tallest + Math.max(...row.map(({ words }) => stripsHeight(words))),
    draw: (pen, left, top) => {
      for (const [i, { picture, size, words }] of row.entries()) {
        const from = left + i * step;
        // In the middle of its cell, both ways.
        picture.draw(pen, boxAt(from + (cell - size.width) / 2, top + (tallest - size.height) / 2, size));
        drawStrips(pen, words, from, top + tallest);
      }
    },
  }));
}
