import { useId } from 'react';
import { type Draft, STATION_NAMES, STATIONS, type Station, sewingOf } from '../../project';
import { type Phrase, printPhrase, said, say, words } from '../../words';
import { Dialog } from '../look/Dialog';
import { useBench } from '../store/bench';
import { workingAt } from '../store/working-at';
import { useLeftOut } from '../working/left-out';
import { useShow } from './show-state';

/** What the keys do, beside the buttons. */
export const KEYS: readonly { readonly key: Phrase; readonly what: Phrase }[] = [
  { key: say`→, Page Down`, what: say`next` },
  { key: say`←, Page Up`, what: say`back` },
  { key: say`Space`, what: say`play or pause` },
  { key: say`B, full stop`, what: say`dark screen` },
  { key: say`1–8`, what: say`station` },
  { key: say`J`, what: say`the join, at the leg` },
  { key: say`W`, what: say`whole drawing` },
  { key: say`S`, what: say`this list` },
  { key: say`C`, what: say`chalkboard` },
  { key: say`U`, what: say`unit` },
  { key: say`+ − F`, what: say`zoom, fit` },
  { key: say`Esc`, what: say`leave` },
];

interface Shown {
  readonly id: string;
  readonly sentence: Phrase;
}

const stepsAt = (draft: Draft, station: Station): readonly Shown[] =>
  station === 'sew' ? sewingOf(draft).map(({ id, title }) => ({ id, sentence: title })) : workingAt(draft, station);

/** Which steps a class is shown, chosen before and kept; and what the keys do. */
export default function ShowSteps() {
  const draft = useBench((state) => state.draft);
  return (
    <Dialog
      wide
      title={words`Steps to show`}
      about={words`What is not ticked is left out, in every show from now on.`}
      onClose={() => useShow.setState({ choosing: false })}
    >
      {STATIONS.map((station) => (
        <StationSteps key={station} station={station} steps={stepsAt(draft, station)} />
      ))}
      <h3 className="sheet-name">{words`Keys`}</h3>
      <dl className="show-keys">
        {KEYS.map(({ key, what }) => (
          <div key={key.template}>
            <dt>
              <kbd>{said(key)}</kbd>
            </dt>
            <dd>{said(what)}</dd>
          </div>
        ))}
      </dl>
    </Dialog>
  );
}

function StationSteps({ station, steps }: { readonly station: Station; readonly steps: readonly Shown[] }) {
  const units = useBench((state) => state.project.units);
  const { ids, leave } = useLeftOut();
  const name = useId();
  if (steps.length === 0) return null;
  const all = steps.map(({ id }) => id);
  const some = steps.filter(({ id }) => !ids.has(id)).length;
  return (
    <fieldset className="show-choice">
      <legend>
        <label className="class-part">
          <input
            type="checkbox"
            checked={some === steps.length}
            ref={(box) => {
              if (box) box.indeterminate = some > 0 && some < steps.length;
            }}
            onChange={({ currentTarget }) => leave(all, !currentTarget.checked)}
          />
          {said(STATION_NAMES[station])}
        </label>
      </legend>
      {steps.map(({ id, sentence }) => (
        <label key={id} className="class-part">
          <input
            type="checkbox"
            name={name}
            checked={!ids.has(id)}
            onChange={({ currentTarget }) => leave([id], !currentTarget.checked)}
          />
          <span>{printPhrase(sentence, units)}</span>
        </label>
      ))}
    </fieldset>
  );
}
