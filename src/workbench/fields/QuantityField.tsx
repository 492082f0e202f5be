import type { KeyboardEvent, ReactNode } from 'react';
import { fieldName, valueAt } from '../../project';
import { own, type Phrase, said, say, words } from '../../words';
import { isWaiting, problemAt } from '../store/asked';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { TYPED_LIMITS } from '../store/limits';
import { length, nearestStep } from '../store/quantity';
import type { Field } from '../store/state';
import { describedBy, FieldRow } from './FieldRow';
import { NumberPad } from './NumberPad';

export interface QuantityFieldProps extends Field {
  /** What the number does. Its limits are said where they are broken. */
  readonly help?: Phrase;
  /** What the drawing shows beside it, for those who can't see it. */
  readonly heard?: string;
  /** What is used while the field is empty: shown in it as an estimate, and where arrow keys start. */
  readonly instead?: number | undefined;
  /** What is worth a second look about the number that stands here. */
  readonly doubt?: Phrase | undefined;
  /** What answers “how?” in the place of the working. */
  readonly how?: ReactNode;
}

const ARROWS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1 };

/**
 * A number as plain text: every browser's own number field turns “40 1/8” into 401/8 or nothing. The text is the
 * typist's own until the field is left; then it is printed tidily if it could be read.
 */
export function QuantityField({ help, heard, instead, doubt, how, ...field }: QuantityFieldProps) {
  const { path, quantity, optional } = field;
  const units = useBench((state) => state.project.units);
  const value = useBench((state) => valueAt(state.project, path));
  const text = useBench((state) => state.entries[path]?.text);
  const refused = useBench((state) => problemAt(state, path));
  const inHand = useBench((state) => state.field === path);
  const waiting = useBench((state) => isWaiting(state, path));
  const { type, stepField, enter, leave } = useBench.getState();
  const id = fieldId(path);
  const limits = TYPED_LIMITS[path];
  const beyond = limits && typeof value === 'number' && (value < limits.lowest || value > limits.highest);
  // In the unit that is typed, which a share of one and an angle have of their own.
  const problem = beyond && refused ? say`must be ${quantity.range(limits.lowest, limits.highest, units)}.` : refused;
  const shown = text ?? (typeof value === 'number' ? quantity.print(value, units) : '');

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const direction = ARROWS[event.key];
    if (direction === undefined || event.altKey || event.metaKey) return;
    event.preventDefault();
    stepField(field, direction * (event.shiftKey ? 10 : 1), instead);
  };

  return (
    <FieldRow
      id={id}
      path={path}
      label={said(fieldName(path))}
      help={help}
      problem={problem}
      waiting={waiting}
      doubt={doubt}
      heard={heard}
      how={how}
    >
      <span className="field-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          required={!optional}
          placeholder={
            instead === undefined
              ? undefined
              : words`est. ${own(quantity.print(nearestStep(instead, quantity.step(units)), units))}`
          }
          value={shown}
          aria-invalid={problem && !waiting ? true : undefined}
          aria-describedby={describedBy(id, help, problem, doubt)}
          onChange={(event) => type(field, event.target.value)}
          onKeyDown={onKeyDown}
          onFocus={() => enter(path)}
          onBlur={() => leave(path)}
        />
        <span className="field-unit" aria-hidden="true">
          {said(quantity.word(units))}
        </span>
      </span>
      {inHand && (
        <NumberPad
          text={shown}
          units={units}
          isLength={quantity === length}
          signed={(limits?.lowest ?? 0) < 0}
          onType={(typed) => type(field, typed)}
        />
      )}
    </FieldRow>
  );
}
