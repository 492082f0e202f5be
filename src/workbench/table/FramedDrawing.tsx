import type { CSSProperties, ReactNode } from 'react';
import type { Box } from '../../plane';
import type { Station } from '../../project';

/** A picture at most so large, pixels, and the room round it for its words. */
const [WIDTH, HEIGHT, AROUND] = [360, 320, 28];

export interface FramedDrawingProps {
  readonly station: Station;
  readonly box: Box;
  readonly says: string;
  readonly children: ReactNode;
}

/** A drawing out of the table, in a frame of its own, as large as that allows. */
export function FramedDrawing({ station, box, says, children }: FramedDrawingProps) {
  const [wide, tall] = [box.right - box.left, box.bottom - box.top];
  const scale = Math.min((WIDTH - 2 * AROUND) / wide, (HEIGHT - 2 * AROUND) / tall);
  const around = AROUND / scale;
  return (
    <svg
      className="help-picture"
      role="img"
      aria-label={says}
      width={wide * scale + 2 * AROUND}
      height={tall * scale + 2 * AROUND}
      viewBox={`${box.left - around} ${box.top - around} ${wide + 2 * around} ${tall + 2 * around}`}
    >
      <g
        className="drawing"
        data-station={station}
        data-far="very"
        style={{ '--unzoomed': 1 / scale } as CSSProperties}
      >
        {children}
      </g>
    </svg>
  );
}
