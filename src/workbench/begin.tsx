import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { speakNamed, spokenLanguage, words } from '../words';
import { FaultPage } from './FaultPage';
import { Guarded } from './faults/Guarded';
import { withLate } from './faults/late';
import { beforeLeaving } from './faults/leaving';
import { noteFault } from './faults/outside';
import { showStartFault } from './faults/start-page';
import { spokenEnglish } from './look/english';
import { practise } from './practice';
import { bringBack, onThisPage } from './shelf/start';
import { useBench } from './store/bench';
import { Workbench } from './Workbench';

/** Brings back what was kept, and shows the workbench; it is shown whatever becomes of what was kept. */
export async function begin(place: HTMLElement): Promise<void> {
  // Who looks whether every word can be said in another language asks for it in the address: `?language=made-up`.
  await speakNamed(new URLSearchParams(location.search).get('language') ?? spokenEnglish());
  document.documentElement.lang = spokenLanguage();
  beforeLeaving(onThisPage().keeper.flush);
  await bringBack().catch((thrown) => noteFault(words`What was kept`, thrown));
  createRoot(place, {
    // A fault even of what tells of faults: then the plainest page of all.
    onUncaughtError: (thrown) => showStartFault(place, thrown),
  }).render(
    <StrictMode>
      <Guarded what={words`The page`} place="page" instead={(told) => <FaultPage {...told} />}>
        <Workbench />
      </Guarded>
    </StrictMode>,
  );
  onceBegun(() => {
    withLate(
      words`The working`,
      () => import('./store/working-told'),
      ({ tellDraftSteps }) => tellDraftSteps(),
    );
    withLate(
      words`The sheets`,
      () => import('./store/sheets-told'),
      ({ tellFreshSheets }) => tellFreshSheets(),
    );
  });
  practise();
  // Where it does not come, the page works with a network, as before.
  if (import.meta.env.PROD) void import('./faults/offline').then(({ goOffline }) => goOffline()).catch(() => undefined);
}

/** Does something as soon as there is a project: the page that asks how to begin has no use for it. */
function onceBegun(act: () => void): void {
  if (useBench.getState().begun) {
    act();
    return;
  }
  const stop = useBench.subscribe(({ begun }) => {
    if (!begun) return;
    stop();
    act();
  });
}
