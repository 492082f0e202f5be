import { LANDMARKS, type Landmark } from '../../trace';
import type { Part } from './work';

/** A front block in small, drawn by hand to no measure; the back is its mirror. */
const OUTLINE = 'M30 8Q50 12 70 12L74 44Q76 57 92 60Q82 78 79 98L72 142H31L28 98Q20 60 22 42Q24 22 30 8Z';
const DOTS: Readonly<Record<Landmark, readonly [number, number]>> = {
  waistSide: [30, 8],
  waistCentre: [70, 12],
  hipCentre: [73, 36],
  crotchTop: [74, 45],
  crotchPoint: [92, 60],
  knee: [79, 98],
  hemInseam: [72, 142],
  hemSide: [31, 142],
  hipSide: [22, 40],
  grainTop: [50, 28],
  grainBottom: [50, 124],
};

interface LandmarkDiagramProps {
  readonly part: Part;
  readonly next: Landmark | undefined;
  readonly placed: (name: Landmark) => boolean;
}

/** Which place comes next. */
export function LandmarkDiagram({ part, next, placed }: LandmarkDiagramProps) {
  return (
    <svg className="photo-diagram" viewBox="0 0 110 150" aria-hidden="true">
      <g transform={part === 'back' ? 'translate(110 0) scale(-1 1)' : undefined}>
        <path className="diagram-outline" d={OUTLINE} />
        <path className="diagram-line" d="M22 40L73 36M50 28V124" />
        {LANDMARKS.map((name) => {
          const [x, y] = DOTS[name];
          return (
            <circle
              key={name}
              cx={x}
              cy={y}
              r={name === next ? 5 : 2.5}
              data-next={name === next || undefined}
              data-placed={placed(name) || undefined}
            />
          );
        })}
      </g>
    </svg>
  );
}
