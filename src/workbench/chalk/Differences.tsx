import type { Draft } from '../../project';
import { printPhrase, said, words } from '../../words';
import { useBench } from '../store/bench';
import { differences } from './differences';

/** The measured differences between an earlier draft and the present one, in one line. */
export function Differences({ from }: { readonly from: Draft }) {
  const now = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const found = differences(from, now);
  if (found.length === 0) return <p className="differences quiet">{words`No measure differs.`}</p>;
  return (
    <ul className="differences">
      {found.map(({ name, by }) => (
        <li key={name.template}>
          {said(name)} <strong>{printPhrase(by, units)}</strong>
        </li>
      ))}
    </ul>
  );
}
