import { Tabs } from 'radix-ui';
import { words } from '../../words';
import { useAnewOpen } from '../faults/anew-open';
import { Dialog } from '../look/Dialog';
import { useKept } from '../shelf/kept';
import { useBench } from '../store/bench';
import { KeptBodies } from './KeptBodies';
import { KeptProjects } from './KeptProjects';
import { ThisProject } from './ThisProject';
import { WordsChoice } from './WordsChoice';

export interface ProjectsDialogProps {
  readonly onClose: () => void;
  readonly onOpenFile: () => void;
}

/** What is kept on this computer, and how the open project leaves it or comes in. */
export default function ProjectsDialog({ onClose, onOpenFile }: ProjectsDialogProps) {
  // Before there is a project, nothing can be saved of it or put into it.
  const begun = useBench((state) => state.begun);
  const offline = useKept((kept) => kept.offline);
  const about = offline
    ? words`Everything here is kept in this browser, on this computer only. Legwork works here without a network, too.`
    : words`Everything here is kept in this browser, on this computer only.`;
  return (
    <Dialog title={words`Projects`} about={about} onClose={onClose}>
      <Tabs.Root defaultValue="projects" className="tabs">
        <Tabs.List className="tab-list" aria-label={words`What is kept`}>
          <Tabs.Trigger className="tab" value="projects">
            {words`Projects`}
          </Tabs.Trigger>
          {begun && (
            <Tabs.Trigger className="tab" value="bodies">
              {words`Bodies`}
            </Tabs.Trigger>
          )}
        </Tabs.List>
        <Tabs.Content className="tab-page" value="projects">
          {begun && <ThisProject />}
          <div className="sheet-actions">
            {begun && (
              <button
                type="button"
                className="button"
                onClick={() => {
                  onClose();
                  useAnewOpen.setState({ open: true });
                }}
              >
                {words`New`}
              </button>
            )}
            <button
              type="button"
              className="button"
              onClick={() => {
                onClose();
                onOpenFile();
              }}
            >
              {words`Open a file`}
            </button>
          </div>
          {/* Last, because it comes a moment later: nothing may move under the hand that presses. */}
          <KeptProjects onDone={onClose} />
        </Tabs.Content>
        <Tabs.Content className="tab-page" value="bodies">
          <KeptBodies onDone={onClose} />
        </Tabs.Content>
      </Tabs.Root>
      <WordsChoice />
      <p className="field-help">
        <a href={`${import.meta.env.BASE_URL}licences.txt`} target="_blank" rel="noreferrer">
          {words`Licences of what Legwork is made of`}
        </a>
      </p>
    </Dialog>
  );
}
