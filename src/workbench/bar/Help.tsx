import { Suspense } from 'react';
import { say, words } from '../../words';
import { late } from '../faults/late';
import { openHelp, useHelpOpen } from '../help/help-open';
import { DialogButton } from './DialogButton';

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
    <DialogButton
      aria-label={words`Help`}
      title={words`Help`}
      aria-keyshortcuts="?"
      open={open}
      onOpen={openHelp}
      ahead={HelpDialog.ahead}
    >
      ?
    </DialogButton>
  );
}
