import { useEffect, useState } from 'react';
import { edgeApart } from '../../drawing';
import { type Curve, pathLength, pathUpTo, type WorkingStep } from '../../plane';
import { useBench } from '../store/bench';
import { stepOf, workingAt } from '../store/working-at';
import { useLitPlace } from '../view/lit-place';
import { useRun } from '../working/run';
import { pathText } from './path-text';

/** The lines that a step of the working drew, lit. */
export function LitLines() {
  const id = useBench((state) => state.step);
  const going = useRun((state) => state.going);
  const draft = useBench((state) => state.draft);
  const step = id === undefined ? undefined : stepOf(draft, id);
  const drawn = useDrawing(step?.id, going);
  if (!step) return null;
  const lines = stepLines(step);
  return (
    <g className="lit" data-step={step.id}>
      {going && <EarlierLines step={step} />}
      <Lit curves={drawn < 1 ? lines.map((curves) => pathUpTo(curves, drawn * pathLength(curves))) : lines} />
    </g>
  );
}

/** The place that is asked about, lit. */
export function LitPlace() {
  const place = useLitPlace((state) => state.place);
  return place && place.curves.length > 0 && <Lit curves={[place.curves]} />;
}

/** Runs of curves, lit: a broad chalk stroke with an ink line in it. */
export function Lit({ curves }: { readonly curves: readonly (readonly Curve[])[] }) {
  const text = curves.map((run) => pathText(run)).join('');
  return (
    <>
      <path className="lit-chalk" d={text} />
      <path className="lit-ink" d={text} />
    </>
  );
}

/** What the steps before it have drawn at the same station: thin, as a drafter's pencil leaves it. */
function EarlierLines({ step }: { readonly step: WorkingStep }) {
  const draft = useBench((state) => state.draft);
  const here = workingAt(draft, step.station);
  const before = here.slice(0, here.indexOf(step));
  const text = before
    .flatMap(stepLines)
    .map((curves) => pathText(curves))
    .join('');
  return <path className="lit-earlier" d={text} />;
}

/** The runs of curves that a step drew, as they lie on its station's drawing. */
export const stepLines = (step: WorkingStep): readonly (readonly Curve[])[] =>
  step.lines.map((edge) => (step.station === 'blocks' ? edgeApart(edge) : edge.curves));

/** How long a step's lines take to be drawn, milliseconds. */
const DRAWING = 900;

/** How much of a step's lines is drawn, 0…1: at once, but in the run and where motion is welcome. */
function useDrawing(step: string | undefined, going: boolean): number {
  const [drawn, setDrawn] = useState({ step, share: 1 });
  useEffect(() => {
    if (!going || step === undefined || !motionWelcome()) {
      setDrawn({ step, share: 1 });
      return;
    }
    const start = performance.now();
    let frame = requestAnimationFrame(function go(now) {
      const share = Math.min(1, Math.max(0.001, (now - start) / DRAWING));
      setDrawn({ step, share });
      if (share < 1) frame = requestAnimationFrame(go);
    });
    return () => cancelAnimationFrame(frame);
  }, [step, going]);
  if (drawn.step === step) return drawn.share;
  return going && motionWelcome() ? 0.001 : 1;
}

/** Whether the person has nothing against movement on the screen. */
export const motionWelcome = (): boolean => window.matchMedia?.('(prefers-reduced-motion: reduce)').matches === false;
