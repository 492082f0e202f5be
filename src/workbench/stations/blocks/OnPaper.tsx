import { PAPER_SEAMS } from '../../../trace';
import { words } from '../../../words';
import { Group } from '../../fields/Group';
import { QuantityField } from '../../fields/QuantityField';
import { length } from '../../store/quantity';

/** What of the paper is allowance, seam by seam: it is taken off, because a block is net. */
export function OnPaper() {
  return (
    <Group name={words`Allowances on the paper`}>
      <p className="field-help">{words`What you say here is taken off. Leave it empty where the paper ends at the stitching line.`}</p>
      {PAPER_SEAMS.map((seam) => (
        <QuantityField key={seam} path={`block.allowances.${seam}`} quantity={length} optional />
      ))}
    </Group>
  );
}
