import { words } from '../../words';
import { download } from '../save/download';
import { type Fault, faultDetails } from './fault';

/** The fault itself, for whoever is to mend it. */
export function DetailsOf({ fault }: { readonly fault: Fault }) {
  const text = faultDetails(fault);
  return (
    <details className="fault-details">
      <summary>{words`Details of the error`}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, by keys too */}
      <pre tabIndex={0}>{text}</pre>
      <button type="button" className="plain-link" onClick={() => download(text, 'text/plain', 'legwork-fault.txt')}>
        {words`save the details`}
      </button>
    </details>
  );
}
