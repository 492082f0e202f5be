import type { Mm } from '../length';

/** Width of an average letter of the print font, as a share of the letter height. */
const LETTER_WIDTH = 0.82;
/** The tallest letters on small pieces, and on the leg, where they read across a table. */
export const TALLEST: { readonly onPieces: Mm; readonly onLeg: Mm } = { onPieces: 6, onLeg: 9 };

/** The letter height at which a text is as long as the room. */
export const letterFitting = (text: string, room: Mm): Mm => room / (LETTER_WIDTH * text.length);
