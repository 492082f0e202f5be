import { number, words } from '../../words';
import { shotAt, showShot, usePhoto } from './photo-store';
import { MOST_SHOTS } from './work';

/** Which photograph is shown, and one more: a block may lie on several that overlap. */
export function WhichPhotograph() {
  const shots = usePhoto((state) => state.work.shots);
  const shown = usePhoto(shotAt);
  const names = shots.map((_, i) => words`Photograph ${number(i + 1, 0)}`);
  return (
    <nav className="photo-shots" aria-label={words`Photographs`}>
      {shots.length > 1 &&
        names.map((name, i) => (
          <button
            key={name}
            type="button"
            className="tool"
            aria-current={i === shown ? 'true' : undefined}
            onClick={() => showShot(i)}
          >
            {name}
          </button>
        ))}
      {shots.length < MOST_SHOTS && (
        <button type="button" className="plain-link photo-again" onClick={() => showShot(shots.length)}>
          {words`take another photograph to it`}
        </button>
      )}
    </nav>
  );
}
