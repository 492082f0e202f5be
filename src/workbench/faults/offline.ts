import { words } from '../../words';
import { useKept } from '../shelf/kept';
import { useBench } from '../store/bench';
import { keepEverything, reloadPage } from './leaving';
import { offerNewer } from './newer';

/**
 * Puts everything that Legwork needs without a network on this computer, by the service worker that the build writes;
 * a newer Legwork waits until it is asked for. Where the browser allows none, Legwork works with a network, as before.
 */
export async function goOffline(): Promise<void> {
  const workers = allowedWorkers();
  const registration = await workers?.register('./sw.js').catch(() => undefined);
  if (!workers || !registration) return;
  void workers.ready.then(() => useKept.setState({ offline: true }));
  offerWaiting(workers, registration);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => offerWaiting(workers, registration));
  });
  // Another tab may let the newer one in: then what this one has not loaded yet is gone.
  let before = workers.controller;
  workers.addEventListener('controllerchange', () => {
    if (before) offer(reloadPage);
    before = workers.controller;
  });
}

/** In an embedded page even asking may be refused. */
function allowedWorkers(): ServiceWorkerContainer | undefined {
  try {
    return (navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker;
  } catch {
    return undefined;
  }
}

/** Offers the newer Legwork that waits; where none was here before, there is nothing to offer. */
function offerWaiting(workers: ServiceWorkerContainer, { waiting }: ServiceWorkerRegistration): void {
  if (!waiting || !workers.controller) return;
  offer(async () => {
    await keepEverything();
    workers.addEventListener('controllerchange', () => location.reload(), { once: true });
    waiting.postMessage({ type: 'SKIP_WAITING' });
  });
}

/** Says that a newer Legwork is here; a part that can't be loaded into this one leads the same way. */
function offer(use: () => Promise<void>): void {
  offerNewer(use);
  useBench.getState().tell({
    tone: 'told',
    text: words`A newer Legwork is here.`,
    remedies: [{ name: words`use it now`, act: () => void use() }],
  });
}
