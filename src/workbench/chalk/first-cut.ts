import { useMemo } from 'react';
import type { Draft } from '../../project';
import { useBench } from '../store/bench';
import { draftOf } from './chalk';

/** The same project without what was corrected after wearing; undefined where nothing was. */
export function useFirstCut(): Draft | undefined {
  const station = useBench((state) => state.station);
  const { project } = useBench((state) => state.draft);
  const corrected = project.fit !== null && Object.values(project.fit).some((by) => by !== 0);
  const wanted = corrected && station === 'check';
  return useMemo(() => (wanted ? draftOf({ ...project, fit: null }) : undefined), [wanted, project]);
}
