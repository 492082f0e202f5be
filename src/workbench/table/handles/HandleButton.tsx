import { MM_PER_INCH, plain, type Units } from '../../../length';
import type { Draft } from '../../../project';
import { useBench } from '../../store/bench';
import { standingAt, type View } from '../../view/view';
import type { Handle } from './handle';
import { useHandle } from './use-handle';

export interface HandleButtonProps {
  readonly handle: Handle;
  readonly draft: Draft;
  readonly view: View;
}

/** A two-hole button on the drawing, its number in words beside it: drawn by hand, or moved by arrow keys. */
export function HandleButton({ handle, draft, view }: HandleButtonProps) {
  const units = useBench((state) => state.project.units);
  const { held, stopped, ...handlers } = useHandle(handle, view);
  const { lowest, highest } = handle.limits(draft);
  const words = handle.words(draft, units);
  const note = handle.note?.(draft, units);
  const [main, detail] = detached(words);
  return (
    <div
      className="handle"
      role="slider"
      tabIndex={0}
      aria-label={handle.name}
      aria-valuemin={inUnits(lowest, units)}
      aria-valuemax={inUnits(highest, units)}
      aria-valuenow={inUnits(handle.value(draft), units)}
      aria-valuetext={note ? `${words}; ${note}` : words}
      data-key={handle.key}
      data-side={handle.side}
      data-held={held || undefined}
      style={standingAt(handle.at(draft), view)}
      {...handlers}
    >
      <svg className="handle-button" viewBox="-11 -11 22 22" aria-hidden="true">
        <circle r="9" />
        <circle className="handle-hole" cx="-3" r="1.6" />
        <circle className="handle-hole" cx="3" r="1.6" />
      </svg>
      <span className="handle-words" aria-hidden="true">
        {main}
        {detail && <span className="handle-detail">{detail}</span>}
        {(held || stopped) && <span className="handle-note">{stopped ? 'no further: it can’t be drawn' : note}</span>}
      </span>
    </div>
  );
}

/** The words up to their first comma, and the rest. */
function detached(words: string): readonly [string, string | undefined] {
  const at = words.indexOf(', ');
  return at < 0 ? [words, undefined] : [words.slice(0, at), words.slice(at)];
}

/** As a bare number for `aria-valuenow`, in the unit that the words name. */
const inUnits = (mm: number, units: Units): number =>
  Number(plain(units === 'cm' ? mm / 10 : mm / MM_PER_INCH, 3).replace('−', '-'));
