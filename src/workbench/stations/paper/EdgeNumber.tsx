import { edgeLines } from '../../../sheets';
import { mm, number, printPhrase, say, words } from '../../../words';
import { useBench } from '../../store/bench';

const ID = 'edge-number';
/** Lengths that differ by less are the same margin. */
const SAME = 0.05;

/** The number that was read at the edges of the test page: the margin follows it. */
export function EdgeNumber() {
  const units = useBench((state) => state.project.units);
  const margin = useBench((state) => state.draft.project.paper.margin);
  const choose = useBench((state) => state.choose);
  const lines = edgeLines(units);
  const chosen = lines.find((line) => Math.abs(line.margin - margin) < SAME);
  const pick = (text: string) => {
    const line = lines.find((one) => `${one.number}` === text);
    if (line) choose('paper.margin', line.margin);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={ID}>
        {words`Number at the edges`}
      </label>
      <span className="field-box field-pick">
        <select
          id={ID}
          value={chosen?.number ?? ''}
          aria-describedby={`${ID}-help`}
          onChange={(event) => pick(event.target.value)}
        >
          {!chosen && <option value="">{words`not read`}</option>}
          {lines.map((line) => (
            <option key={line.number} value={line.number}>
              {printPhrase(say`${number(line.number, 0)}: margin ${mm(line.margin)}`, units)}
            </option>
          ))}
        </select>
      </span>
      <div className="field-foot">
        <p className="field-help" id={`${ID}-help`}>
          {words`On the test page, the lowest number whose line is printed whole; of the four edges, the highest.`}
        </p>
      </div>
    </div>
  );
}
