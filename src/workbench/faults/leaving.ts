/** What has to be put away before the page is loaded anew. */
let putAway: () => Promise<unknown> = () => Promise.resolve();

/** Nobody waits longer than this for a shelf that doesn't answer, ms. */
const PATIENCE = 2000;

/** Says how everything is kept that isn't kept yet. */
export function beforeLeaving(work: () => Promise<unknown>): void {
  putAway = work;
}

/** Keeps what isn't kept yet; a fault there must not hold anybody up. */
export async function keepEverything(): Promise<void> {
  await Promise.race([putAway().catch(() => undefined), new Promise((go) => setTimeout(go, PATIENCE))]);
}

/** Loads the page anew, with everything kept before. */
export async function reloadPage(): Promise<void> {
  await keepEverything();
  location.reload();
}
