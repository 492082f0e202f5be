import { own, words } from '../../words';
import { useBench } from '../store/bench';

/** The head of the page when it is printed: whose summary it is, and which file to print for the pattern itself. */
export function PrintHead() {
  const name = useBench((state) => state.project.name);
  return (
    <header className="print-head">
      <p className="print-name">{words`${own(name)}: a summary`}</p>
      <p>
        <strong>{words`Not to scale: cut nothing by this page.`}</strong>{' '}
        {words`For the pattern itself press “Print the pattern” at Paper and print that PDF at 100 %.`}
      </p>
    </header>
  );
}
