import { useDeferredValue } from 'react';
import { LAYOUT_WORDS, type WidthAnswer } from '../../../cloth';
import { formatAmount, formatLength, plain, type Units } from '../../../length';
import { clothWidthsOf } from '../../../project';
import { useBench } from '../../store/bench';

/** The widths in which cloth is sold, side by side. It is made after the drawing has moved, because it takes a little. */
export function ClothWidths() {
  const draft = useDeferredValue(useBench((state) => state.draft));
  const units = useBench((state) => state.project.units);
  return (
    <table className="cloth-widths">
      <caption className="unseen">How much to buy in the widths in which cloth is sold</caption>
      <thead>
        <tr>
          <th scope="col">Width</th>
          <th scope="col">Buy</th>
          <th scope="col">Left over</th>
          <th scope="col">Laid</th>
        </tr>
      </thead>
      <tbody>
        {clothWidthsOf(draft).map((row) => (
          <tr key={row.width} data-own={row.own || undefined}>
            <th scope="row">
              {formatLength(row.width, units)}
              {row.own && <span className="unseen"> (chosen)</span>}
            </th>
            <Cells {...row} units={units} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Cells({ answer, units }: WidthAnswer & { readonly units: Units }) {
  if (!answer.fits) return <td colSpan={3}>does not fit; {formatLength(answer.widthWanted, units)} at least</td>;
  const { toBuy, waste, layout } = answer.lay;
  return (
    <>
      <td>{formatAmount(toBuy, units)}</td>
      <td>{plain(waste * 100, 0)} %</td>
      <td>{LAYOUT_WORDS[layout]}</td>
    </>
  );
}
