import { words } from '../../words';
import { onThisPage } from '../shelf/start';
import { isWork } from './is-work';
import { usePhoto } from './photo-store';
import { NO_WORK } from './work';

let started = false;

/** Brings back what was marked before the page was closed, and keeps every change from now on. The pictures are not kept. */
export async function keepMarks(): Promise<void> {
  if (started) return;
  started = true;
  const { shelf } = onThisPage();
  const kept = await shelf.marks().catch(() => undefined);
  if (isWork(kept)) {
    if (usePhoto.getState().work === NO_WORK) usePhoto.setState({ work: kept });
  } else if (kept !== undefined) {
    // The next mark takes its place.
    await shelf.setAside('marks', words`what was marked on photographs`, kept).catch(() => undefined);
  }
  usePhoto.subscribe(({ work }, before) => {
    // A browser that keeps nothing has said so already.
    if (work !== before.work) void shelf.putMarks(work).catch(() => undefined);
  });
}
