import { NO_DIFFERENCES, type SideDifferences } from '../../leg';
import { type Phrase, said, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { Group } from '../fields/Group';
import { QuantityField } from '../fields/QuantityField';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { length } from '../store/quantity';

/** What one side may have more, each with what it does to that leg alone. */
const MORE: readonly { readonly key: keyof SideDifferences; readonly help: Phrase }[] = [
  { key: 'fullerHip', help: say`The leg gets this much wider, half in front and half behind.` },
  { key: 'fullerSeat', help: say`The leg gets this much wider behind.` },
  { key: 'higherHip', help: say`The waist edge lies this much higher over the side, and not at the centres.` },
  { key: 'longerLeg', help: say`Both inseams get this much longer.` },
];

const SIDES = [
  { side: 'left', name: say`Left, as worn` },
  { side: 'right', name: say`Right, as worn` },
] as const;

/** What one side of the body has more than the other: opened by hand, and taken back in one press. */
export function LeftRight() {
  const sides = useBench((state) => state.project.sides);
  const { choose } = useBench.getState();
  if (!sides) {
    return (
      <button
        type="button"
        className="button sided"
        onClick={() => {
          choose('sides', { left: NO_DIFFERENCES, right: NO_DIFFERENCES });
          focusOn(`#${fieldId('sides.left.fullerHip')}`);
        }}
      >
        {words`Left and right differ`}
      </button>
    );
  }
  return (
    <>
      {SIDES.map(({ side, name }) => (
        <Group key={side} name={said(name)}>
          {MORE.map(({ key, help }) => (
            <QuantityField key={key} path={`sides.${side}.${key}`} quantity={length} help={help} />
          ))}
        </Group>
      ))}
      <button
        type="button"
        className="button"
        onClick={() => {
          choose('sides', null);
          focusOn('.sided');
        }}
      >
        {words`Left and right are alike`}
      </button>
    </>
  );
}
