import { beforeEach, expect, test } from 'vitest';
import { STATIONS } from '../../src/project';
import { useBench } from '../../src/workbench/store/bench';
import { tellClothSteps } from '../../src/workbench/store/cloth-told';
import { stepsInOrder } from '../../src/workbench/store/working-at';
import { tellDraftSteps } from '../../src/workbench/store/working-told';
import { useRun } from '../../src/workbench/working/run';

tellDraftSteps();
tellClothSteps();

beforeEach(() => useRun.getState().end());

test('the run goes through every station’s working, the cloth’s among them, and opens the station of each step', () => {
  const steps = stepsInOrder(useBench.getState().draft);
  const passed = [...new Set(steps.map((step) => step.station))];
  expect(passed).toContain('cloth');
  expect([...passed]).toEqual(STATIONS.filter((station) => (passed as readonly string[]).includes(station)));
  const first = steps.findIndex((step) => step.station === 'cloth');
  useRun.getState().ask(steps[first - 1]?.id ?? '');
  useRun.getState().move(1);
  expect(useRun.getState().pinned).toBe(steps[first]?.id);
  expect(useBench.getState().station).toBe('cloth');
  for (let i = 0; i < steps.length; i += 1) useRun.getState().move(1);
  expect(useRun.getState().pinned).toBe(steps.at(-1)?.id);
  for (let i = 0; i < steps.length; i += 1) useRun.getState().move(-1);
  expect(useRun.getState().pinned).toBe(steps[0]?.id);
});

test('the run goes on from the open station, and does not leap back to the body where a station has no working', () => {
  const { move } = useRun.getState();
  const at = () => useBench.getState().station;
  useBench.getState().goTo('leg');
  move(1);
  useBench.getState().goTo('edges');
  move(1);
  expect(useBench.getState().step).toBe(
    stepsInOrder(useBench.getState().draft).find(({ station }) => station === 'edges')?.id,
  );
  useBench.getState().goTo('paper');
  move(1);
  expect(at()).toBe('paper');
  move(-1);
  const ofCloth = stepsInOrder(useBench.getState().draft).filter(({ station }) => station === 'cloth');
  expect([at(), useRun.getState().pinned]).toEqual(['cloth', ofCloth.at(-1)?.id]);
  useBench.getState().goTo('sew');
  move(-1);
  expect(at()).toBe('paper');
});
