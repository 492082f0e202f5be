import { say } from '../../../words';
import type { StationDrawing } from '../station-drawings';
import { BodyFigure } from './BodyFigure';
import { figureBox, figureShape } from './figure-shape';
import { tapePlace } from './tape-paths';

/** What the table shows at the station Body: many lines, and not of the drawing that is seen first. */
export const FIGURE: StationDrawing = {
  Drawing: BodyFigure,
  box: ({ body }) => figureBox(figureShape(body)),
  asked: ({ body, project }, path) => tapePlace(path, figureShape(body, project.body.height)),
  says: () => say`A figure from the front, the side and the back with the path of the tape`,
};
