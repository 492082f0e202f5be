import type { Block, BlockEdge } from '../../../src/block';
import { outlineEdge, type Point, pathAt, pathEnd, pathLength, pathStart } from '../../../src/plane';
import { BLOCK_EDGES, type BlockMarks } from '../../../src/trace';

/** How many points a careful hand sets along each edge, landmarks not counted. */
const POINTS: Readonly<Record<BlockEdge, number>> = { waist: 2, centre: 0, crotch: 5, inseam: 7, hem: 0, side: 9 };

/** Where somebody would mark a block that lies on the floor: its landmarks, and points along its curved edges. */
export function markedBlock({ edges, grainline, hipLevel, kneeLevel }: Block): BlockMarks {
  const curves = (name: BlockEdge) => outlineEdge(edges, name).curves;
  const at = (name: BlockEdge, level: number): Point => {
    const run = curves(name);
    const whole = pathLength(run);
    let [low, high] = [0, whole];
    const rises = pathStart(run).y > pathEnd(run).y;
    for (let i = 0; i < 40; i += 1) {
      const middle = (low + high) / 2;
      if (pathAt(run, middle).at.y > level === rises) low = middle;
      else high = middle;
    }
    return pathAt(run, low).at;
  };
  const along = (name: BlockEdge) => {
    const run = curves(name);
    const count = POINTS[name];
    return Array.from({ length: count }, (_, i) => pathAt(run, (pathLength(run) * (i + 1)) / (count + 1)).at);
  };
  const [grainTop, grainBottom] = grainline;
  return {
    landmarks: {
      waistSide: pathStart(curves('waist')),
      waistCentre: pathEnd(curves('waist')),
      hipCentre: at('centre', hipLevel),
      crotchTop: pathEnd(curves('centre')),
      crotchPoint: pathEnd(curves('crotch')),
      knee: at('inseam', kneeLevel),
      hemInseam: pathEnd(curves('inseam')),
      hemSide: pathEnd(curves('hem')),
      hipSide: at('side', hipLevel),
      grainTop,
      grainBottom,
    },
    points: Object.fromEntries(BLOCK_EDGES.map((name) => [name, along(name)])),
  };
}
