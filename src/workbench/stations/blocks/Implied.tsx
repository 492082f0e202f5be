import { useShallow } from 'zustand/react/shallow';
import { BLOCK_TOLD_KEYS, type BlockToldKey, measurementName } from '../../../body';
import { type BlocksImplied, USUAL_EASE } from '../../../trace';
import { inside, mm, type Phrase, printPhrase, say, words } from '../../../words';
import { focusOn } from '../../aloud/focus-on';
import { sayAloud } from '../../aloud/say-aloud';
import { Group } from '../../fields/Group';
import { QuantityField } from '../../fields/QuantityField';
import { isWaiting } from '../../store/asked';
import { useBench } from '../../store/bench';
import { length } from '../../store/quantity';

/** What brought blocks say of their wearer, beside what a tape says; where no tape was, it may be taken from them. */
export function Implied({ implied: { body: told, crotchLength, inseam } }: { readonly implied: BlocksImplied }) {
  const units = useBench((state) => state.project.units);
  const body = useBench((state) => state.project.body);
  const waiting = useBench(useShallow((state) => BLOCK_TOLD_KEYS.filter((key) => isWaiting(state, `body.${key}`))));
  const print = (phrase: Phrase) => printPhrase(phrase, units);
  const take = (key: BlockToldKey, taken: boolean, said: Phrase) => {
    useBench.getState().takeFromBlocks(key, taken);
    sayAloud(print(said));
    focusOn('.implied');
  };
  return (
    <Group name={words`What these blocks say of their wearer`}>
      <QuantityField
        path="block.hipEase"
        quantity={length}
        optional
        instead={USUAL_EASE.hip}
        help={say`How much wider the blocks are than their wearer, all round; where you don’t know it, what is usual.`}
      />
      {told.waistGirth && (
        <QuantityField path="block.waistEase" quantity={length} optional instead={USUAL_EASE.waist} />
      )}
      <ul className="savings implied" tabIndex={-1} aria-label={words`What these blocks say of their wearer`}>
        {BLOCK_TOLD_KEYS.map((key) => {
          const value = told[key]?.value;
          if (value === undefined) return null;
          const name = measurementName(key);
          const measured = waiting.includes(key) ? undefined : body[key];
          if (typeof measured === 'number')
            return <li key={key}>{print(say`${name}: ${mm(value)} by the blocks, ${mm(measured)} by the tape.`)}</li>;
          const taken = body.fromBlock?.includes(key) ?? false;
          return (
            <li key={key}>
              {print(
                taken
                  ? say`${name}: ${mm(value)}, taken from the blocks.`
                  : say`${name}: ${mm(value)} by the blocks; not measured.`,
              )}{' '}
              {taken ? (
                <button
                  type="button"
                  className="plain-link"
                  onClick={() => take(key, false, say`${name} isn’t taken from the blocks any more.`)}
                >
                  {words`Don’t take ${inside(name)} from the blocks`}
                </button>
              ) : (
                <button
                  type="button"
                  className="check-fix"
                  onClick={() => take(key, true, say`${name}: ${mm(value)}, taken from the blocks.`)}
                >
                  {words`Take ${inside(name)} from the blocks`}
                </button>
              )}
            </li>
          );
        })}
        <li>
          {print(
            say`Along the blocks, the crotch length is ${mm(crotchLength)} and the inseam ${mm(inseam)}; on the body the first is shorter by its ease, and the second longer, for it goes down to the floor.`,
          )}
        </li>
      </ul>
    </Group>
  );
}
