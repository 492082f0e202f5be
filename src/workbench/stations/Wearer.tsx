import { fieldName } from '../../project';
import { said } from '../../words';
import { FieldRow } from '../fields/FieldRow';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';

const PATH = 'body.label';

/** Longer names don't fit the head of a page. */
const LONGEST = 60;

/** Whose body it is: a project that nobody has named takes the name. */
export function Wearer() {
  const label = useBench((state) => state.project.body.label);
  const { slide, leave } = useBench.getState();
  const id = fieldId(PATH);
  return (
    <FieldRow id={id} path={PATH} label={said(fieldName(PATH))} help={undefined} problem={undefined}>
      <span className="field-box">
        <input
          id={id}
          className="name-text"
          value={label}
          maxLength={LONGEST}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => slide(PATH, event.target.value)}
          onBlur={() => leave(PATH)}
        />
      </span>
    </FieldRow>
  );
}
