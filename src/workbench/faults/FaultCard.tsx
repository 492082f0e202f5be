import { own, words } from '../../words';
import { DetailsOf } from './DetailsOf';
import { type FaultTold, isNotLoaded } from './fault';
import { LateWords } from './LateWords';
import { WaysOut } from './WaysOut';

interface FaultCardProps extends FaultTold {
  /** Whether the last that could be drawn is to be seen below. */
  readonly lastBelow?: boolean;
}

/** What happened, and what can be done; calm, because nothing is lost. */
export function FaultCard({ fault, onAgain, onLeave, lastBelow = false }: FaultCardProps) {
  if (isNotLoaded(fault)) {
    return (
      <div className="fault">
        <LateWords fault={fault} onAgain={onAgain} onLeave={onLeave} />
        <DetailsOf fault={fault} />
      </div>
    );
  }
  return (
    <div className="fault">
      <p role="alert">
        <strong>{words`${own(fault.what)} can’t be drawn because of an error in Legwork.`}</strong>{' '}
        {words`Your project is not to blame, and nothing of it is lost.`}
        {lastBelow && ` ${words`Below is the last that could be drawn.`}`}
      </p>
      <WaysOut onLeave={onLeave} />
      <DetailsOf fault={fault} />
    </div>
  );
}
