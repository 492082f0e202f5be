import { unprintedTold } from '../../../drawing';
import { printPhrase } from '../../../words';
import { useBench } from '../../store/bench';

/** Which letters of the names on the pattern no PDF of it shows, before anything is printed. */
export function UnprintedLetters() {
  const project = useBench((state) => state.project);
  return [...new Set([project.name, project.body.label])].map((name) => {
    const told = unprintedTold(name);
    return (
      told && (
        <p key={name} className="field-doubt">
          {printPhrase(told, project.units)}
        </p>
      )
    );
  });
}
