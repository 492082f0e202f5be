import { useBench } from '../store/bench';
import { useKept } from './kept';
import { keeper } from './start';

/**
 * Puts everything that Legwork needs without a network on this computer, by the service worker that the build writes;
 * a newer Legwork waits until it is asked for.
 */
export async function goOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const { serviceWorker } = navigator;
  const registration = await serviceWorker.register('./sw.js').catch(() => undefined);
  // Refused by the browser, or by a test: then it works with a network, as before.
  if (!registration) return;
  void serviceWorker.ready.then(() => useKept.setState({ offline: true }));
  offerWaiting(registration);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => offerWaiting(registration));
  });
}

/** Offers the newer Legwork that waits; where none was here before, there is nothing to offer. */
function offerWaiting({ waiting }: ServiceWorkerRegistration): void {
  if (!waiting || !navigator.serviceWorker.controller) return;
  const use = async () => {
    await keeper.flush();
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    waiting.postMessage({ type: 'SKIP_WAITING' });
  };
  useBench.getState().tell({
    tone: 'told',
    text: 'A newer Legwork is here.',
    remedies: [{ name: 'use it now', act: () => void use() }],
  });
}
