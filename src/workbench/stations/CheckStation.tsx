import { checksOf } from '../../project';
import { words } from '../../words';
import { isUnmeasured } from '../store/asked';
import { useBench } from '../store/bench';
import { AfterWearing } from './AfterWearing';
import { CheckList } from './check/CheckList';
import { LeftRight } from './LeftRight';

/** What was checked, what was corrected after wearing, and what left and right differ by. */
export default function CheckStation() {
  const checks = useBench((state) => checksOf(state.draft));
  const unmeasured = useBench(isUnmeasured);
  if (unmeasured) return <p>{words`The checks stand here once the measurements are in.`}</p>;
  return (
    <>
      <CheckList checks={checks} />
      <AfterWearing />
      <LeftRight />
    </>
  );
}
