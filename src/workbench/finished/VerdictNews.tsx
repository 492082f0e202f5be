import { useEffect, useRef, useState } from 'react';
import { type Check, VERDICT_NAMES } from '../../check';
import { checksOf } from '../../project';
import { words } from '../../words';
import { isUnmeasured } from '../store/asked';
import { useBench } from '../store/bench';

/** Long enough that a number being typed is not commented digit by digit. */
const PAUSE_MS = 700;

/** Nothing is said of a body that nobody has measured. */
const NONE: readonly Check[] = [];

/** Says changed verdicts to those who listen instead of looking. */
export function VerdictNews() {
  const checks = useBench((state) => (isUnmeasured(state) ? NONE : checksOf(state.draft)));
  const told = useRef(checks);
  const [news, setNews] = useState('');
  useEffect(() => {
    const wait = setTimeout(() => {
      const changes = verdictChanges(told.current, checks);
      told.current = checks;
      if (changes !== '') setNews(changes);
    }, PAUSE_MS);
    return () => clearTimeout(wait);
  }, [checks]);
  return (
    <p className="unseen" role="status">
      {news}
    </p>
  );
}

/** One sentence for each check whose verdict changed; empty where none did. */
export function verdictChanges(before: readonly Check[], after: readonly Check[]): string {
  const old = new Map(before.map((check) => [check.id, check.verdict]));
  return after
    .filter((check) => (old.get(check.id) ?? 'good') !== check.verdict)
    .map((check) => words`${check.name}: now ${VERDICT_NAMES[check.verdict]}.`)
    .join(' ');
}
