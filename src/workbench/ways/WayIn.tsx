import type { Units } from '../../length';
import { say, words } from '../../words';
import { useProjectsOpen } from '../faults/projects-open';
import { Switch } from '../fields/Switch';
import { useBench } from '../store/bench';
import { Ways } from './Ways';

const UNITS = [
  { key: 'cm', name: say`centimetres` },
  { key: 'inch', name: say`inches` },
];

/** What somebody sees who has nothing here yet: what this is, in a sentence, and the ways to begin. */
export function WayIn() {
  const units = useBench((state) => state.project.units);
  const { showUnits } = useBench.getState();
  return (
    <main className="way-in">
      <h1 className="way-product">Legwork</h1>
      <p className="way-sentence">
        {words`Draft loose trousers or pyjama bottoms without side seams for any body, and print the pattern at true size.`}
      </p>
      <Ways />
      <div className="way-foot">
        <Switch label={words`I measure in`} choices={UNITS} chosen={units} onPick={(key) => showUnits(key as Units)} />
        <button type="button" className="plain-link" onClick={() => useProjectsOpen.setState({ open: true })}>
          {words`Open a project that I have`}
        </button>
      </div>
    </main>
  );
}
