/** Why a part did not come: a newer Legwork has taken its place, or nobody answers, or neither is so. */
export type Why = 'newer' | 'away' | 'unknown';

/**
 * Asks where the page came from whether it is still this Legwork that lies there: the page names its script by what is
 * in it.
 */
export async function whyNotLoaded(): Promise<Why> {
  const own = document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.src;
  if (own === undefined) return 'unknown';
  try {
    const answer = await fetch(location.pathname, { cache: 'no-store' });
    if (!answer.ok) return 'away';
    const page = await answer.text();
    return page.includes(own.slice(own.lastIndexOf('/') + 1)) ? 'unknown' : 'newer';
  } catch {
    return 'away';
  }
}

/** What uses the newer Legwork; a service worker that waits has to be let in first. */
let use: (() => Promise<void>) | undefined;

/** Says how the newer Legwork that waits is used. */
export function offerNewer(way: () => Promise<void>): void {
  use = way;
}

/** The way to the newer Legwork that waits, if one does. */
export const waitingNewer = (): (() => Promise<void>) | undefined => use;
