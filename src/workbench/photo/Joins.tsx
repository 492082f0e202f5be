import { useState } from 'react';
import { number, say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { addJoin, usePhoto } from './photo-store';

/** Places that this photograph and another show: they join both on one floor. */
export function Joins({ index }: { readonly index: number }) {
  const shots = usePhoto((state) => state.work.shots);
  const others = shots.map((_, i) => i).filter((i) => i !== index);
  const [asked, ask] = useState(others[0] ?? 0);
  const other = others.includes(asked) ? asked : (others[0] ?? 0);
  return (
    <fieldset className="group">
      <legend>{words`Places on two photographs`}</legend>
      <p className="field-help">
        {words`A cross on the paper, a corner of a tile: lay the same number on the same place of both. Four or more join a photograph without marks of its own; the farther apart, the truer.`}
      </p>
      {others.length > 1 && (
        <Switch
          label={words`Also on`}
          choices={others.map((i) => ({ key: String(i), name: say`photograph ${number(i + 1, 0)}` }))}
          chosen={String(other)}
          onPick={(key) => ask(Number(key))}
        />
      )}
      <button type="button" className="button" onClick={() => addJoin([index, other])}>
        <span className="take-name">{words`Add a place`}</span>
        <span className="take-what">{words`on this photograph and on photograph ${number(other + 1, 0)}`}</span>
      </button>
    </fieldset>
  );
}
