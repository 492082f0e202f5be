import { mm, say } from '../../length';
import { Group } from '../fields/Group';
import { QuantityField } from '../fields/QuantityField';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';

const ELASTIC = [
  { key: 'threaded', name: 'threaded' },
  { key: 'sewnOn', name: 'sewn on' },
];

const RAW_EDGE = [
  { key: 'overlocked', name: 'overlocked' },
  { key: 'turnedUnder', name: 'turned under' },
];

/** The waist casing, the hem and the seam allowances. */
export function EdgesStation() {
  return (
    <>
      <Group name="At the waist">
        <Casing />
      </Group>
      <Group name="At the hem">
        <Hem />
      </Group>
      <Group name="Seam allowances">
        <Allowances />
      </Group>
    </>
  );
}

function Allowances() {
  return (
    <>
      <QuantityField
        path="allowances.inseam"
        quantity={length}
        help={say`Outside the stitching line of the inner leg.`}
      />
      <QuantityField
        path="allowances.crotch"
        quantity={length}
        help={say`For both centre seams and the curve between.`}
      />
    </>
  );
}

function Casing() {
  const { elastic, rawEdge } = useBench((state) => state.project.waist);
  const measures = useBench((state) => state.draft.measures);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <QuantityField
        path="waist.elasticWidth"
        quantity={length}
        help={say`The casing stands ${mm(measures.casingHeight)} above the waist edge.`}
      />
      <QuantityField
        path="waist.turnOfCloth"
        quantity={length}
        help={say`What the fold itself takes up; more in a thick flannel.`}
      />
      <SwitchField
        path="waist.elastic"
        choices={ELASTIC}
        chosen={elastic}
        help={
          elastic === 'threaded'
            ? say`Drawn through the finished casing; ${mm(measures.catch)} more is caught in the stitching.`
            : say`Sewn to the raw edge, then folded over with it.`
        }
        onPick={(key) => choose('waist.elastic', key)}
      />
      {elastic === 'threaded' && (
        <SwitchField
          path="waist.rawEdge"
          choices={RAW_EDGE}
          chosen={rawEdge}
          help={say`Turned under needs a little more cloth than overlocked.`}
          onPick={(key) => choose('waist.rawEdge', key)}
        />
      )}
    </>
  );
}

function Hem() {
  return (
    <>
      <QuantityField path="hem.depth" quantity={length} help={say`How deep it is turned up inside the leg.`} />
      <QuantityField
        path="hem.turnUnder"
        quantity={length}
        help={say`Its raw edge, tucked in; nothing where it is overlocked.`}
      />
    </>
  );
}
