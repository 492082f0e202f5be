import { valueAt } from '../../../project';
import { say } from '../../../words';
import { SwitchField } from '../../fields/SwitchField';
import { useBench } from '../../store/bench';

const CORDS = [
  { key: 'bought', name: say`bought` },
  { key: 'ofCloth', name: say`sewn of the cloth` },
];

/** Whether a cord is bought or becomes a piece of its own. */
export function CordField({ path }: { readonly path: 'waist.cord' | 'hem.cord' }) {
  const chosen = useBench((state) => valueAt(state.project, path));
  const choose = useBench((state) => state.choose);
  return (
    <SwitchField
      path={path}
      choices={CORDS}
      chosen={String(chosen)}
      help={
        chosen === 'ofCloth' ? say`A strip of its own, folded, sewn and turned.` : say`Cut it to length, knot its ends.`
      }
      onPick={(key) => choose(path, key)}
    />
  );
}
