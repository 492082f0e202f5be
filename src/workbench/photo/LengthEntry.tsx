import { useId, useState } from 'react';
import type { Mm } from '../../length';
import { printPhrase, said, words } from '../../words';
import { NumberPad } from '../fields/NumberPad';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';
import { sentence } from '../store/refusal';

interface LengthEntryProps {
  readonly label: string;
  readonly help?: string;
  readonly value: Mm;
  readonly lowest: Mm;
  readonly highest: Mm;
  readonly onValue: (value: Mm) => void;
}

/** A length that belongs to no project: typed in its unit, or in any other that is written after it. */
export function LengthEntry({ label, help, value, lowest, highest, onValue }: LengthEntryProps) {
  const units = useBench((state) => state.project.units);
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<string>();

  const onText = (text: string) => {
    setTyped(text);
    const reading = length.read(text, units);
    if (!reading.ok) {
      setProblem(sentence(printPhrase(reading.phrase, units)));
      return;
    }
    const mm = reading.value;
    if (mm === undefined || mm < lowest || mm > highest) {
      setProblem(words`It must be ${length.range(lowest, highest, units)}.`);
      return;
    }
    setProblem(undefined);
    onValue(mm);
  };

  return (
    <div className="field" data-asks={problem ? true : undefined}>
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <span className="field-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          value={typed ?? length.print(value, units)}
          aria-invalid={problem ? true : undefined}
          aria-describedby={`${id}-help ${id}-problem`}
          onChange={(event) => onText(event.target.value)}
          onBlur={() => !problem && setTyped(undefined)}
        />
        <span className="field-unit" aria-hidden="true">
          {said(length.word(units))}
        </span>
      </span>
      <NumberPad text={typed ?? length.print(value, units)} units={units} isLength signed={false} onType={onText} />
      {help && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
      <p className="field-problem" id={`${id}-problem`} aria-live="polite">
        {problem}
      </p>
    </div>
  );
}
