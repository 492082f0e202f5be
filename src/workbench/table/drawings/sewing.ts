import { pictureShown } from '../../working/sewing-run';
import { useSewingShown } from '../../working/sewing-shown';
import type { StationDrawing } from '../station-drawings';
import { SewingDrawing } from './SewingDrawing';

const picture = (draft: Parameters<StationDrawing['box']>[0]) => pictureShown(draft, useSewingShown.getState().shown);

/** What the table shows at the station Sew; loaded when somebody goes there. */
export const SEWING: StationDrawing = {
  Drawing: SewingDrawing,
  box: (draft) => picture(draft).box,
  says: (draft) => picture(draft).says,
};
