import { printPhrase } from '../../length';
import { CAUTIONS_NOTE, cautionSource } from '../../sewing';
import { useBench } from '../store/bench';

export interface CautionsProps {
  /** The fields that raise them; each caution stands by the first of its own. */
  readonly about: readonly string[];
  /** Whether the note stands under them that holds for all. */
  readonly noted?: boolean;
}

/** What to mind for safety, beside the choice that raised it. */
export function Cautions({ about, noted = false }: CautionsProps) {
  const cautions = useBench((state) => state.draft.cautions);
  const units = useBench((state) => state.project.units);
  const raised = cautions.filter(({ raisedBy: [first] }) => first !== undefined && about.includes(first));
  if (raised.length === 0) return null;
  return (
    <div className="cautions">
      <ul>
        {raised.map((caution) => (
          <li key={caution.id}>
            <strong>{caution.title}.</strong> {printPhrase(caution.sentence, units)}{' '}
            <span className="caution-source">({cautionSource(caution)})</span>
          </li>
        ))}
      </ul>
      {noted && <p className="caution-source">{printPhrase(CAUTIONS_NOTE, units)}</p>}
    </div>
  );
}
