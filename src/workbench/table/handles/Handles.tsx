import { useBench } from '../../store/bench';
import type { View } from '../../view/view';
import { HandleButton } from './HandleButton';
import { handlesAt } from './handles';

/** The buttons on the drawing: what can be changed by hand at the open station. */
export function Handles({ view }: { readonly view: View }) {
  const station = useBench((state) => state.station);
  const draft = useBench((state) => state.draft);
  return handlesAt(station, draft).map((handle) => (
    <HandleButton key={handle.key} handle={handle} draft={draft} view={view} />
  ));
}
