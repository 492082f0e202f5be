import { useEffect, useState } from 'react';
import { said } from '../../words';
import { type Carried, carriedOf, DESTINATIONS } from './carried';
import { openFromFile } from './open';

/** A file may be dropped anywhere on the page: while it is carried over it, the page shows where it would go. */
export function Dropping() {
  const [carried, setCarried] = useState<Carried>();
  useEffect(() => {
    const onDragOver = (event: DragEvent) => {
      const file = [...(event.dataTransfer?.items ?? [])].find(({ kind }) => kind === 'file');
      if (!file) return;
      event.preventDefault();
      setCarried(carriedOf(file.type));
    };
    const onDragLeave = (event: DragEvent) => {
      // From one part of the page to the next it is still over it.
      if (event.relatedTarget === null) setCarried(undefined);
    };
    const onDrop = (event: DragEvent) => {
      setCarried(undefined);
      const file = event.dataTransfer?.files[0];
      if (!file) return;
      event.preventDefault();
      void openFromFile(file);
    };
    window.addEventListener('dragover', onDragOver);
    window.addEventListener('dragleave', onDragLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onDragOver);
      window.removeEventListener('dragleave', onDragLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, []);
  return (
    carried && (
      <div className="carried" data-carried={carried} role="status">
        <p className="carried-words">{said(DESTINATIONS[carried])}</p>
      </div>
    )
  );
}
