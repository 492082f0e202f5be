import type { Lay } from '../../../cloth';
import { cutCurves, isSamePiece, type Piece, pieceKey } from '../../../edges';
import { pathText } from '../../table/path-text';

/** Pixels a millimetre: all lays to one scale, so that the eye compares them. */
const SCALE = 0.024;

/** A lay in small: the cloth as it lies, its fold, and every piece on it. */
export function LayThumb({ lay, pieces }: { readonly lay: Lay; readonly pieces: readonly Piece[] }) {
  const { table, layout, placements } = lay;
  const fold = layout === 'foldedLengthwise' ? `M0 0V${table.length}` : `M0 0H${table.width}`;
  return (
    <svg
      className="lay-thumb"
      aria-hidden="true"
      width={table.width * SCALE + 2}
      height={table.length * SCALE + 2}
      viewBox={`${-1 / SCALE} ${-1 / SCALE} ${table.width + 2 / SCALE} ${table.length + 2 / SCALE}`}
    >
      <rect width={table.width} height={table.length} />
      {placements.map(({ piece: ref, copies, at, turn, mirrored }) => {
        const piece = pieces.find((one) => isSamePiece(one, ref));
        return (
          piece && (
            <path
              key={`${pieceKey(ref)}${copies[0]}`}
              transform={`translate(${at.x} ${at.y}) rotate(${turn})${mirrored ? ' scale(-1 1)' : ''}`}
              d={pathText(cutCurves(piece), true)}
            />
          )
        );
      })}
      {layout !== 'single' && <path className="lay-thumb-fold" d={fold} />}
    </svg>
  );
}
