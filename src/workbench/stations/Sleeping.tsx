import { say } from '../../words';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { Cautions } from './Cautions';

const CHOICES = [
  { key: 'no', name: say`no` },
  { key: 'yes', name: say`yes` },
];

/** Whether it is for sleeping, which the rules for nightwear ask, and the cautions unless the answer is no. */
export function Sleeping() {
  const asleep = useBench((state) => state.project.use.forSleeping);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <SwitchField
        path="use.forSleeping"
        choices={CHOICES}
        chosen={asleep === undefined ? '' : asleep ? 'yes' : 'no'}
        help={say`Changes only the safety notes, not the drawing.`}
        onPick={(key) => choose('use.forSleeping', key === 'yes')}
      />
      <Cautions about={['use.forSleeping']} noted />
    </>
  );
}
