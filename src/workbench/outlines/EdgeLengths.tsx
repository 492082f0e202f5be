import { useState } from 'react';
import type { BlockEdge } from '../../block';
import { formatLength, type Mm } from '../../length';
import { pathLength } from '../../plane';
import { type TracedPair, tracedEdge } from '../../trace';
import { inside, words } from '../../words';
import { LengthsTable } from '../photo/LengthsTable';
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
  const [known, setKnown] = useState<{ readonly part: Part; readonly name: BlockEdge }>();
  const long = (part: Part, name: BlockEdge): Mm => pathLength(tracedEdge(pair[part], name));
  return (
    <>
      <LengthsTable
        caption={words`Lengths: press one that you know, if they are wrong`}
        lengthOf={(part, name) => (
          <button
            type="button"
            className="plain-link"
            aria-pressed={known?.part === part && known.name === name}
            onClick={() => setKnown({ part, name })}
          >
            {formatLength(long(part, name), units)}
          </button>
        )}
      />
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
