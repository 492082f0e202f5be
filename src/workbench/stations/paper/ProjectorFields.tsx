import { say } from '../../../words';
import { PickField } from '../../fields/PickField';
import { QuantityField } from '../../fields/QuantityField';
import { useBench } from '../../store/bench';
import { thickness } from '../../store/quantity';

const GROUNDS = [
  { key: 'dark', name: say`light on dark` },
  { key: 'light', name: say`dark on light` },
];

/** How the projector's file is drawn. */
export function ProjectorFields() {
  const ground = useBench((state) => state.project.projector.ground);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <QuantityField path="projector.line" quantity={thickness} help={say`Thicker where the room is bright.`} />
      <PickField
        path="projector.ground"
        choices={GROUNDS}
        chosen={ground}
        help={say`Light lines show the cloth between them.`}
        onPick={(key) => choose('projector.ground', key)}
      />
    </>
  );
}
