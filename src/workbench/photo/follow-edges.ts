import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { distance, type Point } from '../../plane';
import {
  BLOCK_EDGES,
  type EdgePoint,
  edgeMarks,
  FAINT,
  type Flat,
  type FollowedLine,
  viewToPicture,
  viewToPlane,
  wasFollowed,
} from '../../trace';
import { followedLine } from './ask-worker';
import { flatsOfWork } from './flat';
import { usePhoto } from './photo-store';
import { type Part, type PhotoWork, shotOf, withFollowed } from './work';

/** A pencil line on paper is about so wide. @source practice */
const PENCIL: Mm = 0.7;

/** Edges that are being followed: of each, one line at a time. */
const underWay = new Set<string>();

/**
 * Lets every edge follow the line that is drawn between its marks, or the edge of the paper, from now on: as soon as its
 * ends are there, and anew whenever a mark of it is somewhere else. It is found beside the screen, and no change to undo.
 *
 * @returns what ends it
 */
export function followEdges(): () => void {
  followNext();
  return usePhoto.subscribe((state, before) => {
    if (state.work !== before.work || state.pictures !== before.pictures) followNext();
  });
}

function followNext(): void {
  const { work, pictures } = usePhoto.getState();
  for (const part of ['front', 'back'] as const)
    for (const edge of BLOCK_EDGES) {
      const key = `${part} ${edge}`;
      const through = toFollow(work, part, edge);
      const shot = through?.[0]?.shot;
      const flat = shot === undefined ? undefined : flatsOfWork(work)[shot];
      if (!through || shot === undefined || !flat || !pictures[shot] || underWay.has(key)) continue;
      underWay.add(key);
      void followedLine(shot, through, PENCIL * pixelsPerMm(flat, through)).then((line) => {
        underWay.delete(key);
        if (line) take(part, edge, through, line);
      });
    }
}

/** The marks of an edge that wants to be followed; undefined where it doesn't, or they lie on several photographs. */
function toFollow(work: PhotoWork, part: Part, edge: BlockEdge): readonly EdgePoint[] | undefined {
  const { marks, byHand } = work[part];
  const run = edgeMarks(marks, edge);
  if (!run || byHand?.includes(edge) || wasFollowed(marks.followed?.[edge], run)) return undefined;
  const through = run.map((mark) => ({ ...mark, shot: shotOf(work[part], mark) }));
  return through.every(({ shot }) => shot === through[0]?.shot) ? through : undefined;
}

function pixelsPerMm({ view }: Flat, run: readonly Point[]): number {
  const middle = run[run.length >> 1] as Point;
  const here = viewToPlane(view, middle);
  const beside = here && viewToPicture(view, { x: here.x + 1, y: here.y });
  return beside ? distance(middle, beside) : 1;
}

/** Takes a followed line, if the edge still has the marks that it was led through. */
function take(part: Part, edge: BlockEdge, through: readonly EdgePoint[], { points, shown }: FollowedLine): void {
  const { work } = usePhoto.getState();
  const now = edgeMarks(work[part].marks, edge);
  if (!now || !wasFollowed({ through, points: [] }, now)) {
    followNext();
    return;
  }
  const marked = (p: Point): EdgePoint => through.find(({ x, y }) => x === p.x && y === p.y) ?? p;
  const along = points.map((p) => ({ ...marked(p), shot: through[0]?.shot ?? 0 }));
  usePhoto.setState({ work: withFollowed(work, part, edge, { through, points: shown < FAINT ? [] : along }) });
}
