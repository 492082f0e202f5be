import type { KeyboardEvent } from 'react';
import type { Units } from '../../length';
import { fieldName, valueAt } from '../../project';
import { inTurn, own, type Phrase, said, say, words } from '../../words';
import { isWaiting, problemAt } from '../store/asked';
import { useBench } from '../store/bench';
import { TYPED_LIMITS } from '../store/limits';
import { nearestStep } from '../store/quantity';
import type { Field } from '../store/state';
import { describedBy, FieldRow, fieldId } from './FieldRow';

export interface QuantityFieldProps extends Field {
  /** What the number does; its limits are said after it. */
  readonly help?: Phrase;
  /** What the drawing shows beside it, for those who can't see it. */
  readonly heard?: string;
  /** What is used while the field is empty: shown in it as an estimate, and where arrow keys start. */
  readonly instead?: number | undefined;
  /** What is worth a second look about the number that stands here. */
  readonly doubt?: Phrase | undefined;
}

const ARROWS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1 };

/**
 * A number as plain text: every browser's own number field turns “40 1/8” into 401/8 or nothing. The text is the
 * typist's own until the field is left; then it is printed tidily if it could be read.
 */
export function QuantityField({ help: does, heard, instead, doubt, ...field }: QuantityFieldProps) {
  const { path, quantity, optional } = field;
  const units = useBench((state) => state.project.units);
  const help = withLimits(does, field, units);
  const value = useBench((state) => valueAt(state.project, path));
  const text = useBench((state) => state.entries[path]?.text);
  const problem = useBench((state) => problemAt(state, path));
  const waiting = useBench((state) => isWaiting(state, path));
  const { type, stepField, enter, leave } = useBench.getState();
  const id = fieldId(path);

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
    >
      <span className="field-box">
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellCheck={false}
          required={!optional}
          placeholder={
            instead === undefined
              ? undefined
              : words`est. ${own(quantity.print(nearestStep(instead, quantity.step(units)), units))}`
          }
          value={text ?? (typeof value === 'number' ? quantity.print(value, units) : '')}
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
    </FieldRow>
  );
}

function withLimits(does: Phrase | undefined, { path, quantity }: Field, units: Units): Phrase | undefined {
  const limits = TYPED_LIMITS[path];
  if (!limits) return does;
  const range = say`${quantity.range(limits.lowest, limits.highest, units)}.`;
  return does ? inTurn([does, range]) : range;
}
