import { useState } from 'react';
import { printPhrase, words } from '../../words';
import { saveToFile } from '../save/save';
import { projectLink } from '../shelf/link';
import { onThisPage } from '../shelf/start';
import { useBench } from '../store/bench';

/** The open project: a file, a link, a copy. */
export function ThisProject() {
  const name = useBench((state) => state.project.name);
  const [link, setLink] = useState<string>();
  const [told, setTold] = useState('');
  const makeLink = async () => {
    const { project, station } = useBench.getState();
    const made = await projectLink(project, station, location.origin + location.pathname);
    if (!made.ok) {
      setLink(undefined);
      setTold(made.problems.map(({ phrase }) => printPhrase(phrase, project.units)).join(' '));
      return;
    }
    setLink(made.value);
    const copied = await navigator.clipboard?.writeText(made.value).then(
      () => true,
      () => false,
    );
    setTold(
      copied
        ? words`Copied. Whoever has the link has the whole project; nobody else gets it.`
        : words`Copy the link from here.`,
    );
  };
  return (
    <section className="this-project" aria-label={words`The open project`}>
      <h3 className="sheet-name">{name}</h3>
      <div className="sheet-actions">
        <button type="button" className="button" onClick={saveToFile}>
          {words`Save as a file`}
        </button>
        <button type="button" className="button" onClick={() => void makeLink()}>
          {words`Copy a link`}
        </button>
        <button type="button" className="button" onClick={onThisPage().keeper.copy}>
          {words`Duplicate`}
        </button>
      </div>
      {link && (
        <input
          className="link-text"
          readOnly
          aria-label={words`Link that holds the project`}
          value={link}
          onFocus={(event) => event.target.select()}
        />
      )}
      <p className="field-help" role="status">
        {told}
      </p>
    </section>
  );
}
