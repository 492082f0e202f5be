import { edgeLines } from '../../../sheets';
import { mm, number, printPhrase, say, words } from '../../../words';
import { useBench } from '../../store/bench';

const ID = 'edge-number';
/** Lengths that differ by less are the same margin. */
const SAME = 0.05;

/** The number that was read at the edges of the test page: how near the printer prints, and the margin follows it. */
export function EdgeNumber() {
  const units = useBench((state) => state.project.units);
  const read = useBench((state) => state.project.paper.printerMargin);
  const lines = edgeLines(units);
  const chosen = lines.find((line) => read !== 'auto' && Math.abs(line.margin - read) < SAME);
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
          onChange={(event) => noteMargin(lines.find((line) => `${line.number}` === event.target.value)?.margin)}
        >
          <option value="">
            {chosen || read === 'auto' ? words`not read` : printPhrase(say`margin ${mm(read)}`, units)}
          </option>
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

/** Takes what was read, and the margin with it, as one change; undefined where it doesn't count any more. */
function noteMargin(margin: number | undefined): void {
  const { choose, remedy } = useBench.getState();
  if (margin === undefined) choose('paper.printerMargin', 'auto');
  else {
    const label = say`Number at the edges`;
    const changes = (['paper.printerMargin', 'paper.margin'] as const).map((path) => ({ path, value: margin }));
    remedy({ id: 'printer-margin', fix: { label, changes } });
  }
}
