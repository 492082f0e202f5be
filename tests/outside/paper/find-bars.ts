import { darkness } from './pixels';
import { PIXELS_PER_MM, type Picture } from './render';

/** The lines that end the bars are this wide: a bar is measured from the middle of one to the middle of the other. */
const STROKE = 0.15;

/** The longest level and the longest upright line of a page, as somebody with a rule measures them; millimetres. */
export const findBars = (picture: Picture): { readonly across: number; readonly along: number } => ({
  across: longest(picture, false) / PIXELS_PER_MM - STROKE,
  along: longest(picture, true) / PIXELS_PER_MM - STROKE,
});

function longest(picture: Picture, upright: boolean): number {
  const { width, height } = picture;
  const [outer, inner] = upright ? [width, height] : [height, width];
  let best = 0;
  for (let o = 0; o < outer; o += 1) {
    let run = 0;
    for (let i = 0; i < inner; i += 1) {
      // The rims of the end strokes cover a pixel in part: they count by how much.
      const dark = darkness(picture, upright ? i * width + o : o * width + i);
      run = dark > 0.05 ? run + Math.min(1, dark) : 0;
      if (run > best) best = run;
    }
  }
  return best;
}
