import { useState } from 'react';
import { formatLength, type Mm } from '../../length';
import { mapTuple, pathLength } from '../../plane';
import { BLOCK_EDGES, type TracedPair } from '../../trace';
import { inside, said, words } from '../../words';
import { QuantityEntry } from '../photo/QuantityEntry';
import { EDGE_NAMES } from '../photo/words';
import { useBench } from '../store/bench';
import { type Part, scaleBy } from './outlines-store';

/** No edge of a block is shorter or longer than this, millimetres. */
const [SHORTEST, LONGEST] = [10, 2000];

interface EdgeLengthsProps {
  readonly pair: TracedPair;
}

/** How long each edge is; one of them that is known makes the whole drawing as large as it says. */
export function EdgeLengths({ pair }: EdgeLengthsProps) {
  const units = useBench((state) => state.project.units);
  const [known, setKnown] = useState<{ readonly part: Part; readonly name: (typeof BLOCK_EDGES)[number] }>();
  const long = (part: Part, name: (typeof BLOCK_EDGES)[number]): Mm =>
    pathLength(pair[part].edges[name].map((curve) => mapTuple(curve, ([x, y]) => ({ x, y }))));
  return (
    <>
      <table className="photo-lengths">
        <caption className="field-label">{words`Lengths: press one that you know, if they are wrong`}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{words`Front`}</th>
            <th scope="col">{words`Back`}</th>
          </tr>
        </thead>
        <tbody>
          {BLOCK_EDGES.map((name) => (
            <tr key={name}>
              <th scope="row">{said(EDGE_NAMES[name])}</th>
              {(['front', 'back'] as const).map((part) => (
                <td key={part}>
                  <button
                    type="button"
                    className="plain-link"
                    aria-pressed={known?.part === part && known.name === name}
                    onClick={() => setKnown({ part, name })}
                  >
                    {formatLength(long(part, name), units)}
                  </button>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {known && (
        <QuantityEntry
          key={`${known.part} ${known.name}`}
          label={
            known.part === 'front'
              ? words`Front, ${inside(EDGE_NAMES[known.name])}: how long it is`
              : words`Back, ${inside(EDGE_NAMES[known.name])}: how long it is`
          }
          help={words`Everything on the drawing becomes larger or smaller with it.`}
          value={long(known.part, known.name)}
          lowest={SHORTEST}
          highest={LONGEST}
          onValue={(value) => scaleBy(value / long(known.part, known.name), `${known.part} ${known.name}`)}
        />
      )}
    </>
  );
}
