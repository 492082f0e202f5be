import { useEffect, useState } from 'react';
import {
  contradictionTold,
  type NumbersPair,
  numbersOf,
  pairByNumbers,
  TAPE_LENGTHS,
  TAPE_PLACES,
  type TapeLength,
} from '../../../trace';
import { say, words } from '../../../words';
import { Fold } from '../../fields/Fold';
import { Group } from '../../fields/Group';
import { QuantityField } from '../../fields/QuantityField';
import { Switch } from '../../fields/Switch';
import { useBench } from '../../store/bench';
import { length } from '../../store/quantity';
import { Darts } from './Darts';

const PARTS = [
  { key: 'front', name: say`Front` },
  { key: 'back', name: say`Back` },
] as const;

/** What a tape measures on both blocks: each length with where the tape lies, and how far a number contradicts the others. The drawing lights the tape of the field in hand. */
export function NumbersTable() {
  const [part, pick] = useState<keyof NumbersPair>('front');
  // Whoever is led to a field finds its block.
  const led = useBench(({ field }) => /^block\.(front|back)\./.exec(field ?? '')?.[1]);
  useEffect(() => {
    if (led === 'front' || led === 'back') pick(led);
  }, [led]);
  return (
    <>
      <p className="field-help">{words`Lay the block flat, its grainline upright, and measure to 1 mm. What you leave empty is estimated by the proportions of your block, and told.`}</p>
      <Switch
        label={words`Which block is measured`}
        choices={PARTS}
        chosen={part}
        onPick={(key) => pick(key === 'back' ? 'back' : 'front')}
      />
      {PARTS.map(({ key }) => (
        <div key={key} className="numbers" hidden={key !== part}>
          <PartFields part={key} />
        </div>
      ))}
    </>
  );
}

/** All fields of one block. */
function PartFields({ part }: { readonly part: keyof NumbersPair }) {
  const draft = useBench((state) => state.draft);
  const read = numbersOf(draft.origin.drafted.uncorrected[part]);
  const { block } = draft.project;
  const contradictions = block.source === 'numbers' ? pairByNumbers(block)[part].contradictions : [];
  const fields = (group: TapeLength['group']) =>
    TAPE_LENGTHS.filter((one) => one.group === group).map(({ key }) => {
      const contradiction = contradictions.find((one) => one.key === key);
      return (
        <QuantityField
          key={key}
          path={`block.${part}.${key}`}
          quantity={length}
          optional
          instead={read[key]}
          help={TAPE_PLACES[key]}
          doubt={contradiction && contradictionTold(contradiction)}
        />
      );
    });
  const paths = (group: TapeLength['group']) =>
    TAPE_LENGTHS.filter((one) => one.group === group).map(({ key }) => `block.${part}.${key}`);
  return (
    <>
      <Group name={words`Heights`}>{fields('heights')}</Group>
      <Group name={words`Widths`}>{fields('widths')}</Group>
      <Group name={words`At the centre`}>{fields('centre')}</Group>
      <Group name={words`Along the edges`}>{fields('edges')}</Group>
      <Fold name={words`How the grainline lies`} paths={paths('grain')}>
        {fields('grain')}
      </Fold>
      <Darts part={part} />
    </>
  );
}
