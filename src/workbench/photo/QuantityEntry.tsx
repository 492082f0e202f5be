import { useId, useState } from 'react';
import { printPhrase, said, words } from '../../words';
import { NumberPad } from '../fields/NumberPad';
import { useBench } from '../store/bench';
import { length, type Quantity } from '../store/quantity';
import { sentence } from '../store/refusal';

interface QuantityEntryProps {
  readonly label: string;
  readonly help?: string;
  /** What is typed; a length, if not said. */
  readonly quantity?: Quantity;
  readonly value: number;
  readonly lowest: number;
  readonly highest: number;
  readonly onValue: (value: number) => void;
}

/** A number that belongs to no project: a length is typed in the project’s unit, or in any other that is written after it. */
export function QuantityEntry({ label, help, quantity = length, value, lowest, highest, onValue }: QuantityEntryProps) {
  const units = useBench((state) => state.project.units);
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<string>();

  const onText = (text: string) => {
    setTyped(text);
    const reading = quantity.read(text, units);
    if (!reading.ok) {
      setProblem(sentence(printPhrase(reading.phrase, units)));
      return;
    }
    const read = reading.value;
    if (read === undefined || read < lowest || read > highest) {
      setProblem(words`It must be ${quantity.range(lowest, highest, units)}.`);
      return;
    }
    setProblem(undefined);
    onValue(read);
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
          value={typed ?? quantity.print(value, units)}
          aria-invalid={problem ? true : undefined}
          aria-describedby={`${id}-help ${id}-problem`}
          onChange={(event) => onText(event.target.value)}
          onBlur={() => !problem && setTyped(undefined)}
        />
        <span className="field-unit" aria-hidden="true">
          {said(quantity.word(units))}
        </span>
      </span>
      <NumberPad
        text={typed ?? quantity.print(value, units)}
        units={units}
        isLength={quantity === length}
        signed={false}
        onType={onText}
      />
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
