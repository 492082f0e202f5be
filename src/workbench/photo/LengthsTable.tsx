import type { ReactNode } from 'react';
import type { BlockEdge } from '../../block';
import { BLOCK_EDGES } from '../../trace';
import { said, words } from '../../words';
import { EDGE_NAMES } from './words';
import type { Part } from './work';

/** What there is to say of each edge's length, front and back beside each other. */
export function LengthsTable({
  caption,
  lengthOf,
}: {
  readonly caption: string;
  readonly lengthOf: (part: Part, name: BlockEdge) => ReactNode;
}) {
  return (
    <table className="photo-lengths">
      <caption className="field-label">{caption}</caption>
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
            <td>{lengthOf('front', name)}</td>
            <td>{lengthOf('back', name)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
