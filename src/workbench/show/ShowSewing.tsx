import { sewingOf } from '../../project';
import { isSaid, number, printPhrase, words } from '../../words';
import { useBench } from '../store/bench';
import { stepShown } from '../working/sewing-run';
import { useSewingShown } from '../working/sewing-shown';
import { useShow } from './show-state';

/** The step of the sewing that lies on the table, for a class: its number, its name and the task that is told; what to take care of before the first. */
export default function ShowSewing() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const step = stepShown(
    draft,
    useSewingShown((state) => state.shown),
  );
  const steps = sewingOf(draft);
  const at = useShow((state) => Math.min(state.task, step.tasks.length - 1));
  const task = step.tasks[at];
  return (
    <>
      <span className="show-sentence">
        {words`${number(steps.indexOf(step) + 1, 0)} of ${number(steps.length, 0)}: ${step.title}.`}
      </span>
      {at === 0 && isSaid(step.care) && (
        <span className="show-formula">
          <strong>{words`Take care:`}</strong> {printPhrase(step.care, units)}
        </span>
      )}
      {task && <span className="show-formula">{printPhrase(task, units)}</span>}
    </>
  );
}
