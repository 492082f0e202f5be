import { type ClothSaving, WORTH_SAVING } from '../../../project';
import { mm, printPhrase, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { CLOTH_RESULT } from './ClothResult';
import { useSavings } from './use-savings';

/** What would save cloth, priced by the real lay, each at one press. */
export function ClothSavings() {
  const { savings, done } = useSavings();
  const units = useBench((state) => state.project.units);
  if (savings.length === 0) {
    return (
      <p className="shopping-note">
        {done
          ? printPhrase(say`Nothing would save as much as ${mm(WORTH_SAVING)}.`, units)
          : words`Laying it in other ways …`}
      </p>
    );
  }
  return (
    <ul className="cloth-savings" aria-busy={!done}>
      {savings.map((saving) => (
        <Saving key={saving.id} saving={saving} />
      ))}
    </ul>
  );
}

function Saving({ saving: { id, fix, says } }: { readonly saving: ClothSaving }) {
  const units = useBench((state) => state.project.units);
  const remedy = useBench((state) => state.remedy);
  // The button goes with what it saves; who pressed it stays with the amount to buy.
  const apply = () => {
    remedy({ id, fix });
    document.getElementById(CLOTH_RESULT)?.focus({ preventScroll: true });
  };
  return (
    <li>
      <button type="button" className="check-fix" onClick={apply}>
        {printPhrase(fix.label, units)}
      </button>
      <span className="cloth-saving-says">{printPhrase(says, units)}</span>
    </li>
  );
}
