import { useEffect } from 'react';
import { inTurn, number, printPhrase, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { useBench } from '../store/bench';
import { tellClothSteps } from '../store/cloth-told';
import { stepOf, stepsInOrder } from '../store/working-at';
import { useRun } from './run';

/** The run through the working, for a learner or a class: back, next, or played. */
export function RunButtons() {
  const { going, playing } = useRun();
  const pinned = useRun((state) => state.pinned);
  const draft = useBench((state) => state.draft);
  const steps = stepsInOrder(draft);
  const station = useBench((state) => state.station);
  const here = steps.findIndex((step) => step.id === pinned && step.station === station);
  const { move, play, end } = useRun.getState();
  const whole = () => {
    end();
    focusOn('.run-play');
  };
  usePlaying();
  return (
    <p className="run">
      <button type="button" className="tool" aria-disabled={here <= 0} onClick={() => move(-1)}>
        {words`Back`}
      </button>
      <button
        type="button"
        className="tool"
        aria-disabled={here >= 0 && here === steps.length - 1}
        onClick={() => move(1)}
      >
        {words`Next`}
      </button>
      <button type="button" className="tool run-play" aria-pressed={playing} onClick={() => play(!playing)}>
        {playing ? words`Pause` : words`Play`}
      </button>
      <span className="quiet" role="status">
        {here < 0
          ? words`Step by step, from the body on`
          : words`Step ${number(here + 1, 0)} of ${number(steps.length, 0)}`}
      </span>
      {going && (
        <button type="button" className="plain-link" onClick={whole}>
          {words`show the whole drawing`}
        </button>
      )}
    </p>
  );
}

/** A step stays as long as it takes to read it aloud: so many milliseconds, and so many more for each letter. */
const LEAST = 2200;
const PER_LETTER = 45;

/** Goes on by itself while the run is played, and on to the cloth. */
export function usePlaying(): void {
  useEffect(tellClothSteps, []);
  const playing = useRun((state) => state.playing);
  const pinned = useRun((state) => state.pinned);
  useEffect(() => {
    if (!playing) return;
    const { draft, project } = useBench.getState();
    const step = pinned === undefined ? undefined : stepOf(draft, pinned);
    const text = step ? printPhrase(inTurn([step.sentence, step.formula]), project.units) : '';
    const wait = setTimeout(() => useRun.getState().move(1), LEAST + PER_LETTER * text.length);
    return () => clearTimeout(wait);
  }, [playing, pinned]);
}
