import { useEffect, useState } from 'react';
import { own, words } from '../../words';
import type { FaultTold } from './fault';
import { reloadPage } from './leaving';
import { type Why, waitingNewer, whyNotLoaded } from './newer';
import { saveAnyhow } from './save-anyhow';

/** A late part that did not come: why, as far as can be found out, and the way to get it. */
export function LateWords({ fault, onAgain, onLeave }: FaultTold) {
  const [why, setWhy] = useState<Why>('unknown');
  useEffect(() => {
    let gone = false;
    void whyNotLoaded().then((found) => !gone && setWhy(found));
    // Once the network is back nobody needs to press anything.
    const back = () => onAgain();
    window.addEventListener('online', back);
    return () => {
      gone = true;
      window.removeEventListener('online', back);
    };
  }, [onAgain]);
  const use = () => void (waitingNewer() ?? reloadPage)();
  return (
    <>
      <p role="alert">
        {why === 'newer' ? (
          <>
            <strong>{words`A newer Legwork is here.`}</strong>{' '}
            {words`${own(fault.what)} can’t be loaded into the one that is open; your project goes along.`}
          </>
        ) : (
          <>
            <strong>{words`${own(fault.what)} could not be loaded.`}</strong>{' '}
            {why === 'away'
              ? words`Are you offline? Everything else works without a connection.`
              : words`Nothing is lost by it.`}
          </>
        )}
      </p>
      <div className="fault-ways">
        {why === 'newer' ? (
          <button type="button" className="button button-main" onClick={use}>
            {words`Use it now`}
          </button>
        ) : (
          <button type="button" className="button button-main" onClick={onAgain}>
            {words`Try again`}
          </button>
        )}
        <button type="button" className="button" onClick={saveAnyhow}>
          {words`Save the project as a file`}
        </button>
        {why === 'unknown' && (
          <button type="button" className="button" onClick={() => void reloadPage()}>
            {words`Reload the page`}
          </button>
        )}
        {onLeave && (
          <button type="button" className="button" onClick={onLeave}>
            {words`Close`}
          </button>
        )}
      </div>
    </>
  );
}
