import type { ReactNode } from 'react';
import { unusualFields } from '../../project';
import { inTurn, printPhrase } from '../../words';
import { problemAt } from '../store/asked';
import { useBench } from '../store/bench';

export interface FoldProps {
  readonly name: string;
  /** The fields that are folded away. */
  readonly paths: readonly string[];
  readonly children: ReactNode;
}

/** The seldom wanted end of a long form: what of it isn't as it usually is stands on the fold. */
export function Fold({ name, paths, children }: FoldProps) {
  // Where somebody is led to a field, or has to put it right, nothing is folded away.
  const asked = useBench((state) => paths.some((path) => state.field === path || problemAt(state, path) !== undefined));
  const project = useBench((state) => state.project);
  const unusual = unusualFields(project, paths);
  return (
    <details className="more" open={asked || undefined}>
      <summary>
        {name}
        {unusual.length > 0 && <span className="fold-told">{printPhrase(inTurn(unusual, ', '), project.units)}</span>}
      </summary>
      {children}
    </details>
  );
}
