import { useId } from 'react';
import type { Check } from '../../../check';
import { printPhrase, said, words } from '../../../words';
import { Verdict } from '../../finished/Verdict';
import { useBench } from '../../store/bench';
import { lightPlace } from '../../view/lit-place';
import { placeOnDrawing } from './place';

const rowId = (check: Check): string => `check-${check.id}`;

/** One check with its reason and what to change where it is not good. A press lights its place on the drawing, a second one puts it out. */
export function CheckRow({ check, lit }: { readonly check: Check; readonly lit: boolean }) {
  const units = useBench((state) => state.project.units);
  const draft = useBench((state) => state.draft);
  const remedy = useBench((state) => state.remedy);
  const reason = useId();
  const advice = printPhrase(check.remedy, units);
  const label = check.fix && printPhrase(check.fix.label, units);
  const light = () => lightPlace(lit ? undefined : placeOnDrawing(draft, check));
  // The button goes with the fault; who pressed it stays at the check, wherever it moves in the list.
  const apply = () => {
    remedy(check);
    document.getElementById(rowId(check))?.focus({ preventScroll: true });
  };
  return (
    <li id={rowId(check)} tabIndex={-1} data-lit={lit || undefined}>
      <Verdict verdict={check.verdict} />
      <span>
        <button
          type="button"
          className="check-name"
          aria-pressed={lit}
          aria-describedby={reason}
          title={words`where on the drawing?`}
          onClick={light}
        >
          {said(check.name)}
        </button>
        <span className="check-reason" id={reason}>
          {printPhrase(check.reason, units)}
        </span>
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
