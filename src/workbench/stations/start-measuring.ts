import { focusOn } from '../aloud/focus-on';
import { fieldId } from '../fields/FieldRow';
import { useBench } from '../store/bench';

/** A fresh project, with the tape at the first of its measurements. */
export function startMeasuring(): void {
  useBench.getState().startFresh();
  focusOn(`#${fieldId('body.waistGirth')}`);
}
