import type { Units } from '../../length';
import { say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { MannerButtons } from '../look/MannerButtons';
import { Shortened } from '../look/Shortened';
import { saveToFile } from '../save/save';
import { useBench } from '../store/bench';
import { ClassButton } from './Class';
import { HelpButton } from './Help';
import { KeptLine } from './KeptLine';
import { NewButton } from './NewButton';
import { ProjectName } from './ProjectName';
import { ProjectsButton } from './ProjectsButton';
import { UndoRedo } from './UndoRedo';

const UNITS = [
  { key: 'cm', name: say`cm` },
  { key: 'inch', name: say`inch` },
];

/** The dark bar: whose pattern, in which unit, back and forth, and the files. */
export function Bar() {
  const units = useBench((state) => state.project.units);
  const { showUnits } = useBench.getState();
  return (
    <header className="bar">
      <h1 className="bar-product">Legwork</h1>
      <div className="bar-project">
        <ProjectName />
        <KeptLine />
      </div>
      <Switch quiet label={words`Unit`} choices={UNITS} chosen={units} onPick={(key) => showUnits(key as Units)} />
      <HelpButton />
      <span className="bar-actions">
        <UndoRedo />
        <MannerButtons />
        <NewButton />
        <ProjectsButton />
        <ClassButton />
        <button type="button" className="bar-button" onClick={saveToFile}>
          <Shortened short={words`Save a file`} whole={words`Save as a file`} />
        </button>
      </span>
    </header>
  );
}
