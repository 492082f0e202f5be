import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useBench } from '../../src/workbench/store/bench';
import { beside } from '../../src/workbench/table/beside';
import { useTable } from '../../src/workbench/table/table-state';
import { atExample } from './at-example';

beforeEach(() => {
  vi.useFakeTimers();
  useTable.getState().hold(undefined);
  useBench.setState(atExample, true);
  // It follows from when it is first looked at.
  beside.getState();
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

describe('the panels beside the table', () => {
  it('follow at once while nothing is held', () => {
    useBench.getState().slide('leg.spread', 31);
    expect(beside.getState().draft.measures.spread).toBe(31);
  });

  it('follow a held button after some frames, with the newest, and at once when it is let go', () => {
    useTable.getState().hold('spread');
    useBench.getState().slide('leg.spread', 31);
    useBench.getState().slide('leg.spread', 32);
    expect(useBench.getState().draft.measures.spread).toBe(32);
    expect(beside.getState().draft).toBe(atExample.draft);
    vi.runAllTimers();
    expect(beside.getState().draft).toBe(useBench.getState().draft);

    useBench.getState().slide('leg.spread', 33);
    useTable.getState().hold(undefined);
    useBench.getState().leave('leg.spread');
    expect(beside.getState().draft.measures.spread).toBe(33);
  });

  it('make a problem of a check that fails by a fault of ours, and leave the last good drawing', () => {
    const told = vi.spyOn(console, 'error').mockReturnValue();
    const notions = Object.defineProperty({ ...atExample.draft.notions }, 'elasticLength', {
      get() {
        throw new Error('a fault');
      },
    });
    useBench.setState({ draft: { ...atExample.draft, notions } });
    for (const state of [useBench.getState(), beside.getState()]) {
      expect(state.draft).toBe(atExample.draft);
      expect(state.problems.map(({ field }) => field)).toEqual(['project']);
    }
    expect(told).toHaveBeenCalledTimes(1);
  });
});
