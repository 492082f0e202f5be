import { focusOn } from '../aloud/focus-on';
import { lookAtCheck } from '../finished/look-at-check';
import { useBench } from '../store/bench';
import { useRun } from '../working/run';
import { useSewingShown } from '../working/sewing-shown';
import type { Subject } from './topics';

/** Goes to the place on the screen that a topic tells of. */
export function goToTopic(subject: Subject): void {
  const { goTo } = useBench.getState();
  switch (subject.kind) {
    case 'station':
      goTo(subject.station);
      focusOn('.stop[data-open] .stop-name button');
      break;
    case 'measurement':
      goTo('body');
      focusOn(`#field-body-${subject.key}`);
      break;
    case 'check':
      lookAtCheck(subject.check.id);
      break;
    case 'sewing':
      useSewingShown.getState().show(subject.step.id);
      goTo('sew');
      focusOn('.sew-step h3');
      break;
    case 'working':
      useRun.getState().ask(subject.step.id);
      break;
  }
}
