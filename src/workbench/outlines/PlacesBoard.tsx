import type { MouseEvent } from 'react';
import {
  type Curve,
  curveMap,
  flattenCurves,
  leftOf,
  moved,
  type Point,
  pathAt,
  pathFoot,
  pathLength,
  pointsHold,
  scale,
} from '../../plane';
import { BLOCK_EDGES, edgeRead, pointRound, READ_PLACES, type ReadPlace, ROUND_PLACES, withPressed } from '../../trace';
import { said, words } from '../../words';
import { EDGE_NAMES } from '../photo/words';
import { lineText, pathText } from '../table/path-text';
import { pressedAt, type StandingPart, standing } from './laid-out';
import { changeReading, type Hand, takeInHand, useOutlines } from './outlines-store';

/** A press takes the corner or the line that lies so near to it, pixels. */
const NEAR = 22;
/** Letters and dots, as shares of the drawing's height. */
const [LETTERS, DOT] = [0.026, 0.009];

/** Both blocks upright beside each other, their edges and places lit: what is in hand is set by a press, an edge is taken in hand by one. */
export function PlacesBoard() {
  const work = useOutlines((state) => state.work);
  const hand = useOutlines((state) => state.hand);
  const { parts, width, height } = standing(work);
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const pressed = pressedAt(event.currentTarget, event);
    if (!pressed) return;
    const near = NEAR * pressed.pixel;
    const part = partAt(parts, pressed.at);
    if (!part) return;
    const at = part.fromScreen(pressed.at);
    if (hand?.kind === 'place') {
      if (hand.part === part.part) changeReading(hand.part, (reading) => withPressed(reading, hand.name, at, near));
      return;
    }
    takeInHand(edgeAt(part, at, 2 * near));
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the panel beside it does the same with keys
    <svg
      className="outlines-board"
      data-placing={hand?.kind === 'place' || undefined}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words`Back and front, their edges and places lit`}
      onClick={onClick}
    >
      {parts.map((one) => (
        <StandingBlock key={one.part} {...one} hand={hand} size={height} />
      ))}
    </svg>
  );
}

interface StandingBlockProps extends StandingPart {
  readonly hand: Hand | undefined;
  readonly size: number;
}

function StandingBlock({ part, reading, toScreen, hand, size }: StandingBlockProps) {
  const { way, lines, grain, hip, knee, doubts } = reading;
  const edges = BLOCK_EDGES.map((name, i) => ({ name, i, curves: edgeRead(reading, i) }));
  const outline = flattenCurves(
    way.curves.map((curve) => curveMap(curve, toScreen)),
    1,
  );
  const level = (p: Point) => lineText(levelAcross(outline, toScreen(p).y));
  const inHand = (name: ReadPlace) => hand?.kind === 'place' && hand.part === part && hand.name === name;
  return (
    <g data-part={part}>
      <path
        className="outlines-shape"
        d={pathText(
          way.curves.map((curve) => curveMap(curve, toScreen)),
          true,
        )}
      />
      {lines.map(({ ends }) => (
        <path key={lineText(ends)} className="outlines-inner" d={lineText(ends.map(toScreen))} />
      ))}
      {edges.map(({ name, i, curves }) =>
        curves.length === 0 ? null : (
          <g key={name}>
            <path
              className="outlines-edge"
              data-edge={name}
              data-lit={(hand?.kind === 'edge' && hand.part === part && hand.index === i) || undefined}
              d={pathText(curves.map((curve) => curveMap(curve, toScreen)))}
            />
            <EdgeWord
              name={said(EDGE_NAMES[name])}
              curves={curves.map((curve) => curveMap(curve, toScreen))}
              outline={outline}
              size={size * LETTERS}
            />
          </g>
        ),
      )}
      {grain && (
        <path
          className="outlines-level"
          data-lit={inHand('grain') || undefined}
          data-doubt={doubts.has('grain') || undefined}
          d={lineText(grain.map(toScreen))}
        />
      )}
      {hip && (
        <path
          className="outlines-level"
          data-lit={inHand('hip') || undefined}
          data-doubt={doubts.has('hip') || undefined}
          d={level(hip)}
        />
      )}
      {knee && <path className="outlines-level" data-lit={inHand('knee') || undefined} d={level(knee)} />}
      {READ_PLACES.flatMap((name) => {
        const round = ROUND_PLACES.find((one) => one === name);
        const at = round && reading.places[round];
        if (round === undefined || at === undefined) return [];
        const { x, y } = toScreen(pointRound(way, at));
        return [
          <circle
            key={name}
            className="outlines-dot"
            cx={x}
            cy={y}
            r={size * DOT * (inHand(name) ? 1.6 : 1)}
            data-place={name}
            data-lit={inHand(name) || undefined}
            data-doubt={doubts.has(round) || undefined}
          />,
        ];
      })}
    </g>
  );
}

interface EdgeWordProps {
  readonly name: string;
  readonly curves: readonly Curve[];
  readonly outline: readonly Point[];
  readonly size: number;
}

/** The name of an edge beside its middle, outside of the block. */
function EdgeWord({ name, curves, outline, size }: EdgeWordProps) {
  const { at, way } = pathAt(curves, pathLength(curves) / 2);
  const left = leftOf(way);
  const out = pointsHold(outline, moved(at, left, 1)) ? scale(left, -1) : left;
  const { x, y } = moved(at, out, size * AWAY);
  const anchor = out.x > SIDEWAYS ? 'start' : out.x < -SIDEWAYS ? 'end' : 'middle';
  return (
    <text x={x} y={y + size * (0.35 + 0.35 * out.y)} fontSize={size} textAnchor={anchor}>
      {name}
    </text>
  );
}

/** How far from its edge a name stands, in heights of its letters, and from which slant on it stands beside it. */
const [AWAY, SIDEWAYS] = [0.6, 0.4];

/** A level across a block, from where it enters to where it leaves. */
function levelAcross(outline: readonly Point[], y: number): readonly Point[] {
  const xs = outline.flatMap((b, i) => {
    const a = outline.at(i - 1) as Point;
    return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  return xs.length < 2 ? [] : [Math.min(...xs), Math.max(...xs)].map((x) => ({ x, y }));
}

/** The block that a press is meant for: the one whose outline is nearest. */
function partAt(parts: readonly StandingPart[], at: Point): StandingPart | undefined {
  const far = ({ reading, fromScreen }: StandingPart) =>
    pathFoot(flattenCurves(reading.way.curves, 1), fromScreen(at)).distance;
  return [...parts].sort((a, b) => far(a) - far(b))[0];
}

/** The edge of a block that a press is meant for. */
function edgeAt({ part, reading }: StandingPart, at: Point, near: number): Hand | undefined {
  const found = BLOCK_EDGES.map((_, index) => {
    const curves = edgeRead(reading, index);
    return { index, far: pathLength(curves) > 0 ? pathFoot(flattenCurves(curves, 1), at).distance : Infinity };
  }).sort((a, b) => a.far - b.far)[0] as { readonly index: number; readonly far: number };
  return found.far <= near ? { kind: 'edge', part, index: found.index } : undefined;
}
