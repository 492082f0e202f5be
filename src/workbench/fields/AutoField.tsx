import { fieldName, valueAt } from '../../project';
import { said, say } from '../../words';
import { useBench } from '../store/bench';
import { nearestStep } from '../store/quantity';
import { QuantityField, type QuantityFieldProps } from './QuantityField';
import { SwitchField } from './SwitchField';

export interface AutoFieldProps extends QuantityFieldProps {
  /** What the automatic choice came to: shown, and the start for a change by hand. */
  readonly automatic: number;
}

const CHOICES = [
  { key: 'auto', name: say`automatic` },
  { key: 'hand', name: say`by hand` },
];

/** A number that the drafting finds by itself until someone takes it in hand. */
export function AutoField({ automatic, help, instead: _unused, ...field }: AutoFieldProps) {
  const value = useBench((state) => valueAt(state.project, field.path));
  const units = useBench((state) => state.project.units);
  const choose = useBench((state) => state.choose);
  const byHand = typeof value === 'number';
  return (
    <>
      <SwitchField
        path={`${field.path}.how`}
        label={said(fieldName(field.path))}
        choices={CHOICES}
        chosen={byHand ? 'hand' : 'auto'}
        help={byHand ? undefined : help}
        onPick={(key) =>
          choose(field.path, key === 'auto' ? 'auto' : nearestStep(automatic, field.quantity.step(units)))
        }
      />
      {byHand && <QuantityField {...field} {...(help ? { help } : {})} />}
    </>
  );
}
