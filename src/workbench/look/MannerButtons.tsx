import { useManner } from './manner';

/** The theme, and the screen for a class. */
export function MannerButtons() {
  const theme = useManner((state) => state.theme);
  const { wear, show } = useManner.getState();
  return (
    <>
      <button type="button" className="bar-button bar-manner bar-show" onClick={() => show(true)}>
        Show<span className="bar-what"> mode</span>
      </button>
      <button
        type="button"
        className="bar-button bar-manner"
        aria-pressed={theme === 'chalkboard'}
        onClick={() => wear(theme === 'chalkboard' ? 'daylight' : 'chalkboard')}
      >
        Chalkboard
      </button>
    </>
  );
}
