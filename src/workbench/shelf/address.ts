import { focusOn } from '../aloud/focus-on';
import { useBench } from '../store/bench';
import { stationFromHash, stationHash } from './link';

/** The page's address without anything behind the #. */
const pageAddress = (): string => location.pathname + location.search;

/** Takes whatever stands behind the # out of the address, but for a station; the way back stays as it was. */
export function clearAddress(): void {
  const station = stationFromHash(location.hash);
  history.replaceState(null, '', pageAddress() + (station ? stationHash(station) : ''));
}

/** Opens the station that the address names, if it names one. */
export function goToAddress(): void {
  const station = stationFromHash(location.hash);
  const { station: open, goTo } = useBench.getState();
  if (station && station !== open) goTo(station);
}

/**
 * Gives each station an address as one comes to it, so that the browser's Back goes to the last one.
 *
 * @returns what ends it
 */
export function keepAddress(): () => void {
  // The page was opened without a name behind the #: that address is the station where it began.
  const first = useBench.getState().station;
  const addressed = () => stationFromHash(location.hash) ?? first;
  const unsubscribe = useBench.subscribe(({ station }, before) => {
    if (station !== before.station && station !== addressed())
      history.pushState(null, '', pageAddress() + stationHash(station));
  });
  const onPop = () => {
    const { station, goTo } = useBench.getState();
    if (addressed() === station) return;
    goTo(addressed());
    // What had the focus went with its station.
    focusOn('.stop[data-open] .stop-name button');
  };
  window.addEventListener('popstate', onPop);
  return () => {
    unsubscribe();
    window.removeEventListener('popstate', onPop);
  };
}
