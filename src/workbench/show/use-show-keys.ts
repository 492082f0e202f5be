import { useEffect } from 'react';
import { STATIONS } from '../../project';
import { useBench } from '../store/bench';
import { useRun } from '../working/run';
import { choose, leave, move, showWhole, turnBlank, turnJoin, turnPlaying, turnTheme, turnUnits } from './show-moves';
import { useShow } from './show-state';

/** By the name that the browser gives a key. A clicker sends Page Down and Page Up, and B or a full stop for a dark screen. */
const ACTIONS: Readonly<Record<string, () => void>> = {
  arrowright: () => move(1),
  arrowleft: () => move(-1),
  pagedown: () => move(1),
  pageup: () => move(-1),
  ' ': turnPlaying,
  b: turnBlank,
  '.': turnBlank,
  w: showWhole,
  c: turnTheme,
  u: turnUnits,
  j: turnJoin,
  s: choose,
  escape: leave,
};

function onKeyDown(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
  const { blank, choosing } = useShow.getState();
  if (choosing) return;
  if (blank) {
    event.preventDefault();
    turnBlank();
    return;
  }
  // What has the focus and answers to the key keeps it; a clicker's keys turn the pages wherever the focus is.
  const paging = event.key === 'PageDown' || event.key === 'PageUp';
  if (event.target instanceof HTMLInputElement && !paging) return;
  if (event.key === ' ' && event.target instanceof HTMLButtonElement) return;
  const station = STATIONS[Number(event.key) - 1];
  const action = ACTIONS[event.key.toLowerCase()];
  if (station) {
    useRun.getState().end();
    useBench.getState().goTo(station);
  } else if (action) action();
  else return;
  event.preventDefault();
}

/** Show mode is led by keys alone, if somebody likes. */
export function useShowKeys(): void {
  useEffect(() => {
    // Zoom and fit are the table's own keys, so it has the focus.
    document.querySelector<HTMLElement>('.table-window')?.focus();
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
}
