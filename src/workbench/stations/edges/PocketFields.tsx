import { groupAnew } from '../../../project';
import { say, words } from '../../../words';
import { Fold } from '../../fields/Fold';
import { PickField } from '../../fields/PickField';
import { QuantityField } from '../../fields/QuantityField';
import { useBench } from '../../store/bench';
import { length } from '../../store/quantity';

const KINDS = [
  { key: 'none', name: say`none` },
  { key: 'back1', name: say`one patch, behind` },
  { key: 'back2', name: say`two patches, behind` },
  { key: 'front2', name: say`two patches, in front` },
];

const CHOSEN = {
  back1: { part: 'back', count: 1 },
  back2: { part: 'back', count: 2 },
  front2: { part: 'front', count: 2 },
} as const;

/** A patch pocket, or none. */
export function PocketFields() {
  const { pocket, units } = useBench((state) => state.project);
  const choose = useBench((state) => state.choose);
  const pick = (key: string) => {
    const kind = CHOSEN[key as keyof typeof CHOSEN];
    choose('pocket', kind === undefined ? null : { ...groupAnew('pocket', units), ...pocket, ...kind });
  };
  return (
    <>
      <PickField
        path="pocket"
        choices={KINDS}
        chosen={pocket ? `${pocket.part}${pocket.count}` : 'none'}
        help={say`A patch on the leg: there is no side seam to set one in, and no fly.`}
        onPick={pick}
      />
      {pocket && (
        <Fold name={words`Size of the pocket`} paths={['pocket.width', 'pocket.height', 'pocket.facing']}>
          <QuantityField path="pocket.width" quantity={length} help={say`Finished, across the opening.`} />
          <QuantityField path="pocket.height" quantity={length} help={say`Finished, from the opening down.`} />
          <QuantityField path="pocket.facing" quantity={length} help={say`Turned inside at the opening.`} />
        </Fold>
      )}
    </>
  );
}
