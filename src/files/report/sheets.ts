import { pieceKey } from '../../edges';
import type { Box } from '../../plane';
import { type Draft, sheetsOf } from '../../project';
import { controlLengths, type SheetPart } from '../../sheets';
import { printPhrase } from '../../words';

/** A sheet, or what is cut out of one. */
interface ReportPart {
  readonly label: string;
  readonly row: number;
  readonly column: number;
  /** What it shows of the drawing, its overlap included. */
  readonly window: Box;
  /** Its halves of the joining marks: the middle of the base on the drawing, and to which side the tip points. */
  readonly marks: readonly {
    readonly number: number;
    readonly at: readonly [number, number];
    readonly towards: string;
  }[];
}

/** How the pieces lie on the paper: everything that a preview of the sheets draws; millimetres of drawing unless it says paper. */
export interface ReportSheets {
  readonly count: number;
  readonly columns: number;
  readonly rows: number;
  readonly lowerBound: number;
  /** As it goes into the printer; of a roll, what is cut off. */
  readonly paper: {
    readonly name: string;
    readonly width: number;
    readonly height: number;
    readonly margin: number;
    readonly overlap: number;
  };
  /** Millimetres of paper for a millimetre of drawing, across and down. */
  readonly scale: readonly [number, number];
  /** Each piece turned about the origin by degrees, clockwise as seen, then shifted. */
  readonly places: readonly {
    readonly piece: string;
    readonly turn: number;
    readonly shift: readonly [number, number];
  }[];
  /** In the order in which they are printed. */
  readonly list: readonly (ReportPart & {
    /** Small pieces for other places of the grid that are printed in the sheet’s empty corners: turned and shifted from their own place. */
    readonly tips: readonly (ReportPart & { readonly turn: number; readonly shift: readonly [number, number] })[];
  })[];
  /** Lines that cross joins, and how long they must be on the joined paper. */
  readonly controls: readonly { readonly piece: string; readonly name: string; readonly length: number }[];
}

/** The sheets of a draft as data, rounded to a thousandth of a millimetre. */
export function reportSheets(draft: Draft, rounded: (value: number) => number): ReportSheets {
  const { printed, project } = draft;
  const plan = sheetsOf(draft);
  const { paper, scale, places, sheets } = plan;
  const pair = (p: { readonly x: number; readonly y: number }) => [rounded(p.x), rounded(p.y)] as const;
  const part = ({ label, row, column, window, marks }: SheetPart): ReportPart => ({
    label,
    row,
    column,
    window: {
      left: rounded(window.left),
      top: rounded(window.top),
      right: rounded(window.right),
      bottom: rounded(window.bottom),
    },
    marks: marks.map(({ number, at, towards }) => ({ number, at: pair(at), towards })),
  });
  return {
    count: sheets.length,
    columns: plan.columns,
    rows: plan.rows,
    lowerBound: plan.lowerBound,
    paper: {
      name: paper.name,
      width: rounded(paper.width),
      height: rounded(paper.height),
      margin: rounded(plan.margin),
      overlap: rounded(plan.overlap),
    },
    // The printer's correction has more than three figures.
    scale: [scale.x, scale.y],
    places: places.map(({ piece, turn, shift }) => ({ piece: pieceKey(piece), turn, shift: pair(shift) })),
    list: sheets.map((sheet) => ({
      ...part(sheet),
      tips: sheet.tips.map((tip) => ({ ...part(tip), turn: tip.place.turn, shift: pair(tip.place.shift) })),
    })),
    controls: controlLengths(printed, plan, project.paper).map(({ piece, name, length }) => ({
      piece: pieceKey(piece),
      name: printPhrase(name, project.units),
      length: rounded(length),
    })),
  };
}
