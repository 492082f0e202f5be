import { formatParts } from '../../length';
import type { Measures } from '../../project';
import { own, type Phrase, printPhrase, said, words } from '../../words';
import { useBench } from '../store/bench';
import { draftSteps } from '../store/told-steps';
import { measureStep } from '../working/how';
import { useRun } from '../working/run';
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
            <dt>{said(row.name)}</dt>
            <dd>
              <MeasureValue measure={row.key} name={row.name} value={value} unit={unit} />
              <span className="measure-note">{printPhrase(row.note, units)}</span>
              {moved && <span className="measure-moved">{printPhrase(moved, units)}</span>}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

interface MeasureValueProps {
  readonly measure: keyof Measures;
  readonly name: Phrase;
  readonly value: string;
  readonly unit: string;
}

/** The number; pressed, it answers how it came about. */
function MeasureValue({ measure, name, value, unit }: MeasureValueProps) {
  const step = useBench((state) => measureStep(draftSteps(state.draft), measure));
  const number = (
    <>
      {value} <span className="measure-unit">{unit}</span>
    </>
  );
  if (step === undefined) return <span className="measure-value">{number}</span>;
  return (
    <button
      type="button"
      className="measure-value measure-how"
      aria-label={words`${name} ${own(value)} ${own(unit)}: how?`}
      title={words`how?`}
      onClick={() => useRun.getState().ask(step)}
    >
      {number}
    </button>
  );
}
