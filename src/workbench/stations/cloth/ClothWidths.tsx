import { useDeferredValue } from 'react';
import type { Layout, WidthAnswer } from '../../../cloth';
import type { Piece } from '../../../edges';
import { formatAmount, formatLength, plain, type Units } from '../../../length';
import { clothWidthsOf } from '../../../project';
import { mm, type Phrase, printPhrase, said, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { LayThumb } from './LayThumb';

/** How the cloth lies, as short as a column is narrow; its drawing stands above. */
const LAID: Readonly<Record<Layout, Phrase>> = {
  single: say`single`,
  foldedLengthwise: say`lengthwise`,
  foldedCrosswise: say`crosswise`,
};

/** The widths in which cloth is sold, side by side. It is made after the drawing has moved, because it takes a little. */
export function ClothWidths() {
  const draft = useDeferredValue(useBench((state) => state.draft));
  const units = useBench((state) => state.project.units);
  return (
    <table className="cloth-widths">
      <caption className="unseen">{words`How much to buy in the widths in which cloth is sold`}</caption>
      <thead>
        <tr>
          <th scope="col">{words`Width`}</th>
          <th scope="col">{words`Buy`}</th>
          <th scope="col">{words`Left over`}</th>
          <th scope="col">{words`Laid`}</th>
        </tr>
      </thead>
      <tbody>
        {clothWidthsOf(draft).map((row) => (
          <tr key={row.width} data-own={row.own || undefined}>
            <th scope="row">
              {formatLength(row.width, units)}
              {row.own && <span className="unseen"> {words`(chosen)`}</span>}
            </th>
            <Cells {...row} units={units} pieces={draft.pieces} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface CellsProps extends WidthAnswer {
  readonly units: Units;
  readonly pieces: readonly Piece[];
}

function Cells({ answer, units, pieces }: CellsProps) {
  if (!answer.fits)
    return <td colSpan={3}>{printPhrase(say`does not fit; ${mm(answer.widthWanted)} at least`, units)}</td>;
  const { toBuy, waste, layout } = answer.lay;
  return (
    <>
      <td>{formatAmount(toBuy, units)}</td>
      <td>{plain(waste * 100, 0)} %</td>
      <td>
        <LayThumb lay={answer.lay} pieces={pieces} />
        {said(LAID[layout])}
      </td>
    </>
  );
}
