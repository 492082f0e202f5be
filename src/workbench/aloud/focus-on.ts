/**
 * Gives the focus to where the work goes on, once the screen is drawn anew: what had it is about to go.
 *
 * @param places selectors, the likeliest first
 */
export function focusOn(...places: readonly string[]): void {
  requestAnimationFrame(() => tryFocus(places, MOST_FRAMES));
}

/** A station that is loaded late is there after a few frames. */
const MOST_FRAMES = 60;

function tryFocus(places: readonly string[], frames: number): void {
  const place = places.map((one) => document.querySelector<HTMLElement>(one)).find((one) => one !== null);
  if (place) {
    place.focus({ preventScroll: true });
    // No farther than it takes: what was asked for must not lie under the drawing or a keyboard.
    if (place instanceof HTMLInputElement) place.scrollIntoView?.({ block: 'nearest' });
  } else if (frames > 0) requestAnimationFrame(() => tryFocus(places, frames - 1));
}
