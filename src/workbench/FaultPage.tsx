import { words } from '../words';
import { Projects } from './bar/Projects';
import { FaultCard } from './faults/FaultCard';
import type { FaultTold } from './faults/fault';
import { useMannerOnPage } from './look/use-manner-on-page';
import { onThisPage } from './shelf/start';
import { useBench } from './store/bench';
import { Anew } from './ways/Anew';

/** In place of a page that can't be drawn at all: what happened, every way out, and the example as the last of them. */
export function FaultPage({ fault, onAgain }: FaultTold) {
  useMannerOnPage();
  return (
    <main className="fault-page">
      <h1 className="bar-product">Legwork</h1>
      <FaultCard fault={fault} onAgain={onAgain} />
      <p>
        {words`If nothing else helps, begin with the finished example: the project that is open now stays in the list of projects.`}
      </p>
      <div className="fault-ways">
        <button type="button" className="button" onClick={openExample}>
          {words`Open the example`}
        </button>
      </div>
      <Projects />
      <Anew />
    </main>
  );
}

function openExample() {
  onThisPage().keeper.look();
  useBench.setState({ field: undefined, workingShown: false });
  useBench.getState().tell({ tone: 'told', text: words`The example is open.` });
}
