import { Suspense } from 'react';
import { say, words } from '../../words';
import { late } from '../faults/late';
import { openHelp, useHelpOpen } from '../help/help-open';

const close = () => useHelpOpen.setState({ open: false });

const HelpDialog = late(() => import('../help/HelpDialog'), { what: say`The help`, place: 'dialog', leave: close });

/** The help while it is open, over whatever is shown. */
export function Help() {
  const open = useHelpOpen((state) => state.open);
  return (
    open && (
      <Suspense>
        <HelpDialog onClose={close} />
      </Suspense>
    )
  );
}

/** Opens the help, as its key does. */
export function HelpButton() {
  const open = useHelpOpen((state) => state.open);
  return (
    <button
      type="button"
      className="bar-button"
      aria-label={words`Help`}
      title={words`Help`}
      aria-haspopup="dialog"
      aria-expanded={open}
      aria-keyshortcuts="?"
      onPointerEnter={HelpDialog.ahead}
      onFocus={HelpDialog.ahead}
      onClick={openHelp}
    >
      ?
    </button>
  );
}
