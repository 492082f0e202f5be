import { words } from '../../words';
import { useProjectsOpen } from '../faults/projects-open';
import { DialogButton } from './DialogButton';
import { ProjectsDialog } from './Projects';

/** Opens the list of what is kept; the list and what it is made of are loaded when they are first wanted. */
export function ProjectsButton() {
  const open = useProjectsOpen((state) => state.open);
  return (
    <DialogButton
      look="bar-projects"
      open={open}
      onOpen={() => useProjectsOpen.setState({ open: true })}
      ahead={ProjectsDialog.ahead}
    >
      {words`Projects`}
    </DialogButton>
  );
}
