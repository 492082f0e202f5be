import { shoppingOf } from '../../../project';
import { isSaid, type Phrase, printPhrase } from '../../../words';
import { useBench } from '../../store/bench';

/** Everything to buy, in both units. */
export function ShoppingList() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  return (
    <ul className="shopping">
      {shoppingOf(draft).map(({ id, name, howMuch, note }) => (
        <li key={id}>
          <strong>{printPhrase(name, units)}:</strong> {printPhrase(howMuch, units)}
          <Other phrase={howMuch} /> {isSaid(note) && <span className="shopping-note">{printPhrase(note, units)}</span>}
        </li>
      ))}
    </ul>
  );
}

/** The same amount once more in the other unit, where that says anything else. */
function Other({ phrase }: { readonly phrase: Phrase }) {
  const units = useBench((state) => state.project.units);
  const own = printPhrase(phrase, units);
  const other = printPhrase(phrase, units === 'cm' ? 'inch' : 'cm');
  return own === other ? null : <span className="shopping-other"> ({other})</span>;
}
