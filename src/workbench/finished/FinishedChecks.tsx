import { checksOf } from '../../project';
import { number, printPhrase, said, words } from '../../words';
import { useBench } from '../store/bench';
import { inOrder } from './order';
import { Verdict } from './Verdict';

/** So many rows; the rest is one click away at the station Check. */
const ROOM = 5;

/** What the checks found, what wants a look first. */
export function FinishedChecks() {
  const checks = useBench((state) => checksOf(state.draft));
  const units = useBench((state) => state.project.units);
  const goTo = useBench((state) => state.goTo);
  const ordered = inOrder(checks);
  const wanting = ordered.filter((check) => check.verdict !== 'good').length;
  const shown = ordered.slice(0, Math.max(ROOM, wanting));
  const rest = ordered.length - shown.length;
  return (
    <>
      <ul className="checks">
        {shown.map((check) => (
          <li key={check.id}>
            <Verdict verdict={check.verdict} />
            <span>
              <span className="check-name">{said(check.name)}</span>
              {check.verdict !== 'good' && <span className="check-reason">{printPhrase(check.reason, units)}</span>}
            </span>
          </li>
        ))}
      </ul>
      {rest > 0 && (
        <button type="button" className="plain-link" onClick={() => goTo('check')}>
          {words`${number(rest, 0)} more, all good`}
        </button>
      )}
    </>
  );
}
