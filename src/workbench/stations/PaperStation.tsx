import { number, say } from '../../length';
import { PAPER_SIZES } from '../../sheets';
import { PickField } from '../fields/PickField';
import { QuantityField } from '../fields/QuantityField';
import { Take } from '../keep/Take';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';

const PAPERS = PAPER_SIZES.map(({ name }) => ({ key: name, name }));

const ORIENTATIONS = [
  { key: 'auto', name: 'fewest sheets' },
  { key: 'portrait', name: 'upright' },
  { key: 'landscape', name: 'lying' },
];

/** How the pattern comes to paper, and the files to take away. */
export function PaperStation() {
  const paper = useBench((state) => state.project.paper);
  const plan = useBench((state) => state.draft.sheets);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <PickField
        path="paper.sheet"
        choices={PAPERS}
        chosen={paper.sheet}
        help={say`${number(plan.sheets.length)} sheets in ${number(plan.columns)} columns and ${number(plan.rows)} rows; never fewer than ${number(plan.lowerBound)}.`}
        onPick={(key) => choose('paper.sheet', key)}
      />
      <PickField
        path="paper.orientation"
        choices={ORIENTATIONS}
        chosen={paper.orientation}
        onPick={(key) => choose('paper.orientation', key)}
      />
      <QuantityField path="paper.margin" quantity={length} help={say`What the printer can not reach, all round.`} />
      <QuantityField
        path="paper.overlap"
        quantity={length}
        help={say`How far one sheet lies under the next for gluing; 0 to butt and tape.`}
      />
      <Take />
    </>
  );
}
