import { memo, Suspense, useState } from 'react';
import { say, words } from '../../words';
import { late } from '../faults/late';
import { ClassProgress } from './ClassProgress';

const ClassDialog = late(() => import('./ClassDialog'), {
  what: say`The sheet for a class`,
  place: 'dialog',
  leave: ({ onClose }) => onClose(),
});

/**
 * The way to a class's set; it may be under way while its sheet is closed. It takes no part in the progress, which is told
 * many times a second: a sheet with a thousand rows would be drawn again each time.
 */
export const TakeClass = memo(function TakeClass() {
  const [open, setOpen] = useState(false);
  return (
    <div className="take-one">
      <button
        type="button"
        className="button"
        aria-haspopup="dialog"
        aria-expanded={open}
        onPointerEnter={ClassDialog.ahead}
        onFocus={ClassDialog.ahead}
        onClick={() => setOpen(true)}
      >
        <span className="take-name">{words`A class from a table`}</span>
        <span className="take-what">{words`one body a row: patterns, fit sheets, handouts and a summary`}</span>
      </button>
      {!open && <ClassProgress />}
      {open && (
        <Suspense>
          <ClassDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </div>
  );
});
