/** An on-screen keyboard is at least so high, pixels; what takes less is the browser's own bar. */
const KEYBOARD = 120;

/**
 * Tells the style sheets how much of the page's height is seen: an on-screen keyboard covers the rest, and not every
 * browser makes the page lower for it. The field that is typed into is brought out from under it.
 *
 * @returns what ends it
 */
export function keepSeenHeight(): () => void {
  const seen = window.visualViewport;
  if (!seen) return () => undefined;
  const { style } = document.documentElement;
  const tell = () => {
    // Pinched larger, less is seen, but nothing is covered.
    const height = seen.height * seen.scale;
    style.setProperty('--seen', `${Math.round(height)}px`);
    style.setProperty('--covered', `${Math.max(0, Math.round(window.innerHeight - height))}px`);
    const { activeElement: typedInto } = document;
    if (typedInto instanceof HTMLInputElement && height < screen.height - KEYBOARD)
      typedInto.scrollIntoView?.({ block: 'nearest' });
  };
  tell();
  seen.addEventListener('resize', tell);
  return () => seen.removeEventListener('resize', tell);
}
