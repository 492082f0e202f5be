import type { Draft } from '../../project';
import type { SheetPlan } from '../../sheets';
import { useBench } from './bench';

type SheetsOf = (draft: Draft) => SheetPlan | undefined;

let told: SheetsOf = () => undefined;

/** A draft's sheets, laid as if nothing had been printed before; undefined until the search for the fewest has come, right after the page. */
export const toldSheets: SheetsOf = (draft) => told(draft);

/** Says how they are laid, once that is there, and lets everybody look again. */
export function tellSheets(sheets: SheetsOf): void {
  if (told === sheets) return;
  told = sheets;
  useBench.setState({});
}
