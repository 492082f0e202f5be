import { sewingOf } from '../../project';
import { number, printPhrase, words } from '../../words';
import { useBench } from '../store/bench';
import { stepShown } from '../working/sewing-run';
import { useSewingShown } from '../working/sewing-shown';
import { useShow } from './show-state';

/** The step of the sewing that lies on the table, for a class: its number, its name and the task that is told. */
export default function ShowSewing() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const step = stepShown(
    draft,
    useSewingShown((state) => state.shown),
  );
  const steps = sewingOf(draft);
  const task = useShow((state) => step.tasks[Math.min(state.task, step.tasks.length - 1)]);
  return (
    <>
      <span className="show-sentence">
        {words`${number(steps.indexOf(step) + 1, 0)} of ${number(steps.length, 0)}: ${step.title}.`}
      </span>
      {task && <span className="show-formula">{printPhrase(task, units)}</span>}
    </>
  );
}
