import { createContext, useContext } from 'react';
import { createStore, type StoreApi, useStore } from 'zustand';
import { type Habits, habitsOf, lastPrintTakenBack, METRIC, valueAt } from '../../project';
import {
  chosen,
  estimated,
  opened,
  redrawn,
  remedied,
  startedFresh,
  takenFromBlocks,
  travelled,
  typed,
  withBlocks,
  without,
} from './changes';
import { exampleShown } from './example-shown';
import { stepBack, stepForward } from './history';
import { TYPED_LIMITS } from './limits';
import { pageStore } from './page-store';
import { stepped } from './quantity';
import type { Bench } from './state';

/** A whole workbench: an immutable project, what was typed, and everything that is derived from them. */
export const createBench = (habits: Habits = METRIC) =>
  createStore<Bench>()((set, get) => ({
    habits,
    ...exampleShown(habits),
    begun: false,
    field: undefined,
    workingShown: false,
    folded: true,
    notice: undefined,

    type: (field, text) => set((state) => typed(state, field, text)),
    stepField(field, count, from) {
      const { units } = get().project;
      const base = valueAt(get().project, field.path) ?? from;
      if (typeof base !== 'number') return;
      const next = stepped(base, field.quantity.step(units), count);
      const { lowest, highest } = TYPED_LIMITS[field.path] ?? { lowest: 0, highest: Number.POSITIVE_INFINITY };
      const kept = Math.min(highest, Math.max(lowest, next));
      get().type(field, field.quantity.print(kept, units));
    },
    enter: (path) => set({ field: path }),
    leave: (path) =>
      set((state) => ({
        running: state.running === path ? undefined : state.running,
        entries: state.entries[path]?.problem ? state.entries : without(state.entries, path),
      })),
    choose: (path, value) => set((state) => ({ ...chosen(state, path, value), running: undefined })),
    slide: (path, value) => set((state) => chosen(state, path, value)),
    estimate: (keys) => set((state) => estimated(state, keys)),
    takeFromBlocks: (key, taken) => set((state) => takenFromBlocks(state, key, taken)),
    remedy: (check) => set((state) => remedied(state, check)),
    // Only how numbers are printed: nothing to undo, and the draft's numbers stay the same.
    showUnits: (units) => set((state) => redrawn({ ...state.project, units })),
    notePrint: (id, lastPrint) => set((state) => (state.id === id ? redrawn({ ...state.project, lastPrint }) : {})),
    takeBackPrint: () => set((state) => redrawn(lastPrintTakenBack(state.project))),
    undo: () => set((state) => travelled(state, stepBack)),
    redo: () => set((state) => travelled(state, stepForward)),
    goTo: (station) => set({ station, step: undefined, running: undefined, field: undefined }),
    light: (step) => set({ step }),
    showWorking: (workingShown) => set({ workingShown, step: undefined }),
    fold: (folded) => set({ folded }),
    open: (text, fileName) => set((state) => opened(state, text, fileName)),
    startFresh: () => set(startedFresh),
    takeBlocks: (blocks, told, anew) => set((state) => withBlocks(state, blocks, told, anew)),
    tell: (notice) => set({ notice }),
  }));

const bench = pageStore(() => createBench(habitsOf(globalThis.navigator?.language ?? '')));

/** Which workbench a part of the screen shows: the one that is worked on, or where it says so one that follows it. */
export const BenchShown = createContext<StoreApi<Bench>>(bench);

/** What a component shows of the workbench, and, as `useBench.getState` and so on, the workbench that is worked on. */
export const useBench = Object.assign(
  <Shown>(selector: (state: Bench) => Shown): Shown => useStore(useContext(BenchShown), selector),
  bench,
);
