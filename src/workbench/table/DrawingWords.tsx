import { memo } from 'react';
import { formatLength } from '../../length';
import type { Draft } from '../../project';
import { RESULTS } from '../finished/results';
import { useBench } from '../store/bench';
import type { StationDrawing } from './station-drawings';

export interface DrawingWordsProps {
  readonly draft: Draft;
  readonly box: StationDrawing['box'];
}

/** What the drawing shows in numbers, for those who can't see it: what the station came to, and how large it is. */
export const DrawingWords = memo(function DrawingWords({ draft, box }: DrawingWordsProps) {
  const station = useBench((state) => state.station);
  const units = useBench((state) => state.project.units);
  const { left, right, top, bottom } = box(draft);
  const size = `${formatLength(right - left, units)} wide, ${formatLength(bottom - top, units)} high`;
  return (
    <desc id="drawn">
      {RESULTS[station](draft, units)}; {size}
    </desc>
  );
});
