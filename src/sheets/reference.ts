import type { Mm, Units } from '../length';
import { paperSize } from './paper-sizes';
import type { PaperSettings } from './types';

/**
 * The marks of the reference sheet, which is photographed beside a paper block: the corners A, B, C, D of a rectangle that
 * both A4 and Letter hold within what printers reach, and a fifth length, E to F, to check by.
 */
export const REFERENCE = { width: 170, height: 240, check: 200 } as const;

/** The sheet's paper, and where on it the rectangle's corner A lies. */
export interface ReferenceSheet {
  readonly paper: { readonly width: Mm; readonly height: Mm };
  readonly left: Mm;
  readonly top: Mm;
}

/** Paper that is measured in inches, or paper of one's own where inches are used, prints on Letter; all other on A4. */
export function referenceSheet({ sheet, correctX, correctY }: PaperSettings, units: Units): ReferenceSheet {
  const own = { width: 0, height: 0 };
  const inches = /Letter|Legal|Tabloid|ANSI/.test(sheet) || (units === 'inch' && !/^A\d$/.test(sheet));
  const { width, height } = paperSize(inches ? 'Letter' : 'A4', own);
  return {
    paper: { width, height },
    left: (width - REFERENCE.width * correctX) / 2,
    top: (height - REFERENCE.height * correctY) / 2,
  };
}
