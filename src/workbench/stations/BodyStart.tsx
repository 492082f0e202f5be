import { useState } from 'react';
import { STARTING_BODIES, type StartingBody, type StartingKind, startingSource } from '../../body';
import { formatLength, type Units } from '../../length';
import { number, printPhrase, say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { useBench } from '../store/bench';

const KINDS = [
  { key: 'woman', name: say`woman` },
  { key: 'man', name: say`man` },
  { key: 'child', name: say`child` },
];

/** A body to start from where no tape is at hand: the middle of many people, filled in as one step to undo. */
export function BodyStart() {
  const units = useBench((state) => state.project.units);
  const label = useBench((state) => state.project.body.label);
  const now = useBench((state) => state.project.body.hipGirth ?? 1000);
  const { choose, tell } = useBench.getState();
  const [kind, setKind] = useState<StartingKind>('woman');
  const [picked, setPicked] = useState<number>();
  const bodies = STARTING_BODIES[kind];
  const start = bodies.find(({ by }) => by === picked) ?? nearest(bodies, kind === 'child' ? 6 : now);
  if (!start) return null;
  const source = printPhrase(startingSource(kind, start.people), units);
  const fill = () => {
    choose('body', { label, ...start.figures });
    tell({
      tone: 'told',
      text: words`The fields hold the middle values of ${number(start.people, 0)} people: now correct what you can measure.`,
    });
  };
  return (
    <details className="more">
      <summary>
        {words`Start from a body like mine`} <span className="quiet">{words`where no tape is at hand`}</span>
      </summary>
      <Switch
        label={words`Whose`}
        choices={KINDS}
        chosen={kind}
        onPick={(key) => {
          setKind(key as StartingKind);
          setPicked(undefined);
        }}
      />
      <div className="field">
        <label className="field-label" htmlFor="start-by">
          {kind === 'child' ? words`How old` : words`Hip about`}
        </label>
        <span className="field-box field-pick field-short">
          <select
            id="start-by"
            aria-describedby="start-by-help"
            value={start.by}
            onChange={(event) => setPicked(Number(event.target.value))}
          >
            {bodies.map(({ by }) => (
              <option key={by} value={by}>
                {chosenBy(kind, by, units)}
              </option>
            ))}
          </select>
        </span>
      </div>
      <p className="field-help" id="start-by-help">
        {source}
      </p>
      <button type="button" className="button" onClick={fill}>
        <span className="take-name">{words`Fill the fields`}</span>
        <span className="take-what">{words`Replaces the current measurements; undo brings them back.`}</span>
      </button>
    </details>
  );
}

const chosenBy = (kind: StartingKind, by: number, units: Units): string =>
  kind === 'child' ? words`${number(by, 0)} years` : formatLength(by, units);

function nearest(bodies: readonly StartingBody[], wanted: number): StartingBody | undefined {
  return [...bodies].sort((a, b) => Math.abs(a.by - wanted) - Math.abs(b.by - wanted))[0];
}
