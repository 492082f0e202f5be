import { inOrder, savingQuestions, WORTH_SAVING } from '../../../project';
import { mm, printPhrase, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { Savings } from '../Savings';
import { useInTurn } from '../use-in-turn';
import { CLOTH_RESULT } from './ClothResult';

/** What would save cloth, priced by the real lay, each at one press. */
export function ClothSavings() {
  const { answers, done } = useInTurn(savingQuestions);
  const units = useBench((state) => state.project.units);
  if (answers.length > 0) return <Savings savings={inOrder(answers)} busy={!done} result={CLOTH_RESULT} />;
  return (
    <p className="shopping-note">
      {done
        ? printPhrase(say`Nothing would save as much as ${mm(WORTH_SAVING)}.`, units)
        : words`Laying it in other ways …`}
    </p>
  );
}
