import { fieldName } from '../../project';
import { words } from '../../words';
import { useBench } from '../store/bench';
import { draftSteps } from '../store/told-steps';
import { fieldStep } from './how';
import { useRun } from './run';

/** “how?” beside a field: opens the working at the step in which its number is used. */
export function How({ path }: { readonly path: string }) {
  const step = useBench((state) => fieldStep(draftSteps(state.draft), path));
  if (step === undefined) return null;
  return (
    <button
      type="button"
      className="how"
      aria-label={words`${fieldName(path)}: how?`}
      onClick={() => useRun.getState().ask(step, path)}
    >
      {words`how?`}
    </button>
  );
}
