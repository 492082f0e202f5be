import { type DartNumbers, MOST_DARTS, type NumbersPair, numbersOf } from '../../../trace';
import { say, words } from '../../../words';
import { Fold } from '../../fields/Fold';
import { QuantityField } from '../../fields/QuantityField';
import { useBench } from '../../store/bench';
import { length } from '../../store/quantity';

/** A dart before it was measured. @source practice */
const NEW_DART = { intake: 20, length: 100 } as const;
const NO_DARTS: readonly DartNumbers[] = [];

/** The darts of one block, counted from the side: drawn on it, and not sewn in a pant that pulls on. */
export function Darts({ part }: { readonly part: keyof NumbersPair }) {
  const choose = useBench((state) => state.choose);
  const darts = useBench(({ project: { block } }) =>
    block.source === 'numbers' ? (block[part].darts ?? NO_DARTS) : NO_DARTS,
  );
  const block = useBench((state) => state.draft.origin.drafted.uncorrected[part]);
  const at = `block.${part}.darts`;
  const put = (next: readonly DartNumbers[]) => choose(at, next.length > 0 ? next : undefined);
  const add = () => put([...darts, { ...NEW_DART, fromSide: Math.round(numbersOf(block).waistEdge / 2) }]);
  return (
    <Fold
      name={words`Darts`}
      paths={darts.flatMap((_, i) => [`${at}.${i}.intake`, `${at}.${i}.length`, `${at}.${i}.fromSide`])}
    >
      <p className="field-help">{words`They are drawn on the block and told apart from the waist; nothing is sewn of them in a pant that pulls on.`}</p>
      {darts.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a dart is known by its place alone.
        <div key={i} className="group">
          <QuantityField
            path={`${at}.${i}.intake`}
            quantity={length}
            help={say`Across its open end at the waist edge.`}
          />
          <QuantityField path={`${at}.${i}.length`} quantity={length} help={say`From the waist edge to its point.`} />
          <QuantityField
            path={`${at}.${i}.fromSide`}
            quantity={length}
            help={say`Along the waist edge, from the side to the dart’s middle.`}
          />
          <button type="button" className="plain-link" onClick={() => put(darts.filter((_one, k) => k !== i))}>
            {words`Take this dart away`}
          </button>
        </div>
      ))}
      {darts.length < MOST_DARTS && (
        <button type="button" className="button" onClick={add}>
          <span className="take-name">{words`Add a dart`}</span>
        </button>
      )}
    </Fold>
  );
}
