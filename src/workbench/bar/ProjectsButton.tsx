import { lazy, Suspense, useState } from 'react';

const load = () => import('../keep/ProjectsDialog');
const ProjectsDialog = lazy(load);

/** Opens the list of what is kept; the list and what it is made of are loaded when they are first wanted. */
export function ProjectsButton({ onOpenFile }: { readonly onOpenFile: () => void }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="bar-button"
        aria-haspopup="dialog"
        aria-expanded={open}
        onPointerEnter={() => void load()}
        onFocus={() => void load()}
        onClick={() => setOpen(true)}
      >
        Projects
      </button>
      {open && (
        <Suspense>
          <ProjectsDialog onClose={() => setOpen(false)} onOpenFile={onOpenFile} />
        </Suspense>
      )}
    </>
  );
}
