import { useId } from 'react';
import { said } from '../../words';
import type { Choice } from './PickField';

export interface SwitchProps {
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly onPick: (key: string) => void;
  readonly describedBy?: string | undefined;
  /** Whether the name is only for those who listen, because the place says it. */
  readonly quiet?: boolean;
}

/** One of two or three, side by side: radio buttons, so that arrow keys and names come from the browser. */
export function Switch({ label, choices, chosen, onPick, describedBy, quiet = false }: SwitchProps) {
  const name = useId();
  return (
    <fieldset className="switch" aria-describedby={describedBy}>
      <legend className={quiet ? 'unseen' : 'field-label'}>{label}</legend>
      <span className="switch-track">
        {choices.map((choice) => (
          <label key={choice.key} className="switch-choice">
            <input
              type="radio"
              name={name}
              value={choice.key}
              checked={chosen === choice.key}
              onChange={() => onPick(choice.key)}
            />
            <span>{said(choice.name)}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
}
