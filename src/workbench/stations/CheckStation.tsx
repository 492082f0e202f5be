import type { Check } from '../../check';
import { checksOf } from '../../project';
import { printPhrase, said } from '../../words';
import { inOrder } from '../finished/order';
import { Verdict } from '../finished/Verdict';
import { useBench } from '../store/bench';
import { AfterWearing } from './AfterWearing';
import { LeftRight } from './LeftRight';

/** Every check of the finished draft with its reason, and what to change where it is not good. */
export default function CheckStation() {
  const checks = useBench((state) => checksOf(state.draft));
  return (
    <>
      <ul className="checks">
        {inOrder(checks).map((check) => (
          <CheckRow key={check.id} check={check} />
        ))}
      </ul>
      <AfterWearing />
      <LeftRight />
    </>
  );
}

const rowId = (check: Check): string => `check-${check.id}`;

function CheckRow({ check }: { readonly check: Check }) {
  const units = useBench((state) => state.project.units);
  const remedy = useBench((state) => state.remedy);
  const advice = printPhrase(check.remedy, units);
  const label = check.fix && printPhrase(check.fix.label, units);
  // The button goes with the fault; who pressed it stays at the check, wherever it moves in the list.
  const apply = () => {
    remedy(check);
    document.getElementById(rowId(check))?.focus({ preventScroll: true });
  };
  return (
    <li id={rowId(check)} tabIndex={-1}>
      <Verdict verdict={check.verdict} />
      <span>
        <span className="check-name">{said(check.name)}</span>
        <span className="check-reason">{printPhrase(check.reason, units)}</span>
        {advice !== '' && advice !== `${label}.` && <span className="check-remedy">{advice}</span>}
        {label && (
          <button type="button" className="check-fix" onClick={apply}>
            {label}
          </button>
        )}
      </span>
    </li>
  );
}
