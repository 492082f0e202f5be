import type { Stroke } from '../../../drawing';
import type { Curve } from '../../../plane';
import { pathText } from '../path-text';

/** What a line means: as on paper, and `block` and `joined`, the thin and the medium outline before the leg is finished. */
type ScreenStroke = Stroke | 'block' | 'joined';

interface LineProps {
  readonly curves: readonly Curve[];
  readonly stroke: ScreenStroke;
  readonly closed?: boolean;
}

/** One line of the drawing in the line type of its meaning. */
export function Line({ curves, stroke, closed = false }: LineProps) {
  return <path className={`line line-${stroke}`} d={pathText(curves, closed)} />;
}

interface LinesProps {
  readonly runs: readonly (readonly Curve[])[];
  readonly stroke: ScreenStroke;
}

/** Several lines of one line type as one path; the dashes of each begin anew. */
export function Lines({ runs, stroke }: LinesProps) {
  return <path className={`line line-${stroke}`} d={runs.map((run) => pathText(run)).join('')} />;
}
