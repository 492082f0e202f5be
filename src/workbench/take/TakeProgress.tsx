import type { Progress } from '../../files';
import { number, words } from '../../words';

interface TakeProgressProps extends Progress {
  /** When it began, milliseconds of the page's own clock. */
  readonly since?: number;
  readonly name?: string;
  readonly onStop: () => void;
}

/** How far long work has come, how long it will still take where that is long, and the way to stop it. */
export function TakeProgress({
  share,
  doing,
  since,
  name = words`How far the file has come`,
  onStop,
}: TakeProgressProps) {
  const left = since === undefined ? '' : timeLeft(performance.now() - since, share);
  return (
    <div className="take-progress">
      <progress max={1} value={share} aria-label={name} />
      <span className="take-what">
        {doing === '' ? words`starting` : doing}
        {left !== '' && ` · ${left}`}
      </span>
      <button type="button" className="button" onClick={onStop}>
        {words`Stop`}
      </button>
    </div>
  );
}

/** Before this much has passed nobody can tell how long it will take; milliseconds. */
const EARLY = 4000;
/** Shorter waits need no telling; milliseconds. */
const SHORT = 20_000;

/** What is left, as far as can be told from what has passed; empty where it is little or not yet known. */
export function timeLeft(passed: number, share: number): string {
  if (passed < EARLY || share <= 0) return '';
  const left = (passed / share) * (1 - share);
  if (left < SHORT) return '';
  const minutes = Math.round(left / 60_000);
  return minutes < 1 ? words`less than a minute left` : words`about ${number(minutes, 0)} min left`;
}
