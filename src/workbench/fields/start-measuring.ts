import { focusOn } from '../aloud/focus-on';
import { useManner } from '../look/manner';
import { useBench } from '../store/bench';
import { fieldId } from './FieldRow';

/** A fresh project, with the tape at the first of its measurements. */
export function startMeasuring(): void {
  useBench.getState().startFresh();
  // What it says of the example is no longer so.
  useManner.getState().putAway(['path']);
  focusOn(`#${fieldId('body.waistGirth')}`);
}
