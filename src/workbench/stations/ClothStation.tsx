import { useEffect } from 'react';
import { mm, say, words } from '../../words';
import { Fold } from '../fields/Fold';
import { Group } from '../fields/Group';
import { PickField } from '../fields/PickField';
import { QuantityField } from '../fields/QuantityField';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { tellClothSteps } from '../store/cloth-told';
import { angle, length, percentage } from '../store/quantity';
import { ClothResult } from './cloth/ClothResult';
import { ClothSavings } from './cloth/ClothSavings';
import { ClothWidths } from './cloth/ClothWidths';
import { LaidPieces } from './cloth/LaidPieces';
import { ShoppingList } from './cloth/ShoppingList';

const LAYOUTS = [
  { key: 'best', name: say`least cloth` },
  { key: 'single', name: say`a single layer` },
  { key: 'foldedLengthwise', name: say`folded lengthwise` },
  { key: 'foldedCrosswise', name: say`folded crosswise` },
];

const WAYS = [
  { key: 'either', name: say`both directions` },
  { key: 'one', name: say`one direction (nap)` },
];

/** The cloth, how it lies, how much of it to buy, and everything else to buy. */
export default function ClothStation() {
  useEffect(tellClothSteps, []);
  return (
    <>
      <ClothResult />
      <Group name={words`The lay`}>
        <LaidPieces />
        <Laying />
      </Group>
      <Group name={words`Where cloth is saved`}>
        <ClothSavings />
      </Group>
      <Group name={words`Other widths`}>
        <ClothWidths />
      </Group>
      <Group name={words`To buy`}>
        <ShoppingList />
      </Group>
      <Fold
        name={words`Shrinking and matching`}
        paths={[
          'cloth.shrinkLength',
          'cloth.shrinkWidth',
          'cloth.repeat',
          'cloth.repeatAcross',
          'cloth.grainTolerance',
        ]}
      >
        <Shrinking />
        <Matching />
      </Fold>
    </>
  );
}

function Laying() {
  const { layout, oneWay } = useBench((state) => state.project.cloth);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <QuantityField path="cloth.width" quantity={length} help={say`From selvedge to selvedge, as it is bought.`} />
      <PickField
        path="cloth.layout"
        choices={LAYOUTS}
        chosen={layout}
        help={say`Folded, right sides together, both legs come out of one cut.`}
        onPick={(key) => choose('cloth.layout', key)}
      />
      <QuantityField
        path="cloth.piecedTip"
        quantity={length}
        help={say`The back fork’s tip, cut off this far inside the crotch point and sewn on again: ${mm(50)} is usual, ${mm(0)} leaves the leg whole.`}
      />
      <SwitchField
        path="cloth.oneWay"
        choices={WAYS}
        chosen={oneWay ? 'one' : 'either'}
        help={
          oneWay
            ? say`A nap, a print with an upper end, or uneven stripes: no piece is turned end for end.`
            : say`Pieces may be turned end for end.`
        }
        onPick={(key) => choose('cloth.oneWay', key === 'one')}
      />
    </>
  );
}

function Shrinking() {
  const { washFirst } = useBench((state) => state.project.cloth);
  const what = washFirst ? say`It is bought longer by that.` : say`The pieces are drawn larger by that.`;
  return (
    <>
      <QuantityField
        path="cloth.shrinkLength"
        quantity={percentage}
        help={say`Of its length, in the first wash: measure a washed piece. ${what}`}
      />
      <QuantityField path="cloth.shrinkWidth" quantity={percentage} help={say`Of its width, in the same wash.`} />
    </>
  );
}

function Matching() {
  return (
    <>
      <QuantityField
        path="cloth.repeat"
        quantity={length}
        help={say`Of a check, along the selvedge; ${mm(0)} for none. The hems then lie on the same line of it.`}
      />
      <QuantityField
        path="cloth.repeatAcross"
        quantity={length}
        help={say`Of stripes or a check, across. They mirror about centre front and back.`}
      />
      <QuantityField
        path="cloth.grainTolerance"
        quantity={angle}
        help={say`How far a piece may lean off the grain; best not at all.`}
      />
    </>
  );
}
