import { said, say, words } from '../../words';
import { KEYS as SHOW_KEYS } from '../show/ShowSteps';
import { KEYS } from './keys';

/** The keys, by where they are answered: folded where nobody has any. */
export const KeyList = () => (
  <details className="help-kind" open={window.matchMedia?.('(hover: none)').matches !== true}>
    <summary>{words`Keys`}</summary>
    <div className="help-keys">
      {[...KEYS, { where: say`In show mode`, keys: SHOW_KEYS }].map(({ where, keys }) => (
        <div key={where.template}>
          <h3>{said(where)}</h3>
          <dl>
            {keys.map(({ key, what }) => (
              <div key={key.template}>
                <dt>
                  <kbd>{said(key)}</kbd>
                </dt>
                <dd>{said(what)}</dd>
              </div>
            ))}
          </dl>
        </div>
      ))}
    </div>
  </details>
);
