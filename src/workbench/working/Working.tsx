import { useEffect, useRef } from 'react';
import type { WorkingStep } from '../../plane';
import { fieldName, STATION_NAMES } from '../../project';
import { inside, isSaid, printPhrase, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { workingAt } from '../store/working-at';
import { RunButtons } from './RunButtons';
import { useRun } from './run';

/** How the open station's numbers came about: each step in words, with its values, its lines lit where it is pointed at. */
export default function Working() {
  const station = useBench((state) => state.station);
  const draft = useBench((state) => state.draft);
  const steps = workingAt(draft, station);
  const element = useRef<HTMLElement>(null);
  // On a narrow screen the page may be scrolled past where it comes to lie.
  useEffect(() => {
    element.current?.scrollIntoView?.({ block: 'nearest' });
  }, []);
  return (
    <section ref={element} className="working" id="working" aria-label={words`Working of ${STATION_NAMES[station]}`}>
      <BackToField />
      <RunButtons />
      {steps.length === 0 ? (
        <p className="quiet">{words`There is no working to show at this station.`}</p>
      ) : (
        <ol className="steps">
          {steps.map((step) => (
            <StepTold key={step.id} step={step} />
          ))}
        </ol>
      )}
    </section>
  );
}

/** The way back to where “how?” was asked, with the focus where it was. */
function BackToField() {
  const asked = useRun((state) => state.asked);
  if (!asked) return null;
  const { field } = asked;
  const back = () => {
    useRun.getState().comeBack();
    focusOn(field === undefined ? '.stop[data-open] .stop-name button' : `#${fieldId(field)}`);
  };
  return (
    <button type="button" className="plain-link working-back" onClick={back}>
      {field === undefined ? words`Back to where you were` : words`Back to ${inside(fieldName(field))}`}
    </button>
  );
}

function StepTold({ step }: { readonly step: WorkingStep }) {
  const lit = useBench((state) => state.step === step.id);
  const pinned = useRun((state) => state.pinned === step.id);
  const units = useBench((state) => state.project.units);
  const { point } = useRun.getState();
  const element = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (pinned) element.current?.scrollIntoView?.({ block: 'nearest' });
  }, [pinned]);
  const pin = () => {
    useRun.setState({ pinned: step.id });
    point(step.id);
  };
  return (
    <li>
      <button
        ref={element}
        type="button"
        className="step"
        aria-pressed={lit}
        onMouseEnter={() => point(step.id)}
        onMouseLeave={() => point(undefined)}
        onFocus={() => point(step.id)}
        onBlur={() => point(undefined)}
        onClick={pin}
      >
        <span className="step-sentence">{printPhrase(step.sentence, units)}</span>
        {isSaid(step.formula) && <span className="step-formula">{printPhrase(step.formula, units)}</span>}
      </button>
    </li>
  );
}
