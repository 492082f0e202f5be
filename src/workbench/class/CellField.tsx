import { type KeyboardEvent, useState } from 'react';
import { own, words } from '../../words';
import { pasteCells, typeCells } from './mend-table';

export interface CellFieldProps {
  /** Which record and which of its cells. */
  readonly at: number;
  readonly cell: number;
  /** As its column is headed. */
  readonly head: string;
  readonly text: string;
  /** What stood there when the table was opened. */
  readonly first: string;
  /** Whether it is missing, impossible or looks like a slip. */
  readonly wanting: boolean;
  /** Whether a figure is typed there: a phone then shows its figures. */
  readonly figure: boolean;
}

/** A cell of the table to type into: the row is judged when it is left, or at Enter, which goes on to the next that wants something. */
export function CellField({ at, cell, head, text, first, wanting, figure }: CellFieldProps) {
  const [typed, setTyped] = useState<string>();
  const shown = typed ?? text;
  const commit = () => {
    if (typed !== undefined && typed.trim() !== text) typeCells([{ at, cell, text: typed }]);
    setTyped(undefined);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      event.preventDefault();
      commit();
      nextWanting(event.currentTarget)?.focus();
    } else if (event.key === 'Escape' && typed !== undefined) {
      // The sheet stays: only what was typed here is taken back.
      event.stopPropagation();
      setTyped(undefined);
    }
  };
  return (
    <span className="class-cell">
      <label>
        <span>{head}</span>
        <input
          value={shown}
          data-typing={typed !== undefined || undefined}
          aria-invalid={wanting}
          autoComplete="off"
          inputMode={figure ? 'decimal' : 'text'}
          onChange={({ currentTarget }) => setTyped(currentTarget.value)}
          onFocus={({ currentTarget }) => currentTarget.select()}
          onBlur={commit}
          onKeyDown={onKeyDown}
          onPaste={(event) => {
            const pasted = event.clipboardData.getData('text/plain').replace(/[\r\n]+$/, '');
            if (!/[\t\n]/.test(pasted)) return;
            event.preventDefault();
            setTyped(undefined);
            pasteCells(pasted, at, cell);
          }}
        />
      </label>
      {text !== first && (
        <button
          type="button"
          className="plain-link class-back"
          aria-label={words`Put back ${own(head)}`}
          onClick={() => typeCells([{ at, cell, text: first }])}
        >
          {first === '' ? words`was empty` : words`was ${own(first)}`}
        </button>
      )}
    </span>
  );
}

/** The next cell below it that wants something. */
function nextWanting(from: HTMLInputElement): HTMLInputElement | undefined {
  const all = [...(from.closest('.class-rows')?.querySelectorAll<HTMLInputElement>('.class-cell input') ?? [])];
  return all.slice(all.indexOf(from) + 1).find((one) => one.getAttribute('aria-invalid') === 'true');
}
