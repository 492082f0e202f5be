import { say } from '../../../words';
import type { StationDrawing } from '../station-drawings';
import { LayDrawing } from './LayDrawing';
import { layBox } from './lay-box';

/** What the table shows at the station Cloth; loaded when somebody goes there. */
export const LAY: StationDrawing = {
  Drawing: LayDrawing,
  box: layBox,
  says: () => say`The cloth as it lies, with its selvedges, and every piece where it is cut`,
};
