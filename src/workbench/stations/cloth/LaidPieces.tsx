import { laidRows } from '../../../cloth';
import { clothOf } from '../../../project';
import { printPhrase, said, words } from '../../../words';
import { useBench } from '../../store/bench';

/** Which way up each piece lies, and how far its grainline is from the selvedge; nothing where none fits. */
export function LaidPieces() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const { answer } = clothOf(draft);
  if (!answer.fits) return null;
  const { placements } = answer.lay;
  return (
    <table className="cloth-widths">
      <caption>{words`Where each piece lies`}</caption>
      <tbody>
        {laidRows(answer.lay, draft.pieces).map(({ name, place }, i) => (
          <tr key={`${placements[i]?.piece.kind}${placements[i]?.copies[0]}`}>
            <th scope="row">{said(name)}</th>
            <td>{printPhrase(place, units)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
