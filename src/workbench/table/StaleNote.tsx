import { fieldName } from '../../project';
import { printPhrase } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { fieldId } from '../fields/FieldRow';
import { firstProblem, isStale, onlyWaiting } from '../store/asked';
import { useBench } from '../store/bench';
import { sentence } from '../store/refusal';
import { stationOf } from '../store/stations';

/** Says why the drawing is not that of what stands in the fields; where the field that asks is out of sight, the way there. */
export function StaleNote() {
  const stale = useBench(isStale);
  const path = useBench((state) => firstProblem(state)?.path);
  const phrase = useBench((state) => firstProblem(state)?.phrase);
  const waiting = useBench((state) => onlyWaiting(state).map(fieldName).join(', ').toLowerCase());
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
      ? `${fieldName(path)} has to be put right.`
      : `${fieldName(path)}: ${sentence(printPhrase(phrase, units))}`;
  return (
    <p className="stale-note" data-waits={waiting !== '' || undefined}>
      <strong>{waiting === '' ? 'The last good drawing. ' : 'Not your drawing yet. '}</strong>
      {waiting === '' ? asks : `Still to be measured: ${waiting}.`}{' '}
      {station && station !== open && (
        <button type="button" className="plain-link" onClick={lead}>
          go there
        </button>
      )}
    </p>
  );
}
