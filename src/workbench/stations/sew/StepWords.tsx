import { useRef } from 'react';
import { sewingOf } from '../../../project';
import { isSaid, number, printPhrase, said, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { moveSewing, stepShown } from '../../working/sewing-run';
import { useSewingShown } from '../../working/sewing-shown';

/** The step that is shown, in words, with the way to the next and back. */
export function StepWords() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const shown = useSewingShown((state) => state.shown);
  const title = useRef<HTMLHeadingElement>(null);
  const step = stepShown(draft, shown);
  const steps = sewingOf(draft);
  const place = steps.indexOf(step) + 1;
  // A button that is used up can't keep the focus; the step's title takes it, and is read out.
  const move = (by: 1 | -1) => {
    moveSewing(by);
    title.current?.focus({ preventScroll: true });
  };
  return (
    <section className="sew-step" aria-label={words`Step of the sewing`}>
      <p className="sew-run">
        <button type="button" className="tool" disabled={place === 1} onClick={() => move(-1)}>
          {words`Back`}
        </button>
        <button type="button" className="tool" disabled={place === steps.length} onClick={() => move(1)}>
          {words`Next`}
        </button>
        <span className="quiet" role="status">
          {words`Step ${number(place, 0)} of ${number(steps.length, 0)}`}
        </span>
      </p>
      <h3 ref={title} tabIndex={-1}>
        {said(step.title)}
      </h3>
      {isSaid(step.care) && (
        <p className="sew-care">
          <strong>{words`Take care:`}</strong> {printPhrase(step.care, units)}
        </p>
      )}
      <ol>
        {step.tasks.map((task) => (
          <li key={said(task)}>{printPhrase(task, units)}</li>
        ))}
      </ol>
      {isSaid(step.why) && <p className="quiet">{printPhrase(say`Why: ${step.why}`, units)}</p>}
      {step.settings.length > 0 && (
        <dl>
          {step.settings.map(({ name, value }) => (
            <div key={name.template}>
              <dt>{said(name)}</dt>
              <dd>{said(value)}</dd>
            </div>
          ))}
        </dl>
      )}
      <p>
        <strong>{words`Check:`}</strong> {printPhrase(step.check, units)}
      </p>
    </section>
  );
}
