import { said, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { withLate } from '../faults/late';
import { useManner } from '../look/manner';
import { useBench } from '../store/bench';
import { stepsInOrder } from '../store/working-at';
import { JOIN_END, useTable } from '../table/table-state';
import { stepsToGo } from '../working/left-out';
import { useRun } from '../working/run';
import { useSewingShown } from '../working/sewing-shown';
import { useShow } from './show-state';

export function leave(): void {
  useRun.getState().end();
  useTable.getState().showJoin(undefined);
  useShow.setState({ blank: false, choosing: false });
  useManner.getState().show(false);
  focusOn('.bar-show');
}

/** On or back, as a clicker asks: from stop to stop of the join while it is shown, through the working, and on through the sewing. */
export function move(by: 1 | -1): void {
  if (moveJoin(by)) return;
  if (useBench.getState().station === 'sew') {
    withSewing((run) => moveSewing(run, by));
    return;
  }
  const { draft, step } = useBench.getState();
  const last = stepsToGo(stepsInOrder(draft)).at(-1);
  if (by > 0 && last?.id === step) goToSewing();
  else useRun.getState().move(by);
}

const SEWING = say`The sewing`;
type SewingRun = typeof import('../working/sewing-run');
const withSewing = (work: (run: SewingRun) => void): void =>
  withLate(said(SEWING), () => import('../working/sewing-run'), work);

/** From task to task of a step of the sewing, and on to the next step. */
function moveSewing(run: SewingRun, by: 1 | -1): void {
  const tasks = () => run.stepShown(useBench.getState().draft, useSewingShown.getState().shown).tasks.length;
  const task = Math.min(useShow.getState().task, tasks() - 1) + by;
  if (task >= 0 && task < tasks()) useShow.setState({ task });
  else if (run.moveSewing(by)) useShow.setState({ task: by > 0 ? 0 : tasks() - 1 });
  else if (by < 0) useRun.getState().move(by);
}

function goToSewing(): void {
  useRun.getState().end();
  useBench.getState().goTo('sew');
}

/** Whether the join was shown, and moved: beyond either end it is over. */
function moveJoin(by: 1 | -1): boolean {
  const { join, showJoin } = useTable.getState();
  if (join === undefined || useBench.getState().station !== 'leg') return false;
  const stop = by > 0 ? Math.floor(join + NEAR) + 1 : Math.ceil(join - NEAR) - 1;
  showJoin(stop < 0 || stop > JOIN_END ? undefined : stop);
  return true;
}

/** So near to a stop of the join counts as there. */
const NEAR = 1e-6;

/** Shows the join, or puts it away. */
export function turnJoin(): void {
  if (useBench.getState().station !== 'leg') return;
  const { join, playJoin, showJoin } = useTable.getState();
  if (join === undefined) playJoin(true);
  else {
    showJoin(undefined);
    focusOn('.table-window');
  }
}

export const turnPlaying = (): void => useRun.getState().play(!useRun.getState().playing);
export const turnBlank = (): void => useShow.setState(({ blank }) => ({ blank: !blank }));
export const choose = (): void => useShow.setState({ choosing: true });
export const showWhole = (): void => useRun.getState().end();
export const turnTheme = (): void =>
  useManner.getState().wear(useManner.getState().theme === 'chalkboard' ? 'daylight' : 'chalkboard');
export const turnUnits = (): void =>
  useBench.getState().showUnits(useBench.getState().project.units === 'cm' ? 'inch' : 'cm');

/** What is said where the screen is dark. */
export const darkWords = (): string => words`The screen is dark. Any key or press brings the picture back.`;
