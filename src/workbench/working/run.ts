import { create } from 'zustand';
import type { WorkingStep } from '../../plane';
import { STATIONS, type Station } from '../../project';
import { useBench } from '../store/bench';
import { stepOf, stepsInOrder } from '../store/working-at';
import { stepsToGo } from './left-out';

/** Where “how?” was asked. */
interface Asked {
  readonly station: Station;
  readonly field: string | undefined;
  readonly workingShown: boolean;
}

/** The teaching run: the steps of the working in the order of the work, one at a time. */
export interface Run {
  /** Whether the drawing shows only what the steps have drawn so far. */
  readonly going: boolean;
  readonly playing: boolean;
  /** The step that stays lit when nothing is pointed at. */
  readonly pinned: string | undefined;
  readonly move: (by: number) => void;
  readonly play: (playing: boolean) => void;
  readonly end: () => void;
  /** From where “how?” was asked, to come back to; undefined where nobody asked, or came back. */
  readonly asked: Asked | undefined;
  /** Opens the working at a step, lit: the answer to “how?”, asked beside a field or anywhere at the open station. */
  readonly ask: (step: string, field?: string) => void;
  /** Back to where it was asked, with the working as it was then. */
  readonly comeBack: () => void;
  readonly point: (step: string | undefined) => void;
}

function light(step: WorkingStep): void {
  const { station, goTo } = useBench.getState();
  if (station !== step.station) goTo(step.station as Station);
  useBench.getState().light(step.id);
}

/**
 * Where a move leads: on from the step that is lit at the open station, or to the first one there. At a station without
 * working it is the nearest one the way one goes; undefined where there is none that way.
 */
function nextStep(
  steps: readonly WorkingStep[],
  station: Station,
  lit: string | undefined,
  by: number,
): WorkingStep | undefined {
  const here = steps.findIndex((one) => one.id === lit && one.station === station);
  if (here >= 0) return steps[Math.min(steps.length - 1, Math.max(0, here + by))];
  const first = steps.find((one) => one.station === station);
  if (first) return first;
  const place = (one: WorkingStep) => STATIONS.indexOf(one.station as Station);
  const open = STATIONS.indexOf(station);
  return by > 0 ? steps.find((one) => place(one) > open) : steps.findLast((one) => place(one) < open);
}

export const useRun = create<Run>()((set, get) => ({
  going: false,
  playing: false,
  pinned: undefined,
  asked: undefined,
  move(by) {
    const { draft, step, station } = useBench.getState();
    const steps = stepsToGo(stepsInOrder(draft));
    const next = nextStep(steps, station, get().pinned ?? step, by);
    if (!next) return set({ playing: false });
    light(next);
    set({ going: true, pinned: next.id, playing: get().playing && next !== steps.at(-1) });
  },
  play(playing) {
    set({ playing });
    if (playing && !get().going) get().move(1);
  },
  end() {
    set({ going: false, playing: false, pinned: undefined });
    useBench.getState().light(undefined);
  },
  ask(id, field) {
    const { draft, station, workingShown } = useBench.getState();
    const step = stepOf(draft, id);
    if (!step) return;
    useBench.getState().showWorking(true);
    light(step);
    set({ going: false, playing: false, pinned: id, asked: { station, field, workingShown } });
  },
  comeBack() {
    const { asked } = get();
    if (!asked) return;
    get().end();
    set({ asked: undefined });
    useBench.getState().showWorking(asked.workingShown);
    useBench.getState().goTo(asked.station);
  },
  point: (step) => useBench.getState().light(step ?? get().pinned),
}));
