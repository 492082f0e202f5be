import { measurements } from '../../body';
import { own, said, words } from '../../words';
import { useBench } from '../store/bench';

/** Where the tape goes for the measurement that is being typed; the field itself says it to those who listen. */
export function TapeNote() {
  const field = useBench((state) => (state.station === 'body' ? state.field : undefined));
  const measurement = measurements.find((one) => `body.${one.key}` === field);
  if (!measurement) return null;
  return (
    <p className="tape-note" aria-hidden="true">
      <strong>{said(measurement.name)}</strong> {said(measurement.where)}
      {measurement.iso && (
        <span className="tape-clause">
          {measurement.isoFrom === 'memory'
            ? words`ISO 8559-1:2017, ${own(measurement.iso)} (from memory)`
            : words`ISO 8559-1:2017, ${own(measurement.iso)}`}
        </span>
      )}
    </p>
  );
}
