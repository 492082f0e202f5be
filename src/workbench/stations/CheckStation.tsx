import { checksOf } from '../../project';
import { useBench } from '../store/bench';
import { AfterWearing } from './AfterWearing';
import { CheckList } from './check/CheckList';
import { LeftRight } from './LeftRight';

/** What was checked, what was corrected after wearing, and what left and right differ by. */
export default function CheckStation() {
  const checks = useBench((state) => checksOf(state.draft));
  return (
    <>
      <CheckList checks={checks} />
      <AfterWearing />
      <LeftRight />
    </>
  );
}
