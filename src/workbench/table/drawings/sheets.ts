import { placedDrawings } from '../../../drawing';
import { boxRound, curvesBounds } from '../../../plane';
import { sheetsOf } from '../../../project';
import { say } from '../../../words';
import type { StationDrawing } from '../station-drawings';
import { SheetsDrawing } from './SheetsDrawing';

/** What the table shows at the station Paper; loaded when somebody goes there. */
export const SHEETS: StationDrawing = {
  Drawing: SheetsDrawing,
  box(draft) {
    const { printed } = draft;
    const sheets = sheetsOf(draft);
    const drawn = placedDrawings(printed, sheets.places).flatMap(({ paths }) => paths.flatMap((path) => path.curves));
    return boxRound([curvesBounds(drawn), ...sheets.sheets.map((sheet) => sheet.window)]);
  },
  says: () => say`The sheets of paper over the finished leg`,
};
