import type { PaperSettings } from '../../src/sheets';

/** The project's default paper. */
export const A4: PaperSettings = {
  sheet: 'A4',
  orientation: 'auto',
  margin: 10,
  printerMargin: 'auto',
  overlap: 10,
  ownWidth: 900,
  ownHeight: 1500,
  scale: 1,
  correctX: 1,
  correctY: 1,
};
