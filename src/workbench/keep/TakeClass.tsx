import { lazy, Suspense, useState } from 'react';
import { TakeProgress } from './TakeProgress';
import { useTaking } from './taking';

const load = () => import('./ClassDialog');
const ClassDialog = lazy(load);

/** The way to a class's set; it may be under way while its sheet is closed. */
export function TakeClass() {
  const [open, setOpen] = useState(false);
  const busy = useTaking((state) => state.busy);
  return (
    <div className="take-one">
      <button
        type="button"
        className="button"
        aria-haspopup="dialog"
        aria-expanded={open}
        onPointerEnter={() => void load()}
        onFocus={() => void load()}
        onClick={() => setOpen(true)}
      >
        <span className="take-name">A class from a table</span>
        <span className="take-what">one body a row: patterns, fit sheets, handouts and a summary</span>
      </button>
      {busy?.kind === 'class' && !open && <TakeProgress {...busy} onStop={() => useTaking.getState().stop()} />}
      {open && (
        <Suspense>
          <ClassDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </div>
  );
}
