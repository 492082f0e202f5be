import type { Units } from '../../length';
import { words } from '../../words';
import { FRACTIONS, withFraction, withSign } from './fraction';

export interface NumberPadProps {
  readonly text: string;
  readonly units: Units;
  /** Whether it is a length, and may have a fraction of an inch. */
  readonly isLength: boolean;
  /** Whether the number may lie below nought. */
  readonly signed: boolean;
  readonly onType: (text: string) => void;
}

/** What a phone’s pad of numbers lacks, under the field that is in hand: eighths of an inch, and a minus. */
export function NumberPad({ text, units, isLength, signed, onType }: NumberPadProps) {
  const fractions = isLength && units === 'inch';
  if (!fractions && !signed) return null;
  const key = (name: string, typed: string, label?: string) => (
    <button
      key={name}
      type="button"
      className="pad-key"
      aria-label={label}
      // The field keeps the focus, and with it the pad on the screen.
      onPointerDown={(event) => event.preventDefault()}
      onClick={() => onType(typed)}
    >
      {name}
    </button>
  );
  return (
    <fieldset className="pad" aria-label={words`Keys that the pad of numbers lacks`}>
      {signed && key('±', withSign(text), words`plus or minus`)}
      {fractions && FRACTIONS.map((one) => key(one, withFraction(text, one)))}
    </fieldset>
  );
}
