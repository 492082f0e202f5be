import { focusOn } from '../aloud/focus-on';
import { FaultCard } from './FaultCard';
import { useOutside } from './outside';

/** A fault that no panel can tell, above the table until it is put away. */
export function OutsideFault() {
  const told = useOutside((state) => state.told);
  if (!told) return null;
  const putAway = () => {
    useOutside.setState({ told: undefined });
    focusOn('.stop[data-open] .stop-name button');
  };
  const again = () => {
    useOutside.setState({ told: undefined });
    told.again?.();
  };
  return <FaultCard fault={told.fault} onAgain={again} onLeave={putAway} />;
}
