import { homographyPoint } from '../../plane';
import { REFERENCE } from '../../sheets';
import { mm, printPhrase, say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { useBench } from '../store/bench';
import { ExactnessNote } from './ExactnessNote';
import { exactnessOf, flatOf, likelyPlaces } from './flat';
import { LengthEntry } from './LengthEntry';
import { MarkPad } from './MarkPad';
import { changeWork, goTo, shotAt, usePhoto } from './photo-store';
import { type Shot, withShot } from './work';

/** The sides of a rectangle that is photographed, millimetres. */
const LEAST = 100;
const MOST = 5000;
const SHORTEST_CHECK = 50;

const RECTANGLES = [
  { key: 'own', name: say`four parts` },
  { key: 'sheet', name: say`whole sheet` },
];

/** The rectangle on the photograph: its corners, its sides, and a fifth length. */
export function CornerStep() {
  const units = useBench((state) => state.project.units);
  const index = usePhoto(shotAt);
  const shot = usePhoto((state) => state.work.shots[shotAt(state)]);
  if (!shot) return null;
  const set = (part: Partial<Shot>, running?: string) =>
    changeWork(withShot(usePhoto.getState().work, index, part), running);
  const flat = flatOf(shot);
  const next = index === 1 ? 'back' : 'front';
  return (
    <>
      <p>{words`Lay A, B, C and D on the middles of the four marks, going round.`}</p>
      <MarkPad />
      <Switch
        label={words`The rectangle`}
        choices={RECTANGLES}
        chosen={shot.rectangle}
        onPick={(key) => set({ rectangle: key === 'sheet' ? 'sheet' : 'own' })}
      />
      {shot.rectangle === 'own' ? (
        <>
          <LengthEntry
            key={`across ${index}`}
            label={words`Width, A to B`}
            value={shot.across}
            lowest={LEAST}
            highest={MOST}
            onValue={(across) => set({ across }, 'across')}
          />
          <LengthEntry
            key={`along ${index}`}
            label={words`Length, A to D`}
            help={words`From the middle of one mark to the middle of the next. Any rectangle whose sides you know does.`}
            value={shot.along}
            lowest={LEAST}
            highest={MOST}
            onValue={(along) => set({ along }, 'along')}
          />
        </>
      ) : (
        <p className="field-help">
          {printPhrase(
            say`The sheet as it was printed: A to B ${mm(REFERENCE.width)}, A to D ${mm(REFERENCE.height)}, E to F ${mm(REFERENCE.check)}. A block much larger than the sheet is drawn less truly.`,
            units,
          )}
        </p>
      )}
      <Check shot={shot} set={set} />
      {flat ? (
        <ExactnessNote exactness={exactnessOf(shot, flat, likelyPlaces(shot))} where="most" />
      ) : (
        <p className="photo-exact" data-verdict="wrong" role="status">
          <strong>{words`Wrong`}</strong>{' '}
          {words`The four corners cross over, or three lie on a line: A, B, C and D go round.`}
        </p>
      )}
      <button type="button" className="button button-main" disabled={!flat} onClick={() => goTo(next)}>
        <span className="take-name">{next === 'back' ? words`Mark the back` : words`Mark the front`}</span>
        <span className="take-what">{words`on the flattened picture`}</span>
      </button>
    </>
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
          const flat = flatOf(shot);
          // Beside where the sheet has it, so that it is laid on by hand and judges the corners.
          const at = (x: number, y: number) => (flat && homographyPoint(flat.toPicture, { x, y })) ?? undefined;
          const [a, b] =
            shot.rectangle === 'sheet'
              ? [at(REFERENCE.width / 2, 20), at(REFERENCE.width / 2, REFERENCE.height - 20)]
              : [];
          const ends = [a ?? { x: 0.45 * width, y: 0.4 * height }, b ?? { x: 0.45 * width, y: 0.6 * height }] as const;
          const length = shot.rectangle === 'sheet' ? REFERENCE.check : 500;
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
      <LengthEntry
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
