import { placer } from '../../../src/drawing';
import { reportPiece } from '../../../src/files/report/report';
import { type Draft, sheetsOf } from '../../../src/project';
import { type SheetPart, type SheetPlan, tipBox } from '../../../src/sheets';
import type { Part, Polyline } from './compare';
import { type FoundMark, findMarks } from './find-marks';
import { type FoundSheet, labelOf, type NumberedMark } from './join-sheets';
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

/** What a page comes apart into: the sheet, and what is cut out of it, each with its half-diamonds and its inks. */
export interface PrintedPart extends FoundSheet {
  readonly cut: readonly Place[];
  readonly sewn: readonly Place[];
  readonly mark: readonly Place[];
}

/** A half-diamond is the one that is meant if it lies no farther from its place than this, mm. */
const MARK_THERE = 1.5;
/** Half of the rim along which a tip is cut out, and a dot, mm. */
const RIM = 0.25;

/**
 * The parts of pages, as scissors leave them: the tips lie as the pattern does, however they were turned on their page.
 *
 * Where a tip is cut out, and which number stands beside a half-diamond, is told by the plan; where the half-diamonds lie is
 * seen in the pixels.
 */
export function printedParts(
  pages: readonly PrintedPage[],
  plan: SheetPlan,
  printer: Printer = { x: 1, y: 1 },
): readonly PrintedPart[] {
  return pages.flatMap((page) => {
    const sheet = plan.sheets.find(({ label }) => label === page.label);
    if (!sheet) throw new Error(`the plan has no sheet ${page.label}`);
    const onPage = (p: Place): Place => ({
      x: (plan.margin + (p.x - sheet.window.left) * plan.scale.x) * printer.x,
      y: (plan.margin + (p.y - sheet.window.top) * plan.scale.y) * printer.y,
    });
    const holes = sheet.tips.map((tip) => {
      const box = tipBox(tip);
      return { tip, from: onPage({ x: box.left, y: box.top }), to: onPage({ x: box.right, y: box.bottom }) };
    });
    const isIn = ({ from, to }: (typeof holes)[number], { x, y }: Place) =>
      // Half-diamonds stand on the rim: a dot of the printer more or less is still within it.
      x >= from.x - RIM && x <= to.x + RIM && y >= from.y - RIM && y <= to.y + RIM;
    const numbered = (mark: FoundMark, { marks }: SheetPart, place: (p: Place) => Place): readonly NumberedMark[] => {
      const own = marks.filter(({ at }) => {
        const there = onPage(place(at));
        return Math.hypot(there.x - mark.base.x, there.y - mark.base.y) < MARK_THERE;
      });
      if (own.length !== 1) throw new Error(`${own.length} marks are meant at ${mark.base.x}, ${mark.base.y}`);
      return own.map(({ number }) => ({ ...mark, number }));
    };
    const part = (
      of: SheetPart,
      has: (p: Place) => boolean,
      place: (p: Place) => Place,
      back: (p: Place) => Place,
    ): PrintedPart => {
      const places = (all: readonly Place[]) => all.filter(has).map(back);
      const marks = page.marks
        .filter(({ base }) => has(base))
        .flatMap((mark) => numbered(mark, of, place))
        .map((mark) => ({ ...mark, base: back(mark.base) }));
      if (marks.length !== of.marks.length) throw new Error(`${marks.length} marks on ${of.label}`);
      return { label: of.label, marks, cut: places(page.cut), sewn: places(page.sewn), mark: places(page.mark) };
    };
    const same = (p: Place) => p;
    return [
      part(sheet, (p) => !holes.some((hole) => isIn(hole, p)), same, same),
      ...holes.map((hole) =>
        part(
          hole.tip,
          (p) => isIn(hole, p),
          placer(hole.tip.place),
          hole.tip.place.turn === 0 ? same : ({ x, y }) => ({ x: y, y: -x }),
        ),
      ),
    ];
  });
}

/** Places of all parts where they come to lie once those are joined. */
export const onTable = <Part extends { readonly label: string }>(
  parts: readonly Part[],
  placesOf: (part: Part, i: number) => readonly Place[],
  shifts: ReadonlyMap<string, Place>,
): readonly Place[] =>
  parts.flatMap((part, i) => {
    const { x, y } = shifts.get(part.label) as Place;
    return placesOf(part, i).map((p) => ({ x: p.x + x, y: p.y + y }));
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
