import { fieldName } from '../../project';
import { type Phrase, printPhrase, said } from '../../words';
import { problemAt } from '../store/asked';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { sentence } from '../store/refusal';
import { How } from '../working/How';
import { describedBy } from './FieldRow';
import type { Choice } from './PickField';
import { Switch } from './Switch';

export interface SwitchFieldProps {
  readonly path: string;
  /** Its name here, where the field's own name is taken by another part of it. */
  readonly label?: string;
  readonly help?: Phrase | undefined;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly onPick: (key: string) => void;
}

/** A switch with what it does, and what is wrong, under it. */
export function SwitchField({ path, label, help, choices, chosen, onPick }: SwitchFieldProps) {
  const units = useBench((state) => state.project.units);
  const problem = useBench((state) => problemAt(state, path));
  const id = fieldId(path);
  return (
    <div className="field field-wide" data-asks={problem ? true : undefined}>
      <Switch
        label={label ?? said(fieldName(path))}
        choices={choices}
        chosen={chosen}
        onPick={onPick}
        describedBy={describedBy(id, help, problem)}
      />
      {help && (
        <div className="field-foot">
          <p className="field-help" id={`${id}-help`}>
            {printPhrase(help, units)}
          </p>{' '}
          <How path={path} />
        </div>
      )}
      <p className="field-problem" id={`${id}-problem`} aria-live="polite">
        {problem && sentence(printPhrase(problem, units))}
      </p>
    </div>
  );
}
