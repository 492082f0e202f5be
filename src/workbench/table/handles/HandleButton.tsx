import { MM_PER_INCH, plain, type Units } from '../../../length';
import type { Draft } from '../../../project';
import { inTurn, isSaid, own, said, say, UNSAID, words } from '../../../words';
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
  const main = handle.words(draft, units);
  const detail = handle.detail?.(draft) ?? UNSAID;
  const whole = said(inTurn([say`${own(main)}`, detail], ', '));
  const note = handle.note?.(draft, units);
  return (
    <div
      className="handle"
      role="slider"
      tabIndex={0}
      aria-label={said(handle.name)}
      aria-valuemin={inUnits(lowest, units)}
      aria-valuemax={inUnits(highest, units)}
      aria-valuenow={inUnits(handle.value(draft), units)}
      aria-valuetext={note ? `${whole}; ${note}` : whole}
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
        {isSaid(detail) && <span className="handle-detail">, {said(detail)}</span>}
        {(held || stopped) && (
          <span className="handle-note">{stopped ? words`no further: it can’t be drawn` : note}</span>
        )}
      </span>
    </div>
  );
}

/** As a bare number for `aria-valuenow`, in the unit that the words name. */
const inUnits = (mm: number, units: Units): number =>
  Number(plain(units === 'cm' ? mm / 10 : mm / MM_PER_INCH, 3).replace('−', '-'));
