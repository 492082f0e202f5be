import { placedDrawings } from '../../../drawing';
import { cutCurves, pieceKey } from '../../../edges';
import { reprintOf, sheetsOf } from '../../../project';
import { markCorners, type Sheet, type SheetPlan } from '../../../sheets';
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
        <SheetFrame key={sheet.label} sheet={sheet} scale={sheets.scale} anew={anew?.includes(sheet.label) ?? false} />
      ))}
    </>
  );
}

/** The height of capitals in the font, as a share of its size. */
const CAPITALS = 0.66;

const rectangle = ({ window }: Sheet) => ({
  x: window.left,
  y: window.top,
  width: window.right - window.left,
  height: window.bottom - window.top,
});

const SheetGround = ({ sheet }: { readonly sheet: Sheet }) => <rect className="sheet-ground" {...rectangle(sheet)} />;

interface FrameProps {
  readonly sheet: Sheet;
  readonly scale: SheetPlan['scale'];
  /** Whether it must be printed again. */
  readonly anew: boolean;
}

/** A sheet's rim, its halves of the joining marks, and its label. */
function SheetFrame({ sheet, scale, anew }: FrameProps) {
  const { window, label, marks } = sheet;
  return (
    <>
      <rect className="sheet-frame" data-anew={anew || undefined} {...rectangle(sheet)} />
      {marks.map(({ number, at, towards, size }) => (
        <polygon
          key={`${number}${towards}`}
          className="sheet-mark"
          points={markCorners(towards, size)
            .map(({ x, y }) => `${at.x + x / scale.x},${at.y + y / scale.y}`)
            .join(' ')}
        />
      ))}
      <Word
        at={{ x: (window.left + window.right) / 2, y: (window.top + window.bottom) / 2 }}
        dy={6}
        className="word-sheet"
      >
        {label}
      </Word>
    </>
  );
}
