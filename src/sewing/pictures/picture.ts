import type { Mm } from '../../length';
import type { Box, Point } from '../../plane';
import type { Phrase } from '../../words';

/**
 * What lies with its face up. Each differs by more than its colour, and each sign means one thing in every picture, the lay
 * among them: strokes one way are the wrong side of cloth, crossed strokes elastic, dots paper that lies printed side down.
 */
export type Face = 'right' | 'wrong' | 'elastic' | 'paper' | 'printedDown';

/** What a line of a picture means, one thing each. `lit` is what this step sews, `litFold` what it folds. */
export type PictureLine =
  | 'edge'
  | 'fold'
  | 'litFold'
  | 'side'
  | 'stitch'
  | 'lit'
  | 'hidden'
  | 'overlock'
  | 'mark'
  | 'notch'
  | 'pin'
  | 'gather'
  | 'thin'
  | 'cord';

/** One thing in a picture; later ones cover earlier ones. Points are millimetres of the pattern. */
export type PictureItem =
  | {
      readonly kind: 'area';
      readonly face: Face;
      readonly points: readonly Point[];
      /** Strokes that tell the face, each from point to point. */
      readonly hatch: readonly (readonly [Point, Point])[];
    }
  | { readonly kind: 'line'; readonly line: PictureLine; readonly points: readonly Point[] }
  | { readonly kind: 'sign'; readonly points: readonly Point[] }
  | {
      readonly kind: 'word';
      readonly at: Point;
      readonly text: Phrase;
      readonly align: 'left' | 'middle' | 'right';
      /** Font size in millimetres of the pattern. */
      readonly size: Mm;
    };

/** A part of a picture, cut off at its window. */
export interface PicturePanel {
  readonly window: Box;
  readonly items: readonly PictureItem[];
}

/** A step's picture: plain drawing data, the same for screen and paper. */
export interface StepPicture {
  readonly box: Box;
  readonly panels: readonly PicturePanel[];
  /** What is seen, for those who listen. */
  readonly says: Phrase;
}
