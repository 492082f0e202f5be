import { words } from '../../words';

/** Both blocks on the floor and the mark sheets round them, drawn by hand to no measure. */

const BLOCK = 'M30 8Q50 12 70 12L74 44Q76 57 92 60Q82 78 79 98L72 142H31L28 98Q20 60 22 42Q24 22 30 8Z';
/** A sheet at each corner: where it lies and how it is turned, degrees. */
const SHEETS = [
  { sheet: 1, x: 34, y: 40, turn: -8 },
  { sheet: 2, x: 266, y: 40, turn: 5 },
  { sheet: 3, x: 266, y: 196, turn: 84 },
  { sheet: 4, x: 34, y: 196, turn: 3 },
] as const;
/** The five marks on a sheet, and how wide each is. */
const SPOTS = [
  [-12, -17],
  [12, -17],
  [0, 0],
  [-12, 17],
  [12, 17],
] as const;
const SPOT = 7;

/** How paper blocks and mark sheets are laid before they are photographed. */
export function FloorScene() {
  return (
    <svg
      className="photo-floor"
      viewBox="0 0 300 236"
      role="img"
      aria-label={words`The blocks on the floor, a mark sheet at each corner`}
    >
      <rect className="floor" width="300" height="236" rx="6" />
      <path className="diagram-outline" transform="translate(146 38)" d={BLOCK} />
      <path className="diagram-outline" transform="translate(150 38) scale(-1 1)" d={BLOCK} />
      {SHEETS.map(({ sheet, x, y, turn }) => (
        <g key={sheet} transform={`translate(${x} ${y}) rotate(${turn})`}>
          <rect className="paper" x="-20" y="-27" width="40" height="54" />
          {SPOTS.map(([left, top]) => (
            <rect
              key={`${left} ${top}`}
              className="spot"
              x={left - SPOT / 2}
              y={top - SPOT / 2}
              width={SPOT}
              height={SPOT}
            />
          ))}
        </g>
      ))}
    </svg>
  );
}
