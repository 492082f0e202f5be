import { type ChalkLine, MOST_LINES, useChalk } from '../table/chalk/chalk';
import { Differences } from '../table/chalk/Differences';

/** The chalk lines: keep the present outline, name it, see what changed since, rub it out. */
export function ChalkCards() {
  const { lines, mark } = useChalk();
  return (
    <>
      {lines.map((line) => (
        <ChalkCard key={line.id} line={line} />
      ))}
      {lines.length < MOST_LINES && (
        <button type="button" className="button chalk-mark" onClick={mark}>
          <span>Keep this outline as a chalk line</span>
          {lines.length === 0 && <span className="take-what">then change things, and see both measured</span>}
        </button>
      )}
    </>
  );
}

function ChalkCard({ line }: { readonly line: ChalkLine }) {
  const { rename, show, rub } = useChalk.getState();
  const { id, name, shown, draft } = line;
  return (
    <div className="chalk-card">
      <input
        className="chalk-name"
        aria-label="Name of the chalk line"
        value={name}
        maxLength={40}
        autoComplete="off"
        onChange={(event) => rename(id, event.target.value)}
      />
      <Differences from={draft} />
      <p className="chalk-do">
        <button type="button" className="plain-link" onClick={() => show(id, !shown)}>
          {shown ? 'hide' : 'show'}
        </button>
        <button type="button" className="plain-link" onClick={() => rub(id)}>
          rub out
        </button>
      </p>
    </div>
  );
}
