import { useShallow } from 'zustand/react/shallow';
import { fieldName } from '../../project';
import { inRow, inside, own, printPhrase, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { firstProblem, isStale, onlyWaiting } from '../store/asked';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { sentence } from '../store/refusal';
import { stationOf } from '../store/stations';

/** Says why the drawing is not that of what stands in the fields; where the field that asks is out of sight, the way there. */
export function StaleNote() {
  const stale = useBench(isStale);
  const path = useBench((state) => firstProblem(state)?.path);
  const phrase = useBench((state) => firstProblem(state)?.phrase);
  const waiting = useBench(useShallow(onlyWaiting)).map((one) => say`${inside(fieldName(one))}`);
  const units = useBench((state) => state.project.units);
  const open = useBench((state) => state.station);
  const goTo = useBench((state) => state.goTo);
  if (!stale || path === undefined || !phrase) return null;
  const station = stationOf(path);
  const lead = () => {
    if (station) goTo(station);
    focusOn(`#${fieldId(path)}`);
  };
  const asks =
    station === open
      ? words`${fieldName(path)} has to be corrected.`
      : words`${fieldName(path)}: ${own(sentence(printPhrase(phrase, units)))}`;
  return (
    <p className="stale-note" data-waits={waiting.length > 0 || undefined}>
      <strong>{waiting.length === 0 ? words`The last good drawing.` : words`Not your drawing yet.`} </strong>
      {waiting.length === 0 ? asks : words`Still to be measured: ${inRow(waiting)}.`}{' '}
      {station && station !== open && (
        <button type="button" className="plain-link" onClick={lead}>
          {words`go there`}
        </button>
      )}
    </p>
  );
}
