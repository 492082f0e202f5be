import { STATIONS } from '../../project';
import { words } from '../../words';
import { Stop } from './Stop';

/** The stations as one thread of running stitches: the open one holds its inputs, the others say what they came to. */
export function Path() {
  return (
    <section className="path" aria-label={words`Stations`}>
      <ol className="thread">
        {STATIONS.map((station) => (
          <Stop key={station} station={station} />
        ))}
      </ol>
    </section>
  );
}
