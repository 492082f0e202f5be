import { type DragEvent, useRef } from 'react';
import { number, own, words } from '../../words';
import { FileInput } from '../fields/FileInput';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { take } from '../take/taking';
import { FloorScene } from './FloorScene';
import { shotAt, startAgain, takePicture, usePhoto } from './photo-store';

/** How to photograph, the sheet to print, and the photograph. */
export function ChooseStep() {
  const file = useRef<HTMLInputElement>(null);
  const stale = useBench(isStale);
  const told = usePhoto((state) => state.told);
  const name = usePhoto((state) => state.work.shots[shotAt(state)]?.name);
  const pictured = usePhoto((state) => state.pictures[shotAt(state)] !== undefined);
  const index = usePhoto(shotAt);
  const opening = usePhoto((state) => state.opening);
  const any = usePhoto((state) => state.work.shots.length > 0);

  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    event.stopPropagation();
    const [dropped] = event.dataTransfer.files;
    if (dropped) void takePicture(dropped);
  };

  return (
    <div className="photo-use">
      <div className="photo-choose">
        <ol className="photo-how">
          <li>{words`Print the mark sheets at 100 %: four do for one photograph.`}</li>
          <li>{words`Lay the paper block flat on the floor, and a sheet at each of its corners, any way round. Nothing between them has to be measured.`}</li>
          <li>{words`Photograph it from as straight above as you can, with all the marks on the picture.`}</li>
          <li>{words`The marks are found by themselves; you mark eleven places of each block, and its edges follow the drawn lines.`}</li>
        </ol>
        <p className="field-help">
          {words`Front and back may lie on one photograph, or each on up to six that overlap. Without the sheets, a tile floor or any other rectangle whose sides you know does as well; a scan, whole or in pieces, needs neither.`}
        </p>
        <div className="take">
          <button type="button" className="button" disabled={stale} onClick={() => take('reference')}>
            <span className="take-name">{words`Save the mark sheets`}</span>
            <span className="take-what">{words`PDF, numbered marks and how to lay them, A4 or Letter`}</span>
          </button>
          {/* biome-ignore lint/a11y/noStaticElementInteractions: a photograph may be dropped; the button does the same */}
          <div className="photo-drop" onDragOver={(event) => event.preventDefault()} onDrop={onDrop}>
            <button type="button" className="button button-main" onClick={() => file.current?.click()}>
              <span className="take-name">
                {index > 0 ? words`Choose photograph ${number(index + 1, 0)}` : words`Choose a photograph`}
              </span>
              <span className="take-what">{words`or drop it here; it goes nowhere else`}</span>
            </button>
          </div>
          <FileInput
            opener={file}
            label={words`Photograph of the blocks`}
            accept="image/*"
            onFiles={([chosen]) => chosen && void takePicture(chosen)}
          />
        </div>
        {name !== undefined && !pictured && (
          <p className="field-doubt">
            <strong>{words`Marks are kept.`}</strong> {words`Choose “${own(name)}” again to go on where you left it.`}
          </p>
        )}
        <p className={opening ? 'field-help' : 'field-problem'} role="status">
          {opening ? words`Opening the photograph and looking for marks …` : told}
        </p>
        {any && (
          <button type="button" className="plain-link photo-again" onClick={startAgain}>
            {words`forget all marks and begin again`}
          </button>
        )}
      </div>
      <FloorScene />
    </div>
  );
}
