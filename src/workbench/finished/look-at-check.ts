import { focusOn } from '../aloud/focus-on';
import { useBench } from '../store/bench';
import { lightPlace } from '../view/lit-place';

/** To a check at its station, which is loaded late and then finds where on the drawing it is. */
export function lookAtCheck(id: string): void {
  useBench.getState().goTo('check');
  lightPlace({ name: id, curves: [] });
  focusOn(`#check-${id} .check-name`);
}
