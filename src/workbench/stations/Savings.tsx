import type { Fix } from '../../check';
import { type Phrase, printPhrase } from '../../words';
import { useBench } from '../store/bench';

interface SavingsProps {
  /** At least one: the change, and what it saves. */
  readonly savings: readonly { readonly id: string; readonly fix: Fix; readonly says: Phrase }[];
  /** Whether more may come. */
  readonly busy: boolean;
  /** By its id, what tells the result: who pressed a button stays there, for the button goes with what it saves. */
  readonly result: string;
}

/** What would save cloth or paper, each at one press that can be undone. */
export function Savings({ savings, busy, result }: SavingsProps) {
  const units = useBench((state) => state.project.units);
  const remedy = useBench((state) => state.remedy);
  return (
    <ul className="savings" aria-busy={busy}>
      {savings.map(({ id, fix, says }) => (
        <li key={id}>
          <button
            type="button"
            className="check-fix"
            onClick={() => {
              remedy({ id, fix });
              document.getElementById(result)?.focus({ preventScroll: true });
            }}
          >
            {printPhrase(fix.label, units)}
          </button>
          <span className="saving-says">{printPhrase(says, units)}</span>
        </li>
      ))}
    </ul>
  );
}
