import type { Curve } from '../../../plane';
import { pathText } from '../path-text';

/** What a line on the screen means; `block` and `joined` are the thin and the medium outline under the finished leg. */
export type ScreenStroke =
  | 'cut'
  | 'stitching'
  | 'fold'
  | 'level'
  | 'side'
  | 'waistEdge'
  | 'notch'
  | 'grain'
  | 'solid'
  | 'block'
  | 'joined'
  | 'rawEdge'
  | 'flat';

export interface LineProps {
  readonly curves: readonly Curve[];
  readonly stroke: ScreenStroke;
  readonly closed?: boolean;
  readonly className?: string;
}

/** One line of the drawing in the line type of its meaning. */
export function Line({ curves, stroke, closed = false, className = '' }: LineProps) {
  return <path className={`line line-${stroke} ${className}`} d={pathText(curves, closed)} />;
}
