import { useId, useState } from 'react';
import type { Measurement } from '../../../body';
import { printPhrase, words } from '../../../words';
import { useBench } from '../../store/bench';
import { draftSteps } from '../../store/told-steps';
import { fieldStep } from '../../working/how';
import { useRun } from '../../working/run';
import { BodyPicture } from './BodyPicture';
import { hasTrousersPicture, TrousersPicture } from './TrousersPicture';

/** “how?” beside a measurement: a picture of the tape, where it goes, another way to get it, and the way to the working. */
export function HowToMeasure({ measurement }: { readonly measurement: Measurement }) {
  const { key, name, where, another } = measurement;
  const [open, setOpen] = useState(false);
  const units = useBench((state) => state.project.units);
  const step = useBench((state) => fieldStep(draftSteps(state.draft), `body.${key}`));
  const id = useId();
  return (
    <>
      <button
        type="button"
        className="how"
        aria-label={words`${name}: how?`}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => setOpen(!open)}
      >
        {words`how?`}
      </button>
      {open && (
        <span className="how-card" id={id}>
          {key !== 'ageYears' && (
            <span className="how-pictures">
              <BodyPicture measurement={key} />
              {hasTrousersPicture(key) && <TrousersPicture measurement={key} />}
            </span>
          )}
          <span className="how-words">{printPhrase(where, units)}</span>
          {another && (
            <span className="how-words">
              <strong>{words`Another way`}</strong> {printPhrase(another, units)}
            </span>
          )}
          {step !== undefined && (
            <button
              type="button"
              className="plain-link"
              aria-label={words`${name}: how it’s drawn`}
              onClick={() => useRun.getState().ask(step, `body.${key}`)}
            >
              {words`how it’s drawn`}
            </button>
          )}
        </span>
      )}
    </>
  );
}
