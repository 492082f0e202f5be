import { words } from '../../words';
import { useAnewOpen } from '../faults/anew-open';
import { AnewDialog } from '../ways/Anew';
import { DialogButton } from './DialogButton';

/** Begins anew, beside the list of what there is. */
export function NewButton() {
  const open = useAnewOpen((state) => state.open);
  return (
    <DialogButton
      look="bar-main"
      open={open}
      onOpen={() => useAnewOpen.setState({ open: true })}
      ahead={AnewDialog.ahead}
    >
      {words`New`}
    </DialogButton>
  );
}
