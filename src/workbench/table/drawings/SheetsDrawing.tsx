import { Fragment } from 'react';
import { placedDrawings } from '../../../drawing';
import { cutCurves, pieceKey } from '../../../edges';
import { type Box, boxRound } from '../../../plane';
import { reprintOf, sheetsOf } from '../../../project';
import {
  markCorners,
  partsInOrder,
  type Sheet,
  type SheetPart,
  type SheetPlan,
  type Tip,
  tipBox,
} from '../../../sheets';
import { pathText } from '../path-text';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { Line } from './Line';

/** The pieces as they are printed, with the sheets that carry them laid over; those that must be printed again stand out. */
export function SheetsDrawing({ draft }: DrawingProps) {
  const { printed } = draft;
  const sheets = sheetsOf(draft);
  const anew = reprintOf(draft)?.anew;
  const order = partsInOrder(sheets).map(({ label }) => label);
  const orderOf = ({ label }: SheetPart) => (order.length > 1 ? order.indexOf(label) + 1 : undefined);
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
        <PartFrame
          key={sheet.label}
          part={sheet}
          order={orderOf(sheet)}
          scale={sheets.scale}
          anew={anew?.includes(sheet.label) ?? false}
        />
      ))}
      {sheets.sheets.flatMap((sheet) =>
        sheet.tips.map((tip) => (
          <Fragment key={tip.label}>
            <PartFrame
              part={tip}
              order={orderOf(tip)}
              scale={sheets.scale}
              anew={anew?.includes(sheet.label) ?? false}
            />
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
  readonly part: Sheet | Tip;
  /** Its place in the order of taping, where there are several parts. */
  readonly order: number | undefined;
  readonly scale: SheetPlan['scale'];
  /** Whether it must be printed again. */
  readonly anew: boolean;
}

/** A part's rim, its halves of the joining marks, its label, and its place in the order of taping. */
function PartFrame({ part, order, scale, anew }: FrameProps) {
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
      <Word at={middle(roomBeside(window, 'tips' in part ? part.tips.map(tipBox) : []))} dy={6} className="word-sheet">
        {label}
      </Word>
      {order !== undefined && (
        <Word at={{ x: window.left, y: window.top }} anchor="start" dx={5} dy={16} className="word-note">
          {order}
        </Word>
      )}
    </>
  );
}

/** Where a tip is printed: its rim in the empty corner of its sheet, its label, and the way to where it belongs. */
function PrintedTip({ tip }: { readonly tip: Tip }) {
  const box = tipBox(tip);
  const [from, to] = [middle(box), middle(tip.window)];
  return (
    <>
      <rect className="sheet-frame" data-tip {...rectangle(box)} />
      <path className="tip-way" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      <Word at={middle(box)} dy={5} className="word-note">
        {tip.label}
      </Word>
    </>
  );
}

/** Where a sheet's name is read first: the largest stretch of its window beside the tips that it bears. */
function roomBeside(window: Box, tips: readonly Box[]): Box {
  if (tips.length === 0) return window;
  const { left, right, top, bottom } = boxRound(tips);
  const area = (box: Box) => (box.right - box.left) * (box.bottom - box.top);
  const beside = [
    { ...window, right: left },
    { ...window, left: right },
    { ...window, bottom: top },
    { ...window, top: bottom },
  ];
  return beside.reduce((a, b) => (area(b) > area(a) ? b : a));
}

const middle = ({ left, right, top, bottom }: Box) => ({ x: (left + right) / 2, y: (top + bottom) / 2 });
