import { focusOn } from '../aloud/focus-on';
import { useManner } from '../look/manner';
import { useBench } from '../store/bench';

/** A fresh project, at the first question about its wearer. */
export function startMeasuring(): void {
  useBench.getState().startFresh();
  // What it says of the example is no longer so.
  useManner.getState().putAway(['path']);
  focusOn('#station-body input');
}
