import { words } from '../../words';
import { useBench } from '../store/bench';

/** The project's name, written where it is read. */
export function ProjectName() {
  const name = useBench((state) => state.project.name);
  const { slide, leave } = useBench.getState();
  return (
    <input
      className="bar-name"
      aria-label={words`Name of the project`}
      value={name}
      maxLength={80}
      autoComplete="off"
      spellCheck={false}
      onChange={(event) => slide('name', event.target.value)}
      onBlur={() => leave('name')}
    />
  );
}
