import { printPhrase } from '../../length';
import { fieldId } from '../fields/FieldRow';
import { firstProblem, isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { fieldName } from '../store/names';
import { sentence } from '../store/refusal';
import { stationOf } from '../store/stations';

/** Says that the drawing is the last good one; where the field that asks is out of sight, why, and the way there. */
export function StaleNote() {
  const stale = useBench(isStale);
  const path = useBench((state) => firstProblem(state)?.path);
  const phrase = useBench((state) => firstProblem(state)?.phrase);
  const units = useBench((state) => state.project.units);
  const open = useBench((state) => state.station);
  const goTo = useBench((state) => state.goTo);
  if (!stale || path === undefined || !phrase) return null;
  const station = stationOf(path);
  const lead = () => {
    if (station) goTo(station);
    requestAnimationFrame(() => document.getElementById(fieldId(path))?.focus());
  };
  return (
    <p className="stale-note">
      <strong>The last good drawing. </strong>
      {station === open ? (
        `${fieldName(path)} has to be put right.`
      ) : (
        <>
          {`${fieldName(path)}: ${sentence(printPhrase(phrase, units))}`}{' '}
          {station && (
            <button type="button" className="plain-link" onClick={lead}>
              go there
            </button>
          )}
        </>
      )}
    </p>
  );
}
