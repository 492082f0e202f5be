import type { Mm } from '../length';
import { mm, number, own, type Phrase, type Problem, Refusal, say } from '../words';
import { LARGEST_PAGE, OWN_SIZE, type PaperSize, paperSize, SMALLEST_PAGE } from './paper-sizes';
import type { PaperSettings } from './types';

/** One way to lay the paper: the settings worked out, ready to tile with. */
export interface PaperWay {
  readonly paper: PaperSize;
  /** Cut to the length that is needed, down the page where it is upright, along it where it lies across. */
  readonly roll: boolean;
  readonly margin: Mm;
  readonly overlap: Mm;
  readonly scale: { readonly x: number; readonly y: number };
  /** What one sheet shows, on the drawing. */
  readonly window: { readonly width: Mm; readonly height: Mm };
  /** From one sheet's start to the next one's, on the drawing. */
  readonly pitch: { readonly x: Mm; readonly y: Mm };
}

/** What a sheet must add, at least, on the paper: below that the marks of two joins would lie on each other. */
const LEAST_PITCH: Mm = 100;
/** Printers reach closer than this; more only wastes paper. */
export const WIDEST_MARGIN: Mm = 40;
/** A class sample below a tenth is no use to anyone. */
export const LEAST_SCALE = 0.1;
/** A printer that is off by more than a twentieth is not off, it is fitting to the page. */
export const WIDEST_CORRECTION = 0.05;
/** A projector that is further off is moved or zoomed, not corrected. */
export const WIDEST_PROJECTED = 0.12;

/**
 * The ways in which the paper may be laid: one, or upright and across where the project leaves it open.
 *
 * @throws Refusal naming every field that can't be: unknown size, margin, overlap, scale or correction out of its limits
 */
export function paperWays(settings: PaperSettings): readonly PaperWay[] {
  const size = paperSize(settings.sheet, { width: settings.ownWidth, height: settings.ownHeight });
  const problems = paperProblems(settings, size);
  if (problems.length > 0) throw new Refusal(problems);
  const across: PaperSize = { ...size, width: size.height, height: size.width };
  // On a roll turning the paper is turning the piece, which the search does anyway.
  if (settings.orientation === 'portrait' || (size.roll && settings.orientation === 'auto'))
    return [paperWay(size, settings)];
  if (settings.orientation === 'landscape') return [paperWay(across, settings)];
  return [paperWay(size, settings), paperWay(across, settings)];
}

function paperWay(paper: PaperSize, settings: PaperSettings): PaperWay {
  const { margin, overlap } = settings;
  // The corrections belong to the printer: a sheet printed across goes through it turned, and so do they.
  const turned = paper.width > paper.height;
  const scale = {
    x: settings.scale * (turned ? settings.correctY : settings.correctX),
    y: settings.scale * (turned ? settings.correctX : settings.correctY),
  };
  const width = (paper.width - 2 * margin) / scale.x;
  const height = (paper.height - 2 * margin) / scale.y;
  const pitch = { x: width - overlap / scale.x, y: height - overlap / scale.y };
  return { paper, roll: paper.roll, margin, overlap, scale, window: { width, height }, pitch };
}

function paperProblems(settings: PaperSettings, size: PaperSize): readonly Problem[] {
  const { orientation, margin, overlap, scale, correctX, correctY } = settings;
  const problems: Problem[] = [];
  const wrong = (field: string, value: unknown, phrase: Phrase) =>
    problems.push({ field: `paper.${field}`, value, phrase });
  if (!['auto', 'portrait', 'landscape'].includes(orientation)) {
    wrong('orientation', orientation, say`must be auto, portrait or landscape`);
  }
  if (settings.sheet === OWN_SIZE) {
    for (const field of ['ownWidth', 'ownHeight'] as const) {
      const side = settings[field];
      if (side >= SMALLEST_PAGE && side <= LARGEST_PAGE) continue;
      wrong(
        field,
        side,
        say`a sheet’s side must be between ${mm(SMALLEST_PAGE)} and ${mm(LARGEST_PAGE)}, which is the longest that a PDF page can be`,
      );
    }
    if (problems.length > 0) return problems;
  }
  const marginFits = margin >= 0 && margin <= WIDEST_MARGIN;
  if (!marginFits) wrong('margin', margin, say`the margin must be between ${mm(0)} and ${mm(WIDEST_MARGIN)}`);
  const room = size.width - 2 * margin - LEAST_PITCH;
  if (!(overlap >= 0) || (marginFits && overlap > room)) {
    const limit = marginFits
      ? say`at most ${mm(Math.max(0, room))} on ${own(size.name)} with this margin`
      : say`not negative`;
    wrong('overlap', overlap, say`the overlap must be ${limit}`);
  }
  if (!(scale >= LEAST_SCALE && scale <= 1)) {
    wrong('scale', scale, say`the scale must be between ${number(LEAST_SCALE)} and 1 (true size)`);
  }
  for (const [field, value] of Object.entries({ correctX, correctY })) {
    if (!(value >= 1 - WIDEST_CORRECTION && value <= 1 + WIDEST_CORRECTION)) {
      wrong(
        field,
        value,
        say`a printer’s correction must be between ${number(1 - WIDEST_CORRECTION)} and ${number(1 + WIDEST_CORRECTION)}; beyond that it is fitting to the page: switch that off and measure again`,
      );
    }
  }
  return problems;
}
