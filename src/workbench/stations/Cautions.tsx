import { CAUTIONS_NOTE, type Caution, cautionSource } from '../../sewing';
import { printPhrase, said } from '../../words';
import { useBench } from '../store/bench';

export interface CautionsProps {
  /** The fields that raise them; each caution stands by the first of its own. */
  readonly about: readonly string[];
  /** Whether the note stands under them that holds for all. */
  readonly noted?: boolean;
}

/** Every caution, all together, before anything is sewn. */
export function AllCautions() {
  const cautions = useBench((state) => state.draft.cautions);
  return <CautionList cautions={cautions} noted={true} />;
}

/** The cautions, beside the choice that raised it. */
export function Cautions({ about, noted = false }: CautionsProps) {
  const cautions = useBench((state) => state.draft.cautions);
  const raised = cautions.filter(({ raisedBy: [first] }) => first !== undefined && about.includes(first));
  return raised.length === 0 ? null : <CautionList cautions={raised} noted={noted} />;
}

function CautionList({ cautions, noted }: { readonly cautions: readonly Caution[]; readonly noted: boolean }) {
  const units = useBench((state) => state.project.units);
  return (
    <div className="cautions">
      <ul>
        {cautions.map((caution) => (
          <li key={caution.id}>
            <strong>{said(caution.title)}.</strong> {printPhrase(caution.sentence, units)}{' '}
            {caution.source.sure !== 'practice' && (
              <span className="caution-source">({said(cautionSource(caution))})</span>
            )}
          </li>
        ))}
      </ul>
      {noted && <p className="caution-source">{printPhrase(CAUTIONS_NOTE, units)}</p>}
    </div>
  );
}
