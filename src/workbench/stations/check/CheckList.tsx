import type { Check } from '../../../check';
import { goodChecks } from '../../finished/good-checks';
import { inOrder } from '../../finished/order';
import { CheckRow } from './CheckRow';
import { useLitCheck } from './place';

/** Every check of the finished draft: what wants a look, and the good ones folded to a line. */
export function CheckList({ checks }: { readonly checks: readonly Check[] }) {
  const lit = useLitCheck();
  const wanting = inOrder(checks).filter(({ verdict }) => verdict !== 'good');
  const good = checks.filter(({ verdict }) => verdict === 'good');
  const rows = (some: readonly Check[]) => (
    <ul className="checks">
      {some.map((check) => (
        <CheckRow key={check.id} check={check} lit={lit === check.id} />
      ))}
    </ul>
  );
  return (
    <>
      {wanting.length > 0 && rows(wanting)}
      {good.length > 0 && (
        <details className="checks-good">
          <summary>{goodChecks(good.length, checks.length)}</summary>
          {rows(good)}
        </details>
      )}
    </>
  );
}
