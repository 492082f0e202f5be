import { VERDICT_NAMES, type Verdict as Word } from '../../check';
import { checksOf } from '../../project';
import { number, own, words } from '../../words';
import { useChalk } from '../chalk/chalk';
import { Differences } from '../chalk/Differences';
import { useBench } from '../store/bench';

const VERDICTS: readonly Word[] = ['wrong', 'doubtful', 'good'];

/** How many checks came out how: in sight at every step. */
export function ShowVerdicts() {
  const checks = useBench((state) => checksOf(state.draft));
  const told = VERDICTS.map((verdict) => {
    const count = checks.filter((check) => check.verdict === verdict).length;
    return (
      count > 0 && (
        <span key={verdict} className="show-verdict" data-verdict={verdict}>
          {words`${number(count, 0)} ${VERDICT_NAMES[verdict]}`}
        </span>
      )
    );
  });
  return (
    <span className="show-verdicts">
      <span>{words`Checks:`}</span> {told}
    </span>
  );
}

/** By how much the body on the table differs from each that was kept as a chalk line. */
export function ShowDifferences() {
  const lines = useChalk((state) => state.lines).filter(({ shown }) => shown);
  if (lines.length === 0) return null;
  return (
    <aside className="show-sight" aria-label={words`Differences`}>
      {lines.map(({ id, name, draft }) => (
        <section key={id}>
          <h2>{words`beside ${own(name)}`}</h2>
          <Differences from={draft} />
        </section>
      ))}
    </aside>
  );
}
