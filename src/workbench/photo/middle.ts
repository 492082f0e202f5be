import type { Point } from '../../plane';

/** The middle of what is seen of a photograph, in its pixels: where keys place what is placed next. */
export const lookedAt: { current: Point | undefined } = { current: undefined };
