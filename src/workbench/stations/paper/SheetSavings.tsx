import { leastChanges, sheetSavingQuestions } from '../../../project';
import { fieldId } from '../../store/field-id';
import { Savings } from '../Savings';
import { useInTurn } from '../use-in-turn';

/** What margin and overlap cost: narrower ones that save sheets, by the real search, each at one press; nothing where none does. */
export function SheetSavings() {
  const { answers, done } = useInTurn(sheetSavingQuestions);
  if (answers.length === 0) return null;
  // The paper's own field tells how many sheets there are.
  return <Savings savings={leastChanges(answers)} busy={!done} result={fieldId('paper.sheet')} />;
}
