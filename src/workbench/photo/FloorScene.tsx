import { words } from '../../words';

/** Both blocks on the floor and the four marks round them, drawn by hand to no measure. */

const BLOCK = 'M30 8Q50 12 70 12L74 44Q76 57 92 60Q82 78 79 98L72 142H31L28 98Q20 60 22 42Q24 22 30 8Z';
const MARKS = [
  { letter: 'A', x: 24, y: 24 },
  { letter: 'B', x: 276, y: 24 },
  { letter: 'C', x: 276, y: 204 },
  { letter: 'D', x: 24, y: 204 },
] as const;
const RADIUS = 8;

/** How paper blocks and marks are laid before they are photographed. */
export function FloorScene() {
  return (
    <svg
      className="photo-floor"
      viewBox="0 0 300 236"
      role="img"
      aria-label={words`The blocks on the floor, four marks round them`}
    >
      <rect className="floor" width="300" height="236" rx="6" />
      <path className="diagram-line" d="M24 24H276V204H24Z" />
      <path className="diagram-outline" transform="translate(146 38)" d={BLOCK} />
      <path className="diagram-outline" transform="translate(150 38) scale(-1 1)" d={BLOCK} />
      {MARKS.map(({ letter, x, y }) => (
        <g key={letter} transform={`translate(${x} ${y})`}>
          <circle r={RADIUS} />
          <path className="quarters" d="M0 0H8A8 8 0 0 1 0 8ZM0 0H-8A8 8 0 0 1 0 -8Z" />
          <text x={x < 150 ? 13 : -13} y={y < 100 ? 14 : -7} textAnchor={x < 150 ? 'start' : 'end'}>
            {letter}
          </text>
        </g>
      ))}
      <text x="150" y="18" textAnchor="middle">
        {words`width`}
      </text>
      <text x="16" y="118" textAnchor="middle" transform="rotate(-90 16 118)">
        {words`length`}
      </text>
    </svg>
  );
}
