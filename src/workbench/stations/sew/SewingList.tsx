import { sewingOf } from '../../../project';
import { sewingTime, TIME_SOURCE } from '../../../sewing';
import { inTurn, number, said, words } from '../../../words';
import { useBench } from '../../store/bench';
import { stepShown } from '../../working/sewing-run';
import { useSewingShown } from '../../working/sewing-shown';

/** All steps in order, to go to any of them, and how long the whole takes. */
export function SewingList() {
  const draft = useBench((state) => state.draft);
  const shown = useSewingShown((state) => state.shown);
  const show = useSewingShown((state) => state.show);
  const steps = sewingOf(draft);
  const here = stepShown(draft, shown);
  return (
    <details className="sew-list">
      <summary>{words`All ${number(steps.length, 0)} steps`}</summary>
      <ol>
        {steps.map((step) => (
          <li key={step.id}>
            <button
              type="button"
              className="plain-link"
              aria-current={step === here ? 'step' : undefined}
              onClick={() => show(step.id)}
            >
              {said(step.title)}
            </button>
          </li>
        ))}
      </ol>
      <p className="quiet">{said(inTurn([sewingTime(steps), TIME_SOURCE]))}</p>
    </details>
  );
}
