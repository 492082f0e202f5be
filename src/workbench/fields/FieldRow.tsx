import type { ReactNode } from 'react';
import { type Phrase, printPhrase, words } from '../../words';
import { useBench } from '../store/bench';
import { sentence } from '../store/refusal';
import { How } from '../working/How';

export interface FieldRowProps {
  readonly id: string;
  /** Where its value lives in the project, for “how?”. */
  readonly path: string;
  readonly label: string;
  readonly help: Phrase | undefined;
  readonly problem: Phrase | undefined;
  /** Whether its problem is only that nothing stands in it yet. */
  readonly waiting?: boolean;
  /** What is worth a second look: no error, and nothing waits for it. */
  readonly doubt?: Phrase | undefined;
  /** What the drawing shows beside it, for those who can't see it. */
  readonly heard?: string | undefined;
  /** Whether its input lies under its name and takes the whole width. */
  readonly wide?: boolean;
  /** What answers “how?” in the place of the working. */
  readonly how?: ReactNode;
  readonly children: ReactNode;
}

/** One input with its name before it, what it does under it, and what is wrong with it under that. */
export function FieldRow({
  id,
  path,
  label,
  help,
  problem,
  waiting,
  doubt,
  heard,
  wide,
  how,
  children,
}: FieldRowProps) {
  const units = useBench((state) => state.project.units);
  const inHand = useBench((state) => state.field === path);
  return (
    <div
      className={wide ? 'field field-wide' : 'field'}
      data-asks={problem && !waiting ? true : undefined}
      data-waits={waiting || undefined}
      data-in-hand={inHand || undefined}
    >
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {children}
      {help && (
        <div className="field-foot">
          <p className="field-help" id={`${id}-help`}>
            {printPhrase(help, units)}
            {heard && <span className="field-where unseen"> {heard}</span>}
          </p>{' '}
          {how ?? <How path={path} />}
        </div>
      )}
      {doubt && (
        <p className="field-doubt" id={`${id}-doubt`}>
          <strong>{words`Doubtful`}</strong> {printPhrase(doubt, units)}
        </p>
      )}
      {/* Always there, so that a sentence that appears is read out. */}
      <p className="field-problem" id={`${id}-problem`} aria-live="polite">
        {problem && sentence(printPhrase(problem, units))}
      </p>
    </div>
  );
}

/** The ids that describe an input, for `aria-describedby`. */
export function describedBy(
  id: string,
  help: Phrase | undefined,
  problem: Phrase | undefined,
  doubt?: Phrase,
): string | undefined {
  const ids = [help && `${id}-help`, doubt && `${id}-doubt`, problem && `${id}-problem`].filter(Boolean);
  return ids.length > 0 ? ids.join(' ') : undefined;
}
