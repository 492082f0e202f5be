import { Suspense, useRef } from 'react';
import { say, words } from '../../words';
import { late } from '../faults/late';
import { useProjectsOpen } from '../faults/projects-open';
import { FileInput } from '../fields/FileInput';
import { DRAWINGS } from '../open/carried';
import { openFromFile } from '../open/open';

const close = () => useProjectsOpen.setState({ open: false });

export const ProjectsDialog = late(() => import('../projects/ProjectsDialog'), {
  what: say`The list of projects`,
  place: 'dialog',
  leave: close,
});

/** The list of projects while it is open, and the way to one in a file: whatever became of the bar. */
export function Projects() {
  const open = useProjectsOpen((state) => state.open);
  const file = useRef<HTMLInputElement>(null);
  return (
    <>
      <FileInput
        opener={file}
        label={words`Project file`}
        accept={`.json,application/json,${DRAWINGS}`}
        onFiles={([chosen]) => chosen && void openFromFile(chosen)}
      />
      {open && (
        <Suspense>
          <ProjectsDialog onClose={close} onOpenFile={() => file.current?.click()} />
        </Suspense>
      )}
    </>
  );
}
