import { VERDICT_NAMES, type Verdict as Word } from '../../check';
import { said } from '../../words';

const MARKS: Readonly<Record<Word, string>> = {
  good: 'M2.5 6.5 5 9l4.5-6',
  doubtful: 'M6 2v5M6 9.2v.3',
  wrong: 'M3 3l6 6M9 3l-6 6',
};

/** A verdict as a word with its mark: it reads the same without colour. */
export function Verdict({ verdict }: { readonly verdict: Word }) {
  return (
    <span className="verdict" data-verdict={verdict}>
      <svg viewBox="0 0 12 12" aria-hidden="true">
        <path d={MARKS[verdict]} />
      </svg>
      {said(VERDICT_NAMES[verdict])}
    </span>
  );
}
