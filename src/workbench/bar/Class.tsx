import { Suspense } from 'react';
import { say, words } from '../../words';
import { openClass, useClassOpen } from '../class/class-open';
import { late } from '../faults/late';
import { DialogButton } from './DialogButton';

const close = () => useClassOpen.setState({ open: false });

const ClassDialog = late(() => import('../class/ClassDialog'), {
  what: say`The sheet for a class`,
  place: 'dialog',
  leave: close,
});

/** The class while it is open, whatever station lies beneath; its set may be under way while it is closed. */
export function Class() {
  const open = useClassOpen((state) => state.open);
  return (
    open && (
      <Suspense>
        <ClassDialog onClose={close} />
      </Suspense>
    )
  );
}

/** Opens the class; it is loaded when it is first wanted. */
export function ClassButton() {
  const open = useClassOpen((state) => state.open);
  return (
    <DialogButton look="bar-class" open={open} onOpen={openClass} ahead={ClassDialog.ahead}>
      {words`Class`}
    </DialogButton>
  );
}
