import { own, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { sayAloud } from '../aloud/say-aloud';
import { type ChalkLine, MOST_LINES, useChalk } from '../chalk/chalk';
import { Differences } from '../chalk/Differences';

/** The chalk lines: keep the present outline, name it, see what changed since, rub it out. */
export default function ChalkCards() {
  const lines = useChalk((state) => state.lines);
  return (
    <>
      {lines.map((line) => (
        <ChalkCard key={line.id} line={line} />
      ))}
      {lines.length < MOST_LINES && (
        <button type="button" className="button chalk-mark" onClick={markAloud}>
          <span>{words`Keep this outline as a chalk line`}</span>
          {lines.length === 0 && <span className="take-what">{words`then change things, and see both measured`}</span>}
        </button>
      )}
    </>
  );
}

function markAloud(): void {
  useChalk.getState().mark();
  const { lines } = useChalk.getState();
  sayAloud(words`Kept as ${own(lines.at(-1)?.name ?? '')}.`);
  // With the last line that there is room for, the button goes.
  if (lines.length >= MOST_LINES) focusOn('.chalk-card:last-of-type .chalk-name');
}

function rubAloud({ id, name }: ChalkLine): void {
  useChalk.getState().rub(id);
  sayAloud(words`Rubbed out: ${own(name)}.`);
  focusOn('.chalk-mark');
}

function ChalkCard({ line }: { readonly line: ChalkLine }) {
  const { rename, show } = useChalk.getState();
  const { id, name, shown, draft } = line;
  return (
    <div className="chalk-card">
      <input
        className="chalk-name"
        aria-label={words`Name of the chalk line`}
        value={name}
        maxLength={40}
        autoComplete="off"
        onChange={(event) => rename(id, event.target.value)}
      />
      <Differences from={draft} />
      <p className="chalk-do">
        <button type="button" className="plain-link" onClick={() => show(id, !shown)}>
          {shown ? words`hide` : words`show`}
        </button>
        <button type="button" className="plain-link" onClick={() => rubAloud(line)}>
          {words`rub out`}
        </button>
      </p>
    </div>
  );
}
