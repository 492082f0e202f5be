import { useShallow } from 'zustand/react/shallow';
import {
  type BodyGiven,
  type BodyInput,
  bodyRemarks,
  crotchLengthExpected,
  type Estimate,
  estimateAlone,
  type MeasurementKey,
  measuredOf,
  measurements,
  type Remark,
} from '../../../body';
import { isWaiting, problemAt } from '../../store/asked';
import { useBench } from '../../store/bench';
import type { Bench } from '../../store/state';

/** The measurements whose fields wait to be filled, or hold what can't be drawn. */
export const measuresAsking = (state: Bench): readonly MeasurementKey[] =>
  measurements.map(({ key }) => key).filter((key) => problemAt(state, `body.${key}`));

/** What is worth a second look; nothing is held against a number that nobody has given yet, or that is refused anyway. */
export const remarksOn = (body: BodyGiven, asking: readonly MeasurementKey[]): readonly Remark[] =>
  bodyRemarks(body).filter(({ keys }) => !keys.some((key) => asking.includes(key)));

/** Trousers and blocks of somebody’s own tell more of their wearer than all that is known of other people. */
const TELLING: readonly Estimate['basis'][] = ['trousers', 'block'];

/** The measurements that still wait to be taken: what such a field is drawn by in the meantime is nobody's. */
const measuresWaiting = (state: Bench): readonly MeasurementKey[] =>
  measurements.map(({ key }) => key).filter((key) => isWaiting(state, `body.${key}`));

/**
 * What measurements that were not taken come to on a body like this one, as far as that can be told yet: information only
 * at the crotch length, drawn by for the others.
 */
export function useEstimates(): (key: MeasurementKey) => Estimate | undefined {
  const body = useBench((state) => state.project.body);
  const drawn = useBench((state) => state.draft.body.estimates);
  const waiting = useBench(useShallow(measuresWaiting));
  const entries = Object.entries(measuredOf(body));
  const measured: Partial<BodyInput> = Object.fromEntries(
    entries.filter(([key]) => !waiting.some((one) => one === key)),
  );
  return (key) => {
    if (key === 'crotchLength') return crotchLengthExpected(measured);
    const told = drawn.find((one) => one.key === key && TELLING.some((basis) => basis === one.basis));
    if (told?.basis === 'block') return told;
    if (key === 'bodyRise' || key === 'insideLeg') return told ?? estimateAlone(key, measured);
    if (waiting.length === 0) return drawn.find((one) => one.key === key);
    return key === 'hipDepth' ? estimateAlone(key, measured) : undefined;
  };
}
