import { centreStands } from '../../leg';
import { inTurn, printPhrase, say, words } from '../../words';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';

const HOW = [
  { key: 'auto', name: say`as needed` },
  { key: 'hand', name: say`by hand` },
];

/** How upright the centre lines stand: found by the drafting, or slid by hand; said as what a ruler would measure. */
export function StraightenField() {
  const units = useBench((state) => state.project.units);
  const byHand = useBench((state) => state.project.leg.straighten !== 'auto');
  const leg = useBench((state) => state.draft.leg);
  const { choose, slide, leave } = useBench.getState();
  const stand = say`Centre back ${centreStands('back', leg.back)}, centre front ${centreStands('front', leg.front)}.`;
  const id = fieldId('leg.straighten.slide');
  return (
    <>
      <SwitchField
        path="leg.straighten"
        choices={HOW}
        chosen={byHand ? 'hand' : 'auto'}
        help={byHand ? stand : inTurn([stand, say`Just upright enough to pull on.`])}
        onPick={(key) => choose('leg.straighten', key === 'auto' ? 'auto' : leg.straighten)}
      />
      {byHand && (
        <div className="field field-wide">
          <label className="unseen" htmlFor={id}>
            {words`From the block’s lean to upright`}
          </label>
          <input
            id={id}
            type="range"
            min="0"
            max="1"
            step="0.02"
            value={leg.straighten}
            aria-valuetext={printPhrase(stand, units)}
            onChange={(event) => slide('leg.straighten', Number(event.target.value))}
            onBlur={() => leave('leg.straighten')}
          />
          <span className="slide-ends" aria-hidden="true">
            <span>{words`as on the block`}</span>
            <span>{words`upright`}</span>
          </span>
        </div>
      )}
    </>
  );
}
