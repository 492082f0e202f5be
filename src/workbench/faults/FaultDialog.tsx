import { useEffect, useRef } from 'react';
import { words } from '../../words';
import { FaultCard } from './FaultCard';
import type { FaultTold } from './fault';

/** In place of a sheet that can't be drawn: the browser's own, since what draws the others may be what is broken. */
export function FaultDialog({ fault, onAgain, onLeave }: FaultTold) {
  const element = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const { current } = element;
    // Where there is none it is shown all the same, only not above everything else.
    if (current?.showModal) current.showModal();
    else current?.setAttribute('open', '');
  }, []);
  const leave = onLeave ?? onAgain;
  return (
    <dialog ref={element} className="sheet fault-sheet" aria-label={words`An error in Legwork`} onClose={leave}>
      <FaultCard fault={fault} onAgain={onAgain} onLeave={leave} />
    </dialog>
  );
}
