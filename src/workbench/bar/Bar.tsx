import type { Units } from '../../length';
import { Switch } from '../fields/Switch';
import { startMeasuring } from '../fields/start-measuring';
import { MannerButtons } from '../look/MannerButtons';
import { saveToFile } from '../save/save';
import { useBench } from '../store/bench';
import { KeptLine } from './KeptLine';
import { ProjectName } from './ProjectName';
import { ProjectsButton } from './ProjectsButton';
import { UndoRedo } from './UndoRedo';

const UNITS = [
  { key: 'cm', name: 'cm' },
  { key: 'inch', name: 'inch' },
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
      <Switch quiet label="Unit" choices={UNITS} chosen={units} onPick={(key) => showUnits(key as Units)} />
      <span className="bar-actions">
        <UndoRedo />
        <MannerButtons />
        <button type="button" className="bar-button bar-main" onClick={startMeasuring}>
          <span className="bar-what">Start with </span>my measurements
        </button>
        <ProjectsButton />
        <button type="button" className="bar-button" onClick={saveToFile}>
          Save
        </button>
      </span>
    </header>
  );
}
