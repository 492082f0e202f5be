import type { Mm, Units } from '../length';
import { MARK_SHEET } from '../trace';
import { paperSize } from './paper-sizes';
import type { PaperSettings } from './types';

/** The side of the square on each sheet of marks, by which its print is checked. @source practice */
export const CHECK_SQUARE: Mm = 100;

/** A sheet of marks: its paper, and where on it the upper left corner of its first mark lies. */
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
    left: (width - MARK_SHEET.width * correctX) / 2,
    top: (height - MARK_SHEET.height * correctY) / 2,
  };
}
