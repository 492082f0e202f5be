import { words } from '../../words';
import { onThisPage } from '../shelf/start';
import { isClassFile } from './class-file';
import { lookThroughTable, useClass } from './class-table';

let started = false;

/** Brings back the table that was filled in before the page was closed, and keeps every change of it from now on. */
export async function keepClassTable(): Promise<void> {
  if (started) return;
  started = true;
  const { shelf } = onThisPage();
  const kept = await shelf.classTable().catch(() => undefined);
  if (isClassFile(kept)) {
    if (!useClass.getState().table) {
      useClass.setState({ table: kept });
      lookThroughTable();
    }
  } else if (kept !== undefined) {
    // The next table takes its place.
    await shelf.setAside('class', words`the table of a class`, kept).catch(() => undefined);
  }
  const keep = () => void shelf.putClassTable(useClass.getState().table).catch(() => undefined);
  if (useClass.getState().table && !kept) keep();
  useClass.subscribe(({ table }, before) => {
    // A browser that keeps nothing has said so already.
    if (table !== before.table) keep();
  });
}
