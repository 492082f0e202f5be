import { Fragment } from 'react';
import { placedDrawings } from '../../../drawing';
import { cutCurves, pieceKey } from '../../../edges';
import type { Box } from '../../../plane';
import { reprintOf, sheetsOf } from '../../../project';
import { markCorners, type Sheet, type SheetPart, type SheetPlan, type Tip, tipBox } from '../../../sheets';
import { pathText } from '../path-text';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { Line } from './Line';

/** The pieces as they are printed, with the sheets that carry them laid over; those that must be printed again stand out. */
export function SheetsDrawing({ draft }: DrawingProps) {
  const { printed } = draft;
  const sheets = sheetsOf(draft);
  const anew = reprintOf(draft)?.anew;
  return (
    <>
      {sheets.sheets.map((sheet) => (
        <SheetGround key={sheet.label} sheet={sheet} />
      ))}
      {placedDrawings(printed, sheets.places).map(({ piece, paths, texts }) => (
        <g key={pieceKey(piece)}>
          <path
            className="tint-sheet"
            d={pathText(paths.find((path) => path.stroke === 'cut')?.curves ?? cutCurves(piece), true)}
          />
          {paths.map((path) => (
            <Line
              key={`${path.name}${pathText(path.curves)}`}
              stroke={path.stroke}
              curves={path.curves}
              closed={path.closed}
            />
          ))}
          {texts.map((text) => (
            <text
              key={`${text.text}${text.at.x},${text.at.y}`}
              className="printed-text"
              fontSize={text.size / CAPITALS}
              transform={`translate(${text.at.x} ${text.at.y}) rotate(${text.turn})`}
            >
              {text.text}
            </text>
          ))}
        </g>
      ))}
      {sheets.sheets.map((sheet) => (
        <PartFrame key={sheet.label} part={sheet} scale={sheets.scale} anew={anew?.includes(sheet.label) ?? false} />
      ))}
      {sheets.sheets.flatMap((sheet) =>
        sheet.tips.map((tip) => (
          <Fragment key={tip.label}>
            <PartFrame part={tip} scale={sheets.scale} anew={anew?.includes(sheet.label) ?? false} />
            <PrintedTip tip={tip} />
          </Fragment>
        )),
      )}
    </>
  );
}

/** The height of capitals in the font, as a share of its size. */
const CAPITALS = 0.66;

const rectangle = ({ left, right, top, bottom }: Box) => ({
  x: left,
  y: top,
  width: right - left,
  height: bottom - top,
});

const SheetGround = ({ sheet }: { readonly sheet: Sheet }) => (
  <rect className="sheet-ground" {...rectangle(sheet.window)} />
);

interface FrameProps {
  readonly part: SheetPart;
  readonly scale: SheetPlan['scale'];
  /** Whether it must be printed again. */
  readonly anew: boolean;
}

/** A part's rim, its halves of the joining marks, and its label. */
function PartFrame({ part, scale, anew }: FrameProps) {
  const { window, label, marks } = part;
  return (
    <>
      <rect className="sheet-frame" data-anew={anew || undefined} {...rectangle(window)} />
      {marks.map(({ number, at, towards, size }) => (
        <polygon
          key={`${number}${towards}`}
          className="sheet-mark"
          points={markCorners(towards, size)
            .map(({ x, y }) => `${at.x + x / scale.x},${at.y + y / scale.y}`)
            .join(' ')}
        />
      ))}
      <Word at={middle(window)} dy={6} className="word-sheet">
        {label}
      </Word>
    </>
  );
}

/** Where a tip is printed: its rim in the empty corner of its sheet, and its label. */
function PrintedTip({ tip }: { readonly tip: Tip }) {
  const box = tipBox(tip);
  return (
    <>
      <rect className="sheet-frame" data-tip {...rectangle(box)} />
      <Word at={middle(box)} dy={6} className="word-sheet">
        {tip.label}
      </Word>
    </>
  );
}

const middle = ({ left, right, top, bottom }: Box) => ({ x: (left + right) / 2, y: (top + bottom) / 2 });
