import { words } from '../../words';
import { useProjectsOpen } from '../faults/projects-open';
import { ProjectsDialog } from './Projects';

/** Opens the list of what is kept; the list and what it is made of are loaded when they are first wanted. */
export function ProjectsButton() {
  const open = useProjectsOpen((state) => state.open);
  return (
    <button
      type="button"
      className="bar-button bar-projects"
      aria-haspopup="dialog"
      aria-expanded={open}
      onPointerEnter={ProjectsDialog.ahead}
      onFocus={ProjectsDialog.ahead}
      onClick={() => useProjectsOpen.setState({ open: true })}
    >
      {words`Projects`}
    </button>
  );
}
