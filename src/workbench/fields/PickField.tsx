import { fieldName } from '../../project';
import { type Phrase, said } from '../../words';
import { problemAt } from '../store/asked';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { describedBy, FieldRow } from './FieldRow';

export interface Choice {
  readonly key: string;
  readonly name: Phrase;
}

/** Choices with more letters than this get the whole width, under the name. */
const SHORT = 16;

export interface PickFieldProps {
  readonly path: string;
  readonly help?: Phrase;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly onPick: (key: string) => void;
}

/** One of many, in the browser's own list. */
export function PickField({ path, help, choices, chosen, onPick }: PickFieldProps) {
  const problem = useBench((state) => problemAt(state, path));
  const id = fieldId(path);
  const long = choices.some(({ name }) => said(name).length > SHORT);
  return (
    <FieldRow id={id} path={path} label={said(fieldName(path))} wide={long} help={help} problem={problem}>
      <span className="field-box field-pick">
        <select
          id={id}
          value={chosen}
          aria-invalid={problem ? true : undefined}
          aria-describedby={describedBy(id, help, problem)}
          onChange={(event) => onPick(event.target.value)}
        >
          {choices.map((choice) => (
            <option key={choice.key} value={choice.key}>
              {said(choice.name)}
            </option>
          ))}
        </select>
      </span>
    </FieldRow>
  );
}
