import type { CSSProperties, ReactNode } from 'react';
import type { Point } from '../../plane';

export interface WordProps {
  readonly at: Point;
  readonly children: ReactNode;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly className?: string;
  /** Pixels, from the point. */
  readonly dx?: number;
  readonly dy?: number;
  /** Degrees, clockwise as seen. */
  readonly turn?: number;
}

/**
 * A word that keeps its size whatever the zoom. The counter-scale is a property of the drawing's group, so that zooming
 * touches one element and not every word.
 */
export function Word({ at, children, anchor = 'middle', className = '', dx = 0, dy = 0, turn = 0 }: WordProps) {
  return (
    <g style={fixedAt(at)}>
      <text className={`word ${className}`} textAnchor={anchor} transform={`rotate(${turn}) translate(${dx} ${dy})`}>
        {children}
      </text>
    </g>
  );
}

/** Puts an element at a point of the drawing, at the size of the screen. */
export function fixedAt(at: Point): CSSProperties {
  return { transform: `translate(${at.x}px, ${at.y}px) scale(var(--unzoomed))` };
}
