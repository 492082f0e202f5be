import { say, words } from '../../words';
import { Fold } from '../fields/Fold';
import { Group } from '../fields/Group';
import { QuantityField } from '../fields/QuantityField';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';
import { Cautions } from './Cautions';
import { HemFields } from './edges/HemFields';
import { PocketFields } from './edges/PocketFields';
import { WaistFields } from './edges/WaistFields';

/** The waist, the hem, a pocket and the seam allowances. */
export default function EdgesStation() {
  return (
    <>
      <Group name={words`At the waist`}>
        <WaistFields />
        <Cautions about={['waist.finish', 'waist.elasticWidth']} noted />
      </Group>
      <Group name={words`At the hem`}>
        <HemFields />
        <Cautions about={['hem.finish', 'hem.elasticWidth']} />
      </Group>
      <Group name={words`Pocket`}>
        <PocketFields />
      </Group>
      <Allowances />
    </>
  );
}

function Allowances() {
  const waist = useBench((state) => state.project.waist.finish);
  const hem = useBench((state) => state.project.hem.finish);
  const seamAtWaist = waist === 'separateCasing' || waist === 'knitBand' || waist === 'facedCasing';
  const seamAtHem = hem === 'contrastBand' || hem === 'ribCuff' || hem === 'facedHem';
  return (
    <Fold
      name={words`Seam allowances`}
      paths={[
        'allowances.inseam',
        'allowances.crotch',
        ...(seamAtWaist ? ['allowances.waist'] : []),
        ...(seamAtHem ? ['allowances.hem'] : []),
      ]}
    >
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
      {seamAtWaist && (
        <QuantityField
          path="allowances.waist"
          quantity={length}
          help={say`Where the waist is sewn to its own piece.`}
        />
      )}
      {seamAtHem && (
        <QuantityField path="allowances.hem" quantity={length} help={say`Where the hem is sewn to its own piece.`} />
      )}
    </Fold>
  );
}
