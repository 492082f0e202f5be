import { NO_CORRECTIONS } from '../../block';
import { say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { Differences } from '../chalk/Differences';
import { useFirstCut } from '../chalk/first-cut';
import { Group } from '../fields/Group';
import { QuantityField } from '../fields/QuantityField';
import { useBench } from '../store/bench';
import { fieldId } from '../store/field-id';
import { length } from '../store/quantity';

/** What is seen on the body when the trousers are worn, each with the amount that corrects it. */
const SEEN = [
  {
    key: 'flatSeat',
    help: say`Folds under the seat: 1 cm or ⅜ in is usual; it comes off the back extension and the back rise.`,
  },
  {
    key: 'fullSeat',
    help: say`Drags from the seat to the crotch: the back extension and the back rise get longer; 1 cm or ⅜ in is usual.`,
  },
  { key: 'fullThigh', help: say`Lines towards the crotch: both extensions get longer; 1 cm or ⅜ in is usual.` },
  { key: 'swayBack', help: say`A pool above the seat: the centre back waist comes down; 1 cm or ⅜ in is usual.` },
  {
    key: 'prominentAbdomen',
    help: say`The waist dips over the belly: the centre front waist goes up; 1.5 cm or ⅝ in is usual.`,
  },
  { key: 'sittingPull', help: say`Pulls down when sitting: the back rise gets longer; 1.5 cm or ⅝ in is usual.` },
  {
    key: 'seated',
    help: say`Worn sitting, all day or in a wheelchair: centre front goes down and centre back up, and the leg gets longer; 4 cm or 1½ in is usual.`,
  },
  { key: 'knockKnees', help: say`Drags at the inner knee: both inseams are let out there; 8 mm or ⅜ in is usual.` },
] as const;

/** The corrections after wearing: opened by hand, each adjustable, each undoable. */
export function AfterWearing() {
  const fit = useBench((state) => state.project.fit);
  const choose = useBench((state) => state.choose);
  if (!fit) {
    return (
      <button
        type="button"
        className="button wearing"
        onClick={() => {
          choose('fit', NO_CORRECTIONS);
          focusOn(`#${fieldId('fit.flatSeat')}`);
        }}
      >
        {words`I wore them: correct what I see`}
      </button>
    );
  }
  return (
    <Group name={words`After wearing`}>
      {SEEN.map(({ key, help }) => (
        <QuantityField key={key} path={`fit.${key}`} quantity={length} help={help} />
      ))}
      <Corrected />
      <button
        type="button"
        className="button"
        onClick={() => {
          choose('fit', null);
          focusOn('.wearing');
        }}
      >
        {words`Take the corrections back`}
      </button>
    </Group>
  );
}

/** What the corrections came to, against the outline that was worn: dotted on the drawing. */
function Corrected() {
  const firstCut = useFirstCut();
  if (!firstCut)
    return <p className="field-help">{words`Nothing is corrected yet: the drawing shows what was worn.`}</p>;
  return (
    <div className="corrected">
      <p className="field-help">{words`The dotted line is what was worn. Against it:`}</p>
      <Differences from={firstCut} />
    </div>
  );
}
