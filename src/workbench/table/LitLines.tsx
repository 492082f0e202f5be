import { useBench } from '../store/bench';
import { edgeApart } from './apart';
import { pathText } from './path-text';

/** The lines that a step of the working drew, lit: a broad chalk stroke with an ink line in it. */
export function LitLines() {
  const id = useBench((state) => state.step);
  const step = useBench((state) => state.draft.working.find((one) => one.id === id));
  if (!step) return null;
  const curves = step.lines.flatMap((edge) => (step.station === 'blocks' ? edgeApart(edge) : edge.curves));
  const text = pathText(curves);
  return (
    <g className="lit" data-step={step.id}>
      <path className="lit-chalk" d={text} />
      <path className="lit-ink" d={text} />
    </g>
  );
}
