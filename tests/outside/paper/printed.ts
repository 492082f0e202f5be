import { placer } from '../../../src/drawing';
import { reportPiece } from '../../../src/files/report/report';
import { type Draft, sheetsOf } from '../../../src/project';
import type { Part, Polyline } from './compare';
import { type FoundMark, findMarks } from './find-marks';
import { labelOf } from './join-sheets';
import { inkedPixels, inkPlaces, type Place } from './pixels';
import { type OpenPdf, PIXELS_PER_MM, type Printer, type Word } from './render';

/** One page of the pattern as it lies on the table. */
export interface PrintedPage {
  readonly label: string;
  readonly words: readonly Word[];
  readonly marks: readonly FoundMark[];
  /** Where its inks lie on the page, millimetres. */
  readonly cut: readonly Place[];
  readonly sewn: readonly Place[];
  readonly mark: readonly Place[];
  /** How many pixels of any line there are: none on a blank page. */
  readonly drawn: number;
  readonly width: number;
  readonly height: number;
}

/** How many pages stand before the sheets: those that say who made them. */
export function coverPages(pdf: Pick<OpenPdf, 'text'>): number {
  const pages = pdf.text().split('\f');
  return pages.findIndex((text) => !text.includes('Legwork ·'));
}

/** All pages behind the first ones. */
export function printedPages(pdf: OpenPdf, printer?: Printer): readonly PrintedPage[] {
  const cover = coverPages(pdf);
  return Array.from({ length: pdf.pages - cover }, (_, i) => {
    const picture = pdf.picture(cover + i + 1, printer);
    const words = pdf.words(cover + i + 1);
    const inked = inkedPixels(picture);
    const places = (ink: Parameters<typeof inkPlaces>[2]) => inkPlaces(picture, inked, ink);
    const [cut, sewn] = [places('cut'), places('sewn')];
    return {
      label: labelOf(words),
      words,
      marks: findMarks(picture, inked),
      cut,
      sewn,
      mark: places('mark'),
      drawn: cut.length + sewn.length + places('sign').length + places('level').length,
      width: picture.width / PIXELS_PER_MM,
      height: picture.height / PIXELS_PER_MM,
    };
  });
}

/** Places of all pages where they come to lie once the pages are joined. */
export const onTable = (
  pages: readonly PrintedPage[],
  placesOf: (page: PrintedPage, i: number) => readonly Place[],
  shifts: ReadonlyMap<string, Place>,
): readonly Place[] =>
  pages.flatMap((page, i) => {
    const { x, y } = shifts.get(page.label) as Place;
    return placesOf(page, i).map((p) => ({ x: p.x + x, y: p.y + y }));
  });

/** The report's cut lines, and all that is stitched, where the plan lays the pieces: turned and shifted, nothing else. */
export function laidLines(draft: Draft): { readonly cut: readonly Polyline[]; readonly sewn: readonly Polyline[] } {
  const found = draft.pieces.map(reportPiece).map((piece, k) => {
    const place = placer(sheetsOf(draft).places[k] ?? { turn: 0, shift: { x: 0, y: 0 } });
    const laid = ({ points }: { readonly points: Polyline }): Polyline =>
      points.map(([x, y]): readonly [number, number] => {
        const to = place({ x, y });
        return [to.x, to.y];
      });
    const kinds = draft.pieces[k]?.lines ?? [];
    return {
      cut: piece.cutLine.map(laid),
      sewn: [
        ...piece.stitchLine.filter((_, i) => (piece.cutLine[i]?.allowance ?? 0) > 0),
        ...piece.lines.filter((_, i) => kinds[i]?.kind === 'stitching'),
      ].map(laid),
    };
  });
  return { cut: found.flatMap(({ cut }) => cut), sewn: found.flatMap(({ sewn }) => sewn) };
}

/** What a page shows: its paper without the margins, a hair less for the rim of the last pixels. */
export const shownPart = ({ width, height }: PrintedPage, margin: number): Part => ({
  left: margin + 0.1,
  top: margin + 0.1,
  right: width - margin - 0.1,
  bottom: height - margin - 0.1,
});

export const movedLines = (lines: readonly Polyline[], by: Place): readonly Polyline[] =>
  lines.map((line) => line.map(([x, y]): readonly [number, number] => [x + by.x, y + by.y]));
