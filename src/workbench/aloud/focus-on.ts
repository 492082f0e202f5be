/**
 * Gives the focus to where the work goes on, once the screen is drawn anew: what had it is about to go.
 *
 * @param places selectors, the likeliest first
 */
export function focusOn(...places: readonly string[]): void {
  requestAnimationFrame(() => {
    const place = places.map((one) => document.querySelector<HTMLElement>(one)).find((one) => one !== null);
    place?.focus({ preventScroll: true });
  });
}
