import { useRef } from 'react';
import type { Units } from '../../length';
import { FileInput } from '../fields/FileInput';
import { Switch } from '../fields/Switch';
import { openFromFile } from '../keep/open';
import { saveToFile } from '../keep/save';
import { MannerButtons } from '../look/MannerButtons';
import { startMeasuring } from '../stations/start-measuring';
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
  const file = useRef<HTMLInputElement>(null);
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
        <ProjectsButton onOpenFile={() => file.current?.click()} />
        <button type="button" className="bar-button" onClick={saveToFile}>
          Save
        </button>
      </span>
      <FileInput
        opener={file}
        label="Project file"
        accept=".json,application/json,.svg,image/svg+xml"
        onFiles={([chosen]) => chosen && void openFromFile(chosen)}
      />
    </header>
  );
}
