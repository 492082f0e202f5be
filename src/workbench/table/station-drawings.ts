import type { ComponentType } from 'react';
import { apart, pieceBounds, uprightPlaces } from '../../drawing';
import { legCurves } from '../../leg';
import { type Box, boxRound, curvesBounds, outlineCurves } from '../../plane';
import type { Draft, Station } from '../../project';
import { type Phrase, say } from '../../words';
import { late } from '../faults/late';
import { type AskedPlace, placeInWorking } from './asked-place';
import { blockTape, tapeBox } from './block-tape';
import { CheckDrawing } from './drawings/CheckDrawing';
import type { DrawingProps } from './drawings/drawing-props';
import { EdgesDrawing } from './drawings/EdgesDrawing';

/** What the table shows at a station, and the box that holds it. */
export interface StationDrawing {
  readonly Drawing: ComponentType<DrawingProps>;
  readonly box: (draft: Draft) => Box;
  /** Where on it a field is seen that somebody is at; left out where no place is. */
  readonly asked?: (draft: Draft, path: string) => AskedPlace | undefined;
  /** What is seen, for those who listen. */
  readonly says: (draft: Draft) => Phrase;
}

function pieceBox({ pieces }: Draft): Box {
  const places = uprightPlaces(pieces);
  return boxRound(
    pieces.map((piece, i) => {
      const box = pieceBounds(piece);
      const { x, y } = places[i]?.shift ?? { x: 0, y: 0 };
      return { left: box.left + x, right: box.right + x, top: box.top + y, bottom: box.bottom + y };
    }),
  );
}

/** Stations of which also the box is found late, by what draws them. */
export type LateStation = 'body' | 'cloth' | 'paper' | 'sew';

/** The drawings of the stations but of those that are loaded late. */
export const STATION_DRAWINGS: Readonly<Record<Exclude<Station, LateStation>, StationDrawing>> = {
  blocks: {
    Drawing: late(() => import('./drawings/BlocksDrawing'), { what: say`The drawing of the blocks`, place: 'bit' }),
    asked(draft, path) {
      const tape = blockTape(draft, path);
      return tape ? { key: path, box: tapeBox(tape) } : placeInWorking(draft, 'blocks', path);
    },
    says: () => say`The front block and the back block, side by side`,
    box({ blocks }) {
      const front = curvesBounds(outlineCurves(blocks.front.edges));
      const back = curvesBounds(outlineCurves(blocks.back.edges));
      const [right, left] = [apart('front'), apart('back')];
      return boxRound([
        { ...front, left: front.left + right, right: front.right + right },
        { ...back, left: back.left + left, right: back.right + left },
      ]);
    },
  },
  leg: {
    Drawing: late(() => import('./drawings/LegDrawing'), { what: say`The drawing of the leg`, place: 'bit' }),
    asked: (draft, path) => placeInWorking(draft, 'leg', path),
    says: () => say`The joined blocks under the outline of the leg`,
    box: ({ leg }) => curvesBounds([...legCurves(leg), ...leg.joined.front, ...leg.joined.back]),
  },
  edges: {
    Drawing: EdgesDrawing,
    asked: (draft, path) => placeInWorking(draft, 'edges', path),
    says: () => say`The finished leg with casing, hem and seam allowances`,
    box: pieceBox,
  },
  check: { Drawing: CheckDrawing, says: () => say`The finished leg as it was checked`, box: pieceBox },
};
