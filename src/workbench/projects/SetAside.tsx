import { words } from '../../words';
import { onThisPage } from '../shelf/start';
import { RawRow } from './KeptRow';
import { changeShelf, useShelved } from './use-shelved';

/** What could not be read and was set aside, until somebody has no more use for it. */
export function SetAside() {
  const { shelf } = onThisPage();
  const asides = useShelved(shelf.asides);
  if (!asides || asides.length === 0) return null;
  return (
    <>
      <p className="field-help">{words`Set aside, because it can’t be read here:`}</p>
      <ul className="kept-list">
        {asides.map(({ key, what, raw }) => (
          <RawRow
            key={key}
            name={what.charAt(0).toUpperCase() + what.slice(1)}
            about={words`It is left as it was found.`}
            raw={raw}
            onRemove={() => void changeShelf(() => shelf.removeAside(key))}
          />
        ))}
      </ul>
    </>
  );
}
