import { checksOf } from '../../project';
import { printPhrase, said, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { useBench } from '../store/bench';
import { goodChecks } from './good-checks';
import { lookAtCheck } from './look-at-check';
import { inOrder } from './order';
import { Verdict } from './Verdict';

/** What of the checks wants a look, and how many are good; each leads to its place at the station Check. */
export function FinishedChecks() {
  const checks = useBench((state) => checksOf(state.draft));
  const units = useBench((state) => state.project.units);
  const wanting = inOrder(checks).filter((check) => check.verdict !== 'good');
  const good = checks.length - wanting.length;
  return (
    <>
      {wanting.length > 0 && (
        <ul className="checks">
          {wanting.map((check) => (
            <li key={check.id}>
              <Verdict verdict={check.verdict} />
              <span>
                <button
                  type="button"
                  className="check-name"
                  title={words`where on the drawing?`}
                  onClick={() => lookAtCheck(check.id)}
                >
                  {said(check.name)}
                </button>
                <span className="check-reason">{printPhrase(check.reason, units)}</span>
              </span>
            </li>
          ))}
        </ul>
      )}
      {good > 0 && (
        <button type="button" className="plain-link" onClick={lookAtGood}>
          {goodChecks(good, checks.length)}
        </button>
      )}
    </>
  );
}

function lookAtGood(): void {
  useBench.getState().goTo('check');
  focusOn('.checks-good summary');
}
