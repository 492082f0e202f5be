import { useState } from 'react';
import type { Check } from '../../../check';
import { goodChecks } from '../../finished/good-checks';
import { inOrder } from '../../finished/order';
import { CheckRow } from './CheckRow';
import { useLitCheck } from './place';

/**
 * Every check of the finished draft: what wants a look, and the good ones folded to a line. What is mended here stays in
 * sight, so that one sees it become good.
 */
export function CheckList({ checks }: { readonly checks: readonly Check[] }) {
  const lit = useLitCheck();
  const [wanted, setWanted] = useState<readonly string[]>([]);
  const more = checks.filter(({ id, verdict }) => verdict !== 'good' && !wanted.includes(id)).map(({ id }) => id);
  if (more.length > 0) setWanted([...wanted, ...more]);
  const isShown = ({ id, verdict }: Check) => verdict !== 'good' || wanted.includes(id);
  const shown = inOrder(checks).filter(isShown);
  const folded = checks.filter((check) => !isShown(check));
  const rows = (some: readonly Check[]) => (
    <ul className="checks">
      {some.map((check) => (
        <CheckRow key={check.id} check={check} lit={lit === check.id} />
      ))}
    </ul>
  );
  return (
    <>
      {shown.length > 0 && rows(shown)}
      {folded.length > 0 && (
        <details className="checks-good">
          <summary>{goodChecks(folded.length, checks.length)}</summary>
          {rows(folded)}
        </details>
      )}
    </>
  );
}
