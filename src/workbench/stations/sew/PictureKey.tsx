import { keyPicture } from '../../../sewing';
import { printPhrase, words } from '../../../words';
import { useBench } from '../../store/bench';
import { StepDrawing } from '../../table/drawings/SewingDrawing';
import { FramedDrawing } from '../../table/FramedDrawing';

const KEY = keyPicture();

/** What the signs in the pictures mean, for who asks. */
export function PictureKey() {
  const units = useBench((state) => state.project.units);
  return (
    <details className="sew-list">
      <summary>{words`Signs in the pictures`}</summary>
      <FramedDrawing station="sew" box={KEY.box} says={printPhrase(KEY.says, units)}>
        <StepDrawing picture={KEY} />
      </FramedDrawing>
    </details>
  );
}
