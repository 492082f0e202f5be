import { formatParts, printPhrase } from '../../length';
import { useBench } from '../store/bench';
import { measureRows, movedBy } from './rows';

/** The finished measures, live; a change marks the rows that it moved. */
export function FinishedMeasures() {
  const draft = useBench((state) => state.draft);
  const before = useBench((state) => state.before);
  const units = useBench((state) => state.project.units);
  return (
    <dl className="measures">
      {measureRows(draft).map((row) => {
        const moved = movedBy(row, before);
        const { value, unit } = formatParts(row.value, units);
        return (
          <div key={row.key} className="measure" data-moved={moved ? true : undefined}>
            <dt>{row.name}</dt>
            <dd>
              <span className="measure-value">
                {value} <span className="measure-unit">{unit}</span>
              </span>
              <span className="measure-note">{printPhrase(row.note, units)}</span>
              {moved && <span className="measure-moved">{printPhrase(moved, units)}</span>}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
