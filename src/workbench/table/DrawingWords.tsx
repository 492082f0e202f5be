import { memo } from 'react';
import type { Draft } from '../../project';
import { mm, printPhrase, say } from '../../words';
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
  const size = say`${RESULTS[station](draft)}; ${mm(right - left)} wide, ${mm(bottom - top)} high`;
  return <desc id="drawn">{printPhrase(size, units)}</desc>;
});
