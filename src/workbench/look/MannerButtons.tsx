import { words } from '../../words';
import { useManner } from './manner';
import { Shortened } from './Shortened';

/** The theme, and the screen for a class. */
export function MannerButtons() {
  const theme = useManner((state) => state.theme);
  const { wear, show } = useManner.getState();
  return (
    <>
      <button type="button" className="bar-button bar-manner bar-show" onClick={() => show(true)}>
        <Shortened short={words`Show`} whole={words`Show mode`} />
      </button>
      <button
        type="button"
        className="bar-button bar-manner"
        aria-pressed={theme === 'chalkboard'}
        onClick={() => wear(theme === 'chalkboard' ? 'daylight' : 'chalkboard')}
      >
        {words`Chalkboard`}
      </button>
    </>
  );
}
