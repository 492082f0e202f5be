import { checksOf, draft } from '../project';
import { useBench } from './store/bench';
import { draftSteps } from './store/told-steps';

/** So many bring the first frame of a drag from 19 to 11 ms and the next dozen to the later ones' 7; more bring nothing (measured in Chromium). */
const DRAFTS = 25;
/** One more only where an idle moment has so much left, milliseconds. */
const LEAST_LEFT = 8;

/**
 * Drafts a few times while nobody wants anything, and throws it away. A browser compiles what runs often, so the first
 * frames of the first drag would take up to three times as long as the later ones; after this they don't.
 */
export function practise(): void {
  // Not every browser says when it is idle; there the first drag is the practice.
  if (!('requestIdleCallback' in window)) return;
  let left = DRAFTS;
  const whenIdle = (moment: IdleDeadline) => {
    do {
      left -= 1;
      const { project } = useBench.getState();
      const result = draft({ ...project, leg: { ...project.leg, spread: project.leg.spread + left / DRAFTS } });
      if (result.ok) void [checksOf(result.value), draftSteps(result.value)];
    } while (left > 0 && moment.timeRemaining() > LEAST_LEFT);
    if (left > 0) requestIdleCallback(whenIdle);
  };
  requestIdleCallback(whenIdle);
}
