import { CHECK_SQUARE } from '../../sheets';
import { type FoundMark, MARK_SHEET, sheetOfMark, viewToPicture } from '../../trace';
import { mm, number, own, printPhrase, say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { useBench } from '../store/bench';
import { dotsAnInch } from './dots';
import { ExactnessNote } from './ExactnessNote';
import { exactnessOfShot, flatsOfWork, rectangleTakenFor, wrongFound } from './flat';
import { Joins } from './Joins';
import { MarkPad } from './MarkPad';
import { changeWork, goTo, nextLandmark, shotAt, usePhoto } from './photo-store';
import { QuantityEntry } from './QuantityEntry';
import { WhichPhotograph } from './WhichPhotograph';
import { hasRectangle, LEAST_DOTS, MOST_DOTS, type Shot, USUAL_DOTS, withShot } from './work';

/** The sides of a rectangle that is photographed, millimetres. */
const LEAST = 100;
const MOST = 5000;
const SHORTEST_CHECK = 50;

const RECTANGLES = [
  { key: 'own', name: say`my own` },
  { key: 'sheet', name: say`one mark sheet` },
  { key: 'scan', name: say`none, it is a scan` },
];
/** Where marks are found none is needed, nor after the first photograph: then places that it shares with another hold it. */
const WITHOUT = [...RECTANGLES, { key: 'none', name: say`none` }];

/** The rectangle on the photograph: its corners, its sides, and a fifth length. */
export function CornerStep() {
  const units = useBench((state) => state.project.units);
  const index = usePhoto(shotAt);
  const work = usePhoto((state) => state.work);
  const shot = work.shots[index];
  if (!shot) return null;
  const set = (part: Partial<Shot>, running?: string) =>
    changeWork(withShot(usePhoto.getState().work, index, part), running);
  const flat = flatsOfWork(work)[index];
  const found = shot.found ?? [];
  const takenFor = rectangleTakenFor(work, index);
  // A photograph of the back alone comes after all of the front.
  const next = index === 0 || nextLandmark(work, 'front') ? 'front' : 'back';
  const several = work.shots.length > 1;
  return (
    <>
      {several && <WhichPhotograph />}
      {found.length > 0 && <Found found={found} wrong={wrongFound(work, index)} />}
      {hasRectangle(shot) && (
        <p>{words`Lay A, B, C and D on the corners of a rectangle whose sides you know, going round.`}</p>
      )}
      <MarkPad />
      <Switch
        label={words`A rectangle by hand`}
        choices={index === 0 && found.length === 0 ? RECTANGLES : WITHOUT}
        chosen={shot.rectangle}
        onPick={(key) => set({ rectangle: key === 'sheet' || key === 'none' || key === 'scan' ? key : 'own' })}
      />
      {shot.rectangle === 'own' ? (
        <>
          <QuantityEntry
            key={`across ${index}`}
            label={words`Width, A to B`}
            value={shot.across}
            lowest={LEAST}
            highest={MOST}
            onValue={(across) => set({ across }, 'across')}
          />
          <QuantityEntry
            key={`along ${index}`}
            label={words`Length, A to D`}
            help={words`A tile, a table, or places that you measured from corner to corner: both diagonals must be alike.`}
            value={shot.along}
            lowest={LEAST}
            highest={MOST}
            onValue={(along) => set({ along }, 'along')}
          />
        </>
      ) : shot.rectangle === 'scan' ? (
        <QuantityEntry
          key={`dots ${index}`}
          label={words`How finely it was scanned`}
          help={words`In dots an inch, as the scanner or the file says. A scanner sees straight down: nothing has to be marked. A block in pieces is joined by places that two scans show.`}
          quantity={dotsAnInch}
          value={shot.dots ?? USUAL_DOTS}
          lowest={LEAST_DOTS}
          highest={MOST_DOTS}
          onValue={(dots) => set({ dots }, 'dots')}
        />
      ) : shot.rectangle === 'none' ? null : (
        <p className="field-help">
          {printPhrase(
            say`The outer corners of the marks on one sheet: A to B ${mm(MARK_SHEET.width)}, A to D ${mm(MARK_SHEET.height)}, E to F ${mm(CHECK_SQUARE)}. A block much larger than the sheet is drawn less truly.`,
            units,
          )}
        </p>
      )}
      {takenFor !== undefined && (
        <p className="field-doubt">
          {words`Its sides are those of the rectangle on photograph ${number(takenFor + 1, 0)}: both are taken to be one. If they lie apart, choose none here and mark four places that both photographs show.`}
        </p>
      )}
      {several && <Joins index={index} />}
      <Check shot={shot} set={set} />
      {flat ? (
        <ExactnessNote exactness={exactnessOfShot(work, index)} where="most" />
      ) : shot.rectangle === 'none' ? (
        <p className="photo-exact" data-verdict="wrong" role="status">
          <strong>{words`Wrong`}</strong>{' '}
          {found.length > 0
            ? words`The marks that were found don’t hold this photograph: are they on their places? Take away one that is not.`
            : words`Nothing holds this photograph yet: mark four places that another one shows, too, far apart and not in a line.`}
        </p>
      ) : (
        <p className="photo-exact" data-verdict="wrong" role="status">
          <strong>{words`Wrong`}</strong>{' '}
          {words`The four corners cross over, or three lie on a line: A, B, C and D go round.`}
        </p>
      )}
      {!several && <WhichPhotograph />}
      <button type="button" className="button button-main" disabled={!flat} onClick={() => goTo(next)}>
        <span className="take-name">{next === 'back' ? words`Mark the back` : words`Mark the front`}</span>
        <span className="take-what">{words`on the flattened picture`}</span>
      </button>
    </>
  );
}

/** How many printed marks were found, and which of them don't agree with the others. */
function Found({ found, wrong }: { readonly found: readonly FoundMark[]; readonly wrong: readonly number[] }) {
  const sheets = new Set(found.map(({ number: mark }) => sheetOfMark(mark))).size;
  return (
    <div>
      <p>
        <strong>{words`Marks found: ${number(found.length, 0)}, sheets: ${number(sheets, 0)}.`}</strong>{' '}
        {sheets > 2
          ? words`Nothing needs to be marked here. Press on a mark to set its corners or to take it away.`
          : words`It gets truer with a sheet at each corner of the block. Press on a mark to set its corners or to take it away.`}
      </p>
      {wrong.length > 0 && (
        <p className="field-doubt">
          {words`Left out, because they don’t lie where the others say: ${own(wrong.join(', '))}. Does that sheet curl, or was it moved?`}
        </p>
      )}
    </div>
  );
}

/** A fifth length that was measured, by which everything else is judged. */
function Check({ shot, set }: { readonly shot: Shot; readonly set: (part: Partial<Shot>, running?: string) => void }) {
  const { check, width, height } = shot;
  if (!check)
    return (
      <button
        type="button"
        className="button"
        onClick={() => {
          const { work } = usePhoto.getState();
          const flat = flatsOfWork(work)[work.shots.indexOf(shot)];
          // Beside where the sheet has it, so that it is laid on by hand and judges the corners.
          const at = (x: number, y: number) => flat && viewToPicture(flat.view, { x, y });
          const [a, b] =
            shot.rectangle === 'sheet'
              ? [at(MARK_SHEET.width / 2, 60), at(MARK_SHEET.width / 2, 60 + CHECK_SQUARE)]
              : [];
          const ends = [a ?? { x: 0.45 * width, y: 0.4 * height }, b ?? { x: 0.45 * width, y: 0.6 * height }] as const;
          const length = shot.rectangle === 'sheet' ? CHECK_SQUARE : 500;
          set({ check: { ends, length } });
          usePhoto.setState({ selected: { kind: 'check', index: 0 } });
        }}
      >
        <span className="take-name">{words`Check by a fifth length`}</span>
        <span className="take-what">{words`E to F: anything on the floor that you measured`}</span>
      </button>
    );
  return (
    <>
      <QuantityEntry
        label={words`Fifth length, E to F`}
        help={words`Lay E and F on its ends. The grainline of the block does well.`}
        value={check.length}
        lowest={SHORTEST_CHECK}
        highest={MOST}
        onValue={(length) => set({ check: { ...check, length } }, 'check')}
      />
      <button type="button" className="plain-link photo-again" onClick={() => set({ check: undefined })}>
        {words`take the fifth length away`}
      </button>
    </>
  );
}
