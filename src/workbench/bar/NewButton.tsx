import { words } from '../../words';
import { useAnewOpen } from '../faults/anew-open';
import { AnewDialog } from '../ways/Anew';

/** Begins anew, beside the list of what there is. */
export function NewButton() {
  const open = useAnewOpen((state) => state.open);
  return (
    <button
      type="button"
      className="bar-button bar-main"
      aria-haspopup="dialog"
      aria-expanded={open}
      onPointerEnter={AnewDialog.ahead}
      onFocus={AnewDialog.ahead}
      onClick={() => useAnewOpen.setState({ open: true })}
    >
      {words`New`}
    </button>
  );
}
