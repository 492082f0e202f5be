import { printPhrase } from '../../length';
import { inOrder } from '../finished/order';
import { Verdict } from '../finished/Verdict';
import { useBench } from '../store/bench';
import { AfterWearing } from './AfterWearing';

/** Every check of the finished draft with its reason, and what to change where it is not good. */
export function CheckStation() {
  const checks = useBench((state) => state.draft.checks);
  const units = useBench((state) => state.project.units);
  return (
    <>
      <ul className="checks">
        {inOrder(checks).map((check) => (
          <li key={check.id}>
            <Verdict verdict={check.verdict} />
            <span>
              <span className="check-name">{check.name}</span>
              <span className="check-reason">{printPhrase(check.reason, units)}</span>
              {check.remedy.length > 0 && <span className="check-remedy">{printPhrase(check.remedy, units)}</span>}
            </span>
          </li>
        ))}
      </ul>
      <AfterWearing />
    </>
  );
}
